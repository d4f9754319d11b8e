namespace FarmTwin.Farm.Operations;

/// <summary>Phases of an instant, in the order of the domain.</summary>
public static class FarmPhase
{
    /// <summary>Pumps, valves, heaters.</summary>
    public const int Equipment = 1;

    /// <summary>Fish, filter, sludge, water.</summary>
    public const int Husbandry = 2;

    /// <summary>Plants.</summary>
    public const int Crop = 3;

    /// <summary>Guards.</summary>
    public const int Guard = 4;
}
