namespace FarmTwin.Farm.Solids;

/// <summary>How hard a bead bed is washed: what part of the film goes with the sludge.</summary>
public enum WashStyle
{
    /// <summary>Air or water shakes the beads for half a minute to a minute.</summary>
    Gentle,

    /// <summary>A propeller stirs the beads.</summary>
    Vigorous,

    /// <summary>Minutes too long: a mistake that costs a third of the film.</summary>
    Overdone,
}
