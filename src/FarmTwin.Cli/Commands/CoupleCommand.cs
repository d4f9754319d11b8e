using System.ComponentModel;
using FarmTwin.Farm.Description;
using FarmTwin.Reports.CouplingReport;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Coupling;
using FarmTwin.Studies.Plans;
using Spectre.Console;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>What <c>couple</c> takes.</summary>
public sealed class CoupleSettings : CommandSettings
{
    private const int LongestRange = 3650;

    /// <summary>The scenario file.</summary>
    [CommandArgument(0, "<FILE>")]
    [Description("The scenario file; its own day of coupling is left out of account")]
    public string File { get; init; } = string.Empty;

    /// <summary>First day.</summary>
    [CommandOption("--from <DAY>")]
    [Description("First day tried; 28 when left out. Moved on to a Monday where the gates ask for the early week")]
    public int From { get; init; } = 28;

    /// <summary>Last day.</summary>
    [CommandOption("--to <DAY>")]
    [Description("Last day tried; 112 when left out")]
    public int To { get; init; } = 112;

    /// <summary>Days between.</summary>
    [CommandOption("--every <N>")]
    [Description("Days between the days tried; 7 when left out")]
    public int Every { get; init; } = 7;

    /// <summary>Replicates.</summary>
    [CommandOption("--replicates <N>")]
    [Description("How often each is tried, with other weather and other unknowns; 20 when left out")]
    public int Replicates { get; init; } = 20;

    /// <summary>Seed.</summary>
    [CommandOption("--seed <N>")]
    [Description("Seed of all chance; the scenario's own when left out")]
    public long? Seed { get; init; }

    /// <summary>Threads.</summary>
    [CommandOption("--threads <N>")]
    [Description("How many replicates are played at once; as many as there are processors when left out. The result is the same")]
    public int? Threads { get; init; }

    /// <summary>Folder.</summary>
    [CommandOption("--out <DIR>")]
    [Description("Folder for the files; out/<scenario>-couple when left out")]
    public string? Out { get; init; }

    /// <summary>Whether the result goes to the screen as JSON.</summary>
    [CommandOption("--json")]
    [Description("Prints the result as JSON instead of the page")]
    public bool Json { get; init; }

    /// <inheritdoc />
    public override ValidationResult Validate() =>
        From < 1 ? ValidationResult.Error($"--from: {From} is below 1.")
        : To < From || To > LongestRange ? ValidationResult.Error($"--to: {To} is not between --from {From} and {LongestRange}.")
        : Every < 1 ? ValidationResult.Error($"--every: {Every} is below 1.")
        : Replicates < 1 ? ValidationResult.Error($"--replicates: {Replicates} is below 1.")
        : Seed < 0 ? ValidationResult.Error($"--seed: {Seed} is below 0.")
        : Threads < 1 ? ValidationResult.Error($"--threads: {Threads} is below 1.")
        : ValidationResult.Success();
}

/// <summary>Finds the day to open the valves.</summary>
public sealed class CoupleCommand(CommandOutput output) : Command<CoupleSettings>
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, CoupleSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Scenario<FarmDescription> scenario = ScenarioReader.Read<FarmDescription>(settings.File);
        FarmPlan plan = FarmPlan.Of(scenario, ShippedLibrary.Library);
        CouplingStudyResult result;
        try
        {
            result = Play(plan, scenario, settings, cancellationToken);
        }
        catch (DescriptionException e)
        {
            throw new DescriptionException($"{settings.File}: {e.Message}");
        }

        string folder = settings.Out ?? Path.Combine("out", Path.GetFileNameWithoutExtension(settings.File) + "-couple");
        CouplingFiles.Write(folder, result, ProgramVersion.Text);
        if (settings.Json)
        {
            output.Out.Write(CouplingFiles.Json(result));
            return CommandLine.Done;
        }

        foreach (string line in CouplingPage.Screen(result, folder.Replace('\\', '/')))
        {
            output.Out.WriteLine(line);
        }

        return CommandLine.Done;
    }

    private CouplingStudyResult Play(FarmPlan plan, Scenario<FarmDescription> scenario, CoupleSettings settings, CancellationToken cancellationToken)
    {
        IReadOnlyList<int> days = CouplingStudy.Days(plan.Farm, settings.From, settings.To, settings.Every);
        ulong seed = (ulong)(settings.Seed ?? scenario.Value.Seed);
        int threads = settings.Threads ?? Environment.ProcessorCount;
        if (!output.IsInteractive || settings.Json)
        {
            return CouplingStudy.Play(plan, ShippedLibrary.Library, seed, settings.Replicates, days, CouplingStudy.UsualWindowDays, threads, null, cancellationToken);
        }

        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output.Error) });
        return console.Progress().AutoClear(true).Start(progress =>
        {
            ProgressTask bar = progress.AddTask("replicates", maxValue: settings.Replicates);
            return CouplingStudy.Play(plan, ShippedLibrary.Library, seed, settings.Replicates, days, CouplingStudy.UsualWindowDays, threads, () => bar.Increment(1), cancellationToken);
        });
    }
}
