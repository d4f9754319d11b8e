namespace FarmTwin.Studies.Outcomes;

/// <summary>Which way a figure is better.</summary>
public enum Wanted
{
    /// <summary>Neither way as such.</summary>
    Neither,

    /// <summary>More is better.</summary>
    More,

    /// <summary>Less is better.</summary>
    Less,
}
