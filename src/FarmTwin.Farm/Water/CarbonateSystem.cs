namespace FarmTwin.Farm.Water;

/// <summary>pH and carbon dioxide from alkalinity and inorganic carbon.</summary>
/// <remarks>
/// Alk = C (K1 h + 2 K1K2)/(h² + K1 h + K1K2) + Kw/h - h/γ1 + P KP/(h + KP) + TAN KN/(h + KN), all constants corrected by Davies
/// activities; h is the activity of H. Ion pairs are left out: below 0.01 pH in potassium and sodium waters, up to 0.06 in
/// calcium waters above pH 9. H3PO4 and PO4 are left out (below pH 4, above pH 11). Pure, allocation free, safe on any thread.
/// </remarks>
public static class CarbonateSystem
{
    private const double LogarithmOfTen = CarbonateConstants.LogarithmOfTen;
    private const double LowestPH = 2;
    private const double HighestPH = 12.5;
    private const double HydrogenAtLowestPH = 1e-2;
    private const double HydrogenAtHighestPH = 3.1622776601683794e-13;
    private const double NeutralHydrogen = 1e-7;

    /// <summary>A Newton step in ln h that small leaves an error of about its square.</summary>
    private const double StepTolerance = 1e-6;
    private const double SmallStep = 0.2;
    private const double BracketTolerance = 1e-13;
    private const int NewtonIterations = 24;
    private const int MostIterations = 90;

    /// <summary>Solves for pH at fixed alkalinity and inorganic carbon: safeguarded Newton in ln h, bisection of pH 2-12.5
    /// behind it.</summary>
    /// <param name="alkalinityEquivalentsPerLitre">eq/L, from <see cref="Alkalinity"/>; may be negative.</param>
    /// <param name="inorganicCarbonMolesPerLitre">Total inorganic carbon, mol/L; below zero is taken as zero.</param>
    /// <param name="phosphorusMolesPerLitre">Dissolved phosphate, mol/L.</param>
    /// <param name="tanMolesPerLitre">Total ammonia nitrogen, mol/L.</param>
    /// <param name="constants">Constants at the water's temperature.</param>
    /// <param name="ionicStrength">mol/L.</param>
    /// <param name="pHGuess">The last pH; a poor one costs time, not correctness.</param>
    public static CarbonateState Solve(double alkalinityEquivalentsPerLitre, double inorganicCarbonMolesPerLitre,
        double phosphorusMolesPerLitre, double tanMolesPerLitre, in CarbonateConstants constants, double ionicStrength, double pHGuess)
    {
        CarbonateRoot root = SolveWith(alkalinityEquivalentsPerLitre, inorganicCarbonMolesPerLitre, phosphorusMolesPerLitre,
            tanMolesPerLitre, new EffectiveConstants(in constants, ionicStrength), HydrogenOf(pHGuess), StepTolerance);
        return new CarbonateState(PHOf(root.Hydrogen), root.CarbonDioxideMolesPerLitre, root.SlopeOfCarbonDioxide);
    }

    /// <summary>Activity of H at a pH, 10^-pH.</summary>
    /// <param name="pH">pH as a meter reads it.</param>
    public static double HydrogenOf(double pH) => Math.Exp(-pH * LogarithmOfTen);

    /// <summary>pH of an activity of H.</summary>
    /// <param name="hydrogen">Activity of H.</param>
    public static double PHOf(double hydrogen) => -Math.Log(hydrogen) / LogarithmOfTen;

