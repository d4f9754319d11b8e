namespace FarmTwin.Engine;

/// <summary>From which side a guarded value must reach the level.</summary>
public enum GuardDirection
{
    /// <summary>The guard fires when the value is at or above the level.</summary>
    Rising,

    /// <summary>The guard fires when the value is at or below the level.</summary>
    Falling,
}
