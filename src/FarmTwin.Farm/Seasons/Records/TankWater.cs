using FarmTwin.Farm.Description;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>The water of the fish tanks as the record shows it: means by volume, and the worst tank.</summary>
internal sealed class TankWater
{
    private readonly FarmContext _farm;

    /// <summary>Finds the tanks.</summary>
    public TankWater(FarmContext farm)
    {
        _farm = farm;
        BasinDescription[] basins = farm.Parts.Basins;
        TankBasins = [.. Enumerable.Range(0, basins.Length).Where(b => basins[b].Use == BasinUse.FishTank)];
    }

    /// <summary>Basins that are tanks.</summary>
    public int[] TankBasins { get; }

    /// <summary>Mean temperature as of the last <see cref="Look"/>, °C.</summary>
    public double Celsius { get; private set; }

    /// <summary>Mean pH as of the last <see cref="Look"/>.</summary>
    public double PH { get; private set; }

    /// <summary>Mean carbon dioxide as of the last <see cref="Look"/>, mg/L.</summary>
    public double CarbonDioxide { get; private set; }

    /// <summary>Oxygen of the worst tank as of the last <see cref="Look"/>, mg/L.</summary>
    public double LowestOxygen { get; private set; }

    /// <summary>TAN of the worst tank as of the last <see cref="Look"/>, mg N/L.</summary>
    public double HighestTan { get; private set; }

    /// <summary>Un-ionized ammonia of the worst tank as of the last <see cref="Look"/>, mg N/L.</summary>
    public double HighestUnionized { get; private set; }

    /// <summary>Works the figures out, once a step for all columns that show them.</summary>
    public void Look()
    {
        Basins basins = _farm.State.Basins;
        double litres = 0;
        double celsius = 0;
        double acidity = 0;
        double carbonDioxide = 0;
        double oxygen = double.PositiveInfinity;
        double highestTan = 0;
        double unionized = 0;
        foreach (int b in TankBasins)
        {
            double water = basins.Litres[b];
            litres += water;
            celsius += water * basins.Celsius[b];
            acidity += water * basins.PH[b];
            carbonDioxide += water * basins.CarbonDioxideMoles[b];
            double tan = basins.MilligramsPerLitre(b, Substance.Tan);
            oxygen = Math.Min(oxygen, basins.MilligramsPerLitre(b, Substance.Oxygen));
            highestTan = Math.Max(highestTan, tan);
            unionized = Math.Max(unionized, tan * Ammonia.UnionizedFraction(basins.PH[b], basins.Celsius[b]));
        }

        // A farm without tanks has no worst tank.
        double share = litres > 0 ? 1 / litres : double.NaN;
        Celsius = celsius * share;
        PH = acidity * share;
        CarbonDioxide = carbonDioxide * share * UnitConstants.CarbonDioxideMilligramsPerMole;
        LowestOxygen = TankBasins.Length > 0 ? oxygen : double.NaN;
        HighestTan = highestTan;
        HighestUnionized = unionized;
    }

    /// <summary>A substance in the tank that holds most of it, mg/L.</summary>
    public double Highest(int substance)
    {
        double highest = 0;
        foreach (int b in TankBasins)
        {
            highest = Math.Max(highest, _farm.State.Basins.MilligramsPerLitre(b, substance));
        }

        return highest;
    }
}
