using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Water;

/// <summary>Limits of dosing.</summary>
/// <param name="HydroxideShareOfCarbonDioxide">Hydroxide equivalents allowed in one event, over the free carbon dioxide of the
/// water.</param>
/// <param name="HydroxideLongestHours">Hours over which the hydroxide of one dose may be spread, h.</param>
/// <param name="HydroxideLeastShare">Share of a wanted dose below which giving it is not worth the danger.</param>
/// <param name="PotassiumAimMilligramsPerLitre">Potassium that bases are chosen to hold, mg/L.</param>
/// <param name="CalciumAimMilligramsPerLitre">Calcium that bases are chosen to hold, mg/L.</param>
/// <param name="MagnesiumAimMilligramsPerLitre">Magnesium that bases are chosen to hold, mg/L.</param>
public sealed record DosingParameters(
    double HydroxideShareOfCarbonDioxide, double HydroxideLongestHours, double HydroxideLeastShare,
    double PotassiumAimMilligramsPerLitre, double CalciumAimMilligramsPerLitre, double MagnesiumAimMilligramsPerLitre)
{
    /// <summary>Reads the values from the set "water".</summary>
    /// <param name="set">The parameter set.</param>
    public static DosingParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new DosingParameters(
            set.Get("hydroxideShareOfCarbonDioxide", "1"),
            set.Get("hydroxideLongestTime", "h"),
            set.Get("hydroxideLeastShare", "1"),
            set.Get("potassiumAim", "mg/L"),
            set.Get("calciumAim", "mg/L"),
            set.Get("magnesiumAim", "mg/L"));
    }
}
