using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Plants;

/// <summary>What cold kills of a crop: frost by the coldest air of a night, chill by degree hours above frost.</summary>
/// <remarks>
/// Immutable. Plants differ: the coldest air that a plant lives through is normally distributed. Who has lived through a night lives through
/// an equal one again, so only a colder night kills more. See docs/model/cold.md.
/// </remarks>
/// <param name="FrostKillCelsius">Coldest air that half of the plants live through, °C.</param>
/// <param name="FrostSpreadKelvin">Standard deviation of that, K.</param>
/// <param name="ChillLimitCelsius">Air temperature below which lasting cold kills, °C.</param>
/// <param name="ChillKillPerDegreeHour">Share that a degree hour below it kills, 1/(°C h).</param>
public sealed record ColdTolerance(double FrostKillCelsius, double FrostSpreadKelvin, double ChillLimitCelsius, double ChillKillPerDegreeHour)
{
    /// <summary>Reads it.</summary>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    public static ColdTolerance From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new ColdTolerance(set.Get("frostKill", "°C"), set.Get("frostSpread", "K"), set.Get("chillLimit", "°C"), set.Get("chillKill", "1/(°C h)"));
    }

    /// <summary>Share of plants never tried by frost that a night kills, 0–1.</summary>
    /// <param name="coldestCelsius">Coldest air of the night, °C.</param>
    public double FrostShare(double coldestCelsius) => NormalDistribution.Below((FrostKillCelsius - coldestCelsius) / FrostSpreadKelvin);

    /// <summary>Share of the plants that stand which a day kills, 0–1.</summary>
    /// <param name="coldestCelsius">Coldest air of the day, °C.</param>
    /// <param name="chillDegreeHours">Degree hours below the chill limit, °C h.</param>
    /// <param name="triedShare">What frost has already taken of them, 0–1: the weakest are gone.</param>
    public double KilledShare(double coldestCelsius, double chillDegreeHours, double triedShare)
    {
        double frost = FrostShare(coldestCelsius);
        double survivors = triedShare >= 1 ? 0 : Math.Min(1, (1 - frost) / (1 - triedShare));
        return 1 - (survivors * Math.Exp(-ChillKillPerDegreeHour * chillDegreeHours));
    }
}
