using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;

namespace FarmTwin.Farm.Biofilter;

/// <summary>How a film grows, decays, is seeded and is stripped: dx/dt = Y J (1 − x/x_max) − b(T) x.</summary>
/// <remarks>The flux J is that which the solve of the water has booked over the step, so growth and uptake agree.</remarks>
public static class FilmGrowth
{
    /// <summary>Advances both populations over a step of constant flux, by the exact solution of the linear equation.</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="ammoniaOxidizersGramsCodPerSquareMetre">x_A, g COD/m²; replaced.</param>
    /// <param name="nitriteOxidizersGramsCodPerSquareMetre">x_B, g COD/m²; replaced.</param>
    /// <param name="ammoniaFluxGramsPerSquareMetreDay">TAN oxidized over the step, g N/(m² d).</param>
    /// <param name="nitriteFluxGramsPerSquareMetreDay">Nitrite oxidized over the step, g N/(m² d).</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    /// <param name="hours">Length of the step, h.</param>
    public static void Advance(
        NitrificationParameters parameters,
        ref double ammoniaOxidizersGramsCodPerSquareMetre,
        ref double nitriteOxidizersGramsCodPerSquareMetre,
        double ammoniaFluxGramsPerSquareMetreDay,
        double nitriteFluxGramsPerSquareMetreDay,
        double temperatureCelsius,
        double hours)
    {
        ammoniaOxidizersGramsCodPerSquareMetre = Advance(
            parameters, NitrifierPopulation.AmmoniaOxidizers, ammoniaOxidizersGramsCodPerSquareMetre, ammoniaFluxGramsPerSquareMetreDay,
            temperatureCelsius, hours);
        nitriteOxidizersGramsCodPerSquareMetre = Advance(
            parameters, NitrifierPopulation.NitriteOxidizers, nitriteOxidizersGramsCodPerSquareMetre, nitriteFluxGramsPerSquareMetreDay,
            temperatureCelsius, hours);
    }

    /// <summary>A population of four films after a step of constant flux.</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="kinetics">Of the population.</param>
    /// <param name="biomass">x, g COD/m².</param>
    /// <param name="flux">Oxidized over the step, g N/(m² d).</param>
    /// <param name="decayPerDay">b at the waters' temperatures, 1/d; above 0.</param>
    /// <param name="hours">Length of the step, h.</param>
    internal static Vector256<double> Advance(
        NitrificationParameters parameters,
        PopulationParameters kinetics,
        Vector256<double> biomass,
        Vector256<double> flux,
        Vector256<double> decayPerDay,
        double hours)
    {
        double full = kinetics.MaximumBiomassGramsCodPerSquareMetre;
        Vector256<double> gain = kinetics.YieldGramsCodPerGramN * Vector256.Max(Vector256<double>.Zero, flux);
        Vector256<double> rate = (gain / full) + decayPerDay;
        Vector256<double> rest = gain / rate;
        Vector256<double> next = rest + ((biomass - rest) * FourFunctions.Exp(rate * (-hours / UnitConstants.HoursPerDay)));
        return Vector256.Max(next, Vector256.Create(parameters.FloorShare * full));
    }

    /// <summary>A film whose populations stand at a share of a full film.</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="ammoniaOxidizerShare">Share of a full film, 0–1; never taken below the floor.</param>
    /// <param name="nitriteOxidizerShare">Share of a full film, 0–1; never taken below the floor.</param>
    public static Film AtShare(NitrificationParameters parameters, double ammoniaOxidizerShare, double nitriteOxidizerShare) => new(
        Math.Clamp(ammoniaOxidizerShare, parameters.FloorShare, 1) * parameters.AmmoniaOxidizers.MaximumBiomassGramsCodPerSquareMetre,
        Math.Clamp(nitriteOxidizerShare, parameters.FloorShare, 1) * parameters.NitriteOxidizers.MaximumBiomassGramsCodPerSquareMetre);

    /// <summary>Adds mature media: both populations rise by efficiency × seeded area / whole area of a full film, at most to a full one.</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="ammoniaOxidizersGramsCodPerSquareMetre">x_A, g COD/m²; replaced.</param>
    /// <param name="nitriteOxidizersGramsCodPerSquareMetre">x_B, g COD/m²; replaced.</param>
    /// <param name="seededAreaShare">Area of the mature media over the whole film area, 0–1.</param>
    public static void Seed(
        NitrificationParameters parameters,
        ref double ammoniaOxidizersGramsCodPerSquareMetre,
        ref double nitriteOxidizersGramsCodPerSquareMetre,
        double seededAreaShare)
    {
        double share = parameters.SeedingEfficiency * Math.Clamp(seededAreaShare, 0, 1);
        double fullA = parameters.AmmoniaOxidizers.MaximumBiomassGramsCodPerSquareMetre;
        double fullB = parameters.NitriteOxidizers.MaximumBiomassGramsCodPerSquareMetre;
        ammoniaOxidizersGramsCodPerSquareMetre = Math.Min(fullA, ammoniaOxidizersGramsCodPerSquareMetre + (share * fullA));
        nitriteOxidizersGramsCodPerSquareMetre = Math.Min(fullB, nitriteOxidizersGramsCodPerSquareMetre + (share * fullB));
    }

    /// <summary>Removes a share of the film (a wash, a shock) and returns what left, g COD/m² of both populations.</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="ammoniaOxidizersGramsCodPerSquareMetre">x_A, g COD/m²; replaced.</param>
    /// <param name="nitriteOxidizersGramsCodPerSquareMetre">x_B, g COD/m²; replaced.</param>
    /// <param name="fraction">Share stripped, 0–1.</param>
    public static double Strip(
        NitrificationParameters parameters,
        ref double ammoniaOxidizersGramsCodPerSquareMetre,
        ref double nitriteOxidizersGramsCodPerSquareMetre,
        double fraction)
    {
        double kept = 1 - Math.Clamp(fraction, 0, 1);
        double before = ammoniaOxidizersGramsCodPerSquareMetre + nitriteOxidizersGramsCodPerSquareMetre;
        ammoniaOxidizersGramsCodPerSquareMetre = Math.Max(
            ammoniaOxidizersGramsCodPerSquareMetre * kept,
            Math.Min(ammoniaOxidizersGramsCodPerSquareMetre, parameters.FloorShare * parameters.AmmoniaOxidizers.MaximumBiomassGramsCodPerSquareMetre));
        nitriteOxidizersGramsCodPerSquareMetre = Math.Max(
            nitriteOxidizersGramsCodPerSquareMetre * kept,
            Math.Min(nitriteOxidizersGramsCodPerSquareMetre, parameters.FloorShare * parameters.NitriteOxidizers.MaximumBiomassGramsCodPerSquareMetre));
        return before - ammoniaOxidizersGramsCodPerSquareMetre - nitriteOxidizersGramsCodPerSquareMetre;
    }

    private static double Advance(
        NitrificationParameters parameters, NitrifierPopulation population, double biomass, double flux, double temperatureCelsius, double hours) =>
        Advance(
            parameters,
            parameters.Of(population),
            Vector256.Create(biomass),
            Vector256.Create(flux),
            Vector256.Create(FilmResponse.DecayRatePerDay(parameters, population, temperatureCelsius)),
            hours).ToScalar();
}
