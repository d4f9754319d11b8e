namespace FarmTwin.Farm.Business;

/// <summary>A piece of work that takes a person's time.</summary>
public enum Chore
{
    /// <summary>A seedling tray is sown.</summary>
    SowTray,

    /// <summary>A seedling is set, from tray to trough or from trough to board.</summary>
    TransplantPlant,

    /// <summary>A board is taken out or put in, and the lane pushed on.</summary>
    MoveBoard,

    /// <summary>A board is washed before it is planted again.</summary>
    CleanBoard,

    /// <summary>A head is cut, trimmed, washed and packed.</summary>
    HarvestHead,

    /// <summary>The packing place is cleaned after a harvest.</summary>
    CleanPacking,

    /// <summary>Crops are walked through for pests and deficiencies.</summary>
    ScoutCrops,

    /// <summary>Plants that stay for months are trained, pruned and layered.</summary>
    TrainPlant,

    /// <summary>Fruit is picked, graded and packed.</summary>
    PickFruit,

    /// <summary>A media bed is cleared of an old crop.</summary>
    ClearBed,

    /// <summary>A microgreen tray is sown.</summary>
    SowMicrogreens,

    /// <summary>A microgreen tray is cut and packed.</summary>
    CutMicrogreens,

    /// <summary>The fish of a tank are fed and watched.</summary>
    FeedTank,

    /// <summary>A delivery of fish is received.</summary>
    ReceiveFish,

    /// <summary>The fish of a tank are sample-weighed.</summary>
    WeighFish,

    /// <summary>A tank is graded.</summary>
    GradeFish,

    /// <summary>A tank is netted for sale.</summary>
    CatchFish,

    /// <summary>A fish is stunned, chilled, weighed and packed.</summary>
    HarvestFish,

    /// <summary>Fish in quarantine are looked over, and their water is tested.</summary>
    WatchQuarantine,

    /// <summary>Fish are netted from a tank, tempered and let into another.</summary>
    MoveFish,

    /// <summary>Fish are treated with salt and watched.</summary>
    TreatFish,

    /// <summary>All of the water is tested with a kit.</summary>
    TestWater,

    /// <summary>One quantity is tested for a dosing rule.</summary>
    ReadOne,

    /// <summary>A supplement is weighed out, dissolved and given.</summary>
    Dose,

    /// <summary>Hand meters are cleaned and checked against buffers.</summary>
    CheckMeters,

    /// <summary>A probe is cleaned and calibrated.</summary>
    CalibrateProbe,

    /// <summary>All alarms are tested.</summary>
    TestAlarms,

    /// <summary>Somebody who was called comes, sees to the alarm and goes home.</summary>
    AnswerAlarm,

    /// <summary>A bead filter is washed.</summary>
    WashFilter,

    /// <summary>The air of a mineralization tank is stopped, and the clear water decanted.</summary>
    Decant,

    /// <summary>A holding tank is emptied.</summary>
    EmptyHolding,

    /// <summary>Thick sludge is carried to compost.</summary>
    CarrySludge,

    /// <summary>A valve, a set-point or a shade is set.</summary>
    Adjust,

    /// <summary>Part of a basin's water is changed by hand.</summary>
    ChangeWater,

    /// <summary>The morning round: pumps, air, levels, leaks, temperatures.</summary>
    DailyRound,

    /// <summary>The weekly round: drains, screens, spares, backup.</summary>
    WeeklyRound,

    /// <summary>What broke is mended.</summary>
    Repair,

    /// <summary>Goods are driven to those who buy them.</summary>
    DeliverGoods,

    /// <summary>Orders, records and accounts.</summary>
    Office,
}

/// <summary>What a chore serves.</summary>
public enum WorkArea
{
    /// <summary>The plants, from seed to packed goods.</summary>
    Plants,

    /// <summary>The fish.</summary>
    Fish,

    /// <summary>Water and solids.</summary>
    Water,

    /// <summary>The farm as a whole.</summary>
    Rounds,

    /// <summary>Selling and accounts.</summary>
    Sales,
}
