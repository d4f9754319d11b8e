namespace FarmTwin.Farm.Plants;

/// <summary>The elements a plant holds a pool of. The first <see cref="PlantElements.NutrientCount"/> are nutrients that can limit
/// growth; sodium and chloride are carried along with the water.</summary>
public enum PlantElement
{
    /// <summary>Nitrogen, as N.</summary>
    Nitrogen,

    /// <summary>Phosphorus, as P.</summary>
    Phosphorus,

    /// <summary>Potassium, as K.</summary>
    Potassium,

    /// <summary>Calcium, as Ca.</summary>
    Calcium,

    /// <summary>Magnesium, as Mg.</summary>
    Magnesium,

    /// <summary>Sulfur, as S.</summary>
    Sulfur,

    /// <summary>Iron, as Fe.</summary>
    Iron,

    /// <summary>Sodium, as Na; taken up passively.</summary>
    Sodium,

    /// <summary>Chloride, as Cl; taken up passively.</summary>
    Chloride,
}
