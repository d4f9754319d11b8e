using System.ComponentModel;
using FarmTwin.Reports.Screen;
using FarmTwin.Reports.StudyReport;
using FarmTwin.Scenarios.Library;
using FarmTwin.Scenarios.StudyFiles;
using FarmTwin.Studies.Outcomes;
using FarmTwin.Studies.Sensitivity;
using Spectre.Console;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>What <c>study</c> takes.</summary>
public sealed class StudySettings : CommandSettings
{
    /// <summary>The study file.</summary>
    [CommandArgument(0, "<FILE>")]
    [Description("The study file: a base scenario and what is varied")]
    public string File { get; init; } = string.Empty;

    /// <summary>Replicates.</summary>
    [CommandOption("--replicates <N>")]
    [Description("How often each point is played; as the study says when left out")]
    public int? Replicates { get; init; }

    /// <summary>Threads.</summary>
    [CommandOption("--threads <N>")]
    [Description("How many seasons are played at once; as many as there are processors when left out. The result is the same")]
    public int? Threads { get; init; }

    /// <summary>Folder.</summary>
    [CommandOption("--out <DIR>")]
    [Description("Folder for the files; out/<study> when left out. A study that was stopped goes on there")]
    public string? Out { get; init; }

    /// <summary>Whether no figures are drawn.</summary>
    [CommandOption("--no-plots")]
    [Description("Draws no figures")]
    public bool NoPlots { get; init; }

    /// <inheritdoc />
    public override ValidationResult Validate() =>
        Replicates < 1 ? ValidationResult.Error($"--replicates: {Replicates} is below 1.")
        : Threads < 1 ? ValidationResult.Error($"--threads: {Threads} is below 1.")
        : ValidationResult.Success();
}

/// <summary>Plays a study.</summary>
public sealed class StudyCommand(CommandOutput output) : Command<StudySettings>
{
    private const int Width = 80;

    /// <inheritdoc />
    public override int Execute(CommandContext context, StudySettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Study study = StudyReader.Read(settings.File, [.. Headlines.All.Select(h => h.Key)]);
        string folder = settings.Out ?? Path.Combine("out", Path.GetFileNameWithoutExtension(settings.File));
        using var runner = new StudyRunner(ShippedLibrary.Library, ProgramVersion.Text);
        StudyResult result = BatchProgressBar.Show(output, "seasons", told => runner.Run(
            study, folder, settings.Replicates ?? study.Replicates, settings.Threads ?? Environment.ProcessorCount, told, cancellationToken));
        StudyReportFiles.Write(folder, result, ProgramVersion.Text, !settings.NoPlots);
        output.Out.WriteLine($"{study.Title}: {result.Shares.Count} plans, {result.Batch.Batch.RunsOfAPlan} replicates each");
        output.Out.WriteLine(new string('-', Width));
        foreach (string sentence in StudyPage.Answer(result))
        {
            foreach (string line in ScreenPage.Wrap(sentence, Width - 2).Select((line, i) => (i == 0 ? "* " : "  ") + line))
            {
                output.Out.WriteLine(line);
            }
        }

        output.Out.WriteLine(new string('-', Width));
        output.Out.WriteLine($"Files   {folder.Replace('\\', '/')}: study.html, points.csv, drivers.csv, runs.csv (and .parquet)");
        return CommandLine.Done;
    }
}
