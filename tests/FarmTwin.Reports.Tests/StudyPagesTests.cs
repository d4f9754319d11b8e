using System.Text.Json;
using AngleSharp.Html.Dom;

namespace FarmTwin.Reports.Tests;

/// <summary>The commands <c>compare</c> and <c>faults</c> as a user meets them: page, files, complaints.</summary>
public sealed class StudyPagesTests
{
    private static readonly string Base = Path.Combine(Repository.Scenarios, "causes", "base.json");
    private static readonly string Washed = Path.Combine(Repository.Scenarios, "causes", "10-filter-washed-too-hard.json");

    [Fact]
    public void Compare_prints_the_sign_and_what_acting_saves_and_writes_a_page_a_table_json_and_plots()
    {
        string folder = Repository.NewFolder();
        ProgramRun run = ProgramRun.Of("compare", Base, Washed, "--days", "50", "--out", folder);
        Assert.Equal(0, run.ExitCode);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Contains("First sign to act on: Day ", run.Out);
        Assert.Contains("that evening ", run.Out);
        IHtmlDocument page = PageRules.Check(File.ReadAllText(Path.Combine(folder, "compare.html")));
        Assert.Contains("as the reference", page.Body!.TextContent);
        Assert.True(File.Exists(Path.Combine(folder, "plots", "sign-1.png")));
        JsonElement json = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "compare.json"))).RootElement;
        JsonElement other = json.GetProperty("others")[0];
        string sign = other.GetProperty("firstSign").GetProperty("line").GetString()!;
        int day = other.GetProperty("firstSign").GetProperty("day").GetInt32();
        string[] rows = File.ReadAllLines(Path.Combine(folder, "compare.csv"));
        string[] header = rows[0].Split(',');
        string[] row = rows.Single(r => r.Split(',') is var f && f[1] == sign && f[Array.IndexOf(header, "day")] == $"{day}").Split(',');
        Assert.Equal("1", row[Array.IndexOf(header, "noticed")]);
        Assert.True(other.GetProperty("ways")[0].GetProperty("acts")[0].GetProperty("fishSaved").GetDouble() > 1);
    }

    [Fact]
    public void Compare_of_a_plan_with_itself_says_that_nothing_tells_them_apart()
    {
        string folder = Repository.NewFolder();
        ProgramRun run = ProgramRun.Of("compare", Base, Base, "--days", "20", "--out", folder);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("No line of the daily sheet tells the two apart.", run.Out.ReplaceLineEndings(" ").Replace("  ", " "));
        PageRules.Check(File.ReadAllText(Path.Combine(folder, "compare.html")));
    }

    [Fact]
    public void Compare_with_one_file_or_another_first_day_is_bad_input()
    {
        ProgramRun alone = ProgramRun.Of("compare", Base);
        Assert.Equal(2, alone.ExitCode);
        Assert.Contains("two or more", alone.Error);
        string folder = Repository.NewFolder();
        ProgramRun later = ProgramRun.Of("compare", Repository.FirstSeason, Base, "--out", folder);
        Assert.Equal(2, later.ExitCode);
        Assert.Contains("begin on one day", later.Error);
        Assert.False(Directory.Exists(folder));
    }

    [Fact]
    public void Faults_prints_the_worst_first_and_writes_a_page_a_table_and_json_with_the_same_bytes_for_any_number_of_threads()
    {
        string one = Repository.NewFolder();
        string two = Repository.NewFolder();
        string file = Path.Combine(Repository.NewFolder(), "small.json");
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        File.WriteAllText(file, $$"""
            { "extends": {{JsonSerializer.Serialize(Path.Combine(Repository.Scenarios, "causes", "grown.json"))}}, "length": "20 days",
              "people": { "grower": { "onSite": { "every day": { "from": "6.5 h", "until": "17.5 h" } } } } }
            """);
        ProgramRun run = ProgramRun.Of("faults", file, "--outage", "2", "--threads", "1", "--out", one);
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(0, ProgramRun.Of("faults", file, "--outage", "2", "--threads", "2", "--out", two).ExitCode);
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length <= 80 || line.StartsWith("Files", StringComparison.Ordinal), line));
        Assert.Contains(" 1. ", run.Out);
        PageRules.Check(File.ReadAllText(Path.Combine(one, "faults.html")));
        foreach (string name in new[] { "faults.html", "faults.csv", "faults.json" })
        {
            Assert.Equal(File.ReadAllBytes(Path.Combine(one, name)), File.ReadAllBytes(Path.Combine(two, name)));
        }

        JsonElement faults = JsonDocument.Parse(File.ReadAllText(Path.Combine(one, "faults.json"))).RootElement.GetProperty("faults");
        JsonElement mains = faults.EnumerateArray().Single(f => f.GetProperty("fault").GetString() == "mains");
        Assert.True(mains.GetProperty("harm").GetProperty("minutesTo3MgPerL").GetDouble() > 0);
        Assert.Contains(mains.GetProperty("smallestBackups").EnumerateArray(), b => b.GetProperty("kind").GetString() == "battery air" && b.GetProperty("saves").GetBoolean());
        Assert.Equal(faults.GetArrayLength() + 1, File.ReadAllLines(Path.Combine(one, "faults.csv")).Length);
    }
}
