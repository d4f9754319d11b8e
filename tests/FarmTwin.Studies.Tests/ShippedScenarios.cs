using FarmTwin.Farm.Description;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Plans;

namespace FarmTwin.Studies.Tests;

/// <summary>The shipped scenarios as plans.</summary>
internal static class ShippedScenarios
{
    /// <summary>The folder of the checkout.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>A shipped scenario's file.</summary>
    public static string PathOf(string name) => Path.Combine(Root, "scenarios", name + ".json");

    /// <summary>A shipped scenario as a plan, cut to a number of days where given.</summary>
    public static FarmPlan Plan(string name, double? days = null)
    {
        Scenario<FarmDescription> scenario = ScenarioReader.Read<FarmDescription>(PathOf(name));
        FarmDescription farm = scenario.Value with { LengthDays = days ?? scenario.Value.LengthDays };
        return new FarmPlan(name, farm, scenario.Hash, ShippedLibrary.Library);
    }

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "FarmTwin.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("The tests do not run inside a checkout.");
    }
}
