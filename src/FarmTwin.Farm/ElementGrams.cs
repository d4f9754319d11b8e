namespace FarmTwin.Farm;

/// <summary>Amounts of the nine elements that feed, fish, solids and plants carry between them.</summary>
/// <remarks>
/// Grams, unless a member says grams per kilogram or per gram. Nitrogen is N whatever its form, sulfur is S, phosphorus is P. Carbon is
/// not among them: its organic path is not followed. A plain value, in the order of <see cref="Element"/>; the default is nothing of
/// anything, and arithmetic never allocates.
/// </remarks>
/// <param name="Nitrogen">N.</param>
/// <param name="Phosphorus">P.</param>
/// <param name="Potassium">K.</param>
/// <param name="Calcium">Ca.</param>
/// <param name="Magnesium">Mg.</param>
/// <param name="Sodium">Na.</param>
/// <param name="Chloride">Cl.</param>
/// <param name="Sulfur">S.</param>
/// <param name="Iron">Fe.</param>
public record struct ElementGrams(
    double Nitrogen, double Phosphorus, double Potassium, double Calcium, double Magnesium,
    double Sodium, double Chloride, double Sulfur, double Iron)
{
    /// <summary>Nothing of any element.</summary>
    public static ElementGrams Zero => default;

    /// <summary>The amount of one element, an index of <see cref="Element"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the elements.</exception>
    public double this[int element]
    {
        readonly get => element switch
        {
            Element.Nitrogen => Nitrogen,
            Element.Phosphorus => Phosphorus,
            Element.Potassium => Potassium,
            Element.Calcium => Calcium,
            Element.Magnesium => Magnesium,
            Element.Sodium => Sodium,
            Element.Chloride => Chloride,
            Element.Sulfur => Sulfur,
            Element.Iron => Iron,
            _ => throw new ArgumentOutOfRangeException(nameof(element), element, "This is none of the elements."),
        };
        set
        {
            switch (element)
            {
                case Element.Nitrogen: Nitrogen = value; break;
                case Element.Phosphorus: Phosphorus = value; break;
                case Element.Potassium: Potassium = value; break;
                case Element.Calcium: Calcium = value; break;
                case Element.Magnesium: Magnesium = value; break;
                case Element.Sodium: Sodium = value; break;
                case Element.Chloride: Chloride = value; break;
                case Element.Sulfur: Sulfur = value; break;
                case Element.Iron: Iron = value; break;
                default: throw new ArgumentOutOfRangeException(nameof(element), element, "This is none of the elements.");
            }
        }
    }

    /// <summary>Element by element sum.</summary>
    public static ElementGrams operator +(in ElementGrams left, in ElementGrams right) => new(
        left.Nitrogen + right.Nitrogen, left.Phosphorus + right.Phosphorus, left.Potassium + right.Potassium,
        left.Calcium + right.Calcium, left.Magnesium + right.Magnesium, left.Sodium + right.Sodium,
        left.Chloride + right.Chloride, left.Sulfur + right.Sulfur, left.Iron + right.Iron);

    /// <summary>Element by element difference.</summary>
    public static ElementGrams operator -(in ElementGrams left, in ElementGrams right) => left + (right * -1);

    /// <summary>Every element times the same number.</summary>
    public static ElementGrams operator *(in ElementGrams amounts, double factor) => new(
        amounts.Nitrogen * factor, amounts.Phosphorus * factor, amounts.Potassium * factor,
        amounts.Calcium * factor, amounts.Magnesium * factor, amounts.Sodium * factor,
        amounts.Chloride * factor, amounts.Sulfur * factor, amounts.Iron * factor);

    /// <summary>The same amounts with another nitrogen.</summary>
    public readonly ElementGrams WithNitrogen(double grams) => this with { Nitrogen = grams };

    /// <summary>Adds a multiple of these amounts to a row of amounts.</summary>
    /// <param name="row">Amounts in the order of <see cref="Element"/>, at least <see cref="Element.Count"/> of them.</param>
    /// <param name="factor">Multiple; −1 takes away.</param>
    public readonly void AddTo(Span<double> row, double factor = 1)
    {
        row[Element.Nitrogen] += factor * Nitrogen;
        row[Element.Phosphorus] += factor * Phosphorus;
        row[Element.Potassium] += factor * Potassium;
        row[Element.Calcium] += factor * Calcium;
        row[Element.Magnesium] += factor * Magnesium;
        row[Element.Sodium] += factor * Sodium;
        row[Element.Chloride] += factor * Chloride;
        row[Element.Sulfur] += factor * Sulfur;
        row[Element.Iron] += factor * Iron;
    }
}
