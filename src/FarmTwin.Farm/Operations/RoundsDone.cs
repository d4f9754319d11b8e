namespace FarmTwin.Farm.Operations;

/// <summary>Days on which the work that comes by the calendar was last done; minus infinity before the first time. Copied for a snapshot.</summary>
public sealed class RoundsDone
{
    /// <summary>The kit test of the water.</summary>
    public double TestDay { get; set; } = double.NegativeInfinity;

    /// <summary>The weekly round.</summary>
    public double WeeklyDay { get; set; } = double.NegativeInfinity;

    /// <summary>The sample weighing.</summary>
    public double WeighDay { get; set; } = double.NegativeInfinity;

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(RoundsDone other)
    {
        ArgumentNullException.ThrowIfNull(other);
        TestDay = other.TestDay;
        WeeklyDay = other.WeeklyDay;
        WeighDay = other.WeighDay;
    }
}
