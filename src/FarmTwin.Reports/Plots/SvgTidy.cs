using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using SkiaSharp;

namespace FarmTwin.Reports.Plots;

/// <summary>Makes the SVG of the drawing library fit to be shown: the same bytes every time, ids of its own, words that fit in any font, no ballast.</summary>
/// <remarks>
/// The library numbers clip paths through the whole process, repeats the same clip path for every stroke, places every letter by itself
/// (which another font than ours would tear apart), writes a thousandth of a pixel, paints what was cleared black, and knows no dashes.
/// </remarks>
internal static partial class SvgTidy
{
    /// <summary>The tidied markup.</summary>
    /// <param name="svg">As the library writes it.</param>
    /// <param name="name">Name of the figure: ids begin with it.</param>
    public static string Tidy(string svg, string name)
    {
        string tidy = svg.Replace("\r\n", "\n", StringComparison.Ordinal);
        tidy = Indent().Replace(tidy, string.Empty);
        tidy = Words().Replace(tidy, Line);
        tidy = Cleared().Replace(tidy, string.Empty);
        tidy = Shape().Replace(tidy, match => $" d=\"{Fraction().Replace(match.Groups[1].Value, Round)}\"");
        tidy = Stroke().Replace(tidy, Dashed);
        return Clips(tidy, name);
    }

    // One position for the whole line, and its width: a reader without our font sees the words spread or drawn in, never torn or cut.
    private static string Line(Match match)
    {
        string attributes = match.Groups[1].Value;
        string text = match.Groups[2].Value.Trim('\n', '\t');
        string[] x = match.Groups["x"].Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        string[] y = match.Groups["y"].Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        float size = float.Parse(Size().Match(attributes).Groups[1].Value, CultureInfo.InvariantCulture);
        bool bold = attributes.Contains("font-weight", StringComparison.Ordinal);
        using var font = new SKFont(bold ? ShippedFonts.Bold : ShippedFonts.Regular, size);
        double width = font.MeasureText(WebUtility.HtmlDecode(text));
        string kept = Position().Replace(attributes, string.Empty)
            .Replace($"font-family=\"{ShippedFonts.Family}\"", $"font-family=\"{ShippedFonts.Family}, Verdana, sans-serif\"", StringComparison.Ordinal);
        return $"<text{kept} x=\"{Tenth(x[0])}\" y=\"{Tenth(y[0])}\" textLength=\"{width.ToString("0.#", CultureInfo.InvariantCulture)}\" lengthAdjust=\"spacingAndGlyphs\">{text}</text>";
    }

    private static string Round(Match number) => Tenth(number.Value);

    private static string Tenth(string number) => double.Parse(number, CultureInfo.InvariantCulture).ToString("0.#", CultureInfo.InvariantCulture);

    private static string Dashed(Match stroke)
    {
        int style = Array.FindIndex(LineStyles.Colours, c => string.Equals(c.ToHex()[..7], stroke.Groups[1].Value, StringComparison.OrdinalIgnoreCase));
        return style >= 0 && LineStyles.Dashes[style] is { } dash
            ? $"{stroke.Value} stroke-dasharray=\"{string.Join(' ', dash.Select(d => d.ToString(CultureInfo.InvariantCulture)))}\""
            : stroke.Value;
    }

    // Equal clip paths are one, numbered through the figure.
    private static string Clips(string svg, string name)
    {
        var first = new Dictionary<string, string>(StringComparer.Ordinal);
        var ids = new Dictionary<string, string>(StringComparer.Ordinal);
        string shared = Clip().Replace(svg, match =>
        {
            string shape = match.Groups[2].Value;
            if (first.TryGetValue(shape, out string? known))
            {
                ids[match.Groups[1].Value] = known;
                return string.Empty;
            }

            string id = $"{name}-{first.Count + 1}";
            first.Add(shape, id);
            ids[match.Groups[1].Value] = id;
            return $"<clipPath id=\"{id}\">{shape}</clipPath>";
        });
        return Use().Replace(shared, match => ids.TryGetValue(match.Groups[1].Value, out string? id) ? $"url(#{id})" : match.Value);
    }

    [GeneratedRegex("\n\t+")]
    private static partial Regex Indent();

    [GeneratedRegex("<text([^>]* x=\"(?<x>[^\"]*)\" y=\"(?<y>[^\"]*)\"[^>]*)>([^<]*)</text>")]
    private static partial Regex Words();

    [GeneratedRegex("(?<!<clipPath id=\"[^\"]*\">)<rect width=\"[^\"]*\" height=\"[^\"]*\"/>")]
    private static partial Regex Cleared();

    [GeneratedRegex("font-size=\"([^\"]+)\"")]
    private static partial Regex Size();

    [GeneratedRegex(" [xy]=\"[^\"]*\"")]
    private static partial Regex Position();

    [GeneratedRegex(" d=\"([^\"]*)\"")]
    private static partial Regex Shape();

    [GeneratedRegex("-?\\d+\\.\\d+")]
    private static partial Regex Fraction();

    [GeneratedRegex("stroke=\"(#[0-9A-Fa-f]{6})\"")]
    private static partial Regex Stroke();

    [GeneratedRegex("<clipPath id=\"([^\"]+)\">(.*?)</clipPath>", RegexOptions.Singleline)]
    private static partial Regex Clip();

    [GeneratedRegex("url\\(#([^)]+)\\)")]
    private static partial Regex Use();
}
