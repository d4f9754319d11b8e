using System.ComponentModel;
using FarmTwin.Farm.Description;
using FarmTwin.Reports.Compare;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Causes;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Compare;
using FarmTwin.Studies.Plans;
using Spectre.Console;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>What <c>compare</c> takes.</summary>
public sealed class CompareSettings : CommandSettings
{
    private const int LongestDays = 3660;

    /// <summary>The scenario files, the reference first.</summary>
    [CommandArgument(0, "<FILES>")]
    [Description("Two or more scenario files: the first is the one that the others are held against")]
    public string[] Files { get; init; } = [];

    /// <summary>Folder for the files.</summary>
    [CommandOption("--out <DIR>")]
    [Description("Folder for the files; out/compare-<first>-<second> when left out")]
    public string? Out { get; init; }

    /// <summary>Seed of all chance; the reference's when left out.</summary>
    [CommandOption("--seed <N>")]
    [Description("Seed of all chance; the reference's own when left out")]
    public long? Seed { get; init; }

    /// <summary>Days compared.</summary>
    [CommandOption("--days <N>")]
    [Description("Days compared; those of the shortest season when left out")]
    public int? Days { get; init; }

    /// <summary>Seasons played at once.</summary>
    [CommandOption("--threads <N>")]
    [Description("Seasons played at once; as many as there are processors when left out. The result is the same")]
    public int? Threads { get; init; }

    /// <summary>Whether the result goes to the screen as JSON.</summary>
    [CommandOption("--json")]
    [Description("Prints the result as JSON instead of the page")]
    public bool Json { get; init; }

    /// <inheritdoc />
    public override ValidationResult Validate() =>
        Files.Length < 2 ? ValidationResult.Error("compare takes two or more scenario files: the first is the reference.")
        : Days is < 1 or > LongestDays ? ValidationResult.Error($"--days: {Days} is not between 1 and {LongestDays}.")
        : Seed < 0 ? ValidationResult.Error($"--seed: {Seed} is below 0.")
        : Threads < 1 ? ValidationResult.Error($"--threads: {Threads} is below 1.")
        : ValidationResult.Success();
}

/// <summary>Holds farms against one another under one seed.</summary>
public sealed class CompareCommand(CommandOutput output) : Command<CompareSettings>
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, CompareSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        FarmPlan[] plans = [.. settings.Files.Select(f => FarmPlan.Of(ScenarioReader.Read<FarmDescription>(f), ShippedLibrary.Library))];
        SideBySide comparison = ComparisonStudy.Play(plans, ShippedLibrary.Library, (ulong)(settings.Seed ?? plans[0].Farm.Seed), settings.Days, settings.Threads ?? Environment.ProcessorCount,
            Remedies(settings.Files), cancellationToken);
        string folder = settings.Out ?? Path.Combine("out", $"compare-{plans[0].Name}-{plans[1].Name}");
        ComparisonFiles.Write(folder, comparison);
        if (settings.Json)
        {
            output.Out.Write(ComparisonJson.Write(comparison));
            return CommandLine.Done;
        }

        foreach (string line in ComparisonPage.Of(comparison, folder.Replace('\\', '/')))
        {
            output.Out.WriteLine(line);
        }

        return CommandLine.Done;
    }

    // A cause brings its own remedy.
    private static Dictionary<int, StatedRemedy> Remedies(string[] files)
    {
        var remedies = new Dictionary<int, StatedRemedy>();
        for (int i = 1; i < files.Length; i++)
        {
            if (ScenarioReader.Read<FarmDescription>(files[i]).Resolved.StatesCause && CauseReader.Read(files[i]) is { Remedied: { } remedied, Card.Remedy: { } remedy })
            {
                remedies[i] = new StatedRemedy(remedy.About, remedied.Value);
            }
        }

        return remedies;
    }
}
