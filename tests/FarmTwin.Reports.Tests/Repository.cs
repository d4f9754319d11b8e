namespace FarmTwin.Reports.Tests;

/// <summary>Where the files of the repository and of a test stand.</summary>
internal static class Repository
{
    public static string Root { get; } = FindRoot();

    public static string FirstSeason { get; } = Path.Combine(Root, "scenarios", "first-season.json");

    public static string Scenarios { get; } = Path.Combine(Root, "scenarios");

    public static string NewFolder() => Path.Combine(Path.GetTempPath(), "farmtwin-tests", Path.GetRandomFileName());

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "FarmTwin.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("The tests run inside the repository.");
    }
}
