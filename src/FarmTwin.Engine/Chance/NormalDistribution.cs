namespace FarmTwin.Engine.Chance;

/// <summary>The standard normal distribution: distribution function and its inverse.</summary>
public static class NormalDistribution
{
    // Wichura (1988), Algorithm AS 241 (PPND16), Applied Statistics 37:477-484: relative accuracy about 1 part in 1e16.
    private static readonly double[] CentralNumerator =
    [
        3.3871328727963666080, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125,
        45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727,
    ];

    private static readonly double[] CentralDenominator =
    [
        1.0, 42.313330701600911252, 687.18700749205790830, 5394.1960214247511077,
        21213.794301586595867, 39307.895800092710610, 28729.085735721942674, 5226.4952788528545610,
    ];

    private static readonly double[] MiddleNumerator =
    [
        1.42343711074968357734, 4.63033784615654529590, 5.76949722146069140550, 3.64784832476320460504,
        1.27045825245236838258, 0.241780725177450611770, 0.0227238449892691845833, 0.000774545014278341407640,
    ];

    private static readonly double[] MiddleDenominator =
    [
        1.0, 2.05319162663775882187, 1.67638483018380384940, 0.689767334985100004550,
        0.148103976427480074590, 0.0151986665636164571966, 0.000547593808499534494600, 1.05075007164441684324e-9,
    ];

    private static readonly double[] TailNumerator =
    [
        6.65790464350110377720, 5.46378491116411436990, 1.78482653991729133580, 0.296560571828504891230,
        0.0265321895265761230930, 0.00124266094738807843860, 0.0000271155556874348757815, 2.01033439929228813265e-7,
    ];

    private static readonly double[] TailDenominator =
    [
        1.0, 0.599832206555887937690, 0.136929880922735805310, 0.0148753612908506148525,
        0.000786869131145613259100, 0.0000184631831751005468180, 1.42151175831644588870e-7, 2.04426310338993978564e-15,
    ];

    /// <summary>The value below which a standard normal variate falls with probability <paramref name="probability"/>.</summary>
    /// <param name="probability">In the open interval (0, 1).</param>
    /// <exception cref="ArgumentOutOfRangeException">The probability is not inside (0, 1).</exception>
    public static double Quantile(double probability)
    {
        if (probability is not (> 0 and < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A probability lies inside (0, 1).");
        }

        double q = probability - 0.5;
        if (Math.Abs(q) <= 0.425)
        {
            double r = 0.180625 - (q * q);
            return q * Ratio(CentralNumerator, CentralDenominator, r);
        }

        double tail = Math.Sqrt(-Math.Log(q < 0 ? probability : 1 - probability));
        double value = tail <= 5
            ? Ratio(MiddleNumerator, MiddleDenominator, tail - 1.6)
            : Ratio(TailNumerator, TailDenominator, tail - 5);
        return q < 0 ? -value : value;
    }

    /// <summary>The probability that a standard normal variate is below <paramref name="value"/>.</summary>
    /// <remarks>
    /// Rational function of Hart (1968), algorithm 5666, as given for double precision by West, "Better approximations to cumulative
    /// normal functions", Wilmott Magazine, May 2005 (coefficients from memory; a test holds them to a reference library).
    /// </remarks>
    public static double Below(double value)
    {
        double size = Math.Abs(value);
        if (size > FarthestTail)
        {
            return value > 0 ? 1 : 0;
        }

        double tail = Math.Exp(-size * size / 2);
        if (size < EndOfRatio)
        {
            tail *= Ratio(BelowNumerator, BelowDenominator, size);
        }
        else
        {
            // Far out: Laplace's continued fraction.
            double fraction = size;
            for (int level = Levels; level >= 1; level--)
            {
                fraction = size + (level / fraction);
            }

            tail /= fraction * SquareRootOfTwoPi;
        }

        return value > 0 ? 1 - tail : tail;
    }

    private const int Levels = 30;
    private const double FarthestTail = 37;
    private const double EndOfRatio = 7.07106781186547;
    private const double SquareRootOfTwoPi = 2.5066282746310002;

    private static readonly double[] BelowNumerator =
    [
        220.206867912376, 221.213596169931, 112.079291497871, 33.912866078383, 6.37396220353165, 0.700383064443688, 3.52624965998911e-2,
    ];

    private static readonly double[] BelowDenominator =
    [
        440.413735824752, 793.826512519948, 637.333633378831, 296.564248779674, 86.7807322029461, 16.064177579207, 1.75566716318264,
        8.83883476483184e-2,
    ];

    private static double Ratio(double[] numerator, double[] denominator, double x)
    {
        return Polynomial(numerator, x) / Polynomial(denominator, x);
    }

    private static double Polynomial(double[] coefficients, double x)
    {
        double sum = 0;
        for (int i = coefficients.Length - 1; i >= 0; i--)
        {
            sum = (sum * x) + coefficients[i];
        }

        return sum;
    }
}
