using System.Text.Json;

namespace FarmTwin.Reports.Tests;

public sealed class CommandLineTests
{
    [Fact]
    public void Two_runs_give_the_same_bytes_in_every_file()
    {
        string one = Repository.NewFolder();
        string two = Repository.NewFolder();
        string[] args = ["run", Repository.FirstSeason, "--days", "30", "--hourly", "--out"];
        Assert.Equal(0, ProgramRun.Of([.. args, one]).ExitCode);
        Assert.Equal(0, ProgramRun.Of([.. args, two]).ExitCode);
        string[] files = [.. Directory.GetFiles(one, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(one, f)).Order()];
        Assert.Equal(files, Directory.GetFiles(two, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(two, f)).Order());
        Assert.Contains("summary.json", files);
        Assert.Contains("hours.csv", files);
        Assert.Contains(Path.Combine("plots", "nitrate.svg"), files);
        Assert.All(files, f => Assert.Equal(File.ReadAllBytes(Path.Combine(one, f)), File.ReadAllBytes(Path.Combine(two, f))));
        Directory.Delete(one, true);
        Directory.Delete(two, true);
    }

    [Fact]
    public void Days_seed_and_step_are_taken_from_the_command_line()
    {
        string folder = Repository.NewFolder();
        ProgramRun run = ProgramRun.Of(
            "run", Repository.FirstSeason, "--days", "3", "--seed", "7", "--step", "30", "--json", "--no-plots", "--out", folder);
        Assert.Equal(0, run.ExitCode);
        using JsonDocument printed = JsonDocument.Parse(run.Out);
        JsonElement engine = printed.RootElement.GetProperty("engine");
        Assert.Equal(7, engine.GetProperty("seed").GetInt32());
        Assert.Equal(30, engine.GetProperty("stepMinutes").GetInt32());
        Assert.Equal(3, printed.RootElement.GetProperty("days").GetInt32());
        Assert.Equal(JsonValueKind.Null, printed.RootElement.GetProperty("water").GetProperty("cycledDay").ValueKind);
        Assert.Equal(run.Out, File.ReadAllText(Path.Combine(folder, "summary.json")));
        Assert.Equal(4, File.ReadAllLines(Path.Combine(folder, "days.csv")).Length);
        Assert.False(File.Exists(Path.Combine(folder, "hours.csv")));
        Assert.False(Directory.Exists(Path.Combine(folder, "plots")));
        Directory.Delete(folder, true);
    }

    [Fact]
    public void A_wrong_scenario_is_refused_with_its_place_and_nothing_is_written()
    {
        string folder = Repository.NewFolder();
        Directory.CreateDirectory(folder);
        string file = Path.Combine(folder, "wrong.json");
        File.WriteAllText(file, File.ReadAllText(Repository.FirstSeason).Replace("\"use\": \"filter\"", "\"use\": \"filtre\"", StringComparison.Ordinal));
        string output = Path.Combine(folder, "out");
        ProgramRun run = ProgramRun.Of("run", file, "--out", output);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("wrong.json", run.Error);
        Assert.Contains("filtre", run.Error);
        Assert.Matches(@":\d+", run.Error);
        Assert.Empty(run.Out);
        Assert.False(Directory.Exists(output));
        Directory.Delete(folder, true);
    }

    [Theory]
    [InlineData("run", "no-such-file.json")]
    [InlineData("run")]
    [InlineData("run", "x.json", "--days", "0")]
    [InlineData("run", "x.json", "--units", "imperial")]
    [InlineData("run", "x.json", "--step", "7")]
    [InlineData("run", "x.json", "--no-such-option")]
    [InlineData("explain", "no such thing")]
    [InlineData("no-such-command")]
    public void Bad_input_ends_with_2_and_a_word_on_the_error_stream(params string[] args)
    {
        ProgramRun run = ProgramRun.Of(args);
        Assert.Equal(2, run.ExitCode);
        Assert.NotEmpty(run.Error.Trim());
    }

    [Fact]
    public void Check_says_readable_and_lists_where_values_come_from()
    {
        ProgramRun run = ProgramRun.Of("check", Repository.FirstSeason, "--resolved");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("is readable", run.Out);
        Assert.Matches(@"basins\.tank-1\.volume = .*first-season\.json:\d+", run.Out);
    }

    [Fact]
    public void Schema_is_json()
    {
        ProgramRun run = ProgramRun.Of("schema");
        Assert.Equal(0, run.ExitCode);
        using JsonDocument schema = JsonDocument.Parse(run.Out);
        Assert.True(schema.RootElement.TryGetProperty("$defs", out _));
    }

    [Fact]
    public void Explain_gives_value_unit_range_and_citation()
    {
        ProgramRun run = ProgramRun.Of("explain", "washEvery");
        Assert.Contains("filters.*.washEvery", run.Out);
        ProgramRun parameter = ProgramRun.Of("explain", "processes/bands/oxygenLow");
        Assert.Contains("= 5 mg/L", parameter.Out);
        Assert.Contains("Common practice", parameter.Out);
        Assert.DoesNotContain("not in the list of sources", ProgramRun.Of("explain").Out);
    }
}
