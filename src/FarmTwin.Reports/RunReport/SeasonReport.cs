using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Html;
using FarmTwin.Reports.Network;
using FarmTwin.Reports.Plots;

namespace FarmTwin.Reports.RunReport;

/// <summary>report.html.</summary>
public static class SeasonReport
{
    /// <summary>Makes it.</summary>
    public static string Of(Season season, SeasonSummary summary, IReadOnlyList<Figure> figures)
    {
        ArgumentNullException.ThrowIfNull(season);
        ArgumentNullException.ThrowIfNull(summary);
        var page = new HtmlPage(summary.Title);
        page.Section("Network").Figure(NetworkPicture.Of(FarmNetwork.Of(season.Parts.Farm)));
        return page.ToString();
    }
}
