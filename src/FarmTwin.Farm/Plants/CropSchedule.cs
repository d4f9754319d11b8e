using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>A crop's plan by date: cells a sowing and boards a week, as stated or worked backwards from the heads wanted a week.</summary>
/// <remarks>Immutable.</remarks>
public sealed class CropSchedule
{
    private const double DaysPerWeek = 7;
    private const double LeastBedCelsius = 20;

    private readonly CropPlanDescription _plan;
    private readonly CropPlanChange[] _changes;
    private readonly FarmParts _parts;
    private readonly int _crop;
    private readonly int _holesPerBoard;

    /// <summary>Reads a plan.</summary>
    /// <param name="parts">The farm, with its crops, lanes and troughs.</param>
    /// <param name="crop">Index of the crop.</param>
    /// <exception cref="DescriptionException">Neither or both ways of stating the plan are used.</exception>
    public CropSchedule(FarmParts parts, int crop)
    {
        ArgumentNullException.ThrowIfNull(parts);
        _parts = parts;
        _crop = crop;
        _plan = parts.CropPlans[crop];
        _changes = [.. _plan.Changes.Values.OrderBy(c => c.FromDay)];
        Check(parts.CropNames[crop]);
        LaneDescription[] lanes = [.. parts.Farm.Lanes.Values.Where(l => l.Crop == Name || l.Changes.Values.Any(c => c.Crop == Name))];
        _holesPerBoard = lanes.Length > 0 ? lanes[0].HolesPerBoard : 1;
        Shares = Succession.Of(
            parts.Crops[crop], parts.Farm.Nursery is { } nursery ? nursery.GerminateAtCelsius ?? Math.Max(LeastBedCelsius, nursery.AtLeastCelsius) : LeastBedCelsius);
    }

    /// <summary>What remains from stage to stage.</summary>
    public Succession Shares { get; }

    /// <summary>Name of the crop.</summary>
    public string Name => _parts.CropNames[_crop];

    /// <summary>Whether anything is ever sown.</summary>
    public bool EverSows => StatesHeads || _plan.CellsPerSowing > 0 || _changes.Any(c => c.CellsPerSowing > 0);

    /// <summary>Whether the plan states heads a week, at least for a time.</summary>
    public bool StatesHeads => _plan.HeadsPerWeek > 0 || _changes.Any(c => c.HeadsPerWeek > 0);

    /// <summary>Cells to sow on a day.</summary>
    public int CellsAt(double day)
    {
        if (!StatesHeads)
        {
            return ChangeAt(day)?.CellsPerSowing ?? _plan.CellsPerSowing ?? 0;
        }

        // The heads are wanted when this sowing is ready; how long it stays on the lane hangs on how many are wanted then.
        double onLane = day + _plan.NurseryDays + _plan.TroughDays;
        return Shares.CellsPerSowing(HeadsAt(onLane + LaneDaysAt(onLane)), _plan.SowEveryDays);
    }

    /// <summary>Boards to harvest and plant a week on a day.</summary>
    public double BoardsAt(double day) => StatesHeads
        ? Shares.BoardsPerWeek(HeadsAt(day), _holesPerBoard)
        : ChangeAt(day)?.BoardsPerWeek ?? _plan.BoardsPerWeek ?? 0;

    /// <summary>Marketable heads a week that the boards of a day stand for.</summary>
    public double HeadsAt(double day) => StatesHeads
        ? ChangeAt(day)?.HeadsPerWeek ?? _plan.HeadsPerWeek ?? 0
        : BoardsAt(day) * _holesPerBoard * Shares.BoardToMarket;

    /// <summary>Holes of the lanes that are planted with the crop on a day.</summary>
    public double HolesAt(double day)
    {
        double holes = 0;
        for (int lane = 0; lane < _parts.Lanes.Length; lane++)
        {
            holes += _parts.LaneCropAt(lane, day) == _crop ? _parts.Lanes[lane].Boards * _parts.Lanes[lane].HolesPerBoard : 0;
        }

        return holes;
    }

    /// <summary>Days that a plant stays on its lane by Little's law, no less than the plan's least.</summary>
    public double LaneDaysAt(double day) => Math.Max(
        _plan.LeastLaneDays, HolesAt(day) is > 0 and var holes && BoardsAt(day) > 0 ? Succession.ResidenceDays(holes, BoardsAt(day) * _holesPerBoard) : 0);

