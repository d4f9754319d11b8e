namespace FarmTwin.Farm.Climate;

/// <summary>Whether a day is wet, given the day before: a two-state Markov chain.</summary>
/// <remarks>Geng, Penning de Vries &amp; Supit (1986), Agricultural and Forest Meteorology 36:363-376 (from memory of the source).
/// The long-run share of wet days is the given fraction exactly.</remarks>
public static class WetDayChain
{
    /// <summary>Probability of a wet day after a dry one.</summary>
    /// <param name="wetDayFraction">0 to 1.</param>
    public static double WetAfterDry(double wetDayFraction) => 0.75 * wetDayFraction;

    /// <summary>Probability of a wet day after a wet one.</summary>
    /// <param name="wetDayFraction">0 to 1.</param>
    public static double WetAfterWet(double wetDayFraction) => 0.25 + WetAfterDry(wetDayFraction);

    /// <summary>Long-run share of wet days of the chain.</summary>
    /// <param name="wetAfterDry">Probability.</param>
    /// <param name="wetAfterWet">Probability.</param>
    public static double StationaryShare(double wetAfterDry, double wetAfterWet) =>
        wetAfterDry / (1 + wetAfterDry - wetAfterWet);
}
