namespace FarmTwin.Scenarios.Units;

/// <summary>A word for a unit: the entry of the table of spellings.</summary>
/// <param name="Spellings">How it may be written; case counts, because mW and MW differ.</param>
/// <param name="Dimension">Its dimension.</param>
/// <param name="Factor">Its size in the coherent SI unit.</param>
/// <param name="ZeroKelvin">For a temperature scale the kelvin at its zero.</param>
/// <param name="Substance">The substance that the unit itself speaks of (an equivalent of alkalinity: "CaCO3"), or empty.</param>
internal sealed record UnitWord(
    IReadOnlyList<string> Spellings, Dimension Dimension, double Factor, double ZeroKelvin = 0, string Substance = "");
