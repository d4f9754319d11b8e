using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries.Findings;

namespace FarmTwin.Farm.Summaries;

/// <summary>A season in figures and sentences. Days are whole days from day 0; a day that was not reached is null.</summary>
/// <remarks>Immutable, plain values, no files. May be made during a run as well as after it: it then speaks of what has passed.</remarks>
public sealed record SeasonSummary
{
    /// <summary>Name of the scenario.</summary>
    public required string Title { get; init; }

    /// <summary>Day 0.</summary>
    public required DateOnly Start { get; init; }

    /// <summary>Days that have passed.</summary>
    public required double Days { get; init; }

    /// <summary>What made the numbers.</summary>
    public required EngineIdentity Engine { get; init; }

    /// <summary>The weather.</summary>
    public required WeatherSummary Weather { get; init; }

    /// <summary>The air of the house.</summary>
    public required HouseSummary House { get; init; }

    /// <summary>The fish.</summary>
    public required FishSummary Fish { get; init; }

    /// <summary>The crops by name.</summary>
    public required IReadOnlyDictionary<string, CropSummary> Crops { get; init; }

    /// <summary>The nursery and its microgreens.</summary>
    public required NurserySummary Nursery { get; init; }

    /// <summary>The water.</summary>
    public required WaterSummary Water { get; init; }

    /// <summary>The solids.</summary>
    public required SolidsSummary Solids { get; init; }

    /// <summary>Nutrients.</summary>
    public required NutrientSummary Nutrients { get; init; }

    /// <summary>Fuel and power.</summary>
    public required EnergySummary Energy { get; init; }

    /// <summary>Faults by name, in the order in which they began; empty where nothing broke.</summary>
    public required IReadOnlyDictionary<string, FaultSummary> Faults { get; init; }

    /// <summary>Backups by name.</summary>
    public required IReadOnlyDictionary<string, BackupSummary> Backups { get; init; }

    /// <summary>People's hours.</summary>
    public required LabourSummary Labour { get; init; }

    /// <summary>Sales by product.</summary>
    public required IReadOnlyDictionary<string, SalesSummary> Sales { get; init; }

    /// <summary>Money; null where the scenario states no prices.</summary>
    public required MoneySummary? Money { get; init; }

    /// <summary>Alarms and who answered them; null for a farm without probes and people.</summary>
    public required AlarmSummary? Alarms { get; init; }

    /// <summary>Ledgers by name.</summary>
    public required IReadOnlyDictionary<string, LedgerSummary> Ledgers { get; init; }

    /// <summary>Sentences that a person can act on, weightiest first; each was tested against the data of this season.</summary>
    public required IReadOnlyList<string> Findings { get; init; }

    /// <summary>What came of playing the season again with what a finding proposes; empty where nothing was tried.</summary>
    public IReadOnlyList<FindingTrial> Trials { get; init; } = [];

    /// <summary>What the figures must not be taken for: law, welfare, what is not computed.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Sums up a season as it stands.</summary>
    /// <param name="season">The season, run to any day.</param>
    /// <param name="library">The library, for the bands and for the heat pump that the heaters are compared with.</param>
    /// <param name="version">Version of the program.</param>
    /// <param name="scenarioHash">Hash of the merged scenario; empty where it was not read from a file.</param>
    public static SeasonSummary Of(Season season, FarmLibrary library, string version, string scenarioHash = "")
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(library);
        var record = new RecordView(season);
        SummaryBands bands = SummaryBands.From(library);
        IReadOnlyDictionary<string, LedgerSummary> ledgers = LedgerSummary.Of(season);
        var summary = new SeasonSummary
        {
            Title = season.Parts.Farm.Title,
            Start = season.Parts.Farm.Start,
            Days = (double)season.NowSeconds / UnitConstants.SecondsPerDay,
            Engine = new EngineIdentity(version, scenarioHash, season.Seed, season.Replicate, season.Parts.Farm.StepMinutes),
            Weather = WeatherSummary.Of(season),
            House = HouseSummary.Of(season, record, bands),
            Fish = FishFigures.Of(season, record),
            Crops = CropFigures.Of(season, record),
            Nursery = NurseryFigures.Of(season, record),
            Water = WaterFigures.Of(season, record, bands),
            Solids = SolidsFigures.Of(season, ledgers["nitrogen"]),
            Nutrients = NutrientFigures.Of(season, record, ledgers, bands),
            Energy = EnergyFigures.Of(season, record, library),
            Faults = FaultFigures.Of(season),
            Backups = FaultFigures.BackupsOf(season),
            Labour = LabourFigures.Of(season),
            Sales = MoneyFigures.Sales(season),
            Money = MoneyFigures.Of(season),
            Alarms = AlarmFigures.Of(season),
            Ledgers = ledgers,
            Findings = [],
            Cautions = Summaries.Cautions.Of(season),
        };
        return summary with { Findings = [.. FindingList.Of(season, summary, record, bands).Select(f => f.Sentence)] };
    }

    /// <summary>A day from a time that may not have come.</summary>
    internal static double? DayOrNull(double day) => double.IsNaN(day) ? null : Math.Floor(day);
}
