using FarmTwin.Farm.Description;

namespace FarmTwin.Studies.Faults;

/// <summary>A fault to be tried: what breaks, at which hour, and who stays away.</summary>
/// <param name="Key">Its name in files ("blower-main"); unique in a study.</param>
/// <param name="Part">The part.</param>
/// <param name="What">What happens to it, in words.</param>
/// <param name="Fault">What breaks; its day and hour are those of <paramref name="Hour"/>.</param>
/// <param name="Hour">The hour at which it breaks.</param>
public sealed record FaultCase(string Key, string Part, string What, FaultEvent Fault, WorstHour Hour)
{
    /// <summary>How the farm differs from the plan in this case ("the alarm box is dead too"); the plan's own when null.</summary>
    public Func<FarmDescription, FarmDescription>? Change { get; init; }

    /// <summary>Hours during which nobody makes the morning round; 0 where it is made every day.</summary>
    public double UnattendedHours { get; init; }
}

/// <summary>An hour that is worse than others for a part to break.</summary>
/// <param name="Seconds">When, seconds of the season.</param>
/// <param name="Why">Why it is the worst, in words.</param>
public sealed record WorstHour(long Seconds, string Why);
