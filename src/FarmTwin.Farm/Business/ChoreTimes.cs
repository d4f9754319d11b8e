using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Business;

/// <summary>How a chore is named, counted and grouped.</summary>
/// <param name="Chore">The chore.</param>
/// <param name="Key">Its name in the library and in every output.</param>
/// <param name="Unit">The unit of its time, minutes or seconds over what is counted.</param>
/// <param name="Area">What it serves.</param>
public sealed record ChoreKind(Chore Chore, string Key, string Unit, WorkArea Area);

/// <summary>Minutes of a person for every chore: data of the library, which a scenario may override.</summary>
/// <remarks>Immutable. A chore is booked where the work is done, with what was done counted in the chore's own unit.</remarks>
public sealed class ChoreTimes
{
    /// <summary>Every chore, in the order of <see cref="Chore"/>.</summary>
    public static readonly IReadOnlyList<ChoreKind> Kinds =
    [
        new(Chore.SowTray, "sowTray", "min/tray", WorkArea.Plants),
        new(Chore.TransplantPlant, "transplantPlant", "s/plant", WorkArea.Plants),
        new(Chore.MoveBoard, "moveBoard", "min/board", WorkArea.Plants),
        new(Chore.CleanBoard, "cleanBoard", "min/board", WorkArea.Plants),
        new(Chore.HarvestHead, "harvestHead", "s/head", WorkArea.Plants),
        new(Chore.CleanPacking, "cleanPacking", "min/day", WorkArea.Plants),
        new(Chore.ScoutCrops, "scoutCrops", "min/day", WorkArea.Plants),
        new(Chore.TrainPlant, "trainPlant", "min/plant", WorkArea.Plants),
        new(Chore.PickFruit, "pickFruit", "min/kg", WorkArea.Plants),
        new(Chore.ClearBed, "clearBed", "min/bed", WorkArea.Plants),
        new(Chore.SowMicrogreens, "sowMicrogreens", "min/tray", WorkArea.Plants),
        new(Chore.CutMicrogreens, "cutMicrogreens", "min/tray", WorkArea.Plants),
        new(Chore.FeedTank, "feedTank", "min/meal", WorkArea.Fish),
        new(Chore.ReceiveFish, "receiveFish", "min/delivery", WorkArea.Fish),
        new(Chore.WeighFish, "weighFish", "min/tank", WorkArea.Fish),
        new(Chore.GradeFish, "gradeFish", "min/tank", WorkArea.Fish),
        new(Chore.CatchFish, "catchFish", "min/tank", WorkArea.Fish),
        new(Chore.HarvestFish, "harvestFish", "min/fish", WorkArea.Fish),
        new(Chore.WatchQuarantine, "watchQuarantine", "min/day", WorkArea.Fish),
        new(Chore.MoveFish, "moveFish", "min/move", WorkArea.Fish),
        new(Chore.TreatFish, "treatFish", "min/treatment", WorkArea.Fish),
        new(Chore.TestWater, "testWater", "min/test", WorkArea.Water),
        new(Chore.ReadOne, "readOne", "min/test", WorkArea.Water),
        new(Chore.Dose, "dose", "min/dose", WorkArea.Water),
        new(Chore.CheckMeters, "checkMeters", "min/week", WorkArea.Water),
        new(Chore.CalibrateProbe, "calibrateProbe", "min/probe", WorkArea.Water),
        new(Chore.TestAlarms, "testAlarms", "min/test", WorkArea.Rounds),
        new(Chore.AnswerAlarm, "answerAlarm", "min/min", WorkArea.Rounds),
        new(Chore.WashFilter, "washFilter", "min/wash", WorkArea.Water),
        new(Chore.Decant, "decant", "min/decant", WorkArea.Water),
        new(Chore.EmptyHolding, "emptyHolding", "min/tank", WorkArea.Water),
        new(Chore.CarrySludge, "carrySludge", "min/trip", WorkArea.Water),
        new(Chore.Adjust, "adjust", "min/setting", WorkArea.Rounds),
        new(Chore.ChangeWater, "changeWater", "min/change", WorkArea.Water),
        new(Chore.DailyRound, "dailyRound", "min/day", WorkArea.Rounds),
        new(Chore.WeeklyRound, "weeklyRound", "min/week", WorkArea.Rounds),
        new(Chore.Repair, "repair", "min/min", WorkArea.Rounds),
        new(Chore.DeliverGoods, "deliverGoods", "min/trip", WorkArea.Sales),
        new(Chore.Office, "office", "min/week", WorkArea.Sales),
    ];

    private const double SecondsPerMinute = 60;

    private readonly double[] _minutes;

    private ChoreTimes(double[] minutes) => _minutes = minutes;

    /// <summary>Minutes of one unit of a chore.</summary>
    public double MinutesOf(Chore chore) => _minutes[(int)chore];

    /// <summary>Reads the times.</summary>
    /// <param name="set">The set <c>processes/labour</c>.</param>
    /// <exception cref="KeyNotFoundException">A chore is missing.</exception>
    /// <exception cref="ArgumentException">A chore is stated in another unit.</exception>
    public static ChoreTimes From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new ChoreTimes([.. Kinds.Select(k =>
            set.Get(k.Key, k.Unit) / (k.Unit.StartsWith("s/", StringComparison.Ordinal) ? SecondsPerMinute : 1))]);
    }
}
