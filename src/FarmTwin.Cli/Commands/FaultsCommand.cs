using System.ComponentModel;
using FarmTwin.Farm.Description;
using FarmTwin.Reports.Faults;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Faults;
using Spectre.Console;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>What <c>faults</c> takes.</summary>
public sealed class FaultsSettings : CommandSettings
{
    private const double LongestOutage = 240;

    /// <summary>The scenario file.</summary>
    [CommandArgument(0, "<FILE>")]
    [Description("The scenario file; faults of its own plan are left out, so that each is seen by itself")]
    public string File { get; init; } = string.Empty;

    /// <summary>Folder for the files.</summary>
    [CommandOption("--out <DIR>")]
    [Description("Folder for the files; out/<scenario>-faults when left out")]
    public string? Out { get; init; }

    /// <summary>How long the mains stay off, h.</summary>
    [CommandOption("--outage <HOURS>")]
    [Description("How long the mains stay off, in hours; 12 when left out")]
    public double OutageHours { get; init; } = FaultStudy.UsualOutageHours;

    /// <summary>Seed of all chance; the scenario's when left out.</summary>
    [CommandOption("--seed <N>")]
    [Description("Seed of all chance; the scenario's own when left out")]
    public long? Seed { get; init; }

    /// <summary>Faults tried at once.</summary>
    [CommandOption("--threads <N>")]
    [Description("How many faults are tried at once; as many as there are processors when left out. The result is the same")]
    public int? Threads { get; init; }

    /// <summary>Whether the result goes to the screen as JSON.</summary>
    [CommandOption("--json")]
    [Description("Prints the result as JSON instead of the page")]
    public bool Json { get; init; }

    /// <inheritdoc />
    public override ValidationResult Validate() =>
        !(OutageHours > 0 && OutageHours <= LongestOutage) ? ValidationResult.Error($"--outage: {OutageHours} is not above 0 and up to {LongestOutage} hours.")
        : Seed < 0 ? ValidationResult.Error($"--seed: {Seed} is below 0.")
        : Threads < 1 ? ValidationResult.Error($"--threads: {Threads} is below 1.")
        : ValidationResult.Success();
}

/// <summary>Lets everything fail in turn.</summary>
public sealed class FaultsCommand(CommandOutput output) : Command<FaultsSettings>
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, FaultsSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Scenario<FarmDescription> scenario = ScenarioReader.Read<FarmDescription>(settings.File);
        FaultStudyResult study;
        try
        {
            study = Play(scenario.Value, settings, cancellationToken);
        }
        catch (DescriptionException e)
        {
            throw new DescriptionException($"{settings.File}: {e.Message}");
        }

        string folder = settings.Out ?? Path.Combine("out", Path.GetFileNameWithoutExtension(settings.File) + "-faults");
        FaultStudyFiles.Write(folder, study);
        if (settings.Json)
        {
            output.Out.Write(FaultStudyJson.Write(study));
            return CommandLine.Done;
        }

        foreach (string line in FaultStudyPage.Of(study, folder.Replace('\\', '/')))
        {
            output.Out.WriteLine(line);
        }

        return CommandLine.Done;
    }

    private FaultStudyResult Play(FarmDescription farm, FaultsSettings settings, CancellationToken cancellationToken)
    {
        if (!output.IsInteractive || settings.Json)
        {
            return Study(null);
        }

        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output.Error) });
        return console.Progress().AutoClear(true).Start(progress =>
        {
            ProgressTask task = progress.AddTask("faults");
            return Study((done, all) => (task.MaxValue, task.Value) = (all, done));
        });

        FaultStudyResult Study(Action<int, int>? told) => FaultStudy.Play(
            farm, ShippedLibrary.Library, (ulong)(settings.Seed ?? farm.Seed), settings.OutageHours, settings.Threads ?? Environment.ProcessorCount, told, cancellationToken);
    }
}
