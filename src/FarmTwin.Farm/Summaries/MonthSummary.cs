using System.Globalization;
using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Summaries;

/// <summary>What left the lanes of a crop in a calendar month.</summary>
public sealed record MonthSummary
{
    /// <summary>Year and month, as in 2027-05.</summary>
    public required string Month { get; init; }

    /// <summary>Day of its first harvest.</summary>
    public required double FirstDay { get; init; }

    /// <summary>Heads harvested.</summary>
    public required double Heads { get; init; }

    /// <summary>Mean weight of the lightest harvest, g a head.</summary>
    public required double LightestG { get; init; }

    /// <summary>Mean weight, g a head.</summary>
    public required double MeanG { get; init; }

    /// <summary>Mean weight of the heaviest harvest, g a head.</summary>
    public required double HeaviestG { get; init; }

    /// <summary>Age of the youngest harvest, days from sowing.</summary>
    public required double YoungestDays { get; init; }

    /// <summary>Age of the oldest harvest, days from sowing.</summary>
    public required double OldestDays { get; init; }

    /// <summary>Share of the heads in harvests whose mean head was outside the saleable band.</summary>
    public required double OutsideBandShare { get; init; }

    /// <summary>Share of the heads that were first grade.</summary>
    public required double FirstGradeShare { get; init; }
}

/// <summary>Figures of the months.</summary>
internal static class MonthFigures
{
    public static IReadOnlyList<MonthSummary> Of(RecordView record, string name, CropParameters crop)
    {
        double[] heads = record.Days($"heads_{name}");
        double[] weights = record.Days($"head_weight_{name}_g");
        double[] ages = record.Days($"head_age_{name}_d");
        double[] first = record.Days($"first_grade_{name}");
        var months = new List<MonthSummary>();
        foreach (IGrouping<string, int> month in Enumerable.Range(0, heads.Length).Where(d => heads[d] > 0)
            .GroupBy(d => record.Start.AddDays(d).ToString("yyyy-MM", CultureInfo.InvariantCulture)))
        {
            double sum = month.Sum(d => heads[d]);
            months.Add(new MonthSummary
            {
                Month = month.Key,
                FirstDay = month.First(),
                Heads = sum,
                LightestG = month.Min(d => weights[d]),
                MeanG = month.Sum(d => heads[d] * weights[d]) / sum,
                HeaviestG = month.Max(d => weights[d]),
                YoungestDays = month.Min(d => ages[d]),
                OldestDays = month.Max(d => ages[d]),
                OutsideBandShare = month.Where(d => weights[d] < crop.SaleableFreshGramsLow || weights[d] > crop.SaleableFreshGramsHigh).Sum(d => heads[d]) / sum,
                FirstGradeShare = month.Sum(d => first[d]) / sum,
            });
        }

        return months;
    }
}
