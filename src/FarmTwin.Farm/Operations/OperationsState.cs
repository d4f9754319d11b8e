using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Where the work of the farm stands: start-up, deliveries, valves, doses. Copied whole for a snapshot.</summary>
public sealed class OperationsState
{
    /// <summary>Makes the state of a farm on which nothing has been done.</summary>
    public OperationsState(FarmParts parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        RationShare = parts.Farm.Feeding.RationShare;
        Delivered = new int[parts.Stocking.Length];
        DueDay = new double[parts.Stocking.Length];
        Array.Fill(DueDay, double.NaN);
        DosingTurn = new int[parts.Farm.Dosing.Count];
        DosedGrams = new double[parts.Supplements.Count];
        HeaterUnits = new double[parts.Heaters.Length];
        HeaterMegajoules = new double[parts.Heaters.Length];
        FeedGrams = new double[parts.FeedNames.Length];
    }

    /// <summary>Share of the appetite that is offered.</summary>
    public double RationShare { get; set; }

    /// <summary>How often each batch was delivered.</summary>
    public int[] Delivered { get; }

    /// <summary>Day on which each batch is due; not a number while nothing is due.</summary>
    public double[] DueDay { get; }

    /// <summary>Day of the last delivery of fish; not a number before.</summary>
    public double LastDeliveryDay { get; set; } = double.NaN;

    /// <summary>Days from the delivery of the fish that were sold first to their sale, quarantine and all; not a number before.</summary>
    public double FirstSoldAfterDays { get; set; } = double.NaN;

    /// <summary>Day on which the filter counted as cycled; not a number before.</summary>
    public double CycledDay { get; set; } = double.NaN;

    /// <summary>Challenges passed on end.</summary>
    public int ChallengesPassed { get; set; }

    /// <summary>Whether a challenge was dosed a day ago.</summary>
    public bool ChallengeRuns { get; set; }

    /// <summary>Days on end with low TAN and nitrite while fish are fed.</summary>
    public double QuietFeedDays { get; set; }

    /// <summary>Days since fish were first fed.</summary>
    public double FedDays { get; set; }

    /// <summary>Days on end on which water and feed gates of the coupling held.</summary>
    public double GateDays { get; set; }

    /// <summary>Days on end without unexplained deaths.</summary>
    public double DaysWithoutDeaths { get; set; }

    /// <summary>The gates that held the valves back at the last look.</summary>
    public CouplingGates Refused { get; set; }

    /// <summary>Days that each gate alone or with others held back, counted from the first day on which fish were fed.</summary>
    public int[] DaysRefused { get; } = new int[CouplingGateNames.Count];

    /// <summary>Step of the ramp; −1 while the valves are closed.</summary>
    public int RampStep { get; set; } = -1;

    /// <summary>Day on which the valves were first opened; not a number before.</summary>
    public double OpenedDay { get; set; } = double.NaN;

    /// <summary>Day from which the loops were fully coupled; not a number before.</summary>
    public double CoupledDay { get; set; } = double.NaN;

    /// <summary>Times that the ramp was broken off.</summary>
    public int RampAborts { get; set; }

    /// <summary>Whether the ramp runs again after an alarm had closed the valve.</summary>
    public bool RampsAgain { get; set; }

    /// <summary>Day on which a broken-off ramp may go on.</summary>
    public double RampResumeDay { get; set; }

    /// <summary>Warmest fish water a day ago, °C, against which the ramp's cooling is judged.</summary>
    public double FishCelsiusYesterday { get; set; } = double.NaN;

    /// <summary>Heat that the water heaters had given by the last morning, MJ.</summary>
    public double HeaterMegajoulesMark { get; set; }

    /// <summary>Next supplement in turn of each dosing rule.</summary>
    public int[] DosingTurn { get; }

    /// <summary>Grams dosed of each supplement, in the order of the library.</summary>
    public double[] DosedGrams { get; }

    /// <summary>Fuel that each water heater took, in the sale unit of its fuel.</summary>
    public double[] HeaterUnits { get; }

    /// <summary>Feed offered of each kind, g.</summary>
    public double[] FeedGrams { get; }

    /// <summary>Heat that each water heater has given, MJ.</summary>
    public double[] HeaterMegajoules { get; }

    /// <summary>Until when the clock goes by the minute, seconds.</summary>
    public long FineUntilSeconds { get; set; }

    /// <summary>When the work that comes by the calendar was last done.</summary>
    public RoundsDone Rounds { get; } = new();

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(OperationsState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        RationShare = other.RationShare;
        other.Delivered.CopyTo(Delivered, 0);
        other.DueDay.CopyTo(DueDay, 0);
        LastDeliveryDay = other.LastDeliveryDay;
        FirstSoldAfterDays = other.FirstSoldAfterDays;
        Rounds.CopyFrom(other.Rounds);
        CycledDay = other.CycledDay;
        ChallengesPassed = other.ChallengesPassed;
        ChallengeRuns = other.ChallengeRuns;
        QuietFeedDays = other.QuietFeedDays;
        FedDays = other.FedDays;
        GateDays = other.GateDays;
        DaysWithoutDeaths = other.DaysWithoutDeaths;
        Refused = other.Refused;
        other.DaysRefused.CopyTo(DaysRefused, 0);
        RampStep = other.RampStep;
        OpenedDay = other.OpenedDay;
        CoupledDay = other.CoupledDay;
        RampAborts = other.RampAborts;
        RampsAgain = other.RampsAgain;
        RampResumeDay = other.RampResumeDay;
        FishCelsiusYesterday = other.FishCelsiusYesterday;
        HeaterMegajoulesMark = other.HeaterMegajoulesMark;
        other.DosingTurn.CopyTo(DosingTurn, 0);
        other.DosedGrams.CopyTo(DosedGrams, 0);
        other.FeedGrams.CopyTo(FeedGrams, 0);
        other.HeaterUnits.CopyTo(HeaterUnits, 0);
        other.HeaterMegajoules.CopyTo(HeaterMegajoules, 0);
        FineUntilSeconds = other.FineUntilSeconds;
    }
}
