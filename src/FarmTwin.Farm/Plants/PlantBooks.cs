using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>What plants bring into the farm's books and take out of them.</summary>
public static class PlantBooks
{
    /// <summary>Books plants that enter (sign +1) or leave (−1) with their elements and water.</summary>
    public static void Post(FarmContext farm, int door, in ElementGrams elements, double waterLitres, int sign)
    {
        ArgumentNullException.ThrowIfNull(farm);
        farm.State.Books.PostElements(door, elements, sign);
        farm.State.Books.Post(door, FarmBooks.Water, sign * waterLitres);
    }

    /// <summary>Takes the water that new tissue holds out of a basin, with its heat.</summary>
    public static void DrawTissueWater(FarmContext farm, int basin, double litres)
    {
        ArgumentNullException.ThrowIfNull(farm);
        farm.State.Basins.Litres[basin] -= litres;
        farm.State.Books.Post(Door.PlantUptake, FarmBooks.Heat, -FarmBooks.MegajoulesOf(litres, farm.State.Basins.Celsius[basin]));
    }
}
