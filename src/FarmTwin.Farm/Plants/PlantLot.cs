namespace FarmTwin.Farm.Plants;

/// <summary>A group of like plants that stand together: a share of a tray, a lot in the trough, or a board.</summary>
/// <remarks>
/// Mutable state of one season; not thread safe. Everything is held for the whole lot in grams, so that splitting and joining
/// conserve it. The default is an empty lot. What is held: dry mass (shoot and root), the nutrient pools, and the sodium and
/// chloride that came with the water. The water in the tissue follows from dry mass (<see cref="WaterLitres"/>). Fruit hangs apart,
/// in cohorts with what they hold (<see cref="Fruit"/>).
/// </remarks>
public sealed class PlantLot
{
    /// <summary>Below this number of plants a remainder is rounding, and goes along with the last share.</summary>
    public const double NegligiblePlants = 1e-9;

    private ElementGrams _pools;

    /// <summary>Which crop: an index into the season's crops.</summary>
    public int Crop { get; set; }

    /// <summary>Number of living plants; a mean, so it need not be whole.</summary>
    public double Plants { get; set; }

    /// <summary>Day of the season on which they were sown.</summary>
    public double SownDay { get; set; }

    /// <summary>Growing area they stand on, m².</summary>
    public double AreaSquareMetres { get; set; }

    /// <summary>Dry mass of the lot without its fruit, shoot and root, g.</summary>
    public double DryGrams { get; set; }

    /// <summary>Elements held by the lot without its fruit, g.</summary>
    public ElementGrams Pools
    {
        get => _pools;
        set => _pools = value;
    }

    /// <summary>The fruit that hangs; null before any has set.</summary>
    public FruitLoad? Fruit { get; set; }

    /// <summary>All that the lot holds, fruit included, g.</summary>
    public ElementGrams Elements => Fruit is null ? _pools : _pools + Fruit.Elements;

    /// <summary>Whether the growing tips were taken off: no new fruit sets, what hangs takes the growth.</summary>
    public bool IsTopped { get; set; }

    /// <summary>Temperature sum since sowing above the crop's base, °C d; kept for fruiting crops only.</summary>
    public double DegreeDays { get; set; }

    /// <summary>Part of the dry mass that the seed brought, g: it has the seed's composition, not the target's; 0 for transplants.</summary>
    public double FromSeedDryGrams { get; set; }

    /// <summary>Elements that came with it, g.</summary>
    public ElementGrams FromSeedElements { get; set; }

    /// <summary>Dry mass the lot gained at the last midnight, g.</summary>
    public double LastGainGrams { get; set; }

    /// <summary>Dry mass it would gain tomorrow under today's light if no nutrient were short, g; the scale of its uptake.</summary>
    public double PotentialGainGrams { get; set; }

    /// <summary>Part of <see cref="LastGainGrams"/> that went to fruit, g.</summary>
    public double LastFruitGrams { get; set; }

    /// <summary>Part of <see cref="PotentialGainGrams"/> that would go to fruit, g.</summary>
    public double PotentialFruitGrams { get; set; }

    /// <summary>What it wants from the water tomorrow, g/d for the lot; set by <see cref="Uptake.PlanDay"/>.</summary>
    public UptakeAmounts Planned { get; set; }

    /// <summary>What held growth back at the last midnight.</summary>
    public GrowthStress LastStress { get; set; } = GrowthStress.None;

    /// <summary>Times it was cut and left to grow again.</summary>
    public int Cuts { get; set; }

    /// <summary>Day of the last of these cuts.</summary>
    public double LastCutDay { get; set; }

    /// <summary>What weather has done to it so far.</summary>
    public PlantDamage Damage { get; set; }

    /// <summary>Dry mass of one plant, g; setting it sets the lot's dry mass.</summary>
    public double GramsDryPerPlant
    {
        get => Plants > 0 ? DryGrams / Plants : 0;
        set => DryGrams = value * Plants;
    }

    /// <summary>Plants per square metre; 0 where there is no area.</summary>
    public double PlantsPerSquareMetre => AreaSquareMetres > 0 ? Plants / AreaSquareMetres : 0;

    /// <summary>Whether no plant is left.</summary>
    public bool IsEmpty => Plants <= 0;

    /// <summary>Days since sowing.</summary>
    public double AgeDays(double day) => day - SownDay;

    /// <summary>Fresh mass of the shoots, g for the lot.</summary>
    public double FreshShootGrams(CropParameters crop) => DryGrams * (1 - crop.RootShare) / crop.DryMatterContent;

    /// <summary>Fresh mass of one shoot, g.</summary>
    public double FreshShootGramsPerPlant(CropParameters crop) => Plants > 0 ? FreshShootGrams(crop) / Plants : 0;

    /// <summary>Water in the lot, L: fresh mass less dry mass, roots at the shoot's dry-matter content; fruit included.</summary>
    public double WaterLitres(CropParameters crop) => Growth.TissueWaterLitres(crop, DryGrams)
        + (Fruit is null || crop.Fruit is null ? 0 : crop.Fruit.WaterLitres(Fruit.DryGrams));

