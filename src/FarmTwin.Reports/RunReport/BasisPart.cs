using System.Globalization;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Html;
using FarmTwin.Studies.Unknowns;

namespace FarmTwin.Reports.RunReport;

/// <summary>What the numbers rest on, what they must not be taken for, and how they are made again.</summary>
internal static class BasisPart
{
    /// <summary>Cautions that hold for every farm with fish, gas, current and sludge.</summary>
    public static IReadOnlyList<string> Standing { get; } =
    [
        "Animals: wrong water kills fish within hours. Test the real water; do not stock on a forecast; never run an outage test with stocked fish and no oxygen at hand.",
        "Gas: propane is heavier than air and gathers in sumps and pits. Cylinders outdoors, heaters vented, leak and carbon monoxide alarms, licensed installers, local codes.",
        "Electricity at water: ground-fault protection on every circuit, drip loops, the blower on a circuit of its own with an alarm.",
        "Bases and acids: goggles and gloves; chemical into water; never together; never a hydroxide dose into a fish tank.",
        "Sludge: unaerated fish sludge makes hydrogen sulfide, which kills and dulls the nose first. Ventilate before turning air on or stirring; nobody leans into a tank.",
        "Food safety: fish water and sludge are animal waste: keep them off leaves and hands that harvest.",
    ];

    public static void AddAssumptions(HtmlSection section, FarmDescription farm, FarmLibrary library)
    {
        section.Paragraph(farm.About);
        section.Paragraph("These are what nobody knows of a farm before its first season. The value used lies within the range given; the farm may turn out anywhere in it. Every other parameter with its source: farmtwin explain.");
        var table = new HtmlTable("Assumptions that matter most", HtmlColumn.Words("what"), HtmlColumn.Number("used"), HtmlColumn.Number("from"), HtmlColumn.Number("to"), HtmlColumn.Words("unit"), HtmlColumn.Words("source"));
        foreach (Unknown unknown in FarmUnknowns.Of(farm, library))
        {
            string[] path = unknown.Name.Split('/');
            string source = path.Length == 3 ? library.Set(path[0], path[1]).All.First(p => p.Name == path[2]).Source : library.Set("covers", farm.House.Cover).All.First(p => p.Name == "infiltration").Source;
            table.Row(Inline.Text(unknown.About.TrimEnd('.')), Value(unknown.Middle), Value(unknown.Low), Value(unknown.High), unknown.Unit == "1" ? "–" : unknown.Unit,
                Inline.Small(SourceList.Citations.GetValueOrDefault(source, source)));
        }

        section.Table(table);
    }

    public static void AddManifest(HtmlSection section, SeasonSummary summary)
    {
        EngineIdentity engine = summary.Engine;
        section.Definitions(
        [
            ("Program", $"FarmTwin {engine.Version}"), ("Scenario", engine.ScenarioHash.Length > 0 ? $"hash {engine.ScenarioHash}" : "not read from a file"), ("Seed", $"{engine.Seed}"),
            ("Longest step", $"{engine.StepMinutes:0.##} min"), ("Weather", summary.Weather.Source), ("Files", Inline.Join(", ", Tables.Select(f => Inline.Link(f, f)))),
        ]).Paragraph("The same program, scenario and seed give the same numbers to the last digit.");
    }

    private static readonly string[] Tables = ["summary.json", "days.csv", "weeks.csv", "events.csv"];
    private static string Value(double value) => value == 0 ? "0" : value.ToString(Math.Abs(value) is >= 0.001 and < 100000 ? "0.####" : "0.0e0", CultureInfo.InvariantCulture);
}
