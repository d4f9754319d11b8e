namespace FarmTwin.Farm.Ledgers;

/// <summary>Through what something enters or leaves the farm, or (for oxygen, carbon, charge and heat) comes into or out of its water.</summary>
public static class Door
{
    /// <summary>First filling and topping up.</summary>
    public const int SourceWater = 0;

    /// <summary>Feed.</summary>
    public const int Feed = 1;

    /// <summary>Fish delivered.</summary>
    public const int FishDelivered = 2;

    /// <summary>Fish sold.</summary>
    public const int FishSold = 3;

    /// <summary>Fish that died and were taken out.</summary>
    public const int DeadFish = 4;

    /// <summary>Seed.</summary>
    public const int Seed = 5;

    /// <summary>Crops sold or offered for sale (with the roots that stay on the plug).</summary>
    public const int CropHarvest = 6;

    /// <summary>Culls, dead plants and unsaleable crops to compost.</summary>
    public const int CropCompost = 7;

    /// <summary>Nitrogen gas from denitrification.</summary>
    public const int Denitrification = 8;

    /// <summary>Supplements.</summary>
    public const int Dosing = 9;

    /// <summary>Thick sludge to compost.</summary>
    public const int SludgeCompost = 10;

    /// <summary>Water spilled over a brim or led out of the farm.</summary>
    public const int Spill = 11;

    /// <summary>Iron whose chelate broke down.</summary>
    public const int IronLost = 12;

    /// <summary>Exchange with air: diffusers and surfaces.</summary>
    public const int Air = 13;

    /// <summary>Respiration, excretion and weight of the fish (water side).</summary>
    public const int Fish = 14;

    /// <summary>Nitrification (water side).</summary>
    public const int Nitrification = 15;

    /// <summary>Breakdown of solids (water side).</summary>
    public const int SolidsBreakdown = 16;

    /// <summary>Uptake by plants (water side).</summary>
    public const int PlantUptake = 17;

    /// <summary>Evaporation.</summary>
    public const int Evaporation = 18;

    /// <summary>Transpiration.</summary>
    public const int Transpiration = 19;

    /// <summary>Heaters of the water.</summary>
    public const int WaterHeaters = 20;

    /// <summary>Sun, pumps and whatever warms the water unasked.</summary>
    public const int Gains = 21;

    /// <summary>Surfaces and walls to the house air.</summary>
    public const int LossToHouse = 22;

    /// <summary>Calcium phosphate and calcite falling out or dissolving (water side).</summary>
    public const int Precipitation = 23;

    /// <summary>Pure oxygen from a backup, as far as it dissolves.</summary>
    public const int BackupOxygen = 24;

    /// <summary>Source water that the pad of the house evaporates or bleeds: it never meets the farm's water.</summary>
    public const int EvaporativePad = 25;

    /// <summary>Algae growing and dying (water side).</summary>
    public const int Algae = 26;

    /// <summary>Names, in the order of the constants.</summary>
    public static readonly string[] Names =
    [
        "source water", "feed", "fish delivered", "fish sold", "dead fish", "seed", "crop harvest", "crop compost", "denitrification",
        "dosing", "sludge compost", "spill", "iron lost", "air", "fish", "nitrification", "solids breakdown", "plant uptake",
        "evaporation", "transpiration", "water heaters", "gains", "loss to house", "precipitation", "backup oxygen", "evaporative pad", "algae",
    ];
}