    /// <summary>Grams of an element that tissue of a dry mass should hold: what came with the seed, and the target's content of the rest.</summary>
    public double TargetGrams(int element, double contentGramsPerGram, double dryGrams) =>
        (contentGramsPerGram * (dryGrams - FromSeedDryGrams)) + FromSeedElements[element];

    /// <summary>The part of the pools that leaves with the plug when the shoot is cut, g.</summary>
    public ElementGrams RootElements(CropParameters crop) => _pools * crop.RootShare;

    /// <summary>Leaf area over growing area, m²/m², under the crop's cap.</summary>
    public double LeafAreaIndex(CropParameters crop) => AreaSquareMetres > 0
        ? Math.Min(crop.LeafAreaIndexCap, crop.LeafAreaSquareMetresPerGram * DryGrams / AreaSquareMetres)
        : 0;

    /// <summary>Adds what was really taken through the roots.</summary>
    /// <param name="taken">Grams by channel, each at least 0.</param>
    public void Take(in UptakeAmounts taken) => _pools = new ElementGrams(
        _pools.Nitrogen + taken.Ammonium + taken.Nitrate,
        _pools.Phosphorus + taken.Phosphorus,
        _pools.Potassium + taken.Potassium,
        _pools.Calcium + taken.Calcium,
        _pools.Magnesium + taken.Magnesium,
        _pools.Sodium,
        _pools.Chloride,
        _pools.Sulfur + taken.Sulfur,
        _pools.Iron + taken.Iron);

    /// <summary>Adds one channel of what was really taken, g.</summary>
    public void Take(UptakeChannel channel, double grams)
    {
        int element = Uptake.ElementOf(channel);
        _pools[element] += grams;
    }

    /// <summary>Adds sodium and chloride that came with the water, g.</summary>
    public void TakePassive(double sodiumGrams, double chlorideGrams)
    {
        _pools.Sodium += sodiumGrams;
        _pools.Chloride += chlorideGrams;
    }

    /// <summary>Cuts off a part of the tissue with the elements it holds; the plants stay.</summary>
    /// <param name="dryGrams">Dry mass to cut, at most what there is, g.</param>
    /// <returns>The elements in it, g.</returns>
    public ElementGrams Prune(double dryGrams)
    {
        double share = DryGrams > 0 ? Math.Clamp(dryGrams / DryGrams, 0, 1) : 0;
        ElementGrams cut = _pools * share;
        _pools -= cut;
        DryGrams -= DryGrams * share;
        return cut;
    }

