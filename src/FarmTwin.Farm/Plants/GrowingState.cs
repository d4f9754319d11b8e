using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>All plants of a farm and the light that they have had today.</summary>
/// <remarks>
/// Places are numbered: 0 is the nursery, then the troughs, the lanes, the media beds. Uptake of the day is kept as one share a basin and
/// nutrient, because all lots in a basin share one factor, and is put into the lots when they are moved or the day ends.
/// </remarks>
public sealed class GrowingState
{
    /// <summary>Makes empty places.</summary>
    public GrowingState(FarmParts parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        Troughs = [.. parts.Farm.Troughs.Values.Select(t => new TransplantTrough(
            1 / t.PlantsPerSquareMetre,
            [.. parts.CropNames.Select(c => t.Shares.GetValueOrDefault(c) * t.AreaSquareMetres * t.PlantsPerSquareMetre)]))];
        Lanes = [.. parts.Farm.Lanes.Values.Select(l => new RaftLane(l.Boards, l.HolesPerBoard, l.BoardSquareMetres))];
        Beds = [.. parts.Beds.Select(b => new MediaBed { SetHeightMetres = b.DepthMetres - b.WaterBelowAtPlantingMetres })];
        Fruit = [.. parts.Crops.Select(_ => new FruitTally())];
        TranspiredLitres = new double[parts.Basins.Length];
        int places = 1 + Troughs.Length + Lanes.Length + Beds.Length;
        Light = new DayLight[places * Math.Max(1, parts.Crops.Length)];
        TakenShare = new double[parts.Basins.Length * UptakeAmounts.Count];
        PassiveSodium = new double[parts.Basins.Length];
        PassiveChloride = new double[parts.Basins.Length];
        Nutrition = new NutritionState(parts.Crops.Length);
        Nursery = new NurseryState(parts);
        SaleableGrams = new double[parts.Crops.Length];
        Harvest = new HarvestTally(parts.Crops.Length);
        HotDegreeHours = new double[parts.Crops.Length];
        ColdDegreeHours = new double[parts.Crops.Length];
        ChillDegreeHours = new double[parts.Crops.Length];
        KilledByCold = new double[parts.Crops.Length];
        LaneEmptyDays = new double[Lanes.Length];
        LaneHasBegun = new bool[Lanes.Length];
        HeadsHarvested = new double[parts.Crops.Length];
        WasteDryGrams = new double[parts.Crops.Length];
        CellsSown = new double[parts.Crops.Length];
        BoardsOwed = new double[parts.Crops.Length];
        LastHeadGrams = new double[parts.Crops.Length];
        LastHeadAge = new double[parts.Crops.Length];
    }

    /// <summary>Trays of the nursery.</summary>
    public List<NurseryTray> Trays { get; } = [];

    /// <summary>The nursery beside its seedlings.</summary>
    public NurseryState Nursery { get; }

    /// <summary>Transplant troughs.</summary>
    public TransplantTrough[] Troughs { get; }

    /// <summary>Raft lanes.</summary>
    public RaftLane[] Lanes { get; }

    /// <summary>Media beds.</summary>
    public MediaBed[] Beds { get; }

    /// <summary>What became of the fruit, by crop; nothing for a leafy one.</summary>
    public FruitTally[] Fruit { get; }

    /// <summary>Transpired today, L by basin.</summary>
    public double[] TranspiredLitres { get; }

    /// <summary>Light of today, [place × crops + crop].</summary>
    public DayLight[] Light { get; }

    /// <summary>Share of today's planned uptake that was taken so far, [basin × channels + channel].</summary>
    public double[] TakenShare { get; }

    /// <summary>Sodium taken with transpired water and not yet put into the lots, g by basin.</summary>
    public double[] PassiveSodium { get; }

    /// <summary>Chloride taken with transpired water and not yet put into the lots, g by basin.</summary>
    public double[] PassiveChloride { get; }

    /// <summary>How well the crops are fed.</summary>
    public NutritionState Nutrition { get; }

    /// <summary>Heads harvested by crop.</summary>
    public double[] HeadsHarvested { get; }

    /// <summary>Fresh weight for sale as first grade, g by crop: heads, or fruit.</summary>
    public double[] SaleableGrams { get; }

