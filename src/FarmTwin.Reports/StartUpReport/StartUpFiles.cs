using FarmTwin.Reports.Comparison;
using FarmTwin.Reports.Html;
using FarmTwin.Reports.Screen;
using FarmTwin.Reports.Tables;
using FarmTwin.Studies.StartUp;
using FarmTwin.Studies.Statistics;

namespace FarmTwin.Reports.StartUpReport;

/// <summary>A start-up study as a page on the screen, a table and a page to hand over.</summary>
public static class StartUpFiles
{
    private const int Width = 80;

    /// <summary>Writes startup.html, startup.csv and startup.parquet.</summary>
    /// <exception cref="IOException">A file cannot be written.</exception>
    public static void Write(string folder, StartUpResult result, string version)
    {
        Directory.CreateDirectory(folder);
        Table(result).Write(folder, "startup");
        WholeFile.Write(Path.Combine(folder, "startup.html"), Html(result, version));
    }

    /// <summary>The page on the screen.</summary>
    public static IReadOnlyList<string> Page(StartUpResult result, string folder)
    {
        ArgumentNullException.ThrowIfNull(result);
        var lines = new List<string> { $"{result.Title}: bringing the filter to life; {result.Replicates} replicates", new('-', Width) };
        foreach (string sentence in result.Sentences())
        {
            lines.AddRange(ScreenPage.Wrap(sentence, Width - 2).Select((line, i) => (i == 0 ? "* " : "  ") + line));
        }

        lines.Add(new string('-', Width));
        lines.Add($"{"cycled on day,",64}  top NO2");
        lines.Add($"{"with fish: quiet from day",64}");
        lines.AddRange(result.Rows.Select(r => $"{Cut(r.Choice.Words),-50} {Days(r.Cycled),-15} {ComparisonFigures.Number(r.Nitrite.Median),6}"));
        lines.Add($"Files   {folder}: startup.html, startup.csv");
        return lines;
    }

    /// <summary>A row a way to start.</summary>
    public static DataTable Table(StartUpResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        DataTable table = new DataTable().Add("start", result.Rows.Select(r => r.Choice.Words));
        foreach ((string name, Func<StartUpRow, Band> of) in new (string, Func<StartUpRow, Band>)[]
        {
            ("cycled_day", r => r.Cycled), ("highest_nitrite_mgN_per_L", r => r.Nitrite), ("hours_of_harm", r => r.HoursOfHarm), ("fish_dead_share", r => r.Dead),
        })
        {
            table.Add($"{name}_low_10_percent", result.Rows.Select(r => of(r).Low)).Add($"{name}_median", result.Rows.Select(r => of(r).Median)).Add($"{name}_high_90_percent", result.Rows.Select(r => of(r).High));
        }

        return table.Add("never_cycled", result.Rows.Select(r => (double)r.Cycled.Missing)).Add("replicates", result.Rows.Select(_ => (double)result.Replicates));
    }

    private static string Html(StartUpResult result, string version)
    {
        var page = new HtmlPage("Bringing the filter to life", $"{result.Title}, from {result.Start:d MMMM yyyy}. {result.Replicates} replicates of each way, {result.LongestDays} days looked at");
        page.Section("In short").List(result.Sentences());
        var table = new HtmlTable("Ways to start", HtmlColumn.Words("start"), HtmlColumn.Words("cycled on day (with fish: water within its limits from day)"), HtmlColumn.Number("never", "replicates"), HtmlColumn.Number("top nitrite", "mg N/L"), HtmlColumn.Number("fish in harm", "h"), HtmlColumn.Number("fish dead", "%"));
        foreach (StartUpRow row in result.Rows)
        {
            table.Row(row.Choice.Words, Days(row.Cycled), $"{row.Cycled.Missing}", ComparisonFigures.Number(row.Nitrite.Median), row.Choice.HasFish ? $"{row.HoursOfHarm.Median:0}" : "-", row.Choice.HasFish ? $"{100 * row.Dead.Median:0}" : "-");
        }

        page.Section("Way by way").Table(table);
        page.Section("Read this before you act").List((IEnumerable<string>)[
            "Fish in an immature filter suffer before they die: test twice a day, stop the feed at TAN 3 or nitrite 1 mg N/L, keep chloride and air at hand.",
            "Media from another farm brings its diseases: only from a source whose fish are known to be healthy.",
            "Ammonium chloride is weighed, never poured by eye; above 5 to 6 mg N/L the start takes longer, not shorter.",
        ]);
        page.Footer($"FarmTwin {version}. A simulation is not a promise: the filter is cycled when the test says so.");
        return page.ToString();
    }

    private static string Days(Band band) => band.Count == 0 ? "never" : $"{band.Median:0} ({band.Low:0} to {band.High:0})";

    private static string Cut(string words) => words.Length <= 50 ? words : words[..47] + "...";
}