    /// <summary>Moves plants into another lot, with their share of everything; joins it to what stands there.</summary>
    /// <param name="other">Where they go; empty, or of the same crop.</param>
    /// <param name="plants">How many; all if at least as many as there are.</param>
    /// <param name="keepArea">True where the place stays (deaths on a board): the area does not go along.</param>
    /// <returns>How many were moved.</returns>
    /// <exception cref="ArgumentException">The other lot is of another crop.</exception>
    public double MoveInto(PlantLot other, double plants, bool keepArea = false)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!other.IsEmpty && other.Crop != Crop)
        {
            throw new ArgumentException("Plants of two crops cannot join in one lot.", nameof(other));
        }

        if (!(plants > 0) || IsEmpty || ReferenceEquals(this, other))
        {
            return 0;
        }

        bool all = plants >= Plants - NegligiblePlants;
        double share = all ? 1 : plants / Plants;
        double moved = all ? Plants : plants;
        double weight = other.IsEmpty ? 1 : moved / (moved + other.Plants);
        other.Crop = Crop;
        other.SownDay = other.IsEmpty ? SownDay : other.SownDay + ((SownDay - other.SownDay) * weight);
        other.DegreeDays = other.IsEmpty ? DegreeDays : other.DegreeDays + ((DegreeDays - other.DegreeDays) * weight);
        other.LastStress = weight >= 0.5 ? LastStress : other.LastStress;
        (other.Cuts, other.LastCutDay) = other.IsEmpty ? (Cuts, LastCutDay) : (other.Cuts, other.LastCutDay);
        other.Damage = other.IsEmpty ? Damage : other.Damage.Joined(Damage, weight);
        other.Plants += moved;
        other.AreaSquareMetres += keepArea ? 0 : AreaSquareMetres * share;
        other.DryGrams += DryGrams * share;
        other._pools += _pools * share;
        other.FromSeedDryGrams += FromSeedDryGrams * share;
        other.FromSeedElements += FromSeedElements * share;
        other.LastGainGrams += LastGainGrams * share;
        other.PotentialGainGrams += PotentialGainGrams * share;
        other.LastFruitGrams += LastFruitGrams * share;
        other.PotentialFruitGrams += PotentialFruitGrams * share;
        other.Planned += Planned * share;
        if (Fruit is not null)
        {
            Fruit.MoveShare(other.Fruit ??= new FruitLoad(), share);
        }

        if (all)
        {
            double area = AreaSquareMetres;
            Clear();
            AreaSquareMetres = keepArea ? area : 0;
            return moved;
        }

        Plants -= moved;
        AreaSquareMetres -= keepArea ? 0 : AreaSquareMetres * share;
        DryGrams -= DryGrams * share;
        _pools -= _pools * share;
        FromSeedDryGrams -= FromSeedDryGrams * share;
        FromSeedElements -= FromSeedElements * share;
        LastGainGrams -= LastGainGrams * share;
        PotentialGainGrams -= PotentialGainGrams * share;
        LastFruitGrams -= LastFruitGrams * share;
        PotentialFruitGrams -= PotentialFruitGrams * share;
        Planned += Planned * -share;
        return moved;
    }

    /// <summary>Cuts a share of the shoot off; the plants stay and grow again. Roots die back in proportion and go with the cut.</summary>
    /// <param name="other">Where the cut goes, a bunch a plant; empty, or of the same crop.</param>
    /// <param name="share">Share taken, 0 to below 1.</param>
    /// <param name="day">Today.</param>
    public void CutInto(PlantLot other, double share, double day)
    {
        ArgumentNullException.ThrowIfNull(other);
        PlantLot cut = Clone();
        cut.DryGrams = DryGrams * share;
        cut._pools = _pools * share;
        cut.FromSeedDryGrams = FromSeedDryGrams * share;
        cut.FromSeedElements = FromSeedElements * share;
        cut.Planned = default;
        cut.AreaSquareMetres = 0;
        DryGrams -= cut.DryGrams;
        _pools -= cut._pools;
        FromSeedDryGrams -= cut.FromSeedDryGrams;
        FromSeedElements -= cut.FromSeedElements;
        PotentialGainGrams *= 1 - share;
        Planned += Planned * -share;
        Cuts++;
        LastCutDay = day;
        cut.MoveInto(other, cut.Plants);
    }

    /// <summary>Empties the lot. What it held is gone: move it first if it must be booked.</summary>
    public void Clear()
    {
        Plants = 0;
        SownDay = 0;
        AreaSquareMetres = 0;
        DryGrams = 0;
        _pools = default;
        FromSeedDryGrams = 0;
        FromSeedElements = default;
        LastGainGrams = 0;
        PotentialGainGrams = 0;
        LastFruitGrams = 0;
        PotentialFruitGrams = 0;
        DegreeDays = 0;
        IsTopped = false;
        Fruit?.Clear();
        Planned = default;
        LastStress = GrowthStress.None;
        Damage = default;
        Cuts = 0;
        LastCutDay = 0;
    }

    /// <summary>Makes this lot equal to another; allocates nothing.</summary>
    public void CopyFrom(PlantLot other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Crop = other.Crop;
        Plants = other.Plants;
        SownDay = other.SownDay;
        AreaSquareMetres = other.AreaSquareMetres;
        DryGrams = other.DryGrams;
        _pools = other._pools;
        FromSeedDryGrams = other.FromSeedDryGrams;
        FromSeedElements = other.FromSeedElements;
        LastGainGrams = other.LastGainGrams;
        PotentialGainGrams = other.PotentialGainGrams;
        LastFruitGrams = other.LastFruitGrams;
        PotentialFruitGrams = other.PotentialFruitGrams;
        DegreeDays = other.DegreeDays;
        IsTopped = other.IsTopped;
        if (other.Fruit is not null)
        {
            (Fruit ??= new FruitLoad()).CopyFrom(other.Fruit);
        }
        else
        {
            Fruit?.Clear();
        }

        Planned = other.Planned;
        LastStress = other.LastStress;
        Damage = other.Damage;
        Cuts = other.Cuts;
        LastCutDay = other.LastCutDay;
    }

    /// <summary>An equal lot that shares nothing with this one.</summary>
    public PlantLot Clone()
    {
        var copy = new PlantLot();
        copy.CopyFrom(this);
        return copy;
    }

    /// <summary>Seedlings at emergence: what a seed brings, with the tissue's composition. The caller books it as inflow
    /// (<see cref="Pools"/> and <see cref="WaterLitres"/>).</summary>
    /// <param name="crop">Index of the crop.</param>
    /// <param name="parameters">The crop.</param>
    /// <param name="plants">Number of seedlings.</param>
    /// <param name="areaSquareMetres">Area they stand on, m².</param>
    /// <param name="sownDay">Day of sowing.</param>
    public static PlantLot FromSeed(int crop, CropParameters parameters, double plants, double areaSquareMetres, double sownDay)
    {
        double dry = plants * parameters.SeedlingDryGrams;
        return new PlantLot
        {
            Crop = crop,
            Plants = plants,
            SownDay = sownDay,
            AreaSquareMetres = areaSquareMetres,
            DryGrams = dry,
            Pools = parameters.TissueGramsPerGramDry * dry,

            // No day has passed that could tell what tomorrow brings: the seedling's first demand is that of growth at its ceiling.
            PotentialGainGrams = dry * (Math.Exp(parameters.RelativeGrowthRateMaximumPerDay) - 1),
        };
    }
}
