using FarmTwin.Engine.Transport;
using FarmTwin.Farm.Equipment;

namespace FarmTwin.Farm.Water;

/// <summary>The temperatures of all basins at the end of a step, with the duty of every thermostat, in one solve.</summary>
/// <remarks>
/// Heat is transported like any substance (litre-kelvin above 0 °C); vapour leaves with the heat of its liquid, its latent heat is
/// part of the surface loss. Each heater's response is solved on its own, so the duty that just reaches the set-point follows from
/// two numbers: T = T(off) + power × T(per watt). Heaters are settled in the order of the description. Workspace, not thread-safe.
/// </remarks>
public sealed class HeatBalance
{
    /// <summary>Heat capacity of a litre of water, J/K (4186 J/kgK at about 1 kg/L).</summary>
    public const double JoulesPerLitreKelvin = 4186;

    private readonly FlowNetwork _network;
    private readonly FlowMatrix _matrix;
    private readonly int[] _heaterBasin;
    private readonly double[] _turnover;
    private readonly double[] _noLoss;
    private readonly double[] _right;
    private readonly double[] _off;
    private readonly double[][] _perWatt;

    /// <summary>Makes the system.</summary>
    /// <param name="network">The pipes.</param>
    /// <param name="heaterBasins">The basin of each heater.</param>
    public HeatBalance(FlowNetwork network, IReadOnlyList<int> heaterBasins)
    {
        ArgumentNullException.ThrowIfNull(network);
        ArgumentNullException.ThrowIfNull(heaterBasins);
        _network = network;
        _heaterBasin = [.. heaterBasins];
        int count = network.LitresAfter.Length;
        _matrix = new FlowMatrix(network.Plan);
        _turnover = new double[count];
        _noLoss = new double[count];
        _right = new double[count];
        _off = new double[count];
        _perWatt = [.. _heaterBasin.Select(_ => new double[count])];
        HeaterWatts = new double[_heaterBasin.Length];
        HoldCelsius = new double[_heaterBasin.Length];
        LargestWatts = new double[_heaterBasin.Length];
        After = new double[network.LitresAfter.Length];
    }

    /// <summary>Mean power of each heater over the step, W.</summary>
    public double[] HeaterWatts { get; }

    /// <summary>Temperature each heater holds, °C; set before solving.</summary>
    public double[] HoldCelsius { get; }

    /// <summary>Largest power each heater can give in this step, W; set before solving.</summary>
    public double[] LargestWatts { get; }

    /// <summary>Temperature of each basin at the end of the step, °C.</summary>
    public double[] After { get; }

    /// <summary>Watts as litres an hour: the flow that carries one watt per kelvin.</summary>
    public static double LitresPerHourOf(double wattsPerKelvin) => wattsPerKelvin * UnitConstants.SecondsPerHour / JoulesPerLitreKelvin;

    /// <summary>Solves the step.</summary>
    /// <param name="basins">State at its start.</param>
    /// <param name="step">Contributions.</param>
    /// <param name="sourceCelsius">Temperature of the water let in by float valves.</param>
    public void Solve(Basins basins, WaterStep step, double sourceCelsius)
    {
        ArgumentNullException.ThrowIfNull(basins);
        ArgumentNullException.ThrowIfNull(step);
        for (int b = 0; b < step.BasinCount; b++)
        {
            if (_network.LitresAfter[b] <= 0)
            {
                _turnover[b] = 0;
                _right[b] = 0;
                continue;
            }

            _turnover[b] = (_network.LitresAfter[b] / step.Hours) + _network.Outflow(b) + _network.Spill[b] + _network.Leak[b] + _network.Loss[b]
                + LitresPerHourOf(step.HeatWattsPerKelvin[b]);
            _right[b] = (basins.Litres[b] * basins.Celsius[b] / step.Hours)
                + LitresPerHourOf(step.HeatWatts[b]) + (_network.TopUp[b] * sourceCelsius);
        }

        _matrix.Set(_turnover, _network.EdgeFlow);
        _matrix.Solve(_noLoss, _right, _off);
        for (int h = 0; h < _heaterBasin.Length; h++)
        {
            // A dry basin has no balance: its heater stays off.
            Array.Clear(_right);
            _right[_heaterBasin[h]] = _network.LitresAfter[_heaterBasin[h]] > 0 ? LitresPerHourOf(1) : 0;
            _matrix.Solve(_noLoss, _right, _perWatt[h]);
        }

        Array.Clear(HeaterWatts);
        for (int h = 0; h < _heaterBasin.Length; h++)
        {
            double missing = HoldCelsius[h] - Temperature(_heaterBasin[h]);
            double perWatt = _perWatt[h][_heaterBasin[h]];
            HeaterWatts[h] = perWatt > 0 ? Math.Clamp(missing / perWatt, 0, LargestWatts[h]) : 0;
        }

        for (int b = 0; b < step.BasinCount; b++)
        {
            After[b] = _network.LitresAfter[b] > 0 ? Temperature(b) : basins.Celsius[b];
        }
    }

    private double Temperature(int basin)
    {
        double celsius = _off[basin];
        for (int h = 0; h < HeaterWatts.Length; h++)
        {
            celsius += HeaterWatts[h] * _perWatt[h][basin];
        }

        return celsius;
    }
}
