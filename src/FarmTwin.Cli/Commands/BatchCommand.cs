using System.ComponentModel;
using System.Runtime.InteropServices;
using FarmTwin.Farm.Description;
using FarmTwin.Reports.Comparison;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Plans;
using Spectre.Console;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>What <c>batch</c> takes.</summary>
public sealed class BatchSettings : CommandSettings
{
    private const int MostReplicates = 100000;

    /// <summary>The scenario files.</summary>
    [CommandArgument(0, "<FILES>")]
    [Description("Scenario files: each is a plan; the first is the one that the others are compared with")]
    public string[] Files { get; init; } = [];

    /// <summary>Replicates.</summary>
    [CommandOption("--replicates <N>")]
    [Description("How often each plan is played under each seed; 20 when left out")]
    public int Replicates { get; init; } = 20;

    /// <summary>Seeds.</summary>
    [CommandOption("--seed <N>")]
    [Description("Seed of all chance; may be given several times; the first file's when left out")]
    public long[] Seeds { get; init; } = [];

    /// <summary>Threads.</summary>
    [CommandOption("--threads <N>")]
    [Description("How many seasons are played at once; as many as there are processors when left out. The result is the same")]
    public int? Threads { get; init; }

    /// <summary>Length of the seasons, days.</summary>
    [CommandOption("--days <N>")]
    [Description("Length of the seasons in days; each scenario's own when left out")]
    public int? Days { get; init; }

    /// <summary>Folder.</summary>
    [CommandOption("--out <DIR>")]
    [Description("Folder of the batch; out/batch when left out. A batch that was stopped goes on there")]
    public string Out { get; init; } = Path.Combine("out", "batch");

    /// <summary>Whether the daily table of every run is kept.</summary>
    [CommandOption("--daily")]
    [Description("Keeps the daily table of every run, as Parquet under days/")]
    public bool Daily { get; init; }

    /// <summary>Whether no figures are drawn.</summary>
    [CommandOption("--no-plots")]
    [Description("Draws no figures")]
    public bool NoPlots { get; init; }

    /// <inheritdoc />
    public override ValidationResult Validate() =>
        Replicates is < 1 or > MostReplicates ? ValidationResult.Error($"--replicates: {Replicates} is not between 1 and {MostReplicates}.")
        : Threads < 1 ? ValidationResult.Error($"--threads: {Threads} is below 1.")
        : Days < 1 ? ValidationResult.Error($"--days: {Days} is below 1.")
        : Seeds.Any(s => s < 0) ? ValidationResult.Error("--seed: a seed is below 0.")
        : Seeds.Distinct().Count() != Seeds.Length ? ValidationResult.Error("--seed: a seed is given twice.")
        : ValidationResult.Success();
}

/// <summary>Plays several plans again and again and compares them.</summary>
public sealed class BatchCommand(CommandOutput output) : Command<BatchSettings>
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, BatchSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        BatchPlan batch = Read(settings);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        using var runner = new BatchRunner(ShippedLibrary.Library, ProgramVersion.Text);
        BatchProgress last = default;
        BatchResult result;
        using (Interrupts(stop))
        {
            try
            {
                result = BatchProgressBar.Show(output, "seasons", told => runner.Run(
                    batch, settings.Out, settings.Threads ?? Environment.ProcessorCount,
                    now =>
                    {
                        last = now;
                        told(now);
                    },
                    settings.Daily ? new DailyTables(settings.Out) : null, stop.Token));
            }
            catch (OperationCanceledException)
            {
                output.Error.WriteLine($"Stopped with {last.Done} of {last.Of} seasons finished. They are kept: the same command goes on from there.");
                return CommandLine.Unexpected;
            }
        }

        BatchFiles.Write(settings.Out, result, ProgramVersion.Text, !settings.NoPlots);
        foreach (string line in ComparisonScreen.Of(result, settings.Out.Replace('\\', '/')))
        {
            output.Out.WriteLine(line);
        }

        return CommandLine.Done;
    }

    // The first interrupt lets the seasons that are being played end; a second one stops at once, and loses no finished season either.
    private static PosixSignalRegistration Interrupts(CancellationTokenSource stop) => PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
    {
        signal.Cancel = !stop.IsCancellationRequested;
        stop.Cancel();
    });

    // All errors of all files at once, before anything is written.
    private static BatchPlan Read(BatchSettings settings)
    {
        var plans = new List<FarmPlan>();
        var errors = new List<ScenarioError>();
        foreach (string file in settings.Files)
        {
            try
            {
                Scenario<FarmDescription> scenario = ScenarioReader.Read<FarmDescription>(file);
                FarmPlan plan = FarmPlan.Of(scenario, ShippedLibrary.Library);
                plans.Add(settings.Days is { } days ? plan.Over(days) : plan);
            }
            catch (ScenarioException e)
            {
                errors.AddRange(e.Errors);
            }
        }

        if (errors.Count > 0)
        {
            throw new ScenarioException(errors);
        }

        try
        {
            ulong[] seeds = settings.Seeds.Length > 0 ? [.. settings.Seeds.Select(s => (ulong)s)] : [(ulong)plans[0].Farm.Seed];
            return new BatchPlan(plans, seeds, settings.Replicates);
        }
        catch (ArgumentException e)
        {
            throw new DescriptionException(e.Message, e);
        }
    }
}
