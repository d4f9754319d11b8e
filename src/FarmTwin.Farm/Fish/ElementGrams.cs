namespace FarmTwin.Farm.Fish;

/// <summary>Amounts of the nine elements that feed, fish and solids carry between them.</summary>
/// <remarks>
/// Grams, unless a member says grams per kilogram. Nitrogen is N whatever its form, sulfur is S, phosphorus is P. Carbon is not
/// among them: its organic path is not closed by these equations. A value type: no allocation.
/// </remarks>
/// <param name="Nitrogen">N.</param>
/// <param name="Phosphorus">P.</param>
/// <param name="Potassium">K.</param>
/// <param name="Calcium">Ca.</param>
/// <param name="Magnesium">Mg.</param>
/// <param name="Sodium">Na.</param>
/// <param name="Chlorine">Cl.</param>
/// <param name="Sulfur">S.</param>
/// <param name="Iron">Fe.</param>
public readonly record struct ElementGrams(
    double Nitrogen, double Phosphorus, double Potassium, double Calcium, double Magnesium,
    double Sodium, double Chlorine, double Sulfur, double Iron)
{
    /// <summary>Nothing of any element.</summary>
    public static ElementGrams Zero => default;

    /// <summary>Element by element sum.</summary>
    public static ElementGrams operator +(ElementGrams left, ElementGrams right) => new(
        left.Nitrogen + right.Nitrogen, left.Phosphorus + right.Phosphorus, left.Potassium + right.Potassium,
        left.Calcium + right.Calcium, left.Magnesium + right.Magnesium, left.Sodium + right.Sodium,
        left.Chlorine + right.Chlorine, left.Sulfur + right.Sulfur, left.Iron + right.Iron);

    /// <summary>Element by element difference.</summary>
    public static ElementGrams operator -(ElementGrams left, ElementGrams right) => left + (right * -1);

    /// <summary>Every element times the same number.</summary>
    public static ElementGrams operator *(ElementGrams amounts, double factor) => new(
        amounts.Nitrogen * factor, amounts.Phosphorus * factor, amounts.Potassium * factor,
        amounts.Calcium * factor, amounts.Magnesium * factor, amounts.Sodium * factor,
        amounts.Chlorine * factor, amounts.Sulfur * factor, amounts.Iron * factor);

    /// <summary>The same amounts with another nitrogen.</summary>
    public ElementGrams WithNitrogen(double grams) => this with { Nitrogen = grams };
}
