namespace FarmTwin.Farm.Biofilter;

/// <summary>How labile organic carbon displaces nitrifiers (after Zhu &amp; Chen 2001).</summary>
/// <remarks>
/// The ratings of bead filters to which the flux law is calibrated already hold the organics of ordinary fish water. Multiply the
/// capacity by this factor only for carbon beyond that; for a filter washed late use <c>BeadBed.OverdueWashFactor</c> instead.
/// </remarks>
public static class HeterotrophCompetition
{
    /// <summary>Factor on the ammonia capacity: 1 − 0.7 min(1, C:N).</summary>
    /// <param name="parameters">Nitrification parameters.</param>
    /// <param name="carbonToNitrogen">Labile organic carbon over TAN reaching the film, g/g, at least 0.</param>
    public static double Factor(NitrificationParameters parameters, double carbonToNitrogen) =>
        1 - (parameters.CarbonCompetitionLoss * Math.Clamp(carbonToNitrogen / parameters.CarbonCompetitionRatio, 0, 1));
}
