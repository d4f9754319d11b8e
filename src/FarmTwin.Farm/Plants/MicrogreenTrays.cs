namespace FarmTwin.Farm.Plants;

/// <summary>Like trays of microgreens sown together on one tier: seed in the dark, then shoots in the light, cut when they have had their days.</summary>
/// <remarks>Mutable state of one season. The lot holds the shoots above the cut; what stays below it (husks, roots, seed that never came
/// up) is the mat, and goes to compost when the tray is cut.</remarks>
public sealed class MicrogreenTrays
{
    private SeedStage _seeds;
    private ElementGrams _mat;

    /// <summary>Sows trays.</summary>
    /// <param name="kind">Index of the kind.</param>
    /// <param name="crop">Index of its growth among all that grows.</param>
    /// <param name="tier">Tier, from 0.</param>
    /// <param name="trays">Whole trays.</param>
    /// <param name="areaSquareMetres">Area of all of them, m².</param>
    /// <param name="seedGrams">Seed as sold, g on all of them.</param>
    /// <param name="sownDay">Day of the season.</param>
    public MicrogreenTrays(int kind, int crop, int tier, int trays, double areaSquareMetres, double seedGrams, double sownDay)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(trays);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(areaSquareMetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(seedGrams);
        Kind = kind;
        Crop = crop;
        Tier = tier;
        Trays = trays;
        AreaSquareMetres = areaSquareMetres;
        SeedGrams = seedGrams;
        SownDay = sownDay;
    }

    /// <summary>Index of the kind.</summary>
    public int Kind { get; }

    /// <summary>Index of its growth among all that grows.</summary>
    public int Crop { get; }

    /// <summary>Tier, from 0.</summary>
    public int Tier { get; }

    /// <summary>Trays.</summary>
    public int Trays { get; }

    /// <summary>Area, m².</summary>
    public double AreaSquareMetres { get; }

    /// <summary>Seed sown, g.</summary>
    public double SeedGrams { get; }

    /// <summary>Day of sowing.</summary>
    public double SownDay { get; }

    /// <summary>Midnights that ended a day in the light with shoots up.</summary>
    public int LitDays { get; private set; }

    /// <summary>Whether the day that ended last was one of them.</summary>
    public bool IsLit { get; private set; }

    /// <summary>Whether the shoots are up.</summary>
    public bool IsUp { get; private set; }

    /// <summary>Whether somebody has looked how much came up.</summary>
    public bool IsCounted { get; set; }

    /// <summary>The seeds' progress.</summary>
    public SeedStage Seeds => _seeds;

    /// <summary>Shoots above the cut; empty before they are up.</summary>
    public PlantLot Lot { get; } = new();

    /// <summary>Elements below the cut, g.</summary>
    public ElementGrams Mat => _mat;

    /// <summary>Share of the seed that came up.</summary>
    public double GerminatedShare { get; private set; }

    /// <summary>Days since sowing.</summary>
    public double AgeDays(double day) => day - SownDay;

    /// <summary>Lets a day pass over the seed; when it comes up, shares its mass and elements between shoot and mat.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="meanCelsius">Mean temperature of the seed bed that day, °C.</param>
    /// <returns>True when it came up now: book <see cref="PlantLot.Pools"/> of the lot and <see cref="Mat"/> as the seeds' inflow.</returns>
    public bool AdvanceSeeds(MicrogreenParameters kind, double meanCelsius)
    {
        ArgumentNullException.ThrowIfNull(kind);
        if (IsUp)
        {
            return false;
        }

        _seeds.Advance(kind.Growth, meanCelsius);
        if (!_seeds.IsUp)
        {
            return false;
        }

        IsUp = true;
        GerminatedShare = _seeds.Share(kind.Growth);
        double dry = SeedGrams * kind.SeedDryMatter;
        double bearing = AreaSquareMetres * kind.BearingSeed(SeedGrams / AreaSquareMetres);
        Lot.Crop = Crop;
        Lot.SownDay = SownDay;
        Lot.AreaSquareMetres = AreaSquareMetres;
        Lot.Plants = bearing / kind.SeedGrams * GerminatedShare;
        Lot.DryGrams = bearing * GerminatedShare * kind.ShootShareOfSeed;
        Lot.Pools = kind.SeedElements * Lot.DryGrams;
        Lot.FromSeedDryGrams = Lot.DryGrams;
        Lot.FromSeedElements = Lot.Pools;
        _mat = kind.SeedElements * (dry - Lot.DryGrams);
        return true;
    }

    /// <summary>Ends a day before the seeds are looked at: a day in the light counts where shoots were up and uncovered.</summary>
    /// <param name="uncovered">Whether lamps shone on the tray.</param>
    public void EndDayInLight(bool uncovered)
    {
        IsLit = IsUp && uncovered;
        LitDays += IsLit ? 1 : 0;
    }

    /// <summary>An equal sowing that shares nothing with this one.</summary>
    public MicrogreenTrays Clone()
    {
        var copy = new MicrogreenTrays(Kind, Crop, Tier, Trays, AreaSquareMetres, SeedGrams, SownDay)
        {
            IsUp = IsUp,
            IsLit = IsLit,
            IsCounted = IsCounted,
            LitDays = LitDays,
            GerminatedShare = GerminatedShare,
            _seeds = _seeds,
            _mat = _mat,
        };
        copy.Lot.CopyFrom(Lot);
        return copy;
    }
}
