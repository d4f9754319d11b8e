using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Schema;
using FarmTwin.Scenarios.Tests.Sample;

namespace FarmTwin.Scenarios.Tests.Shipped;

public class ShippedScenarioTests
{
    private const string UpdateVariable = "FARMTWIN_WRITE_SCHEMA";

    public static TheoryData<string> Names => [.. ShippedScenarios.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_shipped_scenario_reads_without_an_error_and_runs(string name)
    {
        Scenario<FarmDescription> scenario = ShippedScenarios.Read(ShippedScenarios.PathOf(name));
        Assert.NotEmpty(scenario.Value.Title);
        Assert.NotEmpty(scenario.Value.About);
        ShippedScenarios.RunSanely(scenario.Value, 5);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_resolves_reads_back_to_the_same_scenario(string name)
    {
        using var folder = new TemporaryFolder();
        Scenario<FarmDescription> scenario = ShippedScenarios.Read(ShippedScenarios.PathOf(name));
        Scenario<FarmDescription> again = ShippedScenarios.Read(folder.Write("resolved.json", scenario.Resolved.ToJson()));
        Assert.Equal(scenario.Hash, again.Hash);
    }

    [Fact]
    public void A_plan_states_only_what_differs_and_a_plan_of_a_plan_too()
    {
        using var folder = new TemporaryFolder();
        File.Copy(ShippedScenarios.PathOf("first-season.json"), Path.Combine(folder.Folder, "first-season.json"));
        folder.Write("late.json", """{ "extends": "first-season.json", "title": "Late", "coupling": { "notBefore": "120 d" }, "plan": { "shade-on": null } }""");
        string path = folder.Write("late-and-small.json", """{ "extends": "late.json", "stocking": { "third": null }, "filters": { "beads": { "beads": "25 gal" } } }""");
        Scenario<FarmDescription> plan = ShippedScenarios.Read(path);
        FarmDescription first = ShippedScenarios.Read(Path.Combine(folder.Folder, "first-season.json")).Value;
        Assert.Equal(["late-and-small.json", "late.json", "first-season.json"], plan.Files.Select(f => Path.GetFileName(f)));
        Assert.Equal("Late", plan.Value.Title);
        Assert.Equal(120, plan.Value.Coupling!.NotBeforeDay);
        Assert.Equal(first.Coupling!.FullFlowLitresPerHour, plan.Value.Coupling.FullFlowLitresPerHour);
        Assert.Equal(["first", "second"], plan.Value.Stocking.Keys);
        Assert.Equal(["shade-off"], plan.Value.Plan.Keys);
        Assert.Equal(25 * 3.785411784, plan.Value.Filters["beads"].BeadsLitres, 1e-9);
        Assert.Contains(plan.Resolved.Describe(), l => l.StartsWith("coupling.notBefore", StringComparison.Ordinal) && l.Contains("late.json", StringComparison.Ordinal));
        ShippedScenarios.RunSanely(plan.Value, 3);
    }

    [Fact]
    public void The_committed_schema_is_that_of_the_types()
    {
        string current = SchemaWriter.Write(typeof(FarmDescription));
        if (Environment.GetEnvironmentVariable(UpdateVariable) == "1")
        {
            File.WriteAllText(ShippedScenarios.SchemaPath, current);
        }

        Assert.True(
            File.Exists(ShippedScenarios.SchemaPath) && File.ReadAllText(ShippedScenarios.SchemaPath) == current,
            $"scenarios/scenario.schema.json is not that of the types; run this test with {UpdateVariable}=1 and commit the file.");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_shipped_scenario_names_the_schema_so_that_editors_complete_it(string name) =>
        Assert.Contains("\"$schema\": \"scenario.schema.json\"", File.ReadAllText(ShippedScenarios.PathOf(name)), StringComparison.Ordinal);
}
