using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>Sentences about a season, each behind a condition on its data.</summary>
/// <remarks>Heaviest first: 90 and above what harms fish, 60 what costs a crop or a week, below that what a person should know.</remarks>
internal sealed class FindingList
{
    private const int Most = 12;
    private const int MostOfAnArea = 3;
    private const double TooHeavyToLeaveOut = 80;
    private readonly List<(double Weight, string Area, Finding Finding)> _found = [];

    private string _area = string.Empty;

    private FindingList(Season season, SeasonSummary summary, RecordView record, SummaryBands bands)
    {
        Season = season;
        Summary = summary;
        Record = record;
        Bands = bands;
    }

    public Season Season { get; }

    public SeasonSummary Summary { get; }

    public RecordView Record { get; }

    public SummaryBands Bands { get; }

    public static IReadOnlyList<Finding> Of(Season season, SeasonSummary summary, RecordView record, SummaryBands bands)
    {
        var list = new FindingList(season, summary, record, bands);
        if (record.DayCount > 0)
        {
            list._area = "start-up";
            StartUpFindings.Add(list);
            CropFindings.AddFirst(list);
            list._area = "fish";
            FishFindings.Add(list);
            list._area = "husbandry";
            HusbandryFindings.Add(list);
            list._area = "faults";
            FaultFindings.Add(list);
            list._area = "crops";
            CropFindings.Add(list);
            list._area = "fruit";
            FruitFindings.Add(list);
            list._area = "nursery";
            NurseryFindings.Add(list);
            list._area = "solids";
            SolidsFindings.Add(list);
            list._area = "supply";
            SupplyFindings.Add(list);
            list._area = "nutrients";
            NutrientFindings.Add(list);
            list._area = "business";
            BusinessFindings.Add(list);
            list._area = "alarms";
            AlarmFindings.Add(list);
            list._area = "energy";
            EnergyFindings.Add(list);
        }

        return list.Choose();
    }

    public void Add(double weight, string sentence, Proposal? proposal = null) => _found.Add((weight, _area, new Finding(sentence, proposal)));

    // Heaviest first, but no area crowds out the others.
    private List<Finding> Choose()
    {
        var chosen = new List<Finding>();
        var areas = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach ((double weight, string area, Finding finding) in _found.OrderByDescending(f => f.Weight))
        {
            int before = areas.GetValueOrDefault(area);
            if (chosen.Count < Most && (before < MostOfAnArea || weight >= TooHeavyToLeaveOut))
            {
                chosen.Add(finding);
                areas[area] = before + 1;
            }
        }

        return chosen;
    }

    /// <summary>A date that may lie beyond the season: "3 May 2029 (day 794)".</summary>
    public string Date(double day) => $"{Record.Start.AddDays((int)day):d MMM yyyy} (day {day:0})";

    public string Day(double day) => Record.DayInWords(day);

    /// <summary>First and last day of a kind of event, and how many there were.</summary>
    public (double First, double Last, int Count) Span(string what, string? where = null)
    {
        double first = double.NaN;
        double last = double.NaN;
        int count = 0;
        foreach (LoggedEvent line in Season.Log.Events)
        {
            if (line.What == what && (where is null || line.Where == where))
            {
                last = Math.Floor(FarmWork.DayOf(line.Seconds));
                first = count++ == 0 ? last : first;
            }
        }

        return (first, last, count);
    }
}
