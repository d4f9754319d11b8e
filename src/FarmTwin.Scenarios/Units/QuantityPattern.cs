using System.Text;
using System.Text.RegularExpressions;

namespace FarmTwin.Scenarios.Units;

/// <summary>Writes a regular expression (the dialect that JSON Schema and .NET share) for the usual spellings of a quantity.</summary>
/// <remarks>It serves completion and warnings in an editor; the reader accepts further spellings of the same dimension.</remarks>
internal static class QuantityPattern
{
    /// <summary>A number as the reader takes it.</summary>
    private const string Number = @"[+-]?([0-9]+(\.[0-9]+)?|\.[0-9]+)([eE][+-]?[0-9]+)?";

    private const string Money = "([A-Z]{3}|[$€£])";

    /// <summary>The pattern of a quantity in any unit of the target's dimension.</summary>
    public static string For(MeasureUnit target)
    {
        if (target.Dimension == Dimension.None && target.IsPureNumber)
        {
            string noun = target.Noun.Length == 0 ? string.Empty : $"|{Escape(target.Spelling)}";
            return $"^{Number} ?(%|percent{noun})$";
        }

        var alternatives = new List<string>();
        if (target.Substance.Length == 0 && target.Noun.Length == 0 && Spellings(target.Dimension) is { Length: > 0 } whole)
        {
            alternatives.Add(whole);
        }

        if (target.Words.Count > 1 || target.Words[0].Word is null || alternatives.Count == 0)
        {
            alternatives.Add(Composite(target, asSuffix: false));
            if (target.Substance.Length > 0 && !target.Substance.Contains('/'))
            {
                alternatives.Add(Composite(target, asSuffix: true));
            }
        }

        if (target.Dimension == new Dimension(Mass: 1, Length: -3) && target.Noun.Length == 0)
        {
            string substance = Escape(target.Substance);
            alternatives.Add(target.Substance.Length == 0 ? "ppm" : $"ppm( as)? {substance}");
        }

        string prefix = target.Dimension.Money > 0 ? "[$€£]? ?" : string.Empty;
        return $"^{prefix}{Number} ?({string.Join('|', alternatives)})$";
    }

    /// <summary>The unit's own structure, each word replaced by the words of its dimension.</summary>
    private static string Composite(MeasureUnit target, bool asSuffix)
    {
        var pattern = new StringBuilder();
        bool first = true;
        foreach (UnitPart part in target.Words)
        {
            bool substance = part.Word is null && Vocabulary.Substances.Contains(part.Text);
            bool money = part.Word is null && !substance && Vocabulary.Noun(part.Text) is null;
            if (substance && asSuffix)
            {
                continue;
            }

            string separator = part.IsDivisor ? "(/| per )" : first ? string.Empty : " ";
            string optional = part.Word is null && !substance && !money && !part.IsDivisor ? "?" : string.Empty;
            string word = part.Word is not null
                ? $"({Alternatives(part)})"
                : money ? Money + "?" : substance ? Escape(part.Text) : Noun(part.Text);
            pattern.Append(separator).Append('(').Append(word).Append(')').Append(optional);
            first = false;
        }

        if (asSuffix)
        {
            pattern.Append(" as ").Append(Escape(target.Substance));
        }

        return pattern.ToString();
    }

    private static string Alternatives(UnitPart part) =>
        part.Text == "1" ? "1?" : part.Word!.Dimension == Dimension.None ? Escape(part.Text) : Spellings(part.Word.Dimension);

    private static string Noun(string word)
    {
        string singular = Vocabulary.Noun(word)!;
        return singular.Length == 0 ? "times?" : $"{Escape(singular)}(e?s)?|{Escape(word)}";
    }

    private static string Spellings(Dimension dimension) =>
        string.Join('|', UnitTable.Words.Where(w => w.Dimension == dimension && w.Substance.Length == 0)
            .SelectMany(w => w.Spellings).Select(Escape));

    // Powers and the micro sign are typed in two ways.
    private static string Escape(string text) =>
        Regex.Escape(text).Replace("\\ ", " ", StringComparison.Ordinal).Replace("2", "[2²]", StringComparison.Ordinal)
            .Replace("3", "[3³]", StringComparison.Ordinal).Replace("µ", "[µμ]", StringComparison.Ordinal);
}
