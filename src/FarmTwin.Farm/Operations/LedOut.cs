using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Water that people lead out of the farm, to compost or a soil crop, with what it carries.</summary>
public static class LedOut
{
    /// <summary>Takes water out of a basin and books it.</summary>
    /// <param name="state">The farm.</param>
    /// <param name="basin">The basin.</param>
    /// <param name="litres">How much, L; no more than it holds.</param>
    /// <param name="solidsShare">Share of the basin's solids that goes with it, 0–1; that of the water where the basin is mixed.</param>
    /// <param name="door">The <see cref="Door"/> by which it leaves.</param>
    public static void Take(FarmState state, int basin, double litres, double solidsShare, int door)
    {
        ArgumentNullException.ThrowIfNull(state);
        Basins basins = state.Basins;
        double share = litres / basins.Litres[basin];
        for (int column = 0; column < Substance.Columns; column++)
        {
            double grams = basins.Grams[WaterStep.At(basin, column)] * (column >= Substance.FirstSolidsClass ? solidsShare : share);
            basins.Grams[WaterStep.At(basin, column)] -= grams;
            state.Books.PostWaterFromOutside(door, column, -grams);
        }

        state.Books.Post(door, FarmBooks.Water, -litres);
        state.Books.Post(door, FarmBooks.Heat, -FarmBooks.MegajoulesOf(litres, basins.Celsius[basin]));
        basins.Litres[basin] -= litres;
    }
}
