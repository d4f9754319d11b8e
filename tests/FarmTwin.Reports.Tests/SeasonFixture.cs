using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Reports.Tests;

/// <summary>The first hundred and sixty days of the shipped season: long enough for fish, coupling, crops and a first sale. Run once.</summary>
public sealed class SeasonFixture
{
    public const int Days = 160;

    public SeasonFixture()
    {
        FarmDescription farm = ScenarioReader.Read<FarmDescription>(Repository.FirstSeason).Value with { LengthDays = Days };
        Season = new Season(farm, ShippedLibrary.Library, 1);
        Season.AdvanceToEnd();
        Bands = SummaryBands.From(ShippedLibrary.Library);
        Summary = SeasonSummary.Of(Season, ShippedLibrary.Library, "test", "0123456789");
    }

    public Season Season { get; }

    public SeasonSummary Summary { get; }

    public SummaryBands Bands { get; }
}
