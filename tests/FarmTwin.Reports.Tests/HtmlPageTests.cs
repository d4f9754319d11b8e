using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using FarmTwin.Reports.Html;
using FarmTwin.Reports.Plots;

namespace FarmTwin.Reports.Tests;

public sealed class HtmlPageTests
{
    [Fact]
    public void What_looks_like_markup_is_shown_as_it_was_written()
    {
        const string Nasty = "a < b & \"c\" > <script>alert(1)</script>";
        var page = new HtmlPage(Nasty, Nasty);
        page.Section(Nasty).Paragraph(Nasty).List([Nasty]).Definitions([(Nasty, Nasty)]).Note(Nasty, Nasty)
            .Table(new HtmlTable(Nasty, HtmlColumn.Words(Nasty), HtmlColumn.Number(Nasty, Nasty)).Row(Nasty, Nasty))
            .Figure(Picture("one", Nasty));
        IDocument document = Read(page);
        Assert.Empty(document.Scripts);
        Assert.Equal(Nasty, document.Title);
        Assert.Equal(Nasty, document.QuerySelector("h2")!.TextContent);
        Assert.Equal(Nasty, document.QuerySelector("main p")!.TextContent);
        Assert.Equal(Nasty, document.QuerySelector("li")!.TextContent);
        Assert.Equal(Nasty, document.QuerySelector("tbody th")!.TextContent);
        Assert.Equal(Nasty, document.QuerySelector("svg title")!.TextContent);
    }

    [Fact]
    public void Headings_go_down_one_level_at_a_time_and_empty_sections_are_left_out()
    {
        var page = new HtmlPage("Farm") { HasContents = true };
        HtmlSection water = page.Section("Water");
        water.Paragraph("Text.");
        HtmlSection peaks = water.Section("Peaks").Paragraph("More.");
        peaks.Section("By tank").Paragraph("Most.");
        page.Section("Nothing");
        page.Section("Crops").Section("Nothing either");
        page.Section("Fish").List(["one"]);
        PageRules.Check(page.ToString());
        Assert.Equal(["H1", "H2", "H3", "H4", "H2"], Read(page).QuerySelectorAll("h1,h2,h3,h4,h5,h6").Select(h => h.TagName));
        Assert.Throws<InvalidOperationException>(() => peaks.Section("a").Section("b"));
    }

    [Fact]
    public void Two_figures_of_one_name_are_refused()
    {
        var page = new HtmlPage("Farm");
        page.Section("Figures").Figure(Picture("same", "First")).Figure(Picture("same", "Second"));
        InvalidOperationException error = Assert.Throws<InvalidOperationException>(page.ToString);
        Assert.Contains("same-title", error.Message);
    }

    [Fact]
    public void Sections_of_one_name_have_places_of_their_own()
    {
        var page = new HtmlPage("Farm") { HasContents = true };
        page.Section("Fish").Paragraph("a");
        page.Section("Fish").Paragraph("b");
        page.Section("2027").Paragraph("c");
        PageRules.Check(page.ToString());
        Assert.Equal(["fish", "fish-2", "section-2027"], Read(page).QuerySelectorAll("h2").Select(h => h.Id));
    }

    [Theory]
    [InlineData("http://example.org/days.csv")]
    [InlineData("//example.org/days.csv")]
    [InlineData("javascript:alert(1)")]
    [InlineData("/etc/days.csv")]
    public void A_link_out_of_the_folder_is_refused(string target) => Assert.Throws<ArgumentException>(() => Inline.Link("numbers", target));

    [Fact]
    public void A_row_needs_a_name_and_a_cell_for_every_column()
    {
        var table = new HtmlTable("Fish", HtmlColumn.Words("tank"), HtmlColumn.Number("sold", "kg"));
        Assert.Throws<ArgumentException>(() => table.Row("tank-1"));
        Assert.Throws<ArgumentException>(() => table.Row("tank-1", "3", "4"));
        Assert.Throws<ArgumentException>(() => table.Row(" ", "3"));
    }

    [Fact]
    public void A_drawn_figure_keeps_its_name_its_words_and_its_dashes_on_a_page()
    {
        double[] x = [0, 1, 2];
        Figure Drawn(string name) => new(name, "Finding & more", "Unit", "Finding & more. In words.", new DateOnly(2027, 3, 1), 2,
            [new FigurePanel("mg/L", [new FigureLine("full", x, [1, 2, 3], 0), new FigureLine("dashed", x, [3, 2, 1], 1)], [new FigureBand(1, 2, "fit")])],
            [new FigureEvent(1, "opened")]);
        var page = new HtmlPage("Farm");
        page.Section("Figures").Figure(HtmlFigure.Of(Drawn("one"))).Figure(HtmlFigure.Of(Drawn("two"), "plan-a/"));
        PageRules.Check(page.ToString());
        IDocument document = Read(page);
        Assert.Equal("In words. Numbers: days.csv.", document.QuerySelector("figcaption")!.TextContent);
        Assert.Equal("plan-a/days.csv", document.QuerySelectorAll("figcaption a")[1].GetAttribute("href"));
        IElement svg = document.QuerySelector("svg")!;
        Assert.NotEmpty(svg.QuerySelectorAll("path[stroke-dasharray='10 6']"));
        Assert.Contains(svg.QuerySelectorAll("text"), t => t.TextContent == "opened" && double.Parse(t.GetAttribute("textLength")!) > 20);
        Assert.DoesNotContain(svg.QuerySelectorAll("text"), t => t.GetAttribute("x")!.Contains(','));
        Assert.DoesNotContain(svg.QuerySelectorAll("rect"), r => !r.HasAttribute("fill") && r.ParentElement!.LocalName != "clipPath");
    }

    private static HtmlFigure Picture(string name, string words) =>
        new(new SvgPicture(name, 10, 10, words, words).Rect(0, 0, 5, 5, "fill=\"#000\"").ToString(), words, string.Empty, words, null);

    private static IDocument Read(HtmlPage page) => new HtmlParser().ParseDocument(page.ToString());
}
