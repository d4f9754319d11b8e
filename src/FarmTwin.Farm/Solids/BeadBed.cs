namespace FarmTwin.Farm.Solids;

/// <summary>A bed of floating beads as a catcher of solids: capture, lost flow, late washing, leaching.</summary>
/// <remarks>Pure functions. A wash is a transfer with its water, nitrate, alkalinity and TAN, never a loss.</remarks>
public static class BeadBed
{
    /// <summary>Flow over clean flow, 1/(1 + m/m50), 0–1.</summary>
    public static double FlowShare(SolidsParameters parameters, double heldKilogramsPerCubicMetre) =>
        1 / (1 + (Math.Max(0, heldKilogramsPerCubicMetre) / parameters.HalfFlowLoadKilogramsPerCubicMetre));

    /// <summary>Factor on the films' capacity for a wash overdue: 1 − 0.5 min(1, m/m_full − 1) above m_full, else 1.</summary>
    /// <param name="parameters">Solids parameters.</param>
    /// <param name="heldKilogramsPerCubicMetre">Dry matter held, kg per m³ of beads.</param>
    public static double OverdueWashFactor(SolidsParameters parameters, double heldKilogramsPerCubicMetre) =>
        1 - (parameters.OverdueWashLoss * Math.Clamp((heldKilogramsPerCubicMetre / parameters.FullLoadKilogramsPerCubicMetre) - 1, 0, 1));

    /// <summary>
    /// Share of what arrives evenly between two washes that dissolves before the second, 1 − (1 − e^(−kτ))/(kτ). For checks and
    /// advice: the season's own balance gives the same.
    /// </summary>
    /// <param name="ratePerDay">Hydrolysis rate, 1/d.</param>
    /// <param name="intervalDays">Days between washes.</param>
    public static double LeachedShare(double ratePerDay, double intervalDays)
    {
        double exponent = ratePerDay * intervalDays;

        // Below this the closed form loses digits; its series is x/2 − x²/6.
        return exponent < 1e-4 ? (exponent / 2) - (exponent * exponent / 6) : 1 - ((1 - Math.Exp(-exponent)) / exponent);
    }
}
