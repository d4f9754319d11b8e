using System.Text.Json.Serialization;
using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Benchmarks;

/// <summary>What the one loop of the comparison is made of, as the script reads it: kinetics of the library at a held temperature and pH.</summary>
public sealed record OneLoopParameters
{
    private const double HeldCelsius = 26;
    private const double HeldPH = 7.2;
    private const double HeldAlkalinity = 100;

    /// <summary>Takes the kinetics from the parts of a farm.</summary>
    public OneLoopParameters(FarmParts parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        Nitrification = parts.Nitrification;
        Saturation = OxygenSaturation.MilligramsPerLitre(HeldCelsius, parts.PressureAtmospheres);
        LagPerHour = parts.Species[0].StageConstantPerHour;
        UnionizedShare = Farm.Water.Ammonia.UnionizedFraction(HeldPH, HeldCelsius);
        CapPerOxygen = FilmFlux.OxygenCapGramsPerSquareMetreDay(Nitrification, HeldCelsius, 1);
        OxygenPerAmmonia = NitrificationStoichiometry.OxygenPerAmmoniaNitrogen(Nitrification);
        OxygenPerNitrite = NitrificationStoichiometry.OxygenPerNitriteNitrogen(Nitrification);
        FishOxygenLimit = parts.Practice.FishOxygenLimit;
        Ammonia = Of(NitrifierPopulation.AmmoniaOxidizers);
        Nitrite = Of(NitrifierPopulation.NitriteOxidizers);
    }

    /// <summary>The library's own record, for the kernels.</summary>
    [JsonIgnore]
    public NitrificationParameters Nitrification { get; }

    public int Days { get; } = 365;

    public double[] MealHours { get; } = [8, 13, 18];

    public double[] Litres { get; } = [4000, 400, 600];

    public double[] FilmSquareMetres { get; } = [14, 300, 5];

    public double[] AerationLitresPerHour { get; } = [9000, 0, 1500];

    public double FlowLitresPerHour { get; } = 6000;

    public double Celsius { get; } = HeldCelsius;

    public double FeedGramsPerMeal { get; } = 60;

    public double FeedRisePerDay { get; } = 0.6;

    public double NitrogenPerFeed { get; } = 0.03;

    public double OxygenPerFeed { get; } = 0.3;

    public double RestingOxygenGramsPerHour { get; } = 6;

    public int Passes { get; } = 4;

    public double Saturation { get; }

    public double LagPerHour { get; }

    public double UnionizedShare { get; }

    public double CapPerOxygen { get; }

    public double OxygenPerAmmonia { get; }

    public double OxygenPerNitrite { get; }

    public double FishOxygenLimit { get; }

    public double TransferVelocity => Nitrification.TransferVelocityMetresPerDay;

    public Population Ammonia { get; }

    public Population Nitrite { get; }

    /// <summary>A population of the films, at the held temperature, pH and alkalinity.</summary>
    public sealed record Population(
        double Growth, double Yield, double HalfOxygen, double Half, double Inhibition, double Full, double Floor, double Decay, double Start);

    private Population Of(NitrifierPopulation population)
    {
        PopulationParameters kinetics = Nitrification.Of(population);
        double full = kinetics.MaximumBiomassGramsCodPerSquareMetre;
        return new Population(
            FilmFlux.GrowthRatePerDay(Nitrification, population, HeldCelsius, HeldPH, HeldAlkalinity),
            kinetics.YieldGramsCodPerGramN,
            kinetics.OxygenHalfSaturationMilligramsPerLitre,
            kinetics.HalfSaturationMilligramsNPerLitre,
            kinetics.AmmoniaInhibitionMilligramsNPerLitre,
            full,
            Nitrification.FloorShare * full,
            FilmResponse.DecayRatePerDay(Nitrification, population, HeldCelsius),
            0.2 * full);
    }
}
