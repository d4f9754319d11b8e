using FarmTwin.Reports.Plots;
using FarmTwin.Reports.Tables;
using FarmTwin.Studies.Batch;

namespace FarmTwin.Reports.Comparison;

/// <summary>Writes what a finished batch is read by: tables, plots, the page.</summary>
public static class BatchFiles
{
    /// <summary>Writes them beside the batch's journal; the bytes do not depend on threads or on how often the batch was stopped.</summary>
    /// <param name="folder">The batch's folder.</param>
    /// <param name="result">The finished batch.</param>
    /// <param name="version">Version of the program.</param>
    /// <param name="plots">Whether figures are drawn as files of their own and stand on the page.</param>
    /// <exception cref="IOException">A file cannot be written.</exception>
    public static void Write(string folder, BatchResult result, string version, bool plots)
    {
        BatchTables.Runs(result).Write(folder, "runs");
        BatchTables.Weeks(result).Write(folder, "weeks");
        BatchTables.Figures(result).Write(folder, "figures");
        IReadOnlyList<Figure> figures = plots ? ComparisonFigures.Of(result) : [];
        FigureFiles.Write(folder, figures);
        WholeFile.Write(Path.Combine(folder, "comparison.html"), ComparisonPage.Of(result, figures, version));
    }
}
