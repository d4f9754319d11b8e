namespace FarmTwin.Scenarios.Units;

/// <summary>A unit as it is written: its size in coherent SI units, and what it counts or of what substance it speaks.</summary>
/// <param name="Spelling">How it is written ("mg N/L").</param>
/// <param name="Dimension">Its dimension.</param>
/// <param name="Factor">Its size in the coherent SI unit of the dimension.</param>
/// <param name="ZeroKelvin">For a temperature scale the kelvin at its zero; 0 for any other unit.</param>
/// <param name="Substance">The substance it speaks of ("N", "CaCO3"; behind a slash where it is per mass of it), or empty.</param>
/// <param name="Noun">What it counts ("plant"; behind a slash where it is per that: "/plant"), or empty.</param>
/// <param name="Currency">The currency as written, or null.</param>
/// <param name="Words">The words that it is made of, for a pattern.</param>
internal sealed record MeasureUnit(string Spelling, Dimension Dimension, double Factor, double ZeroKelvin, string Substance,
    string Noun, string? Currency, IReadOnlyList<UnitPart> Words)
{
    /// <summary>
    /// Whether a value in this unit, as the unit of a property, is a temperature and not a difference: true of °C and °F, not of K.
    /// </summary>
    public bool IsAbsoluteTemperature => ZeroKelvin > 0;

    /// <summary>Whether it is a bare number or a bare count ("1", "plants"), written without quotes.</summary>
    public bool IsPureNumber => Dimension == Dimension.None && Factor == 1 && Substance.Length == 0 && !Noun.Contains('/');
}

/// <summary>A word in a unit.</summary>
/// <param name="Text">The word as written.</param>
/// <param name="IsDivisor">Whether it stands below the line.</param>
/// <param name="Word">Its entry in the table; null for a substance, a noun or a currency.</param>
internal sealed record UnitPart(string Text, bool IsDivisor, UnitWord? Word);
