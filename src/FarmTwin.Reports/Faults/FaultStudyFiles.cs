using FarmTwin.Studies.Faults;

namespace FarmTwin.Reports.Faults;

/// <summary>Writes the files of a study of faults.</summary>
public static class FaultStudyFiles
{
    /// <summary>Writes faults.csv, faults.json and faults.html into a folder, which is made if need be.</summary>
    /// <exception cref="IOException">The folder or a file cannot be written.</exception>
    public static void Write(string folder, FaultStudyResult study)
    {
        ArgumentNullException.ThrowIfNull(folder);
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "faults.csv"), FaultStudyTable.Of(study));
        File.WriteAllText(Path.Combine(folder, "faults.json"), FaultStudyJson.Write(study));
        File.WriteAllText(Path.Combine(folder, "faults.html"), FaultStudyHtml.Of(study));
    }
}
