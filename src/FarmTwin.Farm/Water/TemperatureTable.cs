namespace FarmTwin.Farm.Water;

/// <summary>Several functions of temperature, tabulated once and read by linear interpolation, all in one look-up.</summary>
/// <remarks>
/// 0 to 50 °C in steps of 0.1 K; beyond the ends the end values hold. A function that grows by 10 % a kelvin is met within
/// 1.2e-5 of itself, far inside what any of its parameters is known to. Immutable; safe to share between threads.
/// </remarks>
public sealed class TemperatureTable
{
    private const double StepsPerKelvin = 10;
    private const int Rows = 501;

    private readonly double[] _values;

    /// <summary>Tabulates functions.</summary>
    /// <param name="functions">Functions of the temperature in °C.</param>
    public TemperatureTable(IReadOnlyList<Func<double, double>> functions)
    {
        ArgumentNullException.ThrowIfNull(functions);
        Functions = functions.Count;
        _values = new double[Rows * Functions];
        for (int row = 0; row < Rows; row++)
        {
            for (int f = 0; f < Functions; f++)
            {
                _values[(row * Functions) + f] = functions[f](row / StepsPerKelvin);
            }
        }
    }

    /// <summary>Number of functions.</summary>
    public int Functions { get; }

    /// <summary>Reads all functions at a temperature.</summary>
    /// <param name="celsius">°C.</param>
    /// <param name="values">Filled with the values, one a function.</param>
    public void Look(double celsius, Span<double> values)
    {
        double position = Math.Clamp(celsius * StepsPerKelvin, 0, Rows - 1);
        int row = Math.Min((int)position, Rows - 2);
        double share = position - row;
        ReadOnlySpan<double> below = _values.AsSpan(row * Functions, Functions);
        ReadOnlySpan<double> above = _values.AsSpan((row + 1) * Functions, Functions);
        for (int f = 0; f < values.Length; f++)
        {
            values[f] = below[f] + (share * (above[f] - below[f]));
        }
    }
}
