using System.Globalization;
using FarmTwin.Scenarios.Causes;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Causes;
using Xunit.Abstractions;

namespace FarmTwin.Studies.Tests.Causes;

/// <summary>Every cause shows its signs, the farm without it does not, and the remedy takes them away.</summary>
/// <remarks>The chains are practice told in the trade; expected signs and limits stand in the files, under <c>cause</c>.</remarks>
public class CauseTests(ITestOutputHelper output)
{
    private const int Chains = 36;
    private const int LeastInReach = 30;
    private static readonly CauseTrial Trial = new(ShippedLibrary.Library);

    public static TheoryData<string> Files => [.. CauseFiles.Names];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_cause_shows_its_signs_and_its_remedy_takes_them_away(string file)
    {
        CauseScenario scenario = CauseReader.Read(CauseFiles.PathOf(file));
        CauseOutcome outcome = Trial.Run(scenario);
        foreach (SignReading reading in outcome.Readings)
        {
            string told = string.Create(CultureInfo.InvariantCulture,
                $"{file}, {reading.Name}: with {reading.With:G4} (first on day {reading.FirstDay}), without {reading.Without:G4}, remedied {reading.Remedied:G4}; "
                + $"limit {(reading.Sign.Above is { } above ? $"above {above}" : $"below {reading.Sign.Below}")}");
            output.WriteLine(told);
            Assert.True(double.IsFinite(reading.With) && double.IsFinite(reading.Without) && double.IsFinite(reading.Remedied ?? double.NaN), told);
            Assert.True(reading.Holds, told);
        }
    }

    [Fact]
    public void The_page_of_causes_is_what_the_scenarios_show()
    {
        string page = CausesPage.Write([.. CauseFiles.Names.Select(n => (n, Trial.Run(CauseReader.Read(CauseFiles.PathOf(n)))))]);
        string path = Path.Combine(CauseFiles.Root, "docs", "causes.md");
        if (Environment.GetEnvironmentVariable("FARMTWIN_UPDATE") == "1")
        {
            File.WriteAllText(path, page);
        }

        Assert.Equal(File.ReadAllText(path), page);
    }

    [Fact]
    public void Every_chain_has_one_file_and_at_least_thirty_are_in_reach()
    {
        List<CauseCard> cards = [.. CauseFiles.Names.Select(n => CauseReader.Read(CauseFiles.PathOf(n)).Card)];
        Assert.Equal(Enumerable.Range(1, Chains), cards.Select(c => c.Chain).Order());
        int inReach = cards.Count(c => c.InReach);
        output.WriteLine($"{inReach} of {cards.Count} in reach");
        Assert.True(inReach >= LeastInReach, $"{inReach} in reach");
        Assert.All(cards.Where(c => !c.InReach), c => Assert.NotEmpty(c.Limits));
    }
}
