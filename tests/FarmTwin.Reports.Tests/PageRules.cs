using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace FarmTwin.Reports.Tests;

/// <summary>What holds for every page that the program writes, whatever stands on it.</summary>
internal static class PageRules
{
    public static IHtmlDocument Check(string html)
    {
        IHtmlDocument page = new HtmlParser().ParseDocument(html);
        Assert.StartsWith("<!DOCTYPE html>", html);
        Assert.Equal("en", page.DocumentElement.GetAttribute("lang"));
        Assert.NotEmpty(page.Title!);
        Assert.NotNull(page.QuerySelector("meta[name=viewport]"));
        Assert.NotNull(page.QuerySelector("meta[charset=utf-8]"));
        Assert.Single(page.QuerySelectorAll("main"));
        IsWholeByItself(page, html);
        HeadingsAreInOrder(page);
        FiguresCanBeHeard(page);
        TablesHaveHeaders(page);
        PlacesAreUnique(page);
        Assert.DoesNotContain("NaN", page.Body!.TextContent);
        Assert.DoesNotContain("∞", page.Body.TextContent);
        return page;
    }

    private static void IsWholeByItself(IHtmlDocument page, string html)
    {
        Assert.Empty(page.QuerySelectorAll("script, link, iframe, object, embed, img, base"));
        Assert.DoesNotMatch("(?i)(href|src|url)\\s*[=(]\\s*[\"']?(https?:|//|data:|file:)", html);
        Assert.DoesNotMatch("(?i)\\son[a-z]+\\s*=", string.Concat(page.All.SelectMany(e => e.Attributes).Select(a => $" {a.Name}=")));
        Assert.DoesNotContain("@import", html);
        Assert.DoesNotContain(Regex.Matches(html, "https?://").Select(m => html.Substring(m.Index, Math.Min(40, html.Length - m.Index))),
            found => !found.StartsWith("http://www.w3.org/2000/svg", StringComparison.Ordinal));
    }

    private static void HeadingsAreInOrder(IHtmlDocument page)
    {
        int[] levels = [.. page.QuerySelectorAll("h1,h2,h3,h4,h5,h6").Select(h => h.TagName[1] - '0')];
        Assert.Equal(1, levels[0]);
        Assert.Single(levels, 1);
        for (int i = 1; i < levels.Length; i++)
        {
            Assert.InRange(levels[i], 2, levels[i - 1] + 1);
        }
    }

    private static void FiguresCanBeHeard(IHtmlDocument page)
    {
        Assert.Equal(page.QuerySelectorAll("figure svg").Length, page.QuerySelectorAll("svg").Length);
        foreach (IElement figure in page.QuerySelectorAll("figure"))
        {
            IElement svg = Assert.Single(figure.QuerySelectorAll("svg"));
            Assert.Equal("img", svg.GetAttribute("role"));
            string[] labels = svg.GetAttribute("aria-labelledby")!.Split(' ');
            Assert.Equal(2, labels.Length);
            Assert.All(labels, id => Assert.NotEmpty(svg.QuerySelector($"[id='{id}']")!.TextContent));
            Assert.NotEmpty(Assert.Single(figure.QuerySelectorAll("figcaption")).TextContent);
            double height = double.Parse(svg.GetAttribute("viewBox")!.Split(' ')[3]);
            Assert.True(height <= 960, $"the figure {labels[0]} is {height} px high and would not fit on a printed page");
        }
    }

    private static void TablesHaveHeaders(IHtmlDocument page)
    {
        foreach (IElement table in page.QuerySelectorAll("table"))
        {
            Assert.NotEmpty(table.QuerySelector("caption")!.TextContent);
            Assert.All(table.QuerySelectorAll("thead th"), th => Assert.Equal("col", th.GetAttribute("scope")));
            Assert.All(table.QuerySelectorAll("tbody th"), th => Assert.Equal("row", th.GetAttribute("scope")));
            Assert.All(table.QuerySelectorAll("th"), th => Assert.NotEmpty(th.TextContent.Trim()));
            int columns = table.QuerySelectorAll("thead th").Length;
            Assert.All(table.QuerySelectorAll("tbody tr"), row => Assert.Equal(columns, row.Children.Length));
        }
    }

    private static void PlacesAreUnique(IHtmlDocument page)
    {
        string[] ids = [.. page.All.Select(e => e.Id ?? string.Empty).Where(id => id.Length > 0)];
        Assert.Equal(ids.Distinct(), ids);
        Assert.All(page.QuerySelectorAll("a[href^='#']"), a => Assert.Contains(a.GetAttribute("href")![1..], ids));
        foreach (Match use in Regex.Matches(page.DocumentElement.OuterHtml, "url\\(#([^)]+)\\)"))
        {
            Assert.Contains(use.Groups[1].Value, ids);
        }
    }
}
