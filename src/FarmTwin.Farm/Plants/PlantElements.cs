namespace FarmTwin.Farm.Plants;

/// <summary>An amount of each element a plant holds: grams in a lot, or grams per gram of dry mass. The member that holds one
/// states which.</summary>
/// <remarks>A plain value; the default is zero of everything. Arithmetic never allocates.</remarks>
/// <param name="Nitrogen">As N.</param>
/// <param name="Phosphorus">As P.</param>
/// <param name="Potassium">As K.</param>
/// <param name="Calcium">As Ca.</param>
/// <param name="Magnesium">As Mg.</param>
/// <param name="Sulfur">As S.</param>
/// <param name="Iron">As Fe.</param>
/// <param name="Sodium">As Na.</param>
/// <param name="Chloride">As Cl.</param>
public record struct PlantElements(
    double Nitrogen,
    double Phosphorus,
    double Potassium,
    double Calcium,
    double Magnesium,
    double Sulfur,
    double Iron,
    double Sodium,
    double Chloride)
{
    /// <summary>How many of the elements, from the first, are nutrients that can limit growth.</summary>
    public const int NutrientCount = 7;

    /// <summary>How many elements there are.</summary>
    public const int Count = 9;

    /// <summary>The amount of one element.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the elements.</exception>
    public double this[PlantElement element]
    {
        readonly get => element switch
        {
            PlantElement.Nitrogen => Nitrogen,
            PlantElement.Phosphorus => Phosphorus,
            PlantElement.Potassium => Potassium,
            PlantElement.Calcium => Calcium,
            PlantElement.Magnesium => Magnesium,
            PlantElement.Sulfur => Sulfur,
            PlantElement.Iron => Iron,
            PlantElement.Sodium => Sodium,
            PlantElement.Chloride => Chloride,
            _ => throw new ArgumentOutOfRangeException(nameof(element)),
        };
        set
        {
            switch (element)
            {
                case PlantElement.Nitrogen: Nitrogen = value; break;
                case PlantElement.Phosphorus: Phosphorus = value; break;
                case PlantElement.Potassium: Potassium = value; break;
                case PlantElement.Calcium: Calcium = value; break;
                case PlantElement.Magnesium: Magnesium = value; break;
                case PlantElement.Sulfur: Sulfur = value; break;
                case PlantElement.Iron: Iron = value; break;
                case PlantElement.Sodium: Sodium = value; break;
                case PlantElement.Chloride: Chloride = value; break;
                default: throw new ArgumentOutOfRangeException(nameof(element));
            }
        }
    }

    /// <summary>The sum, element by element.</summary>
    public static PlantElements operator +(in PlantElements a, in PlantElements b) => new(
        a.Nitrogen + b.Nitrogen, a.Phosphorus + b.Phosphorus, a.Potassium + b.Potassium, a.Calcium + b.Calcium,
        a.Magnesium + b.Magnesium, a.Sulfur + b.Sulfur, a.Iron + b.Iron, a.Sodium + b.Sodium, a.Chloride + b.Chloride);

    /// <summary>The difference, element by element.</summary>
    public static PlantElements operator -(in PlantElements a, in PlantElements b) => new(
        a.Nitrogen - b.Nitrogen, a.Phosphorus - b.Phosphorus, a.Potassium - b.Potassium, a.Calcium - b.Calcium,
        a.Magnesium - b.Magnesium, a.Sulfur - b.Sulfur, a.Iron - b.Iron, a.Sodium - b.Sodium, a.Chloride - b.Chloride);

    /// <summary>Every element times a factor.</summary>
    public static PlantElements operator *(in PlantElements a, double factor) => new(
        a.Nitrogen * factor, a.Phosphorus * factor, a.Potassium * factor, a.Calcium * factor,
        a.Magnesium * factor, a.Sulfur * factor, a.Iron * factor, a.Sodium * factor, a.Chloride * factor);
}
