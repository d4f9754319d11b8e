using System.ComponentModel;
using FarmTwin.Farm.Description;
using FarmTwin.Reports.StartUpReport;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Plans;
using FarmTwin.Studies.StartUp;
using Spectre.Console;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>What <c>startup</c> takes.</summary>
public sealed class StartUpSettings : CommandSettings
{
    /// <summary>The scenario file.</summary>
    [CommandArgument(0, "<FILE>")]
    [Description("The scenario file")]
    public string File { get; init; } = string.Empty;

    /// <summary>Replicates.</summary>
    [CommandOption("--replicates <N>")]
    [Description("How often each way is played, with other weather and other unknowns; 20 when left out")]
    public int Replicates { get; init; } = 20;

    /// <summary>Days.</summary>
    [CommandOption("--days <N>")]
    [Description("Days looked at; 120 when left out")]
    public int Days { get; init; } = 120;

    /// <summary>Seed.</summary>
    [CommandOption("--seed <N>")]
    [Description("Seed of all chance; the scenario's own when left out")]
    public long? Seed { get; init; }

    /// <summary>Threads.</summary>
    [CommandOption("--threads <N>")]
    [Description("How many are played at once; as many as there are processors when left out. The result is the same")]
    public int? Threads { get; init; }

    /// <summary>Folder.</summary>
    [CommandOption("--out <DIR>")]
    [Description("Folder for the files; out/<scenario>-startup when left out")]
    public string? Out { get; init; }

    /// <inheritdoc />
    public override ValidationResult Validate() =>
        Replicates < 1 ? ValidationResult.Error($"--replicates: {Replicates} is below 1.")
        : Days < 1 ? ValidationResult.Error($"--days: {Days} is below 1.")
        : Seed < 0 ? ValidationResult.Error($"--seed: {Seed} is below 0.")
        : Threads < 1 ? ValidationResult.Error($"--threads: {Threads} is below 1.")
        : ValidationResult.Success();
}

/// <summary>Says how long it takes to bring the filter to life, and what would shorten it.</summary>
public sealed class StartUpCommand(CommandOutput output) : Command<StartUpSettings>
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, StartUpSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Scenario<FarmDescription> scenario = ScenarioReader.Read<FarmDescription>(settings.File);
        StartUpResult result;
        try
        {
            result = StartUpStudy.Play(FarmPlan.Of(scenario, ShippedLibrary.Library), ShippedLibrary.Library, (ulong)(settings.Seed ?? scenario.Value.Seed),
                settings.Replicates, settings.Days, settings.Threads ?? Environment.ProcessorCount, cancellationToken);
        }
        catch (DescriptionException e)
        {
            throw new DescriptionException($"{settings.File}: {e.Message}");
        }

        string folder = settings.Out ?? Path.Combine("out", Path.GetFileNameWithoutExtension(settings.File) + "-startup");
        StartUpFiles.Write(folder, result, ProgramVersion.Text);
        foreach (string line in StartUpFiles.Page(result, folder.Replace('\\', '/')))
        {
            output.Out.WriteLine(line);
        }

        return CommandLine.Done;
    }
}
