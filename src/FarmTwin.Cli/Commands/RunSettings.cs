using System.ComponentModel;
using FarmTwin.Reports.Screen;
using Spectre.Console;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>What <c>run</c> takes.</summary>
public sealed class RunSettings : CommandSettings
{
    private const int LongestDays = 3660;

    /// <summary>The scenario file.</summary>
    [CommandArgument(0, "<FILE>")]
    [Description("The scenario file")]
    public string File { get; init; } = string.Empty;

    /// <summary>Folder for the files.</summary>
    [CommandOption("--out <DIR>")]
    [Description("Folder for the files; out/<scenario> when left out")]
    public string? Out { get; init; }

    /// <summary>Whether hours.csv is written.</summary>
    [CommandOption("--hourly")]
    [Description("Also writes hours.csv")]
    public bool Hourly { get; init; }

    /// <summary>Seed of all chance; the scenario's when left out.</summary>
    [CommandOption("--seed <N>")]
    [Description("Seed of all chance; the scenario's own when left out")]
    public long? Seed { get; init; }

    /// <summary>Length of the season, days.</summary>
    [CommandOption("--days <N>")]
    [Description("Length of the season in days; the scenario's own when left out")]
    public int? Days { get; init; }

    /// <summary>Longest step, minutes.</summary>
    [CommandOption("--step <MIN>")]
    [Description("Longest step of the clock: 60, 30, 15 or 5 minutes")]
    public int? StepMinutes { get; init; }

    /// <summary>Whether the summary goes to the screen as JSON.</summary>
    [CommandOption("--json")]
    [Description("Prints the summary as JSON instead of the page")]
    public bool Json { get; init; }

    /// <summary>Units of the page.</summary>
    [CommandOption("--units <UNITS>")]
    [Description("Units of the page: metric or us; files are always metric")]
    public string Units { get; init; } = "metric";

    /// <summary>Whether no figures are drawn.</summary>
    [CommandOption("--no-plots")]
    [Description("Draws no figures")]
    public bool NoPlots { get; init; }

    /// <summary>Whether the changes that findings propose are not played.</summary>
    [CommandOption("--no-trials")]
    [Description("Does not play the season again with what the findings propose: quicker")]
    public bool NoTrials { get; init; }

    /// <summary>The units as read.</summary>
    public UnitSystem UnitSystem => Units == "us" ? UnitSystem.Us : UnitSystem.Metric;

    /// <inheritdoc />
    public override ValidationResult Validate() =>
        Units is not ("us" or "metric") ? ValidationResult.Error($"--units: '{Units}' is neither 'metric' nor 'us'.")
        : Days is < 1 or > LongestDays ? ValidationResult.Error($"--days: {Days} is not between 1 and {LongestDays}.")
        : StepMinutes is not (null or 60 or 30 or 15 or 5) ? ValidationResult.Error($"--step: {StepMinutes} is none of 60, 30, 15, 5.")
        : Seed < 0 ? ValidationResult.Error($"--seed: {Seed} is below 0.")
        : ValidationResult.Success();
}
