namespace FarmTwin.Farm.Water;

/// <summary>Conductivity (EC) and dissolved solids (TDS) as meters and as a balance read them.</summary>
/// <remarks>
/// EC25 = 1000 Σ Λ° c γ^a, γ by Davies at 25 °C, a = 0.6/√|z| while I is below 0.36 |z|, else √I/|z| (Appelo 2010; exponent from
/// memory, not re-read). Λ° from the CRC Handbook and Standard Methods 2510 (from memory). Within 1 % on single salts to 0.01 M;
/// reads 1.5-4 % high on farm water, since ion pairs are left out, and up to 11 % high on magnesium sulfate alone.
/// </remarks>
public static class Conductivity
{
    private const double ExponentAtLowStrength = 0.6;
    private const double LowStrengthPerCharge = 0.36;
    private const double ReferenceCelsius = 25;

    /// <summary>Conductivity at 25 °C, µS/cm.</summary>
    /// <param name="ions">mol/L.</param>
    /// <param name="inorganicCarbonMolesPerLitre">Total inorganic carbon, mol/L.</param>
    /// <param name="pH">pH as a meter reads it.</param>
    /// <param name="constants">Constants at the temperature at which that pH stands.</param>
    /// <param name="ionicStrength">mol/L.</param>
    public static double MicrosiemensPerCentimetreAt25(
        in Ions ions, double inorganicCarbonMolesPerLitre, double pH, in CarbonateConstants constants, double ionicStrength)
    {
        var k = new EffectiveConstants(in constants, ionicStrength);
        double h = Math.Exp(-pH * CarbonateConstants.LogarithmOfTen);
        double scale = inorganicCarbonMolesPerLitre / ((h * (h + k.K1)) + k.K1K2);
        double secondary = k.Phosphate / (h + k.Phosphate);
        double ammonium = h / (h + k.Ammonium);

        double monovalent = (349.8 * h * k.InverseGamma1) + (198.6 * k.Water / h) + (50.1 * ions.Na) + (73.5 * ions.K)
            + (73.5 * ions.TAN * ammonium) + (76.35 * ions.Cl) + (71.4 * ions.NitrateN) + (71.8 * ions.NitriteN)
            + (44.5 * k.K1 * h * scale) + (33 * ions.P * (1 - secondary));
        double divalent = (119.0 * ions.Ca) + (106.2 * ions.Mg) + (138.6 * k.K1K2 * scale) + (160.0 * ions.SulfateS)
            + (114 * ions.P * secondary);

        double logarithm = DaviesActivity.MonovalentLogarithm(ionicStrength, DaviesActivity.DebyeHuckelAt25);
        return 1000 * ((monovalent * Math.Exp(logarithm * Exponent(1, ionicStrength)))
            + (divalent * Math.Exp(4 * logarithm * Exponent(2, ionicStrength))));
    }

    /// <summary>What a meter without temperature compensation shows, µS/cm.</summary>
    /// <param name="microsiemensPerCentimetreAt25">Conductivity at 25 °C, µS/cm.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    /// <param name="parameters">Parameters.</param>
    public static double Uncompensated(double microsiemensPerCentimetreAt25, double temperatureCelsius, ConductivityParameters parameters) =>
        microsiemensPerCentimetreAt25 * (1 + (parameters.TemperatureCoefficientPerKelvin * (temperatureCelsius - ReferenceCelsius)));

    /// <summary>What a handheld meter shows as "ppm" of dissolved solids.</summary>
    /// <param name="microsiemensPerCentimetreAt25">Conductivity at 25 °C, µS/cm.</param>
    /// <param name="factor">The meter's factor: 0.5 ("500" scale), 0.64, or 0.7 ("700" or 442 scale).</param>
    public static double TdsMeter(double microsiemensPerCentimetreAt25, double factor) => factor * microsiemensPerCentimetreAt25;

    /// <summary>Dissolved solids as the sum of all ions, mg/L. Carbon dioxide and ammonia gas do not count.</summary>
    /// <param name="ions">mol/L.</param>
    /// <param name="inorganicCarbonMolesPerLitre">Total inorganic carbon, mol/L.</param>
    /// <param name="pH">pH as a meter reads it.</param>
    /// <param name="constants">Constants at the water's temperature.</param>
    /// <param name="ionicStrength">mol/L.</param>
    public static double TdsIonSumMilligramsPerLitre(
        in Ions ions, double inorganicCarbonMolesPerLitre, double pH, in CarbonateConstants constants, double ionicStrength)
    {
        const double Hydrogen = UnitConstants.AtomicWeight.Hydrogen;
        const double Oxygen = UnitConstants.AtomicWeight.Oxygen;
        const double Nitrogen = UnitConstants.AtomicWeight.Nitrogen;
        const double Carbonate = UnitConstants.AtomicWeight.Carbon + (3 * Oxygen);
        const double Phosphate = UnitConstants.AtomicWeight.Phosphorus + (4 * Oxygen);

        var k = new EffectiveConstants(in constants, ionicStrength);
        double h = Math.Exp(-pH * CarbonateConstants.LogarithmOfTen);
        double secondary = k.Phosphate / (h + k.Phosphate);
        double ammonium = h / (h + k.Ammonium);
        CarbonateSpecies carbon = CarbonateSpecies.At(inorganicCarbonMolesPerLitre, pH, in constants, ionicStrength);
        double grams = (ions.Na * UnitConstants.AtomicWeight.Sodium) + (ions.K * UnitConstants.AtomicWeight.Potassium)
            + (ions.Ca * UnitConstants.AtomicWeight.Calcium) + (ions.Mg * UnitConstants.AtomicWeight.Magnesium)
            + (ions.TAN * ammonium * (Nitrogen + (4 * Hydrogen)))
            + (ions.Cl * UnitConstants.AtomicWeight.Chlorine) + (ions.NitrateN * (Nitrogen + (3 * Oxygen)))
            + (ions.NitriteN * (Nitrogen + (2 * Oxygen))) + (ions.SulfateS * (UnitConstants.AtomicWeight.Sulfur + (4 * Oxygen)))
            + (carbon.BicarbonateMolesPerLitre * (Carbonate + Hydrogen)) + (carbon.CarbonateMolesPerLitre * Carbonate)
            + (ions.P * (Phosphate + (Hydrogen * (2 - secondary))));
        return grams * UnitConstants.GramsPerKilogram;
    }

    private static double Exponent(int charge, double ionicStrength) =>
        ionicStrength < LowStrengthPerCharge * charge
            ? ExponentAtLowStrength / Math.Sqrt(charge)
            : Math.Sqrt(ionicStrength) / charge;
}
