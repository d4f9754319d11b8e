using FarmTwin.Reports.Tables;

namespace FarmTwin.Reports.Plots;

/// <summary>Writes figures as PNG and SVG under <c>plots/</c>; what an earlier run drew there is taken away.</summary>
public static class FigureFiles
{
    /// <summary>Writes them. A plot belongs to one thread; figures do not touch each other.</summary>
    public static void Write(string folder, IReadOnlyList<Figure> figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        string drawn = Path.Combine(folder, "plots");
        if (Directory.Exists(drawn))
        {
            Directory.Delete(drawn, recursive: true);
        }

        if (figures.Count == 0)
        {
            return;
        }

        Directory.CreateDirectory(drawn);
        Parallel.ForEach(figures, figure =>
        {
            WholeFile.Write(Path.Combine(drawn, figure.Name + ".png"), FigureImage.Png(figure));
            WholeFile.Write(Path.Combine(drawn, figure.Name + ".svg"), FigureImage.Svg(figure));
        });
    }
}
