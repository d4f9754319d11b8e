using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>Sentences about a season, each behind a condition on its data.</summary>
/// <remarks>Heaviest first: 90 and above what harms fish, 60 what costs a crop or a week, below that what a person should know.</remarks>
internal sealed class FindingList
{
    private const int Most = 12;
    private readonly List<(double Weight, string Sentence)> _found = [];

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

    public static IReadOnlyList<string> Of(Season season, SeasonSummary summary, RecordView record, SummaryBands bands)
    {
        var list = new FindingList(season, summary, record, bands);
        if (record.DayCount > 0)
        {
            StartUpFindings.Add(list);
            FishFindings.Add(list);
            CropFindings.Add(list);
            SolidsFindings.Add(list);
            SupplyFindings.Add(list);
        }

        return [.. list._found.OrderByDescending(f => f.Weight).Take(Most).Select(f => f.Sentence)];
    }

    public void Add(double weight, string sentence) => _found.Add((weight, sentence));

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
