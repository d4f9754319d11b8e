namespace FarmTwin.Farm.Fish;

/// <summary>Closed forms of growth: for planning, for calibrating a strain on weigh-ins, and as a check on the stepped model.</summary>
public static class GrowthCurves
{
    // Goddek & Körner (2019), Table 4, in the form of Lupatsch & Kissil (1998): Nile tilapia, 55-600 g, about 29 °C.
    private const double PowerLawScale = 0.0277;
    private const double PowerLawExponent = 0.4071;
    private const double PowerLawPerKelvin = 0.0897;

    // Iwama & Tautz (1981) state their growth coefficient per thousand degree-days.
    private const double DegreeDayScale = 1000;

    /// <summary>Weight after feeding to appetite, g: (W0^(1/3) + G S)^3.</summary>
    /// <param name="startGrams">Weight at the start, g.</param>
    /// <param name="growthCoefficient">G, g^(1/3)/d.</param>
    /// <param name="effectiveDays">Days times temperature factor times stress factors, d.</param>
    public static double CubeRootGrams(double startGrams, double growthCoefficient, double effectiveDays)
    {
        double root = Math.Cbrt(startGrams) + (growthCoefficient * effectiveDays);
        return root * root * root;
    }

    /// <summary>The growth coefficient of a strain on its site from two weigh-ins, g^(1/3)/d.</summary>
    /// <param name="startGrams">First mean weight, g.</param>
    /// <param name="endGrams">Second mean weight, g.</param>
    /// <param name="effectiveDays">Days between, each times its temperature factor, d, above 0.</param>
    public static double GrowthCoefficient(double startGrams, double endGrams, double effectiveDays) =>
        (Math.Cbrt(endGrams) - Math.Cbrt(startGrams)) / effectiveDays;

    /// <summary>Weight by the thermal-unit growth of Iwama &amp; Tautz (1981), g, with exponent 1/3. It grows steadily with
    /// temperature: no guide away from the temperature where its coefficient was found.</summary>
    /// <param name="startGrams">Weight at the start, g.</param>
    /// <param name="coefficient">Growth coefficient, g^(1/3) per thousand degree-days.</param>
    /// <param name="degreeDays">Sum of °C times days.</param>
    public static double ThermalUnitGrams(double startGrams, double coefficient, double degreeDays) =>
        CubeRootGrams(startGrams, coefficient / DegreeDayScale, degreeDays);

    /// <summary>Gain by the power law fitted to Nile tilapia (Goddek &amp; Körner 2019), g/d; 24–31 °C, 55–600 g, ration not limiting.</summary>
    public static double PowerLawGainGramsPerDay(double grams, double temperatureCelsius) =>
        PowerLawScale * Math.Pow(grams, PowerLawExponent) * Math.Exp(PowerLawPerKelvin * temperatureCelsius);

    /// <summary>Weight by the same power law after some days, g.</summary>
    public static double PowerLawGrams(double startGrams, double temperatureCelsius, double days) => Math.Pow(
        Math.Pow(startGrams, 1 - PowerLawExponent) + (PowerLawRate(temperatureCelsius) * days), 1 / (1 - PowerLawExponent));

    /// <summary>Days from one weight to another by the same power law.</summary>
    public static double PowerLawDays(double startGrams, double endGrams, double temperatureCelsius) =>
        (Math.Pow(endGrams, 1 - PowerLawExponent) - Math.Pow(startGrams, 1 - PowerLawExponent)) / PowerLawRate(temperatureCelsius);

    private static double PowerLawRate(double temperatureCelsius) =>
        (1 - PowerLawExponent) * PowerLawScale * Math.Exp(PowerLawPerKelvin * temperatureCelsius);
}
