using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;

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
    internal const double StepTolerance = 1e-6;
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
        var water = new CarbonateLanes(
            Vector256.Create(alkalinityEquivalentsPerLitre), Vector256.Create(phosphorusMolesPerLitre), Vector256.Create(tanMolesPerLitre),
            new EffectiveLanes(new ConstantLanes(in constants), Vector256.Create(ionicStrength)));
        CarbonateRoots root = SolveFour(
            in water, Vector256.Create(inorganicCarbonMolesPerLitre), Vector256.Create(HydrogenOf(pHGuess)), StepTolerance);
        return new CarbonateState(
            PHOf(root.Hydrogen.ToScalar()), root.CarbonDioxideMolesPerLitre.ToScalar(), root.SlopeOfCarbonDioxide.ToScalar());
    }

    /// <summary>Activity of H at a pH, 10^-pH.</summary>
    /// <param name="pH">pH as a meter reads it.</param>
    public static double HydrogenOf(double pH) => Math.Exp(-pH * LogarithmOfTen);

    /// <summary>The same of four waters.</summary>
    internal static Vector256<double> HydrogenOf(Vector256<double> pH) => FourFunctions.Exp(-LogarithmOfTen * pH);

    /// <summary>pH of an activity of H.</summary>
    /// <param name="hydrogen">Activity of H.</param>
    public static double PHOf(double hydrogen) => -Math.Log(hydrogen) / LogarithmOfTen;

    /// <summary>The same of four waters.</summary>
    internal static Vector256<double> PHOf(Vector256<double> hydrogen) => FourFunctions.Log(hydrogen) * (-1 / LogarithmOfTen);

    /// <summary>The same of four waters side by side, where the activities and a first guess are at hand.</summary>
    /// <remarks>A lane that is solved keeps its root while the others go on: no lane depends on its neighbours.</remarks>
    /// <param name="water">Alkalinity, phosphorus, ammonia and constants.</param>
    /// <param name="inorganicCarbonMolesPerLitre">mol/L; below zero is taken as zero.</param>
    /// <param name="hydrogenGuess">Activity of H to begin at.</param>
    /// <param name="tolerance">Of the last Newton step in ln h, which leaves an error of about its square.</param>
    internal static CarbonateRoots SolveFour(in CarbonateLanes water, Vector256<double> inorganicCarbonMolesPerLitre,
        Vector256<double> hydrogenGuess, double tolerance)
    {
        ref readonly EffectiveLanes k = ref water.Constants;
        Vector256<double> one = Vector256<double>.One;
        Vector256<double> carbon = Vector256.Max(Vector256<double>.Zero, inorganicCarbonMolesPerLitre);
        Vector256<double> low = Vector256.Create(HydrogenAtHighestPH);
        Vector256<double> high = Vector256.Create(HydrogenAtLowestPH);
        Vector256<double> h = Vector256.ConditionalSelect(
            Vector256.GreaterThan(hydrogenGuess, low) & Vector256.LessThan(hydrogenGuess, high), hydrogenGuess, Vector256.Create(NeutralHydrogen));
        Vector256<double> open = Vector256<double>.AllBitsSet;
        Vector256<double> excess = Vector256<double>.Zero;
        Vector256<double> charges = Vector256<double>.Zero;
        Vector256<double> buffer = one;
        for (var iteration = 0; iteration < MostIterations; iteration++)
        {
            Vector256<double> inverse = one / ((h * (h + k.K1)) + k.K1K2);
            Vector256<double> carbonate = k.K1K2 * inverse;
            Vector256<double> chargesNow = (k.K1 * h * inverse) + (carbonate + carbonate);
            Vector256<double> hydroxide = k.Water / h;
            Vector256<double> hydrogen = h * k.InverseGamma1;
            Vector256<double> phosphate = k.Phosphate / (h + k.Phosphate);
            Vector256<double> ammonia = k.Ammonium / (h + k.Ammonium);
            Vector256<double> phosphateCharges = water.Phosphorus * phosphate;
            Vector256<double> ammoniaCharges = water.Tan * ammonia;
            Vector256<double> excessNow = (carbon * chargesNow) + hydroxide - hydrogen + phosphateCharges + ammoniaCharges - water.Alkalinity;

            // Minus the derivative of alkalinity by ln h; a sum of variances, so never negative.
            Vector256<double> bufferNow = (carbon * (chargesNow + (carbonate + carbonate) - (chargesNow * chargesNow))) + hydroxide + hydrogen
                + (phosphateCharges * (one - phosphate)) + (ammoniaCharges * (one - ammonia));
            Vector256<double> step = excessNow / bufferNow;
            Vector256<double> stepSize = Vector256.Abs(step);
            Vector256<double> factor = one + (step * (one + (0.5 * step)));
            excess = Vector256.ConditionalSelect(open, excessNow, excess);
            charges = Vector256.ConditionalSelect(open, chargesNow, charges);
            buffer = Vector256.ConditionalSelect(open, bufferNow, buffer);
            Vector256<double> solved = open & Vector256.LessThan(stepSize, Vector256.Create(tolerance));
            h = Vector256.ConditionalSelect(solved, h * factor, h);
            open = Vector256.AndNot(open, solved);
            if (open == Vector256<double>.Zero)
            {
                break;
            }

            Vector256<double> tooBasic = Vector256.GreaterThan(excessNow, Vector256<double>.Zero);
            low = Vector256.ConditionalSelect(tooBasic, h, low);
            high = Vector256.ConditionalSelect(tooBasic, high, h);
            open = Vector256.AndNot(open, Vector256.LessThan(high - low, BracketTolerance * high));

            // Near the solution the start of exp's series serves as well as exp: h is the unknown, not ln h.
            Vector256<double> isSmall = Vector256.LessThan(stepSize, Vector256.Create(SmallStep));
            if (Vector256.AndNot(open, isSmall) != Vector256<double>.Zero)
            {
                factor = Vector256.ConditionalSelect(isSmall, factor, FourFunctions.Exp(step));
            }

            Vector256<double> next = h * factor;
            Vector256<double> within = iteration < NewtonIterations
                ? Vector256.GreaterThan(next, low) & Vector256.LessThan(next, high)
                : Vector256<double>.Zero;
            h = Vector256.ConditionalSelect(open, Vector256.ConditionalSelect(within, next, Vector256.Sqrt(low * high)), h);
        }

        Vector256<double> share = h * h / ((h * (h + k.K1)) + k.K1K2);
        Vector256<double> nothing = Vector256.IsNaN(excess);
        return new CarbonateRoots(
            h | nothing, (carbon * share) | nothing, (share * (one + (carbon * charges * charges / buffer))) | nothing);
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
