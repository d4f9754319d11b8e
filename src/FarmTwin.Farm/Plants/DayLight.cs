namespace FarmTwin.Farm.Plants;

/// <summary>One day's light for one crop at one place, summed hour by hour and used at midnight.</summary>
/// <remarks>A mutable value: keep one per crop and place, add every step of the day, use it, reset it. Steps may be of any length.
/// The default is an empty day.</remarks>
public record struct DayLight
{
    /// <summary>Dry matter that a closed canopy could make of the day's light at the best temperature: Σ LUE × PPFD, g/m².</summary>
    public double PotentialGramsPerSquareMetre { get; private set; }

    /// <summary>Light on the crop so far, mol/m² (the DLI when the day is over).</summary>
    public double MolesPerSquareMetre { get; private set; }

    /// <summary>Hours with light so far.</summary>
    public double LitHours { get; private set; }

    /// <summary>Hours added so far.</summary>
    public double Hours { get; private set; }

    /// <summary>Sum of temperature times hours, °C h.</summary>
    public double CelsiusHours { get; private set; }

    /// <summary>Sum of temperature times light, °C mol/m².</summary>
    public double CelsiusMoles { get; private set; }

    /// <summary>Sum of temperature times lit hours, °C h.</summary>
    public double LitCelsiusHours { get; private set; }

    /// <summary>Mean air temperature of the lit hours, °C; of the whole day for a dark one.</summary>
    public readonly double DaytimeCelsius => LitHours > 0 ? LitCelsiusHours / LitHours : MeanCelsius;

    /// <summary>Mean air temperature of the day, °C; 0 for an empty day.</summary>
    public readonly double MeanCelsius => Hours > 0 ? CelsiusHours / Hours : 0;

    /// <summary>Mean air temperature weighted by light, °C; the plain mean for a dark day.</summary>
    public readonly double LitCelsius => MolesPerSquareMetre > 0 ? CelsiusMoles / MolesPerSquareMetre : MeanCelsius;

    /// <summary>Adds a stretch of time with steady conditions.</summary>
    /// <param name="crop">The crop; the same the whole day.</param>
    /// <param name="hours">Length, h, above 0.</param>
    /// <param name="photonsMicromolesPerSquareMetreSecond">PPFD on the crop, µmol/m²/s; 0 in the dark.</param>
    /// <param name="carbonDioxidePartsPerMillion">CO2 of the air, ppm.</param>
    /// <param name="airCelsius">Air temperature at the crop, °C.</param>
    public void AddHour(
        CropParameters crop,
        double hours,
        double photonsMicromolesPerSquareMetreSecond,
        double carbonDioxidePartsPerMillion,
        double airCelsius)
    {
        Hours += hours;
        CelsiusHours += airCelsius * hours;
        if (photonsMicromolesPerSquareMetreSecond <= 0)
        {
            return;
        }

        double moles = photonsMicromolesPerSquareMetreSecond * Growth.MolesPerMicromole * UnitConstants.SecondsPerHour * hours;
        LitHours += hours;
        LitCelsiusHours += airCelsius * hours;
        MolesPerSquareMetre += moles;
        CelsiusMoles += airCelsius * moles;
        PotentialGramsPerSquareMetre += moles * Growth.LightUseEfficiency(
            crop, photonsMicromolesPerSquareMetreSecond, carbonDioxidePartsPerMillion, airCelsius);
    }

    /// <summary>The same day without its light.</summary>
    public readonly DayLight Covered() => new() { Hours = Hours, CelsiusHours = CelsiusHours };

    /// <summary>Starts an empty day.</summary>
    public void Reset() => this = default;
}
