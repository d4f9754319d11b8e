using FarmTwin.Reports.Plots;
using FarmTwin.Studies.Faults;

namespace FarmTwin.Reports.Faults;

/// <summary>Writes the files of a study of faults.</summary>
public static class FaultStudyFiles
{
    /// <summary>Writes faults.csv, faults.json, faults.html and the figure into a folder, which is made if need be.</summary>
    /// <exception cref="IOException">The folder or a file cannot be written.</exception>
    public static void Write(string folder, FaultStudyResult study)
    {
        ArgumentNullException.ThrowIfNull(folder);
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "faults.csv"), FaultStudyTable.Of(study));
        File.WriteAllText(Path.Combine(folder, "faults.json"), FaultStudyJson.Write(study));
        File.WriteAllText(Path.Combine(folder, "faults.html"), FaultStudyHtml.Of(study));
        string plots = Path.Combine(folder, "plots");
        if (FaultStudyFigure.Of(study) is { } figure)
        {
            Directory.CreateDirectory(plots);
            File.WriteAllBytes(Path.Combine(plots, figure.Name + ".png"), FigureImage.Png(figure));
            File.WriteAllText(Path.Combine(plots, figure.Name + ".svg"), FigureImage.Svg(figure));
        }
        else
        {
            // What an earlier study left must not be taken for this one's.
            File.Delete(Path.Combine(plots, "oxygen.png"));
            File.Delete(Path.Combine(plots, "oxygen.svg"));
        }
    }
}
