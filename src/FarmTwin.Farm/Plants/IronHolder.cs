namespace FarmTwin.Farm.Plants;

/// <summary>What holds iron in solution, in the order of the columns from <see cref="Water.Substance.Iron"/> on.</summary>
public enum IronHolder
{
    /// <summary>EDDHA: holds iron up to about pH 9; the default where the plants' water stays above pH 7.</summary>
    Eddha,

    /// <summary>DTPA: up to about pH 6.5.</summary>
    Dtpa,

    /// <summary>EDTA: up to about pH 6.</summary>
    Edta,

    /// <summary>No chelate: humic matter of the water, and hydroxide in acid water.</summary>
    Unchelated,
}
