using System.ComponentModel;
using FarmTwin.Reports;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.DesignSheet;
using FarmTwin.Farm.Seasons;
using FarmTwin.Reports.Json;
using FarmTwin.Reports.Screen;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using Spectre.Console;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>What <c>check</c> takes.</summary>
public sealed class CheckSettings : CommandSettings
{
    /// <summary>The scenario file.</summary>
    [CommandArgument(0, "<FILE>")]
    [Description("The scenario file")]
    public string File { get; init; } = string.Empty;

    /// <summary>Whether every value is listed.</summary>
    [CommandOption("--resolved")]
    [Description("Lists every value after merging, and the file and line it comes from, in place of the sheet")]
    public bool Resolved { get; init; }

    /// <summary>Whether the sheet goes to the screen as JSON.</summary>
    [CommandOption("--json")]
    [Description("Prints the sheet as JSON instead of the table")]
    public bool Json { get; init; }

    /// <summary>Units of the table.</summary>
    [CommandOption("--units <UNITS>")]
    [Description("Units of the table: metric or us; JSON is always metric")]
    public string Units { get; init; } = "metric";

    /// <inheritdoc />
    public override ValidationResult Validate() =>
        Units is not ("us" or "metric") ? ValidationResult.Error($"--units: '{Units}' is neither 'metric' nor 'us'.") : ValidationResult.Success();
}

/// <summary>Reads a scenario and prints its design sheet; no season is run.</summary>
public sealed class CheckCommand(CommandOutput output) : Command<CheckSettings>
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, CheckSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Scenario<FarmDescription> scenario = ScenarioReader.Read<FarmDescription>(settings.File);
        Sheet sheet = SheetOf(scenario.Value, settings.File);
        if (settings.Json)
        {
            output.Out.Write(SummaryJson.Write(sheet));
            return CommandLine.Done;
        }

        IEnumerable<string> lines = settings.Resolved
            ? scenario.Resolved.Describe()
            : [.. DesignSheetPage.Of(sheet, settings.Units == "us" ? UnitSystem.Us : UnitSystem.Metric, key => SourceList.Citations.GetValueOrDefault(key, key)), string.Empty];
        foreach (string line in lines)
        {
            output.Out.WriteLine(line);
        }

        output.Out.WriteLine($"{settings.File} is readable: {scenario.Value.Title} ({scenario.Value.LengthDays:0.##} days from "
            + $"{scenario.Value.Start:d MMM yyyy}, {scenario.Value.Basins.Count} basins, hash {scenario.Hash[..8]}).");
        return CommandLine.Done;
    }

    // Parts that are each well written may still not make a farm: then the file is named, since no single line is wrong.
    private static Sheet SheetOf(FarmDescription farm, string file)
    {
        try
        {
            return Sheet.Of(new Season(farm, ShippedLibrary.Library, (ulong)farm.Seed), ShippedLibrary.Library);
        }
        catch (DescriptionException e)
        {
            throw new DescriptionException($"{file}: {e.Message}");
        }
    }
}
