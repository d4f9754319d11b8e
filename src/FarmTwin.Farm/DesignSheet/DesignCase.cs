using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>What the groups of the sheet share: the farm, its bands, the plan of its fish, and the days that decide.</summary>
public sealed class DesignCase
{
    /// <summary>Prepares the sheet of a season that has not been run.</summary>
    /// <param name="season">The season, assembled.</param>
    /// <param name="library">The library.</param>
    public DesignCase(Season season, FarmLibrary library)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(library);
        Season = season;
        FarmLibrary own = library.With(season.Parts.Farm.Parameters);
        Bands = new DesignBands(own);
        Reading = SummaryBands.From(own);
        HoldCelsius = Parts.Heaters.Length > 0 ? Parts.Heaters[0].HoldCelsius : Bands.Get("unheatedFishWater", "°C");
        bool waits = Farm.FishlessStart is not null || Parts.Filters.Length > 0;
        CycledDay = !waits ? 0
            : Parts.Filters.Any(f => f.MatureMediaShare > 0) ? Bands.Get("cycledSeeded", "d") : Bands.Get("cycledUnseeded", "d");
        FairWater = new FishWater(HoldCelsius, Bands.Get("fairOxygen", "mg/L"), 0, 0, 0, 0);
        Fish = new FishPlan(Parts, FairWater, CycledDay);
        Busiest = Parts.Stocking.Length > 0 ? FishDay.Of(Parts, Fish.At(Fish.BusiestDay), FairWater) : default;
        Night = DesignNight.Of(this);
        Heat = new DesignHeat(this);
    }

    /// <summary>The season.</summary>
    public Season Season { get; }

    /// <summary>Its parts.</summary>
    public FarmParts Parts => Season.Parts;

    /// <summary>Its description.</summary>
    public FarmDescription Farm => Season.Parts.Farm;

    /// <summary>Its pipes, with the flows of the first hour: both loops apart, everything clean.</summary>
    public FlowNetwork Network => Season.Network;

    /// <summary>Bands and assumptions of the sheet.</summary>
    public DesignBands Bands { get; }

    /// <summary>Bands that a season is read against.</summary>
    public SummaryBands Reading { get; }

    /// <summary>Fish water that is held, °C.</summary>
    public double HoldCelsius { get; }

    /// <summary>Day on which the filter is taken to be ready.</summary>
    public double CycledDay { get; }

    /// <summary>The fair water in which fish are reckoned.</summary>
    public FishWater FairWater { get; }

    /// <summary>The plan of the fish.</summary>
    public FishPlan Fish { get; }

    /// <summary>All fish on the day on which most is fed.</summary>
    public FishDay Busiest { get; }

    /// <summary>The design night.</summary>
    public DesignNight Night { get; }

    /// <summary>Losses of house and water.</summary>
    public DesignHeat Heat { get; }

    /// <summary>Feed that the plan settles to, g/d.</summary>
    public double SteadyFeedGrams => Season.SteadyFeedGramsPerDay;

    /// <summary>The busiest day scaled to the steady feed: loads and supplies of the farm as it settles.</summary>
    public double SteadyShare => Busiest.FeedGrams > 0 ? SteadyFeedGrams / Busiest.FeedGrams : 0;

    /// <summary>First day of the part of the plan over which ordinary weeks and steady demands are averaged.</summary>
    public double SettledFrom => Farm.LengthDays * (1 - Bands.Get("settledShare", "1"));

    /// <summary>Whether there are fish in the plan.</summary>
    public bool HasFish => Parts.Stocking.Length > 0;

    /// <summary>Whether a basin belongs to the fish loop.</summary>
    public bool IsFishLoop(int basin) => LoopUses.Fish.Contains(Parts.Basins[basin].Use);

    /// <summary>Whether a basin belongs to the plant loop.</summary>
    public bool IsPlantLoop(int basin) => LoopUses.Plant.Contains(Parts.Basins[basin].Use);

    /// <summary>Basins of the fish loop.</summary>
    public IEnumerable<int> FishLoop => Enumerable.Range(0, Parts.Basins.Length).Where(IsFishLoop);

    /// <summary>Basins of the plant loop.</summary>
    public IEnumerable<int> PlantLoop => Enumerable.Range(0, Parts.Basins.Length).Where(IsPlantLoop);

    /// <summary>Tanks in which fish are planned.</summary>
    public IEnumerable<int> Tanks => Parts.Stocking.Select(s => Parts.BasinIndex(s.Tank)).Distinct().Order();

    /// <summary>Water heaters of the fish loop; those of a quarantine tank or a reservoir are not laid out here.</summary>
    public IEnumerable<int> LoopHeaters => Enumerable.Range(0, Parts.Heaters.Length).Where(h => IsFishLoop(Parts.HeaterBasin[h]));

    /// <summary>All water that circulates, L.</summary>
    public double WaterLitres => FishLoop.Concat(PlantLoop).Sum(b => Parts.Basins[b].VolumeLitres);

    /// <summary>Area of troughs, lanes and media beds, m².</summary>
    public double CropSquareMetres => Plants.CropArea.SquareMetres(Parts, _ => true);

    /// <summary>Top-up, L/d.</summary>
    public double TopUpLitresPerDay => Bands.Get("topUpShare", "1/d") * WaterLitres;

    /// <summary>The date of a day.</summary>
    public DateOnly DateOf(double day) => Farm.Start.AddDays((int)day);
}
