using FarmTwin.Farm.Tests.Laws;

namespace FarmTwin.Farm.Tests.Validation;

/// <summary>The twin against the outside world, a test a line of docs/validation.md.</summary>
public sealed class ValidationTests
{
    private static readonly IReadOnlyList<ValidationCase> Cases =
        [.. new[] { WaterCases.All(), FilterCases.All(), FishCases.All(), PlantCases.All(), ClimateCases.All(), WholeFarmCases.All() }.SelectMany(l => l.Cases)];

    private static string PagePath => Path.Combine(Farms.Root, "docs", "validation.md");

    public static TheoryData<string> Claims => [.. Cases.Select(Name)];

    [Theory]
    [MemberData(nameof(Claims))]
    public void The_twin_stands_to_the_outside_world_as_the_page_says(string claim)
    {
        ValidationCase tested = Cases.Single(c => Name(c) == claim);
        Assert.True(double.IsFinite(tested.Value.Value));

        // A departure that has gone is good news, and the page must not go on saying otherwise.
        Assert.True(
            tested.Agrees == (tested.Standing != Standing.Gap), $"{tested.Value.Value} {tested.Unit}, for {tested.Expected} in {tested.Low} to {tested.High}: {tested.Standing}");
        Assert.True(tested.Source.Length > 3 && tested.Basis.Length > 3 && (tested.Standing != Standing.Gap || tested.Why.Length > 20));
    }

    [Fact]
    public void The_page_is_that_of_the_cases()
    {
        string notChecked = File.ReadAllText(Path.Combine(Farms.Root, "tests", "FarmTwin.Farm.Tests", "Validation", "not-checked.md"));
        string current = ValidationPage.Write(Cases, notChecked);
        if (Environment.GetEnvironmentVariable("FARMTWIN_UPDATE") == "1")
        {
            File.WriteAllText(PagePath, current);
        }

        Assert.True(File.Exists(PagePath) && File.ReadAllText(PagePath) == current, "docs/validation.md is not that of the cases; run this test with FARMTWIN_UPDATE=1 and read the difference.");
    }

    private static string Name(ValidationCase c) => $"{c.Subject}: {c.Claim}";
}
