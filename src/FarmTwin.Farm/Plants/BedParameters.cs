using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Plants;

/// <summary>What all media beds share: water that roots need, what roots and microbes breathe, what dryness and drowning do.</summary>
/// <remarks>Immutable.</remarks>
public sealed record BedParameters
{
    /// <summary>Height of standing water that a plant needs when set out, m.</summary>
    public required double HeightAtPlantingMetres { get; init; }

    /// <summary>Height of standing water that a rooted plant needs, m.</summary>
    public required double HeightRootedMetres { get; init; }

    /// <summary>Water nearer than this to the surface stands at the stem, m.</summary>
    public required double CollarMetres { get; init; }

    /// <summary>Oxygen that a gram of dry root breathes in an hour, mg.</summary>
    public required double RootRespirationMilligramsPerGramHour { get; init; }

    /// <summary>Oxygen that the microbes of a bed breathe on what roots shed, g/(m² h).</summary>
    public required double MicrobialRespirationGramsPerSquareMetreHour { get; init; }

    /// <summary>Temperature of these rates, °C.</summary>
    public required double RespirationCelsius { get; init; }

    /// <summary>Factor of the rates per kelvin.</summary>
    public required double RespirationPerKelvin { get; init; }

    /// <summary>Half-saturation of that breathing for oxygen, mg/L.</summary>
    public required double OxygenHalfMilligramsPerLitre { get; init; }

    /// <summary>Share of the needed water below which plants wilt for good.</summary>
    public required double WiltBelow { get; init; }

    /// <summary>Share of the plants that such a day kills.</summary>
    public required double WiltDeathsPerDay { get; init; }

    /// <summary>Days with water at the stem before rot begins.</summary>
    public required double RotAfterDays { get; init; }

    /// <summary>Share of the plants that rot kills in a day then.</summary>
    public required double RotDeathsPerDay { get; init; }

    /// <summary>Reads them from their data.</summary>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A unit is not the expected one.</exception>
    public static BedParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new BedParameters
        {
            HeightAtPlantingMetres = set.Get("heightAtPlanting", "m"),
            HeightRootedMetres = set.Get("heightRooted", "m"),
            CollarMetres = set.Get("collar", "m"),
            RootRespirationMilligramsPerGramHour = set.Get("rootRespiration", "mg/(g h)"),
            MicrobialRespirationGramsPerSquareMetreHour = set.Get("microbialRespiration", "g/(m2 h)"),
            RespirationCelsius = set.Get("respirationTemperature", "°C"),
            RespirationPerKelvin = set.Get("respirationTemperatureBase", "1"),
            OxygenHalfMilligramsPerLitre = set.Get("oxygenHalf", "mg/L"),
            WiltBelow = set.Get("wiltBelow", "1"),
            WiltDeathsPerDay = set.Get("wiltDeaths", "1/d"),
            RotAfterDays = set.Get("rotAfter", "d"),
            RotDeathsPerDay = set.Get("rotDeaths", "1/d"),
        };
    }
}
