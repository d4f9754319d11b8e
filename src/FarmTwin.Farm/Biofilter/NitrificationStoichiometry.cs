namespace FarmTwin.Farm.Biofilter;

/// <summary>What oxidizing a gram of nitrogen takes and leaves, with cell growth (matrix of Hiatt &amp; Grady 2008).</summary>
/// <remarks>
/// The ledger books a gram of TAN as a gram of nitrite and then of nitrate: the 2 % that growing cells hold is returned when they
/// decay, and is not carried as a store. Alkalinity follows from the ions; <see cref="AlkalinityPerNitrogen"/> is for checks and advice.
/// </remarks>
public static class NitrificationStoichiometry
{
    private const double OxygenMolarMass = 2 * UnitConstants.AtomicWeight.Oxygen;

    // NH3 + 1.5 O2 → NO2−, NO2− + 0.5 O2 → NO3−; and 1.25 mol O2 equivalents of electrons per mol nitrate reduced to N2.
    private const double AmmoniaOxygenMoles = 1.5;
    private const double NitriteOxygenMoles = 0.5;
    private const double DenitrificationElectronMoles = 1.25;

    // COD of cells C5H7O2N: 160/113 = 1.42 g COD per g volatile solids.
    private const double CodPerVolatileSolids = 1.42;

    /// <summary>Alkalinity used by nitrification, g CaCO3 per g N (two charges per nitrogen): 7.14.</summary>
    public const double AlkalinityPerNitrogen = 2 * UnitConstants.GramsCalciumCarbonatePerEquivalent / UnitConstants.AtomicWeight.Nitrogen;

    /// <summary>Alkalinity returned by denitrification or by ammonification, g CaCO3 per g N (one charge per nitrogen): 3.57.</summary>
    public const double AlkalinityReturnedPerNitrogen = UnitConstants.GramsCalciumCarbonatePerEquivalent / UnitConstants.AtomicWeight.Nitrogen;

    /// <summary>COD electron equivalents taken by denitrification, g COD per g N: 2.86.</summary>
    public const double CodPerDenitrifiedNitrogen = DenitrificationElectronMoles * OxygenMolarMass / UnitConstants.AtomicWeight.Nitrogen;

    /// <summary>Oxygen used by the first step, g O2 per g N (3.25 at the default yield).</summary>
    public static double OxygenPerAmmoniaNitrogen(NitrificationParameters parameters) =>
        (AmmoniaOxygenMoles * OxygenMolarMass / UnitConstants.AtomicWeight.Nitrogen) - parameters.AmmoniaOxidizers.YieldGramsCodPerGramN;

    /// <summary>Oxygen used by the second step, g O2 per g N (1.08 at the default yield).</summary>
    public static double OxygenPerNitriteNitrogen(NitrificationParameters parameters) =>
        (NitriteOxygenMoles * OxygenMolarMass / UnitConstants.AtomicWeight.Nitrogen) - parameters.NitriteOxidizers.YieldGramsCodPerGramN;

    /// <summary>Oxygen used by both steps, g O2 per g N (4.33 at the default yields).</summary>
    public static double OxygenPerNitrogen(NitrificationParameters parameters) =>
        OxygenPerAmmoniaNitrogen(parameters) + OxygenPerNitriteNitrogen(parameters);

    /// <summary>Nitrifier mass formed, g volatile solids per g N through both steps.</summary>
    public static double CellsPerNitrogen(NitrificationParameters parameters) =>
        (parameters.AmmoniaOxidizers.YieldGramsCodPerGramN + parameters.NitriteOxidizers.YieldGramsCodPerGramN) / CodPerVolatileSolids;
}
