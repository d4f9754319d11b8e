using System.Runtime.Intrinsics;
using CsCheck;
using FarmTwin.Engine.Transport;

namespace FarmTwin.Engine.Tests.Transport;

/// <summary>Against the C library's functions, which are exact to less than one unit in the last place.</summary>
public class FourFunctionsTests
{
    private const double Units = 3.5 * 2.2204460492503131e-16;

    [Fact]
    public void Exponentials_are_those_of_the_library_to_the_last_units() => Gen.Double[-707, 708].Array[4].Sample(x =>
    {
        Vector256<double> four = FourFunctions.Exp(Vector256.Create(x));
        for (int i = 0; i < 4; i++)
        {
            Assert.Equal(1, four[i] / Math.Exp(x[i]), Units);
        }
    });

    [Fact]
    public void Logarithms_are_those_of_the_library_to_the_last_units() => Gen.Select(Gen.Double[-300, 300].Array[4], Gen.Double[0.5, 2].Array[4]).Sample(
        (powers, near) =>
    {
        double[] x = [Math.Pow(10, powers[0]), near[0], Math.Pow(10, powers[1] / 50), near[1]];
        Vector256<double> four = FourFunctions.Log(Vector256.Create(x));
        for (int i = 0; i < 4; i++)
        {
            double expected = Math.Log(x[i]);
            Assert.Equal(expected, four[i], Units * Math.Max(Math.Abs(expected), 1e-300));
        }
    });

    [Theory]
    [InlineData(0, 1)]
    [InlineData(double.NegativeInfinity, 0)]
    [InlineData(-800, 0)]
    [InlineData(800, double.PositiveInfinity)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity)]
    [InlineData(double.NaN, double.NaN)]
    public void Exponentials_end_where_they_must(double x, double expected) => Assert.Equal(expected, FourFunctions.Exp(Vector256.Create(x))[3]);

    [Theory]
    [InlineData(1, 0)]
    [InlineData(0, double.NegativeInfinity)]
    [InlineData(-1, double.NaN)]
    [InlineData(double.NegativeInfinity, double.NaN)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity)]
    [InlineData(double.NaN, double.NaN)]
    public void Logarithms_end_where_they_must(double x, double expected) => Assert.Equal(expected, FourFunctions.Log(Vector256.Create(x))[1]);

    [Fact]
    public void A_value_does_not_depend_on_its_neighbours_nor_on_how_often_it_was_asked()
    {
        double first = FourFunctions.Exp(Vector256.Create(0.7, 1, 2, 3))[0];
        double log = FourFunctions.Log(Vector256.Create(0.7, 1, 2, 3))[0];
        for (int i = 0; i < 200_000; i++)
        {
            Assert.True(first == FourFunctions.Exp(Vector256.Create(9, -i, 0.7, i))[2]);
            Assert.True(log == FourFunctions.Log(Vector256.Create(9, i + 1, 0.7, i))[2]);
        }
    }
}
