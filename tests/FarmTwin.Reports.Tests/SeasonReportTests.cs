using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using FarmTwin.Farm.Description;
using FarmTwin.Reports.Html;
using FarmTwin.Reports.Network;
using FarmTwin.Reports.Plots;
using FarmTwin.Reports.RunReport;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Reports.Tests;

public sealed class SeasonReportTests(SeasonFixture fixture) : IClassFixture<SeasonFixture>
{
    [Fact]
    public void The_report_keeps_the_rules_of_a_page_and_its_order()
    {
        string html = Report();
        IHtmlDocument page = PageRules.Check(html);
        Assert.InRange(html.Length, 100_000, 3_000_000);
        string[] headings = [.. page.QuerySelectorAll("h2").Select(h => h.TextContent)];
        string[] wanted = ["In short", "Key dates", "Limits: what was broken, and how long", "Fish, nitrate and yield", "Where the nutrients went", "What this rests on", "Cautions", "How to make these numbers again"];
        Assert.Equal(wanted, headings.Where(wanted.Contains));
        Assert.Equal(html, Report());
    }

    [Fact]
    public void The_report_says_every_finding_and_every_caution_and_names_its_run()
    {
        IHtmlDocument page = PageRules.Check(Report());
        string[] items = [.. page.QuerySelectorAll("li").Select(l => l.TextContent)];
        Assert.All(fixture.Summary.Findings, f => Assert.Contains(f, items));
        Assert.All(fixture.Summary.Cautions, c => Assert.Contains(c, items));
        Assert.Contains(fixture.Summary.Engine.ScenarioHash, page.QuerySelector("main")!.TextContent);
    }

    [Fact]
    public void Streams_of_nitrogen_name_what_the_ledger_says()
    {
        IElement picture = PageRules.Check(Report()).QuerySelectorAll("svg").Single(s => s.QuerySelector("[id='nitrogen-title']") is not null);
        string[] words = [.. picture.QuerySelectorAll("text").Select(t => t.TextContent)];
        double feed = fixture.Summary.Nutrients.NitrogenSources["feed"].G;
        Assert.Contains(words, w => w.StartsWith($"fish feed {feed:#,0} g"));
        Assert.Contains(words, w => w.StartsWith("crops sold"));
    }

    [Theory]
    [InlineData("first-season")]
    [InlineData("whole-farm")]
    [InlineData("no-mineralizer")]
    [InlineData("microgreens-only-nursery")]
    public void The_drawing_shows_every_basin_pump_and_valve_once_and_no_box_on_another(string scenario)
    {
        FarmDescription farm = ScenarioReader.Read<FarmDescription>(Path.Combine(Repository.Root, "scenarios", scenario + ".json")).Value;
        FarmNetwork network = FarmNetwork.Of(farm);
        var page = new HtmlPage("Farm");
        page.Section("Network").Figure(NetworkPicture.Of(network));
        IHtmlDocument document = PageRules.Check(page.ToString());
        string[] words = [.. document.QuerySelectorAll("svg text").Select(t => t.TextContent)];
        Assert.All(network.Basins, b => Assert.Single(words, b.Name));
        Assert.All(network.Links.Select(l => l.Pump).OfType<string>().Concat(network.Links.Select(l => l.Valve).OfType<string>()), tag => Assert.Single(words, tag));
        Assert.DoesNotContain(words, w => w.Contains('…'));
        (double X, double Y, double W, double H)[] boxes = [.. document.QuerySelectorAll("svg rect[stroke-width='1.3'][stroke='#1a1a1a']")
            .Select(r => (Of(r, "x"), Of(r, "y"), Of(r, "width"), Of(r, "height")))];
        Assert.Equal(network.Basins.Count, boxes.Length);
        for (int i = 0; i < boxes.Length; i++)
        {
            for (int j = i + 1; j < boxes.Length; j++)
            {
                bool apart = boxes[i].X + boxes[i].W <= boxes[j].X || boxes[j].X + boxes[j].W <= boxes[i].X
                    || boxes[i].Y + boxes[i].H <= boxes[j].Y || boxes[j].Y + boxes[j].H <= boxes[i].Y;
                Assert.True(apart, $"boxes {i} and {j} of {scenario} overlap");
            }
        }

        double Of(IElement rect, string name) => double.Parse(rect.GetAttribute(name)!);
    }

    [Fact]
    public void Flows_of_the_drawing_balance_at_every_basin_apart_and_coupled()
    {
        FarmNetwork network = FarmNetwork.Of(fixture.Season.Parts.Farm);
        foreach (NetworkBasin basin in network.Basins.Where(b => network.Links.Any(l => l.Kind != LinkKind.NowAndThen && (l.From == b.Name || l.To == b.Name))))
        {
            Assert.Equal(network.Links.Where(l => l.To == basin.Name).Sum(l => l.ApartLitresPerHour), network.Links.Where(l => l.From == basin.Name).Sum(l => l.ApartLitresPerHour), 3.0);
            Assert.Equal(network.Links.Where(l => l.To == basin.Name).Sum(l => l.CoupledLitresPerHour), network.Links.Where(l => l.From == basin.Name).Sum(l => l.CoupledLitresPerHour), 3.0);
        }
    }

    private string Report() => SeasonReport.Of(fixture.Season, fixture.Summary, SeasonFigures.Of(fixture.Season, fixture.Summary, fixture.Bands), ShippedLibrary.Library);
}
