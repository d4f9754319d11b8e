using System.Globalization;
using System.Text.RegularExpressions;

namespace FarmTwin.Scenarios.Units;

/// <summary>Reads a quantity as users write it ("420 gal", "77 °F", "3 mg N/L") into a plain number in a fixed unit.</summary>
/// <remarks>
/// For the edge of the program only. Numbers are in invariant culture, without thousands separators. Where the wanted unit is °C or
/// °F the quantity is a temperature; where it is K, a difference (so "9 °F" is 5 K). A substance is part of the unit: mg/L is not
/// taken for mg N/L. In water "ppm" is read as mg/L. Thread safe.
/// </remarks>
public static partial class QuantityText
{
    /// <summary>Reads a text.</summary>
    /// <param name="text">A number and a unit.</param>
    /// <param name="unit">The unit that is wanted, in the same spelling; "1" for a pure number.</param>
    /// <returns>The value in <paramref name="unit"/>, or what is wrong.</returns>
    /// <exception cref="ArgumentException"><paramref name="unit"/> itself is no unit.</exception>
    public static QuantityReading Read(string text, string unit) => Read(text, Target(unit));

    /// <summary>The unit that a property states; a misspelt one is a fault of the program.</summary>
    internal static MeasureUnit Target(string unit)
    {
        UnitReading reading = UnitGrammar.Parse(unit);
        return reading.Unit ?? throw new ArgumentException($"\"{unit}\" is no unit: \"{reading.Unknown}\" is not known.");
    }

    /// <summary>Reads a text.</summary>
    internal static QuantityReading Read(string text, MeasureUnit target)
    {
        Match match = NumberThenUnit().Match(text.Trim());
        if (!match.Success)
        {
            return Refuse($"\"{Shown(text)}\" does not start with a number", target, null);
        }

        string rest = match.Groups["unit"].Value.Trim();
        if (match.Groups["sign"].Value is { Length: > 0 } sign)
        {
            rest = sign + (rest.StartsWith('/') ? rest : " " + rest);
        }

        if (rest.StartsWith(',') || rest.StartsWith('.'))
        {
            return Refuse($"\"{Shown(text)}\" is not a number written with a decimal point and no separators", target,
                Plain(match.Groups["number"].Value + rest));
        }

        double number = double.Parse(match.Groups["number"].Value, NumberStyles.Float, CultureInfo.InvariantCulture);
        if (rest.Length == 0)
        {
            return target.IsPureNumber
                ? Refuse($"the number \"{Shown(text)}\" stands in quotes", target, null)
                : Refuse($"\"{Shown(text)}\" has no unit", target, $"{match.Groups["number"].Value} {target.Spelling}");
        }

        UnitReading reading = UnitGrammar.Parse(InWater(rest, target));
        if (reading.Unit is not MeasureUnit given)
        {
            string? nearest = NearestUnit(rest, reading.Unknown!, target);
            return Refuse($"\"{Shown(reading.Unknown!)}\" is no known unit", target,
                nearest is null ? null : $"{match.Groups["number"].Value} {nearest}");
        }

        if (Mismatch(given, target) is string mismatch)
        {
            return Refuse($"\"{Shown(text)}\" is {mismatch}", target, null);
        }

        double value = Convert(number, given, target);
        return double.IsFinite(value)
            ? new QuantityReading(value, given.Currency, null, null, null)
            : Refuse($"\"{Shown(text)}\" is beyond what can be computed with", target, null);
    }

    /// <summary>What a message says is expected: the dimension and the units in which it may be written.</summary>
    internal static string Expected(MeasureUnit target)
    {
        if (target.IsPureNumber)
        {
            return target.Noun.Length > 0
                ? $"a bare number of {target.Spelling}, or a text such as \"40 {target.Spelling}\""
                : "a bare number such as 0.4, or a text in %";
        }

        string units = string.Join(", ", DimensionNames.Examples(target).Select(e => $"\"{e}\""));
        return $"{DimensionNames.NameOf(target) ?? "a quantity"} as text with a unit: {units}";
    }

