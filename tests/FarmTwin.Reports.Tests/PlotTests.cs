using FarmTwin.Reports.Plots;
using ScottPlot;
using SkiaSharp;

namespace FarmTwin.Reports.Tests;

public sealed class PlotTests(SeasonFixture fixture) : IClassFixture<SeasonFixture>
{
    private IReadOnlyList<Figure> Figures => SeasonFigures.Of(fixture.Season, fixture.Summary, fixture.Bands);

    [Fact]
    public void A_season_gives_the_figures_that_the_files_are_named_after()
    {
        Assert.Equal(SeasonFigures.Names.Where(n => n is not ("microgreens" or "fault")), Figures.Select(f => f.Name));
        Assert.All(Figures, f => Assert.All(f.Panels, p => Assert.InRange(p.Lines.Count, 1, 5)));
        Assert.All(Figures, f => Assert.DoesNotContain("NaN", f.Title + f.Alternative));
    }

    [Fact]
    public void Every_sign_of_every_figure_is_in_the_shipped_fonts()
    {
        foreach (Figure figure in Figures)
        {
            string text = figure.Title + figure.Subtitle + string.Concat(figure.Events.Select(e => e.Label))
                + string.Concat(figure.Panels.Select(p => p.Axis + string.Concat(p.Lines.Select(l => l.Label)) + string.Concat(p.Bands.Select(b => b.Words))));
            Assert.DoesNotContain((ushort)0, ShippedFonts.Regular.GetGlyphs(text));
            Assert.DoesNotContain((ushort)0, ShippedFonts.Bold.GetGlyphs(text));
        }
    }

    [Fact]
    public void Text_is_drawn_with_the_shipped_fonts_alone()
    {
        ShippedFonts.Use();
        Assert.Single(Fonts.FontResolvers);
        Assert.Same(ShippedFonts.Regular, Fonts.GetTypeface("any name at all", FontWeight.Normal, FontSlant.Upright, FontSpacing.Normal));
        Figure figure = Figures[0];
        using SKBitmap full = SKBitmap.Decode(FigureImage.Png(figure));
        using SKBitmap empty = SKBitmap.Decode(FigureImage.Png(figure with { Title = " ", Subtitle = " " }));
        int first = Ink(full, 0, 0, full.Width, full.Height / 10);
        Assert.True(first > 2000, $"a title leaves ink at the top, not {first} dark points");

        // Tick labels stand left of the axis and below it.
        Assert.True(Ink(full, 40, full.Height / 4, 105, full.Height * 3 / 4) > 300, "numbers at the left axis");
        Assert.True(Ink(full, 110, full.Height - 70, full.Width - 300, full.Height - 10) > 500, "dates below the axis");
        Assert.True(empty.Height <= full.Height);
    }

    [Fact]
    public void Svg_is_self_contained_and_says_what_it_shows()
    {
        foreach (Figure figure in Figures)
        {
            string svg = FigureImage.Svg(figure);
            System.Xml.Linq.XDocument.Parse(svg);
            Assert.Contains($"<title id=\"{figure.Name}-title\">", svg);
            Assert.Contains("<desc ", svg);
            Assert.DoesNotContain("<script", svg);
            Assert.DoesNotMatch("(href|src)=\"(http|file|/)", svg);
            Assert.DoesNotMatch("id=\"cl_", svg);
        }
    }

    [Fact]
    public void Drawing_twice_gives_the_same_bytes()
    {
        Assert.All(Figures, figure =>
        {
            Assert.Equal(FigureImage.Png(figure), FigureImage.Png(figure));
            Assert.Equal(FigureImage.Svg(figure), FigureImage.Svg(figure));
        });
    }

    private static int Ink(SKBitmap bitmap, int left, int top, int right, int bottom)
    {
        int dark = 0;
        for (int y = top; y < bottom; y++)
        {
            for (int x = left; x < right; x++)
            {
                SKColor colour = bitmap.GetPixel(x, y);
                dark += colour.Red < 120 && colour.Green < 120 && colour.Blue < 120 ? 1 : 0;
            }
        }

        return dark;
    }
}
