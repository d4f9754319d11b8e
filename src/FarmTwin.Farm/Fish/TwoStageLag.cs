namespace FarmTwin.Farm.Fish;

/// <summary>Two equal first-order stages in a row: a meal's nitrogen and oxygen come out hours after it, as a hump.</summary>
/// <remarks>
/// Solved exactly, so that what comes out does not depend on how a span is cut into steps. An impulse peaks 1/k after it went in
/// and comes out on average 2/k after.
/// </remarks>
public static class TwoStageLag
{
    /// <summary>Advances both stages and returns what left the second.</summary>
    /// <param name="first">Content of the first stage.</param>
    /// <param name="second">Content of the second stage, same unit.</param>
    /// <param name="ratePerHour">Stage constant k, 1/h, above 0.</param>
    /// <param name="inflowPerHour">Constant inflow into the first stage during the span, unit/h.</param>
    /// <param name="hours">Length of the span, h, at least 0.</param>
    /// <returns>Outflow over the span; what was in plus what came in equals what is in plus this.</returns>
    public static double Advance(ref double first, ref double second, double ratePerHour, double inflowPerHour, double hours)
    {
        double age = ratePerHour * hours;
        double kept = Math.Exp(-age);
        double inflow = inflowPerHour * hours;
        double before = first + second;
        double steady = inflowPerHour / ratePerHour;
        double firstAfter = (first * kept) + (steady * (1 - kept));
        second = (second * kept) + (first * age * kept) + (steady * PassedBoth(age, kept));
        first = firstAfter;
        return Math.Max(0, before + inflow - first - second);
    }

    // 1 - e^-a (1 + a), which is of order a squared: by its series where the difference would cancel to noise.
    private static double PassedBoth(double age, double kept) => age < ShortAge
        ? age * age * ((1.0 / 2) - (age * ((1.0 / 3) - (age * ((1.0 / 8) - (age / 30))))))
        : 1 - kept - (age * kept);

    private const double ShortAge = 1e-3;
}