    private static QuantityReading Refuse(string problem, MeasureUnit target, string? suggestion) =>
        new(double.NaN, null, problem, Expected(target), suggestion);

    private static double Convert(double number, MeasureUnit given, MeasureUnit target)
    {
        if (target.IsAbsoluteTemperature && given.ZeroKelvin != target.ZeroKelvin)
        {
            return ((number * given.Factor) + given.ZeroKelvin - target.ZeroKelvin) / target.Factor;
        }

        // The same unit must come through unchanged to the last digit.
        return given.Factor == target.Factor ? number : number * given.Factor / target.Factor;
    }

    /// <summary>Why the one unit cannot be read as the other, or null.</summary>
    private static string? Mismatch(MeasureUnit given, MeasureUnit target)
    {
        if (given.Dimension != target.Dimension)
        {
            return $"{DimensionNames.NameOf(given) ?? "another quantity"}, not {DimensionNames.NameOf(target) ?? "a quantity in " + target.Spelling}";
        }

        if (given.Substance != target.Substance)
        {
            return target.Substance.Length == 0
                ? $"stated as {given.Substance.TrimStart('/')}, which this quantity is not"
                : given.Substance.Length == 0
                    ? $"not stated as {target.Substance.TrimStart('/')}"
                    : $"stated as {given.Substance.TrimStart('/')}, not as {target.Substance.TrimStart('/')}";
        }

        bool sameNoun = given.Noun == target.Noun
            || (given.Noun.Length == 0 && !target.Noun.Contains('/'))
            || (target.Noun.Length == 0 && !given.Noun.Contains('/'));
        return sameNoun ? null : $"a number of another thing than \"{target.Spelling}\" counts";
    }

    /// <summary>In water, parts per million are milligrams per litre; in air, "ppm CO2" is "ppm".</summary>
    private static string InWater(string unit, MeasureUnit target)
    {
        if (!unit.StartsWith("ppm", StringComparison.Ordinal))
        {
            return unit;
        }

        string tail = unit["ppm".Length..].Trim();
        if (target.Dimension == new Dimension(Mass: 1, Length: -3))
        {
            return tail.StartsWith("as ", StringComparison.Ordinal) ? "mg/L " + tail : tail.Length == 0 ? "mg/L" : $"mg {tail}/L";
        }

        return tail == "CO2" && target.Substance.Length == 0 ? "ppm" : unit;
    }

    private static string? NearestUnit(string written, string unknown, MeasureUnit target)
    {
        IEnumerable<string> single = UnitTable.Words.Where(w => w.Dimension == target.Dimension).SelectMany(w => w.Spellings);
        if (NearestName.Of(written, DimensionNames.Examples(target).Concat(single)) is string whole)
        {
            return whole;
        }

        string? word = NearestName.Of(unknown, UnitTable.Spellings.Where(s => s.Length > 1));
        string? repaired = word is null ? null : written.Replace(unknown, word, StringComparison.Ordinal);
        return repaired is not null && UnitGrammar.Parse(repaired).Unit is MeasureUnit unit && Mismatch(unit, target) is null
            ? repaired
            : null;
    }

    private static string? Plain(string written)
    {
        string joined = ThousandsSeparator().Replace(written, string.Empty);
        return joined == written ? null : joined;
    }

    private static string Shown(string text) => text.Length <= 40 ? text : text[..40] + "…";

    [GeneratedRegex(@"^(?<sign>[$€£]?)\s*(?<number>[+-]?([0-9]+(\.[0-9]+)?|\.[0-9]+)([eE][+-]?[0-9]+)?)(?<unit>[\s\S]*)$",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex NumberThenUnit();

    [GeneratedRegex(@"(?<=[0-9]),(?=[0-9]{3})", RegexOptions.CultureInvariant)]
    private static partial Regex ThousandsSeparator();
}
