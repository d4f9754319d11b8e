using FarmTwin.Scenarios.Causes;

namespace FarmTwin.Studies.Causes;

/// <summary>What a sign read on the three farms.</summary>
/// <param name="Name">Its name in the file.</param>
/// <param name="Sign">The sign.</param>
/// <param name="Without">On the farm without the cause.</param>
/// <param name="With">On the farm with it.</param>
/// <param name="Remedied">On the farm with cause and remedy; null where no remedy was tried.</param>
/// <param name="FirstDay">First day on which a daily value lies beyond the limit with the cause; null where none does.</param>
public sealed record SignReading(string Name, CauseSign Sign, double Without, double With, double? Remedied, int? FirstDay)
{
    /// <summary>Whether it shows with the cause, not without it, and not with the remedy.</summary>
    public bool Holds => Sign.ShowsAt(With) && !Sign.ShowsAt(Without) && Remedied is { } remedied && !Sign.ShowsAt(remedied);
}