    // The same where the activities and a first guess are at hand, which hold most of its cost. The last Newton step in ln h is below
    // the tolerance and leaves an error of about its square.
    internal static CarbonateRoot SolveWith(double alkalinityEquivalentsPerLitre, double inorganicCarbonMolesPerLitre,
        double phosphorusMolesPerLitre, double tanMolesPerLitre, in EffectiveConstants k, double hydrogenGuess, double tolerance)
    {
        double carbon = Math.Max(0, inorganicCarbonMolesPerLitre);
        double low = HydrogenAtHighestPH;
        double high = HydrogenAtLowestPH;
        double h = hydrogenGuess;
        if (!(h > low && h < high))
        {
            h = NeutralHydrogen;
        }

        double excess = double.NaN;
        double charges = 0;
        double buffer = 1;
        for (var iteration = 0; iteration < MostIterations; iteration++)
        {
            double inverse = 1 / ((h * (h + k.K1)) + k.K1K2);
            double carbonate = k.K1K2 * inverse;
            charges = (k.K1 * h * inverse) + (2 * carbonate);
            double hydroxide = k.Water / h;
            double hydrogen = h * k.InverseGamma1;
            double phosphate = k.Phosphate / (h + k.Phosphate);
            double ammonia = k.Ammonium / (h + k.Ammonium);
            double phosphateCharges = phosphorusMolesPerLitre * phosphate;
            double ammoniaCharges = tanMolesPerLitre * ammonia;
            excess = (carbon * charges) + hydroxide - hydrogen + phosphateCharges + ammoniaCharges - alkalinityEquivalentsPerLitre;

            // Minus the derivative of alkalinity by ln h; a sum of variances, so never negative.
            buffer = (carbon * (charges + (2 * carbonate) - (charges * charges))) + hydroxide + hydrogen
                + (phosphateCharges * (1 - phosphate)) + (ammoniaCharges * (1 - ammonia));
            double step = excess / buffer;
            double factor = 1 + (step * (1 + (0.5 * step)));
            if (Math.Abs(step) < tolerance)
            {
                h *= factor;
                break;
            }

            if (excess > 0)
            {
                low = h;
            }
            else
            {
                high = h;
            }

            if (high - low < BracketTolerance * high)
            {
                break;
            }

            // Near the solution the start of exp's series serves as well as exp: h is the unknown, not ln h.
            double next = h * (Math.Abs(step) < SmallStep ? factor : Math.Exp(step));
            h = iteration < NewtonIterations && next > low && next < high ? next : Math.Sqrt(low * high);
        }

        if (double.IsNaN(excess))
        {
            return new CarbonateRoot(double.NaN, double.NaN, double.NaN);
        }

        double share = h * h / ((h * (h + k.K1)) + k.K1K2);
        return new CarbonateRoot(h, carbon * share, share * (1 + (carbon * charges * charges / buffer)));
    }

    /// <summary>Solves for pH and inorganic carbon at fixed alkalinity and carbon dioxide: water that air (or a gas) has
    /// brought to equilibrium.</summary>
    /// <param name="alkalinityEquivalentsPerLitre">eq/L; may be negative.</param>
    /// <param name="carbonDioxideMolesPerLitre">Dissolved carbon dioxide, mol/L.</param>
    /// <param name="phosphorusMolesPerLitre">Dissolved phosphate, mol/L.</param>
    /// <param name="tanMolesPerLitre">Total ammonia nitrogen, mol/L.</param>
    /// <param name="constants">Constants at the water's temperature.</param>
    /// <param name="ionicStrength">mol/L.</param>
    public static OpenCarbonateState SolveOpen(double alkalinityEquivalentsPerLitre, double carbonDioxideMolesPerLitre,
        double phosphorusMolesPerLitre, double tanMolesPerLitre, in CarbonateConstants constants, double ionicStrength)
    {
        var k = new EffectiveConstants(in constants, ionicStrength);
        double low = -HighestPH * LogarithmOfTen;
        double high = -LowestPH * LogarithmOfTen;

        // Not in a simulation step: plain bisection to the last digit, which no water can defeat.
        while (high - low > BracketTolerance)
        {
            double middle = 0.5 * (low + high);
            double h = Math.Exp(middle);
            double excess = (carbonDioxideMolesPerLitre * ((k.K1 * h) + (2 * k.K1K2)) / (h * h)) + (k.Water / h)
                - (h * k.InverseGamma1) + (phosphorusMolesPerLitre * k.Phosphate / (h + k.Phosphate))
                + (tanMolesPerLitre * k.Ammonium / (h + k.Ammonium)) - alkalinityEquivalentsPerLitre;
            if (excess > 0)
            {
                low = middle;
            }
            else if (excess <= 0)
            {
                high = middle;
            }
            else
            {
                return new OpenCarbonateState(double.NaN, double.NaN);
            }
        }

        double x = 0.5 * (low + high);
        double activity = Math.Exp(x);
        double carbon = carbonDioxideMolesPerLitre * ((activity * (activity + k.K1)) + k.K1K2) / (activity * activity);
        return new OpenCarbonateState(-x / LogarithmOfTen, carbon);
    }

