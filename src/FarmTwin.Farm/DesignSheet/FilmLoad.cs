using FarmTwin.Farm.Biofilter;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Grown films at a steady load: Best's flux law with the film that the flux itself keeps alive.</summary>
/// <remarks>Film: Y J (1 − x/x_max) = b x, so x = Y J / (Y J / x_max + b), repeated with J(x) from a full film down.</remarks>
/// <param name="parameters">Nitrification parameters.</param>
/// <param name="conditions">The water, without free ammonia.</param>
public sealed class FilmLoad(NitrificationParameters parameters, FilmConditions conditions)
{
    private const int Repetitions = 300;
    private const int Halvings = 60;

    /// <summary>Flux of a film at rest with its concentration, g N/(m² d).</summary>
    /// <param name="population">Which population.</param>
    /// <param name="milligramsNPerLitre">TAN or nitrite of the water, mg N/L.</param>
    public double FluxGramsPerSquareMetreDay(NitrifierPopulation population, double milligramsNPerLitre)
    {
        PopulationParameters kinetics = parameters.Of(population);
        double full = kinetics.MaximumBiomassGramsCodPerSquareMetre;
        double decay = FilmResponse.DecayRatePerDay(parameters, population, conditions.TemperatureCelsius);
        double cap = population == NitrifierPopulation.AmmoniaOxidizers
            ? FilmFlux.OxygenCapGramsPerSquareMetreDay(parameters, conditions.TemperatureCelsius, conditions.OxygenMilligramsPerLitre)
            : double.PositiveInfinity;
        double film = full;
        double flux = 0;
        for (int i = 0; i < Repetitions; i++)
        {
            double capacity = FilmFlux.CapacityGramsPerSquareMetreDay(parameters, population, film, conditions);
            flux = FilmFlux.FluxGramsPerSquareMetreDay(parameters, population, capacity, milligramsNPerLitre, cap);
            double gain = kinetics.YieldGramsCodPerGramN * flux;
            film = Math.Max(gain / ((gain / full) + decay), parameters.FloorShare * full);
        }

        return flux;
    }

    /// <summary>Concentration at which films carry a flux, mg N/L; infinity where they never do.</summary>
    /// <param name="population">Which population.</param>
    /// <param name="gramsPerSquareMetreDay">The flux, g N/(m² d).</param>
    /// <param name="mostMilligramsNPerLitre">Highest concentration looked at, mg N/L.</param>
    public double ConcentrationFor(NitrifierPopulation population, double gramsPerSquareMetreDay, double mostMilligramsNPerLitre)
    {
        if (FluxGramsPerSquareMetreDay(population, mostMilligramsNPerLitre) < gramsPerSquareMetreDay)
        {
            return double.PositiveInfinity;
        }

        double low = 0;
        double high = mostMilligramsNPerLitre;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            bool carries = FluxGramsPerSquareMetreDay(population, middle) >= gramsPerSquareMetreDay;
            high = carries ? middle : high;
            low = carries ? low : middle;
        }

        return high;
    }
}
