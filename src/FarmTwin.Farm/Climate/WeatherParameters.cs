using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Climate;

/// <summary>What the weather generator needs beside monthly normals.</summary>
/// <param name="WetDayCoolingKelvin">Mean maximum of dry days less that of wet days, K.</param>
/// <param name="WetDayRadiationRatio">Mean radiation of wet days over that of dry days.</param>
/// <param name="DryDayRadiationDeviation">Standard deviation over mean of a dry day's radiation.</param>
/// <param name="WetDayRadiationDeviation">Standard deviation over mean of a wet day's radiation.</param>
/// <param name="GreatestClearness">Largest radiation over extraterrestrial radiation.</param>
/// <param name="LeastClearnessShare">Smallest clearness as a share of the largest.</param>
/// <param name="DewPointDepressionKelvin">Daily minimum less dew point, K; 2 to 3 in arid places.</param>
/// <param name="WindDiurnalShare">Amplitude of the mean wind's daily course over its mean.</param>
/// <param name="MaximumLagHours">Parton and Logan's a: lag of the maximum, h.</param>
/// <param name="NightDecay">Parton and Logan's b: decay over the night.</param>
/// <param name="MinimumLagHours">Parton and Logan's c: minimum after sunrise, h.</param>
public sealed record WeatherParameters(
    double WetDayCoolingKelvin,
    double WetDayRadiationRatio,
    double DryDayRadiationDeviation,
    double WetDayRadiationDeviation,
    double GreatestClearness,
    double LeastClearnessShare,
    double DewPointDepressionKelvin,
    double WindDiurnalShare,
    double MaximumLagHours,
    double NightDecay,
    double MinimumLagHours)
{
    /// <summary>Reads the parameters from the set <c>processes/climate</c>.</summary>
    /// <param name="set">The set.</param>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A parameter has another unit.</exception>
    public static WeatherParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new WeatherParameters(
            set.Get("wetDayCooling", "K"),
            set.Get("wetDayRadiationRatio", "1"),
            set.Get("dryDayRadiationDeviation", "1"),
            set.Get("wetDayRadiationDeviation", "1"),
            set.Get("greatestClearness", "1"),
            set.Get("leastClearnessShare", "1"),
            set.Get("dewPointDepression", "K"),
            set.Get("windDiurnalShare", "1"),
            set.Get("maximumLag", "h"),
            set.Get("nightDecay", "1"),
            set.Get("minimumLag", "h"));
    }
}