    /// <summary>The inorganic carbon of a water of which alkalinity and pH were measured: the inverse of <see cref="Solve"/>,
    /// mol/L.</summary>
    /// <remarks>Zero where alkalinity minus what phosphate, ammonia and water hold is negative: no carbon then gives that
    /// pH.</remarks>
    /// <param name="alkalinityEquivalentsPerLitre">eq/L.</param>
    /// <param name="pH">pH as a meter reads it, 2-12.5.</param>
    /// <param name="phosphorusMolesPerLitre">Dissolved phosphate, mol/L.</param>
    /// <param name="tanMolesPerLitre">Total ammonia nitrogen, mol/L.</param>
    /// <param name="constants">Constants at the water's temperature.</param>
    /// <param name="ionicStrength">mol/L.</param>
    public static double InorganicCarbonForPH(double alkalinityEquivalentsPerLitre, double pH, double phosphorusMolesPerLitre,
        double tanMolesPerLitre, in CarbonateConstants constants, double ionicStrength)
    {
        var k = new EffectiveConstants(in constants, ionicStrength);
        double h = Math.Exp(-pH * LogarithmOfTen);
        double charges = ((k.K1 * h) + (2 * k.K1K2)) / ((h * (h + k.K1)) + k.K1K2);
        double held = alkalinityEquivalentsPerLitre - (k.Water / h) + (h * k.InverseGamma1)
            - (phosphorusMolesPerLitre * k.Phosphate / (h + k.Phosphate)) - (tanMolesPerLitre * k.Ammonium / (h + k.Ammonium));
        return Math.Max(0, held / charges);
    }

    /// <summary>Carbon dioxide dissolved in equilibrium with moist air, mol/L.</summary>
    /// <param name="constants">Constants at the water's temperature.</param>
    /// <param name="partsPerMillionDry">Mole fraction in dry air, ppm: 420 outdoors, 600-2000 in a closed fish house.</param>
    /// <param name="pressureAtmospheres">Air pressure, atm.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    public static double SaturationCarbonDioxideMolesPerLitre(in CarbonateConstants constants, double partsPerMillionDry,
        double pressureAtmospheres, double temperatureCelsius) =>
        constants.KHenry * partsPerMillionDry * 1e-6
            * (pressureAtmospheres - OxygenSaturation.WaterVapourAtmospheres(temperatureCelsius));

    /// <summary>Saturation index of calcite, log10(γ2² [Ca][CO3] / Ksp): calcite dissolves below zero only.</summary>
    /// <param name="calciumMolesPerLitre">mol/L; zero gives minus infinity.</param>
    /// <param name="inorganicCarbonMolesPerLitre">Total inorganic carbon, mol/L.</param>
    /// <param name="pH">pH as a meter reads it.</param>
    /// <param name="constants">Constants at the water's temperature.</param>
    /// <param name="ionicStrength">mol/L.</param>
    public static double CalciteSaturationIndex(double calciumMolesPerLitre, double inorganicCarbonMolesPerLitre, double pH,
        in CarbonateConstants constants, double ionicStrength)
    {
        double gamma2 = DaviesActivity.Divalent(ionicStrength, constants.DebyeHuckel);
        CarbonateSpecies species = CarbonateSpecies.At(inorganicCarbonMolesPerLitre, pH, in constants, ionicStrength);
        return Math.Log10(gamma2 * gamma2 * calciumMolesPerLitre * species.CarbonateMolesPerLitre / constants.KspCalcite);
    }
}
