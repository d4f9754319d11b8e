using FarmTwin.Farm.Biofilter;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Biofilter;

/// <summary>A well mixed tank of 1 m³ with film, stepped by the kernels in two ways: a harness, not the farm's solver.</summary>
internal sealed record StartUpTank(double AreaPerVolume, double Celsius, double PH, double Oxygen, double StartA, double StartB)
{
    // The recorded runs hold alkalinity and leave its factor out.
    public static readonly NitrificationParameters Parameters =
        NitrificationParameters.From(ParameterLibrary.Load("processes", "nitrification")) with { AlkalinityHalfSaturationMilligramsPerLitre = 0 };

    public double Dose { get; init; }

    public required Func<double, double> LoadPerDay { get; init; }

    /// <summary>Un-ionized share of TAN, Emerson et al. 1975.</summary>
    public double AmmoniaShare => 1 / (1 + Math.Pow(10, 0.09018 + (2729.92 / (Celsius + 273.15)) - PH));

    public StartUpCourse Explicit(int days, double stepHours)
    {
        double tan = Dose, nitrite = 0, nitrate = 0;
        Film film = FilmGrowth.AtShare(Parameters, StartA, StartB);
        double xA = film.AmmoniaOxidizersGramsCodPerSquareMetre, xB = film.NitriteOxidizersGramsCodPerSquareMetre;
        var course = new StartUpCourse();
        course.Add(tan, nitrite, nitrate, xA, xB);
        double dt = stepHours / 24;
        int perDay = (int)Math.Round(24 / stepHours);
        for (int i = 0; i < days * perDay; i++)
        {
            (double fluxA, double fluxB) = Fluxes(tan, nitrite, xA, xB);
            fluxA = Math.Min(fluxA, tan / dt / AreaPerVolume);
            fluxB = Math.Min(fluxB, nitrite / dt / AreaPerVolume);
            tan += dt * (LoadPerDay(i * dt) - (fluxA * AreaPerVolume));
            nitrite += dt * (fluxA - fluxB) * AreaPerVolume;
            nitrate += dt * fluxB * AreaPerVolume;
            FilmGrowth.Advance(Parameters, ref xA, ref xB, fluxA, fluxB, Celsius, stepHours);
            if ((i + 1) % perDay == 0)
            {
                course.Add(tan, nitrite, nitrate, xA, xB);
            }
        }

        return course;
    }

    /// <summary>Backward Euler with the flux law linearized as J/S, as the season's joint solve does it.</summary>
    public StartUpCourse Implicit(int days, double stepHours, int passes = 3)
    {
        const double volume = 1000;
        double tan = Dose, nitrite = 0, nitrate = 0;
        Film film = FilmGrowth.AtShare(Parameters, StartA, StartB);
        double xA = film.AmmoniaOxidizersGramsCodPerSquareMetre, xB = film.NitriteOxidizersGramsCodPerSquareMetre;
        var course = new StartUpCourse();
        course.Add(tan, nitrite, nitrate, xA, xB);
        int perDay = (int)Math.Round(24 / stepHours);
        double cap = FilmFlux.OxygenCapGramsPerSquareMetreDay(Parameters, Celsius, Oxygen);
        for (int i = 0; i < days * perDay; i++)
        {
            double source = LoadPerDay(i * stepHours / 24) * volume / 24;
            double nextTan = tan, nextNitrite = nitrite, kA = 0, kB = 0;
            for (int pass = 0; pass < passes; pass++)
            {
                (double capacityA, double capacityB) = Capacities(nextTan, xA, xB);
                kA = AreaPerVolume * FilmFlux.ConductanceLitresPerHourPerSquareMetre(Parameters, NitrifierPopulation.AmmoniaOxidizers, capacityA, nextTan, cap);
                nextTan = ((volume * tan / stepHours) + source) / ((volume / stepHours) + kA);
                kB = AreaPerVolume * FilmFlux.ConductanceLitresPerHourPerSquareMetre(Parameters, NitrifierPopulation.NitriteOxidizers, capacityB, nextNitrite);
                nextNitrite = ((volume * nitrite / stepHours) + (kA * nextTan)) / ((volume / stepHours) + kB);
            }

            double fluxA = kA * nextTan / AreaPerVolume * 24 / 1000, fluxB = kB * nextNitrite / AreaPerVolume * 24 / 1000;
            tan = nextTan;
            nitrite = nextNitrite;
            nitrate += kB * nextNitrite * stepHours / volume;
            FilmGrowth.Advance(Parameters, ref xA, ref xB, fluxA, fluxB, Celsius, stepHours);
            if ((i + 1) % perDay == 0)
            {
                course.Add(tan, nitrite, nitrate, xA, xB);
            }
        }

        return course;
    }

    /// <summary>Right-hand side for an outside solver: TAN, nitrite, nitrate, x_A, x_B.</summary>
    public double[] Rates(double day, IReadOnlyList<double> state)
    {
        (double fluxA, double fluxB) = Fluxes(state[0], state[1], state[3], state[4]);
        return
        [
            LoadPerDay(day) - (AreaPerVolume * fluxA), AreaPerVolume * (fluxA - fluxB), AreaPerVolume * fluxB,
            Growth(NitrifierPopulation.AmmoniaOxidizers, state[3], fluxA), Growth(NitrifierPopulation.NitriteOxidizers, state[4], fluxB),
        ];
    }

    private double Growth(NitrifierPopulation population, double film, double flux)
    {
        PopulationParameters kinetics = Parameters.Of(population);
        return (kinetics.YieldGramsCodPerGramN * flux * (1 - (film / kinetics.MaximumBiomassGramsCodPerSquareMetre)))
            - (FilmResponse.DecayRatePerDay(Parameters, population, Celsius) * film);
    }

    private (double A, double B) Capacities(double tan, double xA, double xB)
    {
        var conditions = new FilmConditions(Celsius, PH, Oxygen, AmmoniaShare * tan, 100);
        return (FilmFlux.CapacityGramsPerSquareMetreDay(Parameters, NitrifierPopulation.AmmoniaOxidizers, xA, conditions),
            FilmFlux.CapacityGramsPerSquareMetreDay(Parameters, NitrifierPopulation.NitriteOxidizers, xB, conditions));
    }

    private (double A, double B) Fluxes(double tan, double nitrite, double xA, double xB)
    {
        (double capacityA, double capacityB) = Capacities(tan, xA, xB);
        double cap = FilmFlux.OxygenCapGramsPerSquareMetreDay(Parameters, Celsius, Oxygen);
        return (FilmFlux.FluxGramsPerSquareMetreDay(Parameters, NitrifierPopulation.AmmoniaOxidizers, capacityA, tan, cap),
            FilmFlux.FluxGramsPerSquareMetreDay(Parameters, NitrifierPopulation.NitriteOxidizers, capacityB, nitrite));
    }
}
