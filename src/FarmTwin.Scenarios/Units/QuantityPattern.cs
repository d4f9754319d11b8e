using System.Text;
using System.Text.RegularExpressions;

namespace FarmTwin.Scenarios.Units;

/// <summary>Writes a regular expression (the dialect that JSON Schema and .NET share) for the usual spellings of a quantity.</summary>
/// <remarks>It serves completion and warnings in an editor; the reader accepts further spellings of the same dimension.</remarks>
internal static class QuantityPattern
{
    /// <summary>A number as the reader takes it.</summary>
    private const string Number = @"[+-]?([0-9]+(\.[0-9]+)?|\.[0-9]+)([eE][+-]?[0-9]+)?";

    private const string Money = "[A-Z]{3}|[$€£]";

    private static readonly Dimension MassDimension = new(Mass: 1);
    private static readonly Dimension ConcentrationDimension = new(Mass: 1, Length: -3);

    /// <summary>The ways to write a composite unit.</summary>
    private enum Form
    {
        /// <summary>As the property states it: "mg N/L".</summary>
        Inline,

        /// <summary>The substance behind: "mg/L as N".</summary>
        Suffix,

        /// <summary>In units that speak of the substance by themselves: "meq/L".</summary>
        OwnWords,

        /// <summary>Without the currency, which stands before the number.</summary>
        WithoutMoney,
    }

    /// <summary>The pattern of a quantity in any unit of the target's dimension.</summary>
    public static string For(MeasureUnit target)
    {
        if (target.Dimension == Dimension.None && target.IsPureNumber)
        {
            string noun = target.Noun.Length == 0 ? string.Empty : $"|{Escape(target.Spelling)}";
            return $"^{Number} ?(%|percent{noun})$";
        }

        if (target.Dimension.Money > 0)
        {
            // The currency stands before the number as a sign, or behind it.
            return $"^([$€£] ?{Number} ?{Composite(target, Form.WithoutMoney)}|{Number} ?{Composite(target, Form.Inline)})$";
        }

        return $"^{Number} ?({string.Join('|', Units(target).Distinct(StringComparer.Ordinal))})$";
    }

    private static IEnumerable<string> Units(MeasureUnit target)
    {
        bool isPlain = target.Substance.Length == 0 && target.Noun.Length == 0;
        string whole = Spellings(target.Dimension, target.Substance);
        if (whole.Length > 0 && target.Noun.Length == 0)
        {
            yield return whole;
        }

        if (!isPlain || target.Words.Count > 1 || whole.Length == 0)
        {
            yield return Composite(target, Form.Inline);
        }

        if (isPlain && target.Dimension != Dimension.None)
        {
            // The other usual structures of the dimension: Btu/h for a power, MJ/m2/d for W/m2.
            foreach (string usual in DimensionNames.Examples(target))
            {
                MeasureUnit unit = QuantityText.Target(usual);
                if (unit.Words.Count > 1)
                {
                    yield return Composite(unit, Form.Inline);
                }
            }
        }

        if (target.Substance.Length > 0 && !target.Substance.Contains('/'))
        {
            yield return Composite(target, Form.Suffix);
            if (UnitTable.Words.Any(w => w.Substance == target.Substance && w.Dimension == MassDimension))
            {
                yield return Composite(target, Form.OwnWords);
            }
        }

        if (target.Dimension == ConcentrationDimension && target.Noun.Length == 0)
        {
            yield return target.Substance.Length == 0 ? "ppm" : $"ppm( as)? {Escape(target.Substance)}";
        }
    }

    /// <summary>The unit's own structure, each word replaced by the words of its dimension.</summary>
    private static string Composite(MeasureUnit target, Form form)
    {
        var pattern = new StringBuilder();
        bool first = true;
        bool below = false;
        foreach (UnitPart part in target.Words)
        {
            bool isSubstance = part.Word is null && Vocabulary.Substances.Contains(part.Text);
            bool isMoney = part.Word is null && !isSubstance && Vocabulary.Noun(part.Text) is null;
            if ((isSubstance && form is not (Form.Inline or Form.WithoutMoney)) || (isMoney && form == Form.WithoutMoney))
            {
                continue;
            }

            // A count needs no noun: "25 /m2" are 25 plants where plants are asked for.
            bool isOptional = part.Word is null && !isSubstance && !isMoney && !part.IsDivisor;
            bool isKelvin = part.Word?.Dimension == new Dimension(Temperature: 1);
            string separator = !part.IsDivisor ? (first ? string.Empty : " ")
                : !below ? "(/| per )" : isKelvin ? "(/| per | )?" : "(/| per | )";
            pattern.Append(separator).Append('(').Append(Word(part, isSubstance, isMoney, form)).Append(isOptional ? ")?" : ")");
            first = false;
            below |= part.IsDivisor;
        }

        return form == Form.Suffix ? pattern.Append(" as ").Append(Escape(target.Substance)).ToString() : pattern.ToString();
    }

    private static string Word(UnitPart part, bool isSubstance, bool isMoney, Form form)
    {
        if (part.Word is null)
        {
            return isMoney ? Money : isSubstance ? Escape(part.Text) : Noun(part.Text);
        }

        if (part.Text == "1")
        {
            return "1?";
        }

        bool isOwn = form == Form.OwnWords && part.Word.Dimension == MassDimension && !part.IsDivisor;
        return part.Word.Dimension == Dimension.None ? Escape(part.Text)
            : isOwn ? OwnWords(part.Word.Dimension)
            : Spellings(part.Word.Dimension, part.Word.Substance);
    }

    private static string OwnWords(Dimension dimension) =>
        string.Join('|', UnitTable.Words.Where(w => w.Dimension == dimension && w.Substance.Length > 0)
            .SelectMany(w => w.Spellings).Select(Escape));

    private static string Noun(string word)
    {
        string singular = Vocabulary.Noun(word)!;
        return singular.Length == 0 ? "times?" : $"{Escape(singular)}(e?s)?|{Escape(word)}";
    }

    private static string Spellings(Dimension dimension, string substance) =>
        string.Join('|', UnitTable.Words.Where(w => w.Dimension == dimension && w.Substance == substance)
            .SelectMany(w => w.Spellings).Select(Escape));

    // Powers and the micro sign are typed in two ways.
    private static string Escape(string text) =>
        Regex.Escape(text).Replace("\\ ", " ", StringComparison.Ordinal).Replace("2", "[2²]", StringComparison.Ordinal)
            .Replace("3", "[3³]", StringComparison.Ordinal).Replace("µ", "[µμ]", StringComparison.Ordinal);
}
