namespace FarmTwin.Reports.Tests;

/// <summary>A plan with something wrong in it: the program ends with 2, names place, cause and cure, and writes nothing.</summary>
public sealed class BadInputTests
{
    /// <summary>A plan that extends the whole farm, without its braces; what the complaint must say of the cause; and of the cure.</summary>
    public static TheoryData<string, string, string> Plans => new()
    {
        // The reader's: line and path.
        { "\"basins\": { \"bed-1\": { \"volume\": \"302 m2\" } }", "is an area, not a volume", "Expected a volume" },
        { "\"basins\": { \"bed-1\": { \"volume\": \"302 litters\" } }", "no known unit", "Expected" },
        { "\"basins\": { \"bed-1\": { \"volume\": 302 } }", "has no unit", "302 L" },
        { "\"basins\": { \"bed-1\": { \"covered\": 7 } }", "out of range", "0 to 1" },
        { "\"site\": { \"latitude\": \"95 °\" }", "out of range", "Expected" },
        { "\"basins\": { \"bed-1\": { \"use\": \"media-bad\" } }", "not a known word", "Did you mean \"media-bed\"?" },
        { "\"basins\": { \"bed-1\": null, \"bed-1\": null }", "written twice", "first in line" },
        { "\"basins\": { \"bed-11\": null }", "null removes \"bed-11\"", "Did you mean \"bed-1\"?" },
        { "\"basins\": { \"bed-1\": null }", "there is no \"bed-1\" under basins", "one of" },
        { "\"basins\": []", "a list stands here", "Expected" },
        { "\"pipes\": { \"to-bed-1\": { \"to\": \"bed-l\" } }", "there is no \"bed-l\" under basins", "Did you mean" },
        { "\"mediaBeds\": { \"bed-1\": { \"crop\": \"tomatoe\" } }", "there is no \"tomatoe\"", "Did you mean \"tomato\"?" },
        { "\"stocking\": { \"first\": { \"fish\": \"nil-tilapia\" } }", "the library has no \"nil-tilapia\"", "Did you mean \"nile-tilapia\"?" },
        { "\"prices\": { \"products\": { \"kale\": { \"do\": \"sell-by-heads\" } } }", "not a known kind", "Did you mean \"sell-by-head\"?" },
        { "\"prices\": { \"products\": { \"kale\": { \"price\": \"2.20 EUR/head\" } } }", "currenc", "USD" },
        { "\"alarms\": { \"fish pH\": { \"probe\": \"fish-ph\" } }", "there is no \"fish-ph\"", "Did you mean \"fish-pH\"?" },
        { "\"people\": { \"grower\": { \"travel\": \"-5 min\" } }", "out of range", "Expected" },
        { "\"dosing\": { \"nursery-iron\": { \"with\": \"iron-eddha\" } }", "a text stands here", "list" },
        { "\"feeeding\": { }", "not a known key", "Did you mean \"feeding\"?" },

        // Each part is well written, but they make no farm: the file is named, and the part.
        { "\"mediaBeds\": { \"bed-2\": { \"basin\": \"bed-1\" } }", "two beds share the basin 'bed-1'", "give each its own" },
        { "\"mediaBeds\": { \"bed-1\": { \"crop\": \"lettuce\" } }", "bears no fruit", "beds grow fruiting crops" },
        { "\"pipes\": { \"to-bed-1\": { \"valve\": \"coupling\" } }", "a valve diverts an overflow", "put it on the overflow pipe" },
        { "\"probes\": { \"air\": { \"basin\": \"tank-1\" } }", "hangs in no basin", "leave 'basin' out" },
        { "\"house\": { \"fans\": null }", "house.evaporativePad", "describe the \"fans\"" },
        { "\"prices\": { \"fuels\": { \"natural-gas\": { \"perVolume\": \"1 USD/m3\" } } }", "natural-gas", "state one price" },
    };

    [Theory]
    [MemberData(nameof(Plans))]
    public void A_wrong_plan_ends_with_2_says_place_cause_and_cure_and_writes_nothing(string plan, string cause, string cure)
    {
        ProgramRun run = Run($"{{ \"extends\": {Quoted(Path.Combine(Repository.Scenarios, "whole-farm.json"))},\n{plan} }}");
        Assert.Equal(2, run.ExitCode);
        Assert.Matches(@"\.json(:\d+:\d+)?: ", run.Error);
        Assert.Contains(cause, run.Error);
        Assert.Contains(cure, run.Error);
    }

    /// <summary>Whole files.</summary>
    public static TheoryData<string, string> Texts => new()
    {
        { "", "" },
        { "   \n", "" },
        { "null", "" },
        { "[1, 2]", "" },
        { "\"a farm\"", "" },
        { "{ \"title\": \"x\"", "" },
        { "{ \"title\": \"x\" } }", "" },
        { "{ 'title': 'x' }", "" },
        { "\0\u0001\u0002", "" },
        { "{ \"extends\": \"plan.json\" }", "in a circle" },
        { "{ \"extends\": \"not-there.json\" }", "not-there.json" },
        { "{ \"extends\": \".\" }", "" },
        { "{ \"title\": \"x\" }", "is missing" },
    };

    [Theory]
    [MemberData(nameof(Texts))]
    public void A_file_that_is_no_scenario_ends_with_2_and_writes_nothing(string text, string words)
    {
        ProgramRun run = Run(text);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("plan.json", run.Error);
        Assert.Contains(words, run.Error);
        Assert.DoesNotContain("Exception", run.Error);
    }

    private static ProgramRun Run(string text)
    {
        string folder = Repository.NewFolder();
        Directory.CreateDirectory(folder);
        string file = Path.Combine(folder, "plan.json");
        File.WriteAllText(file, text);
        string output = Path.Combine(folder, "out");
        ProgramRun run = ProgramRun.Of("run", file, "--days", "1", "--no-plots", "--out", output);
        Assert.False(Directory.Exists(output));
        Assert.Empty(run.Out);
        Directory.Delete(folder, true);
        return run;
    }

    private static string Quoted(string path) => $"\"{path.Replace('\\', '/')}\"";
}
