using System.Runtime.Intrinsics;

namespace FarmTwin.Engine.Transport;

/// <summary>Exponential, logarithm and sum of four values at once, the same bits at any time of a run.</summary>
/// <remarks>
/// The runtime's own <see cref="Vector256.Exp(Vector256{double})"/> may round in one way before and in another after a method is
/// optimised, since it estimates its products' sums: two runs of a season would differ in the last digits. Here every product is fused with
/// its sum or stands alone. Within three units in the last place; see Muller 2016, Elementary Functions, for the reductions.
/// </remarks>
public static class FourFunctions
{
    private const double HighestExponent = 709;
    private const double LowestExponent = -708;
    private const double InverseLogarithmOfTwo = 1.4426950408889634;

    // ln 2 in two parts, so that n × the first is exact for every n of a double's exponent.
    private const double LogarithmOfTwoHigh = 6.93147180369123816490e-01;
    private const double LogarithmOfTwoLow = 1.90821492927058770002e-10;

    // 1.5 × 2^52: a small whole number added to it stands in its last bits.
    private const double WholeNumbers = 6755399441055744;
    private const double Two52 = 4503599627370496;
    private const int MantissaBits = 52;
    private const long Bias = 1023;
    private const long RootOfHalfBits = 0x3FE6A09E667F3BCD;

    // 1/n! from the last to the first.
    private static readonly double[] ExponentialSeries =
    [
        1.0 / 6227020800, 1.0 / 479001600, 1.0 / 39916800, 1.0 / 3628800, 1.0 / 362880, 1.0 / 40320, 1.0 / 5040, 1.0 / 720, 1.0 / 120, 1.0 / 24,
        1.0 / 6, 0.5, 1, 1,
    ];

    // 2/(2n + 1) from the last to the second.
    private static readonly double[] LogarithmSeries =
    [
        2.0 / 21, 2.0 / 19, 2.0 / 17, 2.0 / 15, 2.0 / 13, 2.0 / 11, 2.0 / 9, 2.0 / 7, 2.0 / 5, 2.0 / 3,
    ];

    /// <summary>e^x of each; 0 below −708 and infinite above 709.</summary>
    public static Vector256<double> Exp(Vector256<double> x)
    {
        Vector256<double> clamped = Vector256.Min(Vector256.Max(x, Vector256.Create(LowestExponent)), Vector256.Create(HighestExponent));
        Vector256<double> shifted = (clamped * InverseLogarithmOfTwo) + Vector256.Create(WholeNumbers);
        Vector256<double> n = shifted - Vector256.Create(WholeNumbers);
        Vector256<double> rest = Vector256.FusedMultiplyAdd(n, Vector256.Create(-LogarithmOfTwoHigh), clamped);
        rest = Vector256.FusedMultiplyAdd(n, Vector256.Create(-LogarithmOfTwoLow), rest);
        Vector256<double> power = Polynomial(rest, ExponentialSeries);
        Vector256<double> scaled = (power.AsInt64() + (shifted.AsInt64() << MantissaBits)).AsDouble();
        scaled = Vector256.ConditionalSelect(Vector256.LessThan(x, Vector256.Create(LowestExponent)), Vector256<double>.Zero, scaled);
        scaled = Vector256.ConditionalSelect(
            Vector256.GreaterThan(x, Vector256.Create(HighestExponent)), Vector256.Create(double.PositiveInfinity), scaled);
        return Vector256.ConditionalSelect(Vector256.Equals(x, x), scaled, x);
    }

    /// <summary>Natural logarithm of each; minus infinity of 0, not a number below.</summary>
    /// <remarks>Of a number below 2^-1022 only that it is about −708.</remarks>
    public static Vector256<double> Log(Vector256<double> x)
    {
        // x = m 2^e with m between the roots of a half and of two; then ln m = 2 artanh((m − 1)/(m + 1)).
        Vector256<long> bits = x.AsInt64();
        Vector256<long> biased = (bits - Vector256.Create(RootOfHalfBits - (Bias << MantissaBits))) >>> MantissaBits;
        Vector256<double> mantissa = (bits - ((biased - Vector256.Create(Bias)) << MantissaBits)).AsDouble();
        Vector256<double> exponent = (biased | Vector256.Create(Two52).AsInt64()).AsDouble() - Vector256.Create(Two52 + Bias);
        Vector256<double> above = mantissa - Vector256<double>.One;
        Vector256<double> s = above / (mantissa + Vector256<double>.One);
        Vector256<double> square = s * s;
        Vector256<double> small = s * square * Polynomial(square, LogarithmSeries);
        Vector256<double> log = Vector256.FusedMultiplyAdd(exponent, Vector256.Create(LogarithmOfTwoLow), small) + (s + s);
        log = Vector256.FusedMultiplyAdd(exponent, Vector256.Create(LogarithmOfTwoHigh), log);
        log = Vector256.ConditionalSelect(
            Vector256.Equals(x, Vector256<double>.Zero), Vector256.Create(double.NegativeInfinity), log);
        log = Vector256.ConditionalSelect(Vector256.Equals(x, Vector256.Create(double.PositiveInfinity)), x, log);
        return Vector256.ConditionalSelect(
            Vector256.GreaterThanOrEqual(x, Vector256<double>.Zero), log, Vector256.Create(double.NaN));
    }

    /// <summary>Sum of the four, the first two and the last two together.</summary>
    public static double Sum(Vector256<double> values) => values[0] + values[1] + (values[2] + values[3]);

    // Horner's rule, the coefficient of the highest power first.
    private static Vector256<double> Polynomial(Vector256<double> x, double[] coefficients)
    {
        Vector256<double> value = Vector256.Create(coefficients[0]);
        for (int i = 1; i < coefficients.Length; i++)
        {
            value = Vector256.FusedMultiplyAdd(value, x, Vector256.Create(coefficients[i]));
        }

        return value;
    }
}
