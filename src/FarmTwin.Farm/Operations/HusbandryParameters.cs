using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Operations;

/// <summary>Numbers of quarantine, moves, mishaps and welfare.</summary>
public sealed record HusbandryParameters
{
    /// <summary>Rate of tempering up to which fish follow, K/h.</summary>
    public required double TemperSafeKelvinPerHour { get; init; }

    /// <summary>Difference of temperature borne at once, K.</summary>
    public required double ShockToleratedKelvin { get; init; }

    /// <summary>Dose of death per square kelvin beyond it.</summary>
    public required double ShockHazardPerSquareKelvin { get; init; }

    /// <summary>Difference of pH borne at once.</summary>
    public required double ShockToleratedPH { get; init; }

    /// <summary>Dose of death per squared pH unit beyond it.</summary>
    public required double ShockHazardPerSquarePH { get; init; }

    /// <summary>Days without unexplained deaths before a quarantine ends.</summary>
    public required double QuarantineQuietDays { get; init; }

    /// <summary>Share of a batch whose unexplained death in a day prolongs its quarantine.</summary>
    public required double QuarantineDeathShare { get; init; }

    /// <summary>Deaths of a tank in a day that are acted on, share.</summary>
    public required double DeathShareReportedPerDay { get; init; }

    /// <summary>Deaths of a tank in a day that are acted on, fish.</summary>
    public required double DeathFishReportedPerDay { get; init; }

    /// <summary>Decay of residual chlorine, 1/h.</summary>
    public required double ChlorineDecayPerHour { get; init; }

    /// <summary>Kill of films by residual chlorine, L/(mg h).</summary>
    public required double ChlorineFilmKillLitresPerMilligramHour { get; init; }

    /// <summary>Active substance sprayed on a square metre, mg.</summary>
    public required double SprayMilligramsPerSquareMetre { get; init; }

    /// <summary>Share of a spray that reaches the water.</summary>
    public required double SprayDripShare { get; init; }

    /// <summary>Active substance that kills half of the fish in 96 h, mg/L.</summary>
    public required double SprayLethalMilligramsPerLitre { get; init; }

    /// <summary>Half-life of the spray in the water, d.</summary>
    public required double SprayHalfLifeDays { get; init; }

    /// <summary>Reads them.</summary>
    public static HusbandryParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new HusbandryParameters
        {
            TemperSafeKelvinPerHour = set.Get("temperSafe", "K/h"),
            ShockToleratedKelvin = set.Get("shockToleratedKelvin", "K"),
            ShockHazardPerSquareKelvin = set.Get("shockHazard", "1/K2"),
            ShockToleratedPH = set.Get("shockToleratedPH", "1"),
            ShockHazardPerSquarePH = set.Get("shockHazardPH", "1"),
            QuarantineQuietDays = set.Get("quarantineQuietDays", "d"),
            QuarantineDeathShare = set.Get("quarantineDeathShare", "1"),
            DeathShareReportedPerDay = set.Get("deathShareReported", "1/d"),
            DeathFishReportedPerDay = set.Get("deathFishReported", "1/d"),
            ChlorineDecayPerHour = set.Get("chlorineDecay", "1/h"),
            ChlorineFilmKillLitresPerMilligramHour = set.Get("chlorineFilmKill", "L/(mg h)"),
            SprayMilligramsPerSquareMetre = set.Get("sprayRate", "mg/m2"),
            SprayDripShare = set.Get("sprayDrip", "1"),
            SprayLethalMilligramsPerLitre = set.Get("sprayLethal", "mg/L"),
            SprayHalfLifeDays = set.Get("sprayHalfLife", "d"),
        };
    }
}
