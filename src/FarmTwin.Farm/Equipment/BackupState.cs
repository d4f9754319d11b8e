namespace FarmTwin.Farm.Equipment;

/// <summary>What a backup does.</summary>
public enum BackupPhase
{
    /// <summary>It stands by.</summary>
    Ready,

    /// <summary>It is about to carry its load.</summary>
    Starting,

    /// <summary>It carries its load.</summary>
    Running,

    /// <summary>It has nothing left.</summary>
    Empty,
}

/// <summary>Where a backup stands. A value: copied whole for a snapshot.</summary>
/// <param name="Phase">What it does.</param>
/// <param name="SinceSeconds">Since when, seconds of the season.</param>
/// <param name="UsedSeconds">Running time that it has spent of its charge, fuel or cylinder by then, s.</param>
/// <param name="Ordinal">Counts its changes, so that an event made for an earlier one is known to be void.</param>
/// <param name="RanHours">Hours that it has run in the season, to the last step.</param>
/// <param name="Starts">Times that it took the load.</param>
public readonly record struct BackupState(
    BackupPhase Phase, long SinceSeconds, double UsedSeconds, int Ordinal, double RanHours, int Starts)
{
    /// <summary>Full and standing by.</summary>
    public static BackupState Full => new(BackupPhase.Ready, 0, 0, 0, 0, 0);

    /// <summary>The same in another phase from now on.</summary>
    public BackupState To(BackupPhase phase, long seconds, double usedSeconds) =>
        this with { Phase = phase, SinceSeconds = seconds, UsedSeconds = usedSeconds, Ordinal = Ordinal + 1 };
}
