using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Water taken out of a basin by hand, and source water let in by hand.</summary>
public sealed class WaterChanges : FarmWork
{
    /// <summary>Makes it.</summary>
    public WaterChanges(FarmContext farm, FarmLog log)
        : base(farm, log)
    {
    }

    /// <summary>Leads water out of the farm, to a soil crop, with all it carries.</summary>
    public void LeadOut(int from, double litres)
    {
        LedOut.Take(State, from, litres, litres / State.Basins.Litres[from], Door.Spill);
        State.Totals.SpilledLitres += litres;
        State.Totals.SpilledLitresLogged += litres;
    }

    /// <summary>Lets source water into a basin, with the chlorine that it carries just now.</summary>
    public void LetIn(int to, double litres)
    {
        Basins basins = State.Basins;
        double[] water = Parts.SourceWater.GramsPerLitre;
        basins.Warm(to, litres, Parts.SourceWater.Celsius);
        for (int substance = 0; substance <= Substance.LastDissolved; substance++)
        {
            basins.Grams[WaterStep.At(to, substance)] += water[substance] * litres;
            State.Books.PostWaterFromOutside(Door.SourceWater, substance, water[substance] * litres);
        }

        basins.Grams[WaterStep.At(to, Substance.Chlorine)] += State.Husbandry.SourceChlorineGramsPerLitre * litres;
        State.Totals.SourceLitres += litres;
        State.Books.Post(Door.SourceWater, FarmBooks.Water, litres);
        State.Books.Post(Door.SourceWater, FarmBooks.Heat, FarmBooks.MegajoulesOf(litres, Parts.SourceWater.Celsius));
        basins.Litres[to] += litres;
    }

    /// <summary>Room left below a basin's brim, L.</summary>
    public double Room(int basin) =>
        (Parts.Basins[basin].BrimLitres ?? (Parts.Basins[basin].VolumeLitres * 1.1)) - State.Basins.Litres[basin];
}
