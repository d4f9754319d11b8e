namespace FarmTwin.Farm.Water;

/// <summary>How much of a base to give, how much of a hydroxide may be given, and what a dose does to pH and ammonia.</summary>
/// <remarks>
/// Safety: 20 mg/L (as CaCO3) of potassium hydroxide in weak water takes pH 7.0 to 9.8 and turns 0.4 % of TAN that is toxic into
/// most of it. A bicarbonate cannot do this. So hydroxide equivalents stay below the free carbon dioxide, by default below half
/// of it.
/// </remarks>
public static class BaseDose
{
    private const double NeutralPH = 7;

    /// <summary>Grams of a product for a wanted rise of alkalinity, or of an acid for a wanted fall.</summary>
    /// <param name="product">The base (or, for a negative rise, the acid).</param>
    /// <param name="riseMilligramsCalciumCarbonatePerLitre">Wanted rise, mg/L as CaCO3; negative for a fall.</param>
    /// <param name="volumeLitres">Water volume, L.</param>
    /// <exception cref="ArgumentException">The product cannot move alkalinity that way.</exception>
    public static double GramsForRise(Supplement product, double riseMilligramsCalciumCarbonatePerLitre, double volumeLitres)
    {
        ArgumentNullException.ThrowIfNull(product);
        double perKilogram = product.AlkalinityEquivalentsPerKilogram;
        double equivalents = Alkalinity.EquivalentsFromCalciumCarbonate(riseMilligramsCalciumCarbonatePerLitre) * volumeLitres;
        if (Math.Abs(perKilogram) < 1e-3 || equivalents * perKilogram < 0)
        {
            throw new ArgumentException(
                $"'{product.Title}' cannot change alkalinity by {riseMilligramsCalciumCarbonatePerLitre} mg/L: it brings {perKilogram:0.###} eq/kg.");
        }

        return equivalents / perKilogram * UnitConstants.GramsPerKilogram;
    }

    /// <summary>The largest equivalents of hydroxide allowed in one event.</summary>
    /// <param name="carbonDioxideMolesPerLitre">Free carbon dioxide of the water that the dose reaches, mol/L.</param>
    /// <param name="volumeLitres">Volume of that water, L.</param>
    /// <param name="parameters">The allowed share.</param>
    public static double LargestHydroxideEquivalents(double carbonDioxideMolesPerLitre, double volumeLitres, DosingParameters parameters) =>
        parameters.HydroxideShareOfCarbonDioxide * carbonDioxideMolesPerLitre * volumeLitres;

    /// <summary>The largest dose of a product in one event, g: infinite for one that binds no free carbon dioxide.</summary>
    /// <remarks>The rule, stated for hydroxides, is applied to carbonates by the half of their alkalinity that binds carbon
    /// dioxide.</remarks>
    /// <param name="product">The product.</param>
    /// <param name="carbonDioxideMolesPerLitre">Free carbon dioxide of the water that the dose reaches, mol/L.</param>
    /// <param name="volumeLitres">Volume of that water, L.</param>
    /// <param name="parameters">The allowed share.</param>
    public static double LargestGrams(
        Supplement product, double carbonDioxideMolesPerLitre, double volumeLitres, DosingParameters parameters)
    {
        double bound = product.CarbonDioxideBoundEquivalentsPerKilogram;
        return bound > 1e-3 && !product.DissolvesSlowly
            ? LargestHydroxideEquivalents(carbonDioxideMolesPerLitre, volumeLitres, parameters) / bound * UnitConstants.GramsPerKilogram
            : double.PositiveInfinity;
    }

    /// <summary>Predicts a dose: all dissolved, mixed, no gas exchanged. For a product that dissolves slowly this is the far
    /// end.</summary>
    /// <param name="ions">The water before, mol/L.</param>
    /// <param name="inorganicCarbonMolesPerLitre">Its inorganic carbon, mol/L.</param>
    /// <param name="temperatureCelsius">Its temperature, °C.</param>
    /// <param name="volumeLitres">Its volume, L.</param>
    /// <param name="product">What is dosed.</param>
    /// <param name="grams">How much, g of the product.</param>
    /// <param name="parameters">The allowed share.</param>
    public static DosePrediction Predict(in Ions ions, double inorganicCarbonMolesPerLitre, double temperatureCelsius, double volumeLitres,
        Supplement product, double grams, DosingParameters parameters)
    {
        var constants = CarbonateConstants.At(temperatureCelsius);
        double kilogramsPerLitre = grams / UnitConstants.GramsPerKilogram / volumeLitres;
        Ions added = product.IonsMolesPerKilogram;
        Ions after = new(
            ions.Na + (added.Na * kilogramsPerLitre), ions.K + (added.K * kilogramsPerLitre), ions.Ca + (added.Ca * kilogramsPerLitre),
            ions.Mg + (added.Mg * kilogramsPerLitre), ions.Cl + (added.Cl * kilogramsPerLitre),
            ions.NitrateN + (added.NitrateN * kilogramsPerLitre), ions.NitriteN, ions.SulfateS + (added.SulfateS * kilogramsPerLitre),
            ions.P + (added.P * kilogramsPerLitre), ions.TAN + (added.TAN * kilogramsPerLitre));
        double carbonAfter = inorganicCarbonMolesPerLitre + (product.InorganicCarbonMolesPerKilogram * kilogramsPerLitre);
        CarbonateState before = Solved(in ions, inorganicCarbonMolesPerLitre, in constants);
        CarbonateState then = Solved(in after, carbonAfter, in constants);
        return new DosePrediction(
            before.PH,
            then.PH,
            Alkalinity.MilligramsCalciumCarbonatePerLitre(Alkalinity.EquivalentsPerLitre(in after)),
            UnionizedMilligramsPerLitre(ions.TAN, before.PH, temperatureCelsius),
            UnionizedMilligramsPerLitre(after.TAN, then.PH, temperatureCelsius),
            before.CarbonDioxideMolesPerLitre,
            grams <= LargestGrams(product, before.CarbonDioxideMolesPerLitre, volumeLitres, parameters));
    }

    private static CarbonateState Solved(in Ions ions, double carbon, in CarbonateConstants constants) =>
        CarbonateSystem.Solve(Alkalinity.EquivalentsPerLitre(in ions), carbon, ions.P, ions.TAN, in constants,
            IonicStrength.MolesPerLitre(in ions), NeutralPH);

    private static double UnionizedMilligramsPerLitre(double tan, double pH, double temperatureCelsius) =>
        tan * UnitConstants.AtomicWeight.Nitrogen * UnitConstants.GramsPerKilogram * Ammonia.UnionizedFraction(pH, temperatureCelsius);
}
