using System.ComponentModel;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
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
    [Description("Lists every value after merging, and the file and line it comes from")]
    public bool Resolved { get; init; }
}

/// <summary>Reads a scenario without running it.</summary>
public sealed class CheckCommand(CommandOutput output) : Command<CheckSettings>
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, CheckSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        Scenario<FarmDescription> scenario = ScenarioReader.Read<FarmDescription>(settings.File);
        try
        {
            _ = new Season(scenario.Value, ShippedLibrary.Library, (ulong)scenario.Value.Seed);
        }
        catch (DescriptionException e)
        {
            throw new DescriptionException($"{settings.File}: {e.Message}");
        }

        if (settings.Resolved)
        {
            foreach (string line in scenario.Resolved.Describe())
            {
                output.Out.WriteLine(line);
            }
        }

        output.Out.WriteLine($"{settings.File} is readable: {scenario.Value.Title} ({scenario.Value.LengthDays:0.##} days from "
            + $"{scenario.Value.Start:d MMM yyyy}, {scenario.Value.Basins.Count} basins, hash {scenario.Hash[..8]}).");
        return CommandLine.Done;
    }
}
