namespace FarmTwin.Farm.Plants;

/// <summary>What holds the iron in solution.</summary>
public enum IronChelate
{
    /// <summary>EDTA: holds iron up to about pH 6.</summary>
    Edta,

    /// <summary>DTPA: up to about pH 6.5.</summary>
    Dtpa,

    /// <summary>EDDHA: up to about pH 9; the default where the plants' water stays above pH 7.</summary>
    Eddha,
}
