using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Json;
using FarmTwin.Reports.Plots;
using FarmTwin.Reports.RunReport;
using FarmTwin.Reports.Tables;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Reports;

/// <summary>Writes the files of a season: summary, tables, figures, report.</summary>
public static class SeasonFiles
{
    /// <summary>Writes them into a folder, which is made if need be; files of an earlier run are replaced.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="season">The season.</param>
    /// <param name="summary">Its summary.</param>
    /// <param name="bands">Bands for the figures.</param>
    /// <param name="hourly">Whether hours.csv is written.</param>
    /// <param name="plots">Whether the figures are drawn.</param>
    /// <returns>The files, in the order written, relative to the folder.</returns>
    /// <exception cref="IOException">The folder or a file cannot be written.</exception>
    public static IReadOnlyList<string> Write(string folder, Season season, SeasonSummary summary, SummaryBands bands, bool hourly, bool plots)
    {
        Directory.CreateDirectory(folder);
        Clear(folder);
        var files = new List<string>();
        Text("summary.json", SummaryJson.Write(summary));
        Text("days.csv", SeasonTables.Days(season));
        Text("weeks.csv", SeasonTables.Weeks(season));
        Text("events.csv", SeasonTables.Events(season));
        Text("sowing_plan.csv", SeasonTables.SowingPlan(season));
        if (summary.Alarms is { } alarms)
        {
            Text("alarms.csv", SeasonTables.Alarms(alarms));
        }

        Text("energy.csv", SeasonTables.EnergyByMonth(summary));
        if (summary.Faults.Count > 0)
        {
            Text("faults.csv", FaultTable.Of(season));
        }

        if (hourly)
        {
            Text("hours.csv", SeasonTables.Hours(season));
        }

        if (plots)
        {
            IReadOnlyList<Figure> figures = SeasonFigures.Of(season, summary, bands);
            Text("report.html", SeasonReport.Of(season, summary, figures, ShippedLibrary.Library));
            Text("figures.json", SummaryJson.Write([.. figures.Select(FigureEntry.Of)]));
            if (figures.Count > 0)
            {
                Directory.CreateDirectory(Path.Combine(folder, "plots"));
            }

            // A plot belongs to one thread; figures do not touch each other.
            Parallel.ForEach(figures, figure =>
            {
                File.WriteAllBytes(Path.Combine(folder, "plots", figure.Name + ".png"), FigureImage.Png(figure));
                File.WriteAllText(Path.Combine(folder, "plots", figure.Name + ".svg"), FigureImage.Svg(figure));
            });
            foreach (Figure figure in figures)
            {
                files.Add($"plots/{figure.Name}.png");
                files.Add($"plots/{figure.Name}.svg");
            }
        }

        return files;

        void Text(string name, string text)
        {
            File.WriteAllText(Path.Combine(folder, name), text);
            files.Add(name);
        }
    }

    // What an earlier run left and this one may not write must not be taken for its result.
    private static void Clear(string folder)
    {
        File.Delete(Path.Combine(folder, "hours.csv"));
        File.Delete(Path.Combine(folder, "alarms.csv"));
        File.Delete(Path.Combine(folder, "faults.csv"));
        File.Delete(Path.Combine(folder, "figures.json"));
        File.Delete(Path.Combine(folder, "report.html"));
        string plots = Path.Combine(folder, "plots");
        if (!Directory.Exists(plots))
        {
            return;
        }

        foreach (string name in SeasonFigures.Names)
        {
            File.Delete(Path.Combine(plots, name + ".png"));
            File.Delete(Path.Combine(plots, name + ".svg"));
        }
    }
}
