using FarmTwin.Farm.Description;

namespace FarmTwin.Scenarios.Causes;

/// <summary>A cause and its three farms.</summary>
/// <param name="Card">Cause, signs, remedy.</param>
/// <param name="With">The farm with the cause.</param>
/// <param name="Without">The same farm without it: what the file extends.</param>
/// <param name="Remedied">The farm with the cause and the remedy; null where there is no remedy to try.</param>
public sealed record CauseScenario(
    CauseCard Card, Scenario<FarmDescription> With, Scenario<FarmDescription> Without, Scenario<FarmDescription>? Remedied);
