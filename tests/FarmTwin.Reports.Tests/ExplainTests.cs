using System.Globalization;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Scenarios.Library;
using FarmTwin.Scenarios.Schema;

namespace FarmTwin.Reports.Tests;

/// <summary>Whoever asks what a name means is told, whatever the name.</summary>
public sealed class ExplainTests
{
    private static readonly string[] All = ProgramRun.Of("explain").Out.Split('\n');

    [Fact]
    public void Every_input_is_explained_with_its_unit_range_and_default()
    {
        ILookup<string, string> said = SaidUnder(line => line.StartsWith("  ", StringComparison.Ordinal) && line[2] != ' ');
        IReadOnlyList<ExplainedInput> inputs = Explanation.Of(typeof(FarmDescription));
        Assert.True(inputs.Count > 300, $"{inputs.Count} inputs");
        foreach (ExplainedInput input in inputs)
        {
            string[] lines = [.. said[input.Path]];
            Assert.True(lines.Length > 0, $"{input.Path} is not explained");
            Assert.True(input.About.Length > 1, $"{input.Path}: {input.About}");
            Assert.Contains(lines, l => l.Contains(input.About.TrimEnd('.'), StringComparison.Ordinal) && l.Contains(input.Sort, StringComparison.Ordinal)
                && l.Contains(input.Range, StringComparison.Ordinal) && l.Contains(input.Default, StringComparison.Ordinal)
                && (input.Unit is "" or "1" || l.Contains($"({input.Unit})", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void Every_parameter_is_explained_with_value_range_source_and_where_it_is_used()
    {
        int count = 0;
        foreach ((string folder, ParameterSet set) in ShippedLibrary.Library.All)
        {
            foreach (Parameter parameter in set.All)
            {
                string head = string.Create(CultureInfo.InvariantCulture, $"  {folder}/{set.Name}/{parameter.Name} = {parameter.Value}");
                int at = Array.FindIndex(All, l => l.StartsWith(head, StringComparison.Ordinal));
                Assert.True(at >= 0, $"{head} is not explained");
                Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"({parameter.Low} to {parameter.High}"), All[at]);
                Assert.Contains(parameter.Unit == "1" ? string.Empty : parameter.Unit, All[at]);
                Assert.Contains(parameter.About.TrimEnd('.'), All[at + 1]);
                Assert.Contains("Used ", All[at + 1]);
                Assert.Contains($"[{parameter.Source}] ", All[at + 2]);
                Assert.DoesNotContain("not in the list of sources", All[at + 2]);
                count++;
            }
        }

        Assert.True(count > 500, $"{count} parameters");
    }

    [Fact]
    public void Every_tenth_name_asked_by_itself_is_answered()
    {
        string[] names =
        [
            .. Explanation.Of(typeof(FarmDescription)).Select(i => i.Path),
            .. ShippedLibrary.Library.All.SelectMany(s => s.Set.All.Select(p => $"{s.Folder}/{s.Set.Name}/{p.Name}")),
        ];
        for (int i = 0; i < names.Length; i += 10)
        {
            ProgramRun run = ProgramRun.Of("explain", names[i]);
            Assert.True(run.ExitCode == 0 && run.Out.Contains(names[i], StringComparison.Ordinal), names[i]);
        }
    }

    // A path may stand twice where two kinds share it; each has the line below it.
    private static ILookup<string, string> SaidUnder(Func<string, bool> isHead) => Enumerable.Range(0, All.Length - 1)
        .Where(i => All[i].Length > 2 && isHead(All[i])).ToLookup(i => All[i].Trim(), i => All[i + 1], StringComparer.Ordinal);
}
