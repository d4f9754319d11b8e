namespace FarmTwin.Scenarios.Tests.Sample;

/// <summary>A folder for a test's files, removed at its end.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("farmtwin-");

    public string Folder => _folder.FullName;

    public string Write(string name, string text)
    {
        string path = Path.Combine(Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
