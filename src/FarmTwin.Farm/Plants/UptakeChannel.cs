namespace FarmTwin.Farm.Plants;

/// <summary>What roots take from the water: one channel a dissolved form, so that nitrogen has two.</summary>
public enum UptakeChannel
{
    /// <summary>Ammonium nitrogen, as N; fills the nitrogen pool.</summary>
    Ammonium,

    /// <summary>Nitrate nitrogen, as N; fills the nitrogen pool.</summary>
    Nitrate,

    /// <summary>Phosphate, as P.</summary>
    Phosphorus,

    /// <summary>Potassium, as K.</summary>
    Potassium,

    /// <summary>Calcium, as Ca.</summary>
    Calcium,

    /// <summary>Magnesium, as Mg.</summary>
    Magnesium,

    /// <summary>Sulfate, as S.</summary>
    Sulfur,

    /// <summary>Chelated iron, as Fe.</summary>
    Iron,
}
