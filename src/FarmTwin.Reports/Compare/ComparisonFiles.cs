using FarmTwin.Reports.Plots;
using FarmTwin.Studies.Compare;

namespace FarmTwin.Reports.Compare;

/// <summary>Writes the files of a comparison.</summary>
public static class ComparisonFiles
{
    /// <summary>Writes compare.html, compare.csv, compare.json and the plots into a folder, which is made if need be.</summary>
    /// <exception cref="IOException">The folder or a file cannot be written.</exception>
    public static void Write(string folder, SideBySide comparison, bool plots = true)
    {
        ArgumentNullException.ThrowIfNull(folder);
        string drawn = Path.Combine(folder, "plots");
        Directory.CreateDirectory(folder);
        if (Directory.Exists(drawn))
        {
            foreach (string old in Directory.EnumerateFiles(drawn).Where(f => Path.GetFileName(f).StartsWith("sign-", StringComparison.Ordinal) || Path.GetFileName(f).StartsWith("parting-", StringComparison.Ordinal)))
            {
                File.Delete(old);
            }
        }

        IReadOnlyList<Figure> figures = ComparisonFigures.Of(comparison);
        File.WriteAllText(Path.Combine(folder, "compare.csv"), ComparisonTable.Of(comparison));
        File.WriteAllText(Path.Combine(folder, "compare.json"), ComparisonJson.Write(comparison));
        File.WriteAllText(Path.Combine(folder, "compare.html"), ComparisonHtml.Of(comparison, figures));
        if (!plots || figures.Count == 0)
        {
            return;
        }

        Directory.CreateDirectory(drawn);
        foreach (Figure figure in figures)
        {
            File.WriteAllBytes(Path.Combine(drawn, figure.Name + ".png"), FigureImage.Png(figure));
            File.WriteAllText(Path.Combine(drawn, figure.Name + ".svg"), FigureImage.Svg(figure));
        }
    }
}
