using FarmTwin.Farm.Description;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Equipment;

/// <summary>Farms on which something breaks.</summary>
internal static class FaultFarms
{
    public const long Day = UnitConstants.SecondsPerDay;
    public const long Hour = 3600;

    /// <summary>One closed tank with strong air, and fish that fast: nothing but them takes oxygen once the air is off.</summary>
    /// <param name="litres">Water.</param>
    /// <param name="oxygenGramsPerHour">What the fish shall breathe.</param>
    public static FarmDescription Tank(double litres, double oxygenGramsPerHour)
    {
        const double grams = 250;
        FarmDescription farm = BareFarm.Of(
            new Dictionary<string, BasinDescription>
            {
                ["tank"] = BareFarm.Closed(BasinUse.FishTank, litres, 27) with { AirLitresPerMinute = 600, DiffuserDepthMetres = 0.75 },
            },
            new Dictionary<string, PipeDescription>()) with
        {
            Feeding = Farms.FirstSeason.Feeding with { RationShare = 0 },
        };
        var fish = new Cohort("fish", 0, 1, grams, 0, 0);
        FishParameters species = FishParameters.From(ShippedLibrary.Library.Set("fish", "nile-tilapia"));
        double each = Metabolism.Preview(fish, species, 1, new FishWater(27, 7, 0, 0, 0, 0)).OxygenDemandGrams;
        return farm with
        {
            Stocking = new Dictionary<string, StockingDescription>
            {
                ["fish"] = Farms.FirstSeason.Stocking["first"] with
                {
                    Tank = "tank", Number = (int)Math.Round(oxygenGramsPerHour / each), MeanGrams = grams, AfterDays = 0, WaitForCycle = false,
                    SellFromGrams = 5000, RestockAfterDays = null,
                },
            },
        };
    }

    /// <summary>The shipped farm with all tanks stocked on day 0 into a third of a mature filter.</summary>
    public static FarmDescription Stocked(int number = 45, double grams = 250)
    {
        StockingDescription stock = Farms.FirstSeason.Stocking["first"] with
        {
            Number = number, MeanGrams = grams, AfterDays = 0, WaitForCycle = false, SellFromGrams = 5000, RestockAfterDays = null,
        };
        return Farms.FirstSeason with
        {
            FishlessStart = null,
            Filters = Farms.FirstSeason.Filters.With("beads", f => f with { MatureMediaShare = 0.3 }),
            Feeding = Farms.FirstSeason.Feeding with { SettleInDays = 0 },
            Stocking = new Dictionary<string, StockingDescription>
            {
                ["a"] = stock, ["b"] = stock with { Tank = "tank-2" }, ["c"] = stock with { Tank = "tank-3" },
            },
        };
    }

    public static FarmDescription With(this FarmDescription farm, string name, PlannedEvent planned) => farm with
    {
        Plan = farm.Plan.Append(new(name, planned)).ToDictionary(p => p.Key, p => p.Value, StringComparer.Ordinal),
    };

    public static FarmDescription WithBackup(this FarmDescription farm, string name, BackupDescription backup) => farm with
    {
        Backups = farm.Backups.Append(new(name, backup)).ToDictionary(p => p.Key, p => p.Value, StringComparer.Ordinal),
    };

    public static double Oxygen(this Season season, string basin) =>
        season.State.Basins.MilligramsPerLitre(season.Parts.BasinIndex(basin), Farm.Water.Substance.Oxygen);
}
