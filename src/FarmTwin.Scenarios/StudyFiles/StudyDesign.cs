namespace FarmTwin.Scenarios.StudyFiles;

/// <summary>Which combinations of its factors a study plays.</summary>
public enum StudyDesign
{
    /// <summary>Every combination of every factor's values.</summary>
    All,

    /// <summary>So many points, spread by a Latin hypercube.</summary>
    LatinHypercube,

    /// <summary>So many trajectories that change one factor after the other (Morris screening).</summary>
    Morris,
}
