using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>What the hydroxide rule allows of a dose: so much an hour, for so many hours.</summary>
/// <remarks>
/// In each hour the equivalents that bind free carbon dioxide stay below a share of what is free in the water that the dose reaches in that
/// hour: the basin and what passes through it. Fish and air bring new carbon dioxide from hour to hour. A bicarbonate binds none and is not held
/// back; what dissolves slowly is held back by its own rate. See docs/model/water-dosing.md.
/// </remarks>
/// <param name="IsHydroxideRule">Whether the rule applies to the product.</param>
/// <param name="GramsPerHour">The most in an hour, g; infinite where it does not.</param>
/// <param name="Grams">What may be given of what is wanted, g.</param>
/// <param name="Hours">Whole hours over which that must be spread.</param>
/// <param name="IsRefused">Whether so little may be given that it is not worth it.</param>
/// <param name="Why">The figures behind it.</param>
public readonly record struct BaseAllowance(
    bool IsHydroxideRule, double GramsPerHour, double Grams, double Hours, bool IsRefused, string Why)
{
    /// <summary>Asks the rule.</summary>
    /// <param name="farm">The farm as it stands.</param>
    /// <param name="supplement">The product.</param>
    /// <param name="basin">Where it is to go.</param>
    /// <param name="wantedGrams">How much of it is wanted, g.</param>
    public static BaseAllowance For(FarmContext farm, Supplement supplement, int basin, double wantedGrams)
    {
        ArgumentNullException.ThrowIfNull(farm);
        Basins basins = farm.State.Basins;
        double reached = basins.Litres[basin] + farm.Network.Outflow(basin);
        double perHour = BaseDose.LargestGrams(supplement, basins.CarbonDioxideMoles[basin], reached, farm.Parts.Dosing);
        if (double.IsPositiveInfinity(perHour))
        {
            return new BaseAllowance(false, perHour, wantedGrams, 0, false, string.Empty);
        }

        double longest = farm.Parts.Dosing.HydroxideLongestHours;
        double grams = Math.Min(wantedGrams, perHour * longest);
        bool refused = grams < farm.Parts.Dosing.HydroxideLeastShare * wantedGrams;
        double milligrams = basins.CarbonDioxideMoles[basin] * UnitConstants.GramsPerKilogram
            * (UnitConstants.AtomicWeight.Carbon + (2 * UnitConstants.AtomicWeight.Oxygen));
        return new BaseAllowance(
            true,
            perHour,
            refused ? 0 : grams,
            perHour > 0 ? Math.Clamp(Math.Ceiling(grams / perHour), 1, longest) : longest,
            refused,
            $"{milligrams:0.0} mg/L of free CO2 allow {perHour:0.#} g an hour");
    }
}
