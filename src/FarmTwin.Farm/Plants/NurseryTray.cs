namespace FarmTwin.Farm.Plants;

/// <summary>A tray of cells in the nursery: seeds, then seedlings, ready for the trough at an age.</summary>
/// <remarks>Mutable state of one season. The lot is empty until the seeds are up; then it grows like any other lot.</remarks>
public sealed class NurseryTray
{
    private SeedStage _seeds;

    /// <summary>Sows a tray.</summary>
    /// <param name="crop">Index of the crop.</param>
    /// <param name="cells">Cells sown.</param>
    /// <param name="areaSquareMetres">Area of these cells, m².</param>
    /// <param name="sownDay">Day of the season.</param>
    /// <param name="tier">Tier, from 0.</param>
    public NurseryTray(int crop, double cells, double areaSquareMetres, double sownDay, int tier = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(cells);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(areaSquareMetres);
        Crop = crop;
        Cells = cells;
        AreaSquareMetres = areaSquareMetres;
        SownDay = sownDay;
        Tier = tier;
    }

    /// <summary>Index of the crop.</summary>
    public int Crop { get; private set; }

    /// <summary>Cells sown.</summary>
    public double Cells { get; private set; }

    /// <summary>Area of the cells, m².</summary>
    public double AreaSquareMetres { get; private set; }

    /// <summary>Day of sowing.</summary>
    public double SownDay { get; private set; }

    /// <summary>Tier, from 0.</summary>
    public int Tier { get; private set; }

    /// <summary>Whether the weak seedlings have been culled.</summary>
    public bool IsCulled { get; private set; }

    /// <summary>Whether somebody has looked how many came up.</summary>
    public bool IsCounted { get; set; }

    /// <summary>The seeds' progress.</summary>
    public SeedStage Seeds => _seeds;

    /// <summary>Whether the seedlings are up.</summary>
    public bool IsUp { get; private set; }

    /// <summary>The seedlings; empty before they are up and after they have been taken.</summary>
    public PlantLot Lot { get; } = new();

    /// <summary>Days since sowing.</summary>
    public double AgeDays(double day) => day - SownDay;

    /// <summary>Lets a day pass over the seeds; when they are up, fills the lot. Does nothing once they are up.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="meanCelsius">Mean temperature of the seed bed that day, °C.</param>
    /// <param name="germinationFactor">A draw around the mean share (1 for the mean); no more than every cell fills.</param>
    /// <param name="days">Length, d.</param>
    /// <returns>True when they came up now: book <see cref="PlantLot.Pools"/> and <see cref="PlantLot.WaterLitres"/> of
    /// <see cref="Lot"/> as the seeds' inflow.</returns>
    public bool AdvanceSeeds(CropParameters crop, double meanCelsius, double germinationFactor = 1, double days = 1)
    {
        if (IsUp)
        {
            return false;
        }

        _seeds.Advance(crop, meanCelsius, days);
        if (!_seeds.IsUp)
        {
            return false;
        }

        IsUp = true;
        double plants = Cells * Math.Clamp(_seeds.Share(crop) * germinationFactor, 0, 1);
        Lot.CopyFrom(PlantLot.FromSeed(Crop, crop, plants, AreaSquareMetres, SownDay));
        return true;
    }

    /// <summary>Takes out the weak seedlings with all they hold; the rest keep the tray's area.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="waste">Where they go: compost, or the mineralization tank.</param>
    /// <returns>Plants culled.</returns>
    public double Cull(CropParameters crop, PlantLot waste)
    {
        IsCulled = true;
        return Lot.MoveInto(waste, Lot.Plants * crop.NurseryCullShare, keepArea: true);
    }

    /// <summary>Makes this tray equal to another; allocates nothing.</summary>
    public void CopyFrom(NurseryTray other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Crop = other.Crop;
        Cells = other.Cells;
        AreaSquareMetres = other.AreaSquareMetres;
        SownDay = other.SownDay;
        Tier = other.Tier;
        IsCulled = other.IsCulled;
        IsCounted = other.IsCounted;
        IsUp = other.IsUp;
        _seeds = other._seeds;
        Lot.CopyFrom(other.Lot);
    }

    /// <summary>An equal tray that shares nothing with this one.</summary>
    public NurseryTray Clone()
    {
        var copy = new NurseryTray(Crop, Cells, AreaSquareMetres, SownDay);
        copy.CopyFrom(this);
        return copy;
    }
}