    /// <summary>Heads harvested by crop, grade and reason.</summary>
    public HarvestTally Harvest { get; }

    /// <summary>Degree hours of today above each crop's heat limit, °C h.</summary>
    public double[] HotDegreeHours { get; }

    /// <summary>Degree hours of today below each crop's cold limit, °C h.</summary>
    public double[] ColdDegreeHours { get; }

    /// <summary>Degree hours of today below each crop's chill limit, °C h.</summary>
    public double[] ChillDegreeHours { get; }

    /// <summary>Coldest air of the house today, °C.</summary>
    public double ColdestCelsius { get; set; } = double.PositiveInfinity;

    /// <summary>Plants that frost or chill killed over the season, by crop.</summary>
    public double[] KilledByCold { get; }

    /// <summary>Vapour pressure deficit times sunny hours of today, kPa h.</summary>
    public double LitVapourDeficitHours { get; set; }

    /// <summary>Sunny hours of today.</summary>
    public double SunHours { get; set; }

    /// <summary>Days on which a lane stood without a board after its first one, by lane.</summary>
    public double[] LaneEmptyDays { get; }

    /// <summary>Whether a lane has had a board, by lane.</summary>
    public bool[] LaneHasBegun { get; }

    /// <summary>Dry matter of culls, losses, roots and unsaleable heads, g by crop.</summary>
    public double[] WasteDryGrams { get; }

    /// <summary>Cells sown by crop.</summary>
    public double[] CellsSown { get; }

    /// <summary>Boards that the plan is behind with, by crop.</summary>
    public double[] BoardsOwed { get; }

    /// <summary>Mean fresh weight of the heads last harvested, g by crop.</summary>
    public double[] LastHeadGrams { get; }

    /// <summary>Age of the heads last harvested, days from sowing by crop.</summary>
    public double[] LastHeadAge { get; }

    /// <summary>Whether plants were moved since the sums over the lots were made.</summary>
    public bool Changed { get; set; } = true;

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(GrowingState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Trays.Clear();
        foreach (NurseryTray tray in other.Trays)
        {
            Trays.Add(tray.Clone());
        }

        Nursery.CopyFrom(other.Nursery);
        for (int i = 0; i < Troughs.Length; i++)
        {
            Troughs[i].CopyFrom(other.Troughs[i]);
        }

        for (int i = 0; i < Lanes.Length; i++)
        {
            Lanes[i].CopyFrom(other.Lanes[i]);
        }

        for (int i = 0; i < Beds.Length; i++)
        {
            Beds[i].CopyFrom(other.Beds[i]);
        }

        for (int i = 0; i < Fruit.Length; i++)
        {
            Fruit[i] = other.Fruit[i].Clone();
        }

        other.TranspiredLitres.CopyTo(TranspiredLitres, 0);
        other.Light.CopyTo(Light, 0);
        other.TakenShare.CopyTo(TakenShare, 0);
        other.PassiveSodium.CopyTo(PassiveSodium, 0);
        other.PassiveChloride.CopyTo(PassiveChloride, 0);
        Nutrition.CopyFrom(other.Nutrition);
        other.HeadsHarvested.CopyTo(HeadsHarvested, 0);
        Harvest.CopyFrom(other.Harvest);
        other.SaleableGrams.CopyTo(SaleableGrams, 0);
        other.HotDegreeHours.CopyTo(HotDegreeHours, 0);
        other.ColdDegreeHours.CopyTo(ColdDegreeHours, 0);
        other.ChillDegreeHours.CopyTo(ChillDegreeHours, 0);
        ColdestCelsius = other.ColdestCelsius;
        other.KilledByCold.CopyTo(KilledByCold, 0);
        LitVapourDeficitHours = other.LitVapourDeficitHours;
        SunHours = other.SunHours;
        other.LaneEmptyDays.CopyTo(LaneEmptyDays, 0);
        other.LaneHasBegun.CopyTo(LaneHasBegun, 0);
        other.WasteDryGrams.CopyTo(WasteDryGrams, 0);
        other.CellsSown.CopyTo(CellsSown, 0);
        other.BoardsOwed.CopyTo(BoardsOwed, 0);
        other.LastHeadGrams.CopyTo(LastHeadGrams, 0);
        other.LastHeadAge.CopyTo(LastHeadAge, 0);
        Changed = true;
    }
}
