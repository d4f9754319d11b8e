using System.Collections.Concurrent;
using System.Text.RegularExpressions;

namespace FarmTwin.Scenarios.Units;

/// <summary>Reads the text of a unit: words of the table, multiplied by a blank or a dot, divided by a slash.</summary>
/// <remarks>
/// <c>unit = product { "/" product } [ "as" substance ]</c>; all of a product behind a slash stands below the line (W/m2 K). A
/// substance follows a mass or an amount; a counted thing stands for 1. Thread safe; units once read are kept.
/// </remarks>
internal static partial class UnitGrammar
{
    private const int LongestUnit = 60;

    private static readonly ConcurrentDictionary<string, UnitReading> Read = new(StringComparer.Ordinal);

    /// <summary>Reads a unit.</summary>
    public static UnitReading Parse(string text)
    {
        if (Read.TryGetValue(text, out UnitReading? known))
        {
            return known;
        }

        if (text.Length > LongestUnit)
        {
            return new UnitReading(null, text[..LongestUnit] + "…");
        }

        UnitReading reading = ParseNormal(Normalize(text), text);

        // A stranger's misspellings are not worth keeping.
        return reading.Unit is null ? reading : Read.GetOrAdd(text, reading);
    }

    private static UnitReading ParseNormal(string text, string asWritten)
    {
        var builder = new Builder();
        Match suffix = AsSubstance().Match(text);
        if (suffix.Success)
        {
            text = text[..suffix.Index];
        }

        string[] products = text.Split('/');
        for (int i = 0; i < products.Length; i++)
        {
            string product = products[i].Trim();
            if (product.StartsWith('(') && product.EndsWith(')'))
            {
                product = product[1..^1].Trim();
            }

            if (product.Length == 0 && (i > 0 || products.Length == 1))
            {
                return new UnitReading(null, asWritten);
            }

            if (builder.AddProduct(product, belowTheLine: i > 0) is string unknown)
            {
                return new UnitReading(null, unknown);
            }

            if (i == 0 && suffix.Success)
            {
                builder.AddSubstance(suffix.Groups[1].Value, belowTheLine: false);
            }
        }

        return new UnitReading(builder.Build(asWritten), null);
    }

    /// <summary>One spelling for what is typed in several ways: powers, micro and degree signs, dots, blanks around a slash.</summary>
    private static string Normalize(string text)
    {
        string plain = text.Replace('²', '2').Replace('³', '3').Replace("^", string.Empty, StringComparison.Ordinal)
            .Replace('\u03bc', 'µ').Replace('º', '°').Replace('₂', '2').Replace('₃', '3').Replace('₄', '4')
            .Replace('·', ' ').Replace('⋅', ' ').Replace('*', ' ').Replace('×', ' ')
            .Replace('\u00a0', ' ').Replace('\u202f', ' ').Replace('\u2009', ' ');
        plain = PerWord().Replace(" " + plain, "/").Trim();

        // Below the line of a heat transfer coefficient area and kelvin are written together: W/m2K.
        plain = plain.Replace("m2K", "m2 K", StringComparison.Ordinal).Replace("m2°", "m2 °", StringComparison.Ordinal);
        return DegreeBlank().Replace(Blanks().Replace(plain, " "), "°$1");
    }

    [GeneratedRegex(@" as (\S+)$", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex AsSubstance();

    [GeneratedRegex(@" per ", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex PerWord();

    [GeneratedRegex(@" +", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Blanks();

    [GeneratedRegex(@"° ([CF])\b", RegexOptions.CultureInvariant)]
    private static partial Regex DegreeBlank();

    [GeneratedRegex(@"^[A-Z]{3}$", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex CurrencyCode();

    private sealed class Builder
    {
        private readonly List<UnitPart> _parts = [];
        private readonly List<string> _substances = [];
        private readonly List<string> _nouns = [];
        private Dimension _dimension;
        private double _factor = 1;
        private double _zeroKelvin;
        private string? _currency;

        /// <summary>Adds the words between two slashes; returns the word that is unknown, or null.</summary>
        public string? AddProduct(string product, bool belowTheLine)
        {
            if (product.Length == 0)
            {
                return null;
            }

            if (UnitTable.Find(product) is UnitWord whole)
            {
                AddWord(product, whole, belowTheLine);
                return null;
            }

            string[] words = product.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            bool afterMass = false;
            for (int i = 0; i < words.Length; i++)
            {
                string word = words[i];
                if (afterMass && Vocabulary.IsSubstance(word, belowTheLine))
                {
                    AddSubstance(word, belowTheLine);
                    afterMass = false;
                    continue;
                }

                // Two words may be one unit: sq ft, fl oz.
                string? pair = i + 1 < words.Length ? $"{word} {words[i + 1]}" : null;
                if (pair is not null && UnitTable.Find(pair) is UnitWord both)
                {
                    AddWord(pair, both, belowTheLine);
                    afterMass = false;
                    i++;
                }
                else if (UnitTable.Find(word) is UnitWord found)
                {
                    AddWord(word, found, belowTheLine);
                    afterMass = found.Dimension is { Mass: 1, Length: 0, Time: 0 } or { Amount: 1 } || word == "ppm";
                }
                else if (!AddOther(word, belowTheLine))
                {
                    return word;
                }
            }

            return null;
        }

        public void AddSubstance(string substance, bool belowTheLine)
        {
            _substances.Add(belowTheLine ? "/" + substance : substance);
            _parts.Add(new UnitPart(substance, belowTheLine, null));
        }

        public MeasureUnit Build(string spelling)
        {
            // A temperature scale has a zero only by itself: in W/m2 °C it is a difference.
            double zero = _parts.Count == 1 ? _zeroKelvin : 0;
            string substance = string.Concat(_substances.Distinct(StringComparer.Ordinal));
            return new MeasureUnit(spelling, _dimension, _factor, zero, substance, string.Concat(_nouns), _currency, _parts);
        }

        private void AddWord(string text, UnitWord word, bool belowTheLine)
        {
            _dimension = _dimension.Times(word.Dimension, belowTheLine ? -1 : 1);
            _factor = belowTheLine ? _factor / word.Factor : _factor * word.Factor;
            _zeroKelvin = word.ZeroKelvin;
            _parts.Add(new UnitPart(text, belowTheLine, word));
            if (word.Substance.Length > 0)
            {
                _substances.Add(belowTheLine ? "/" + word.Substance : word.Substance);
            }
        }

        private bool AddOther(string word, bool belowTheLine)
        {
            if (Vocabulary.Noun(word) is string noun)
            {
                if (noun.Length > 0)
                {
                    _nouns.Add(belowTheLine ? "/" + noun : noun);
                }
            }
            else if (word is "$" or "€" or "£" or "money" or "currency" || CurrencyCode().IsMatch(word))
            {
                _dimension = _dimension.Times(new Dimension(Money: 1), belowTheLine ? -1 : 1);
                _currency = word is "money" or "currency" ? null : word;
            }
            else
            {
                return false;
            }

            _parts.Add(new UnitPart(word, belowTheLine, null));
            return true;
        }
    }
}

/// <summary>A unit, or the word in it that is not known.</summary>
internal sealed record UnitReading(MeasureUnit? Unit, string? Unknown);
