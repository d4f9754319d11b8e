using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using FarmTwin.Scenarios.StudyFiles;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Sensitivity;

namespace FarmTwin.Studies.Tests.Sensitivity;

public sealed class StudyTests : IDisposable
{
    private static readonly string[] Figures = [.. Headlines.All.Select(h => h.Key)];
    private readonly string _folder = Directory.CreateTempSubdirectory("farmtwin-study").FullName;

    public static TheoryData<string> Shipped => [.. Directory.EnumerateFiles(Path.Combine(ShippedScenarios.Root, "studies"), "*.json").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Shipped))]
    public void A_shipped_study_is_read_without_an_error(string name)
    {
        Study study = StudyReader.Read(Path.Combine(ShippedScenarios.Root, "studies", name + ".json"), Figures);
        Assert.NotEmpty(study.Question);
        Assert.NotEmpty(study.Factors);
    }

    [Fact]
    public void Every_combination_is_a_plan_and_what_is_varied_moves_the_farm()
    {
        StudyResult result = Play("""
            { "base": "BASE", "replicates": 2, "lookAt": ["fish_fed_kg"],
              "vary": { "fish": { "input": ["stocking.first.number"], "values": [20, 45] },
                        "water": { "options": { "cool": { "waterHeaters": { "water": { "hold": "24 °C" } } }, "warm": {} } } } }
            """);
        Assert.Equal(["fish 20, water cool", "fish 20, water warm", "fish 45, water cool", "fish 45, water warm"], result.Batch.Batch.Plans.Select(p => p.Name));
        Assert.Equal([20, 20, 45, 45], result.Batch.Batch.Plans.Select(p => p.Farm.Stocking["first"].Number));
        Assert.Equal([24, 27, 24, 27], result.Batch.Batch.Plans.Select(p => p.Farm.WaterHeaters["water"].HoldCelsius));
        Driver fish = result.Drivers.Single(d => d.Name == "fish");
        Assert.True(fish.Correlations[0] > 0.5);
        Assert.True(result.ValuesAt(0, 1, result.LookAt[0]).Average() > 1.5 * result.ValuesAt(0, 0, result.LookAt[0]).Average());
        Assert.DoesNotContain(result.Drivers, d => d.IsUnknown);
    }

    [Fact]
    public void What_nobody_knows_is_ranked_from_twenty_replicates_on()
    {
        StudyResult result = Play("""
            { "base": "BASE", "replicates": 20, "lookAt": ["fish_fed_kg"], "vary": { "fish": { "input": ["stocking.first.number"], "values": [45] } } }
            """);
        Driver growth = result.Drivers.Where(d => d.IsUnknown).MaxBy(d => Math.Abs(d.Correlations[0]))!;
        Assert.Equal("fish/nile-tilapia/growthCoefficient", growth.Name);
        Assert.True(growth.Correlations[0] > 0.6);
    }

    [Fact]
    public void A_parameter_is_varied_over_the_range_that_the_library_states()
    {
        StudyResult result = Play("""
            { "base": "BASE", "replicates": 1, "design": "morris", "points": 2, "lookAt": ["crops_kg"],
              "vary": { "site": { "parameter": "processes/plants/siteFactor" }, "beads": { "input": "filters.beads.beads", "from": "80 L", "to": "140 L" } } }
            """);
        Assert.Equal(6, result.Shares.Count);
        double[] site = [.. result.Batch.Batch.Plans.Select(p => p.Farm.Parameters["processes/plants/siteFactor"])];
        Assert.All(site, s => Assert.InRange(s, 0.6, 1.0));
        Assert.True(result.Effects[0][0].MeanSize > result.Effects[0][1].MeanSize);
        Assert.DoesNotContain(result.Drivers, d => d.IsUnknown && d.Name == "processes/plants/siteFactor");
    }

    [Fact]
    public void What_is_wrong_with_a_study_is_said_at_once_with_its_places()
    {
        string path = Write("""
            { "base": "BASE", "replicates": 0, "desing": "all", "lookAt": ["margins"],
              "vary": { "fish": { "input": "stocking.first.numbr", "values": [20] },
                        "site": { "parameter": "processes/plants/siteFaktor" },
                        "range": { "input": "filters.beads.beads", "from": "80 L", "to": "140 gal" } } }
            """);
        ScenarioException wrong = Assert.Throws<ScenarioException>(() => StudyReader.Read(path, Figures));
        string all = wrong.Message;
        Assert.Contains("\"replicates\" is 0", all, StringComparison.Ordinal);
        Assert.Contains("desing", all, StringComparison.Ordinal);
        Assert.Contains("margin", all, StringComparison.Ordinal);
        Assert.Contains("siteFactor", all, StringComparison.Ordinal);
        Assert.Contains("one unit", all, StringComparison.Ordinal);
        Assert.All(wrong.Errors, e => Assert.True(e.Line > 0));
        string other = Write("""
            { "base": "BASE",
              "vary": { "fish": { "input": "stocking.first.numbr", "values": [20, "many"] } } }
            """);
        ScenarioException unknown = Assert.Throws<ScenarioException>(() => StudyReader.Read(other, Figures));
        Assert.Contains(unknown.Errors, e => e.File == other && e.Line == 2 && e.Problem.Contains("numbr", StringComparison.Ordinal));
    }

    [Fact]
    public void A_study_goes_on_where_it_was_stopped_and_is_the_same_with_more_threads()
    {
        const string Text = """
            { "base": "BASE", "replicates": 2, "lookAt": ["fish_fed_kg"], "vary": { "fish": { "input": ["stocking.first.number"], "values": [20, 45] } } }
            """;
        StudyResult one = Play(Text, 1, "one");
        StudyResult two = Play(Text, 2, "two");
        StudyResult again = Play(Text, 2, "two");
        Assert.Equal(Told(one), Told(two));
        Assert.Equal(Told(one), Told(again));
    }

    private static string Told(StudyResult result) =>
        string.Join('\n', result.Batch.Batch.Runs.Select((_, i) => string.Join(' ', result.Batch.FiguresOf(i))))
        + string.Join('\n', result.Drivers.Select(d => $"{d.Name} {string.Join(' ', d.Correlations)}")) + string.Join(' ', result.WeatherAlone);

    private StudyResult Play(string text, int threads = 2, string folder = "study")
    {
        Study study = StudyReader.Read(Write(text), Figures);
        using var runner = new StudyRunner(ShippedLibrary.Library, "test");
        return runner.Run(study, Path.Combine(_folder, folder), study.Replicates, threads);
    }

    private string Write(string text)
    {
        string basis = Path.Combine(_folder, "base.json");
        File.WriteAllText(basis, $"{{ \"extends\": \"{ShippedScenarios.PathOf("first-season").Replace('\\', '/')}\", \"length\": \"60 days\" }}");
        string path = Path.Combine(_folder, $"study{Directory.GetFiles(_folder).Length}.json");
        File.WriteAllText(path, text.Replace("BASE", "base.json", StringComparison.Ordinal));
        return path;
    }
}
