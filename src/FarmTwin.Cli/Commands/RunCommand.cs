using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Reports;
using FarmTwin.Reports.Json;
using FarmTwin.Reports.Plots;
using FarmTwin.Reports.Screen;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Findings;
using Spectre.Console;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>Runs one season.</summary>
public sealed class RunCommand(CommandOutput output) : Command<RunSettings>
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, RunSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Task warm = settings.NoPlots ? Task.CompletedTask : Task.Run(FigureImage.WarmUp, cancellationToken);
        Scenario<FarmDescription> scenario = ScenarioReader.Read<FarmDescription>(settings.File);
        FarmDescription farm = scenario.Value with
        {
            LengthDays = settings.Days ?? scenario.Value.LengthDays,
            StepMinutes = settings.StepMinutes ?? scenario.Value.StepMinutes,
        };
        (Season season, SeasonSummary summary) = Play(farm, scenario, settings, cancellationToken);
        string folder = settings.Out ?? Path.Combine("out", Path.GetFileNameWithoutExtension(settings.File));
        warm.Wait(cancellationToken);
        SeasonFiles.Write(folder, season, summary, SummaryBands.From(ShippedLibrary.Library), settings.Hourly, !settings.NoPlots);
        if (settings.Json)
        {
            output.Out.Write(SummaryJson.Write(summary));
        }
        else
        {
            foreach (string line in ScreenPage.Of(summary, settings.UnitSystem, folder.Replace('\\', '/') + (settings.NoPlots ? string.Empty : ": begin with report.html")))
            {
                output.Out.WriteLine(line);
            }
        }

        return CommandLine.Done;
    }

    // Parts that are each well written may still not make a farm: then the file is named, since no single line is wrong.
    private (Season Season, SeasonSummary Summary) Play(
        FarmDescription farm, Scenario<FarmDescription> scenario, RunSettings settings, CancellationToken cancellationToken)
    {
        try
        {
            var season = new Season(farm, ShippedLibrary.Library, (ulong)(settings.Seed ?? scenario.Value.Seed));
            Advance(season, settings, cancellationToken);
            SeasonSummary summary = SeasonSummary.Of(season, ShippedLibrary.Library, ProgramVersion.Text, scenario.Hash);
            return (season, settings.NoTrials ? summary : summary with { Trials = FindingTrials.Of(season, summary, ShippedLibrary.Library, Environment.ProcessorCount) });
        }
        catch (DescriptionException e)
        {
            throw new DescriptionException($"{settings.File}: {e.Message}");
        }
    }

    private void Advance(Season season, RunSettings settings, CancellationToken cancellationToken)
    {
        if (!output.IsInteractive || settings.Json)
        {
            season.AdvanceToEnd();
            return;
        }

        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output.Error) });
        console.Progress().AutoClear(true).Start(progress =>
        {
            ProgressTask task = progress.AddTask(Markup.Escape(season.Parts.Farm.Title), maxValue: season.LengthSeconds);
            while (season.NowSeconds < season.LengthSeconds)
            {
                cancellationToken.ThrowIfCancellationRequested();
                season.Advance(Math.Min(season.LengthSeconds, season.NowSeconds + UnitConstants.SecondsPerDay));
                task.Value = season.NowSeconds;
            }
        });
    }
}
