using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Water;

/// <summary>Limits of dosing.</summary>
/// <param name="HydroxideShareOfCarbonDioxide">Hydroxide equivalents allowed in one event, over the free carbon dioxide of the
/// water.</param>
public sealed record DosingParameters(double HydroxideShareOfCarbonDioxide)
{
    /// <summary>Reads the values from the set "water".</summary>
    /// <param name="set">The parameter set.</param>
    public static DosingParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new DosingParameters(set.Get("hydroxideShareOfCarbonDioxide", "1"));
    }
}
