using FarmTwin.Scenarios.Causes;

namespace FarmTwin.Studies.Causes;

/// <summary>What the three farms of a cause showed.</summary>
/// <param name="Card">Cause, signs, remedy.</param>
/// <param name="Readings">A reading a sign, in the order of the file; none where the cause is out of reach.</param>
public sealed record CauseOutcome(CauseCard Card, IReadOnlyList<SignReading> Readings);