    /// <summary>The stages on a day: what the plan needs of each, and what there is.</summary>
    public StageUse UseAt(double day)
    {
        double cells = CellsAt(day) * DaysPerWeek / _plan.SowEveryDays;
        double set = cells * Shares.Germinated * Shares.Kept;
        double planted = BoardsAt(day) * _holesPerBoard;
        double places = _parts.Farm.Troughs.Values.Sum(t => t.Shares.GetValueOrDefault(Name) * t.AreaSquareMetres * t.PlantsPerSquareMetre);
        return new StageUse(
            HeadsAt(day),
            CellsAt(day),
            BoardsAt(day),
            Succession.Standing(cells, _plan.NurseryDays),
            Succession.Standing(set, _plan.TroughDays),
            places,
            Succession.Standing(planted, _plan.LeastLaneDays),
            HolesAt(day),
            LaneDaysAt(day),
            cells * Shares.ToMarket);
    }

    /// <summary>Days on which the plan changes, the first included.</summary>
    public IEnumerable<double> Turns => _changes.Select(c => c.FromDay).Prepend(0).Distinct();

    private CropPlanChange? ChangeAt(double day)
    {
        CropPlanChange? latest = null;
        foreach (CropPlanChange change in _changes)
        {
            latest = change.FromDay <= day ? change : latest;
        }

        return latest;
    }

    private void Check(string name)
    {
        if (_parts.Crops[_crop].Fruit is not null)
        {
            return;
        }

        bool heads = _plan.HeadsPerWeek is not null;
        bool counts = _plan.CellsPerSowing is not null || _plan.BoardsPerWeek is not null;
        if (heads == counts || (counts && (_plan.CellsPerSowing is null || _plan.BoardsPerWeek is null)))
        {
            throw new DescriptionException(
                $"crops.{name}: state either 'headsPerWeek', or both 'sow' and 'boardsPerWeek' (or 'plantings' for a crop that bears fruit)" + (heads ? ", not all of them." : "."));
        }

        foreach ((string change, CropPlanChange value) in _plan.Changes)
        {
            if (heads ? value.HeadsPerWeek is null || value.CellsPerSowing is not null || value.BoardsPerWeek is not null : value.HeadsPerWeek is not null)
            {
                throw new DescriptionException(
                    $"crops.{name}.changes.{change}: the plan is stated " + (heads ? "as 'headsPerWeek'; state that and nothing else." : "as 'sow' and 'boardsPerWeek'; state those."));
            }
        }
    }
}

/// <summary>What a plan needs of the stages on a day.</summary>
/// <param name="HeadsPerWeek">Marketable heads a week that the boards stand for.</param>
/// <param name="CellsPerSowing">Cells a sowing.</param>
/// <param name="BoardsPerWeek">Boards harvested and planted a week.</param>
/// <param name="NurseryCells">Cells that stand in the nursery.</param>
/// <param name="TroughPlants">Plants that stand in the trough.</param>
/// <param name="TroughPlaces">Places reserved for the crop there.</param>
/// <param name="LanePlants">Plants that stand on the lanes at the least lane time.</param>
/// <param name="LaneHoles">Holes of the crop's lanes.</param>
/// <param name="LaneDays">Days that a plant really stays where the lanes are kept full.</param>
/// <param name="SownHeadsPerWeek">Marketable heads a week that the sowing stands for.</param>
public readonly record struct StageUse(
    double HeadsPerWeek,
    int CellsPerSowing,
    double BoardsPerWeek,
    double NurseryCells,
    double TroughPlants,
    double TroughPlaces,
    double LanePlants,
    double LaneHoles,
    double LaneDays,
    double SownHeadsPerWeek)
{
    /// <summary>Share of the trough's places that the plan needs; above 1 it cannot be kept.</summary>
    public double TroughShare => TroughPlants > 0 ? TroughPlants / TroughPlaces : 0;

    /// <summary>Share of the lanes' holes that the plan needs; above 1 boards go out before their least time.</summary>
    public double LaneShare => LanePlants > 0 ? LanePlants / LaneHoles : 0;
}
