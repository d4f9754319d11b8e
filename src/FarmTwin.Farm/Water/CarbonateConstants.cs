using System.Runtime.Intrinsics;

namespace FarmTwin.Farm.Water;

/// <summary>Thermodynamic equilibrium constants of fresh water at one temperature, as plain values (not logarithms).</summary>
/// <remarks>
/// Interpolated, linearly in log K, in a table of 0.1 °C from 0 to 50 °C that is built once; the error is below 2e-6 of K. A
/// temperature outside is taken as the nearest end; NaN gives NaN. <see cref="At"/> allocates nothing and is safe on any thread.
/// The default value holds zeros and means nothing. Equations: docs/model/water-carbonate.md.
/// </remarks>
public readonly struct CarbonateConstants
{
    internal const double LogarithmOfTen = 2.302585092994046;

    private const int Quantities = 8;
    private const int Stride = 2 * Quantities;
    private const int NodesPerDegree = 10;
    private const double HighestCelsius = 50;
    private const int Intervals = (int)HighestCelsius * NodesPerDegree;

    /// <summary>Per node the eight values, then the eight logarithms of the ratio of the next node's to them.</summary>
    private static readonly double[] Table = BuildTable();

    // In the order of the properties.
    private readonly Vector256<double> _first;
    private readonly Vector256<double> _second;

    private CarbonateConstants(ReadOnlySpan<double> row, double fraction)
    {
        _first = Between(Vector256.Create(row), fraction * Vector256.Create(row[Quantities..]));
        _second = Between(Vector256.Create(row[4..]), fraction * Vector256.Create(row[(Quantities + 4)..]));
    }

    /// <summary>First dissociation of carbonic acid, CO2 + H2O = HCO3 + H, mol/L.</summary>
    public double K1 => _first.GetElement(0);

    /// <summary>Second dissociation, HCO3 = CO3 + H, mol/L.</summary>
    public double K2 => _first.GetElement(1);

    /// <summary>Solubility of carbon dioxide, mol/(L atm).</summary>
    public double KHenry => _first.GetElement(2);

    /// <summary>Ion product of water, mol²/L².</summary>
    public double KWater => _first.GetElement(3);

    /// <summary>Second dissociation of phosphoric acid, H2PO4 = HPO4 + H, mol/L.</summary>
    public double KPhosphate => _second.GetElement(0);

    /// <summary>Dissociation of ammonium, NH4 = NH3 + H, mol/L.</summary>
    public double KAmmonium => _second.GetElement(1);

    /// <summary>Solubility product of calcite, mol²/L².</summary>
    public double KspCalcite => _second.GetElement(2);

    /// <summary>The A of the Debye-Hückel and Davies equations, decadic, (L/mol)^½.</summary>
    public double DebyeHuckel => _second.GetElement(3);

    /// <summary>The constants at a temperature.</summary>
    /// <param name="temperatureCelsius">0-50 °C; held at the nearest end outside.</param>
    public static CarbonateConstants At(double temperatureCelsius)
    {
        double position = Math.Clamp(temperatureCelsius, 0, HighestCelsius) * NodesPerDegree;
        int node = Math.Min((int)position, Intervals - 1);
        return new CarbonateConstants(Table.AsSpan(node * Stride, Stride), position - node);
    }

    // exp of a logarithm that never exceeds 0.01 between two nodes: the fourth term would be below 1e-9.
    private static Vector256<double> Between(Vector256<double> value, Vector256<double> logarithm)
    {
        Vector256<double> one = Vector256<double>.One;
        return value * (one + (logarithm * (one + (logarithm * (Vector256.Create(0.5) + (logarithm * (1.0 / 6)))))));
    }

    private static double[] BuildTable()
    {
        var table = new double[Intervals * Stride];
        for (var node = 0; node < Intervals; node++)
        {
            double here = UnitConstants.ZeroCelsiusInKelvin + ((double)node / NodesPerDegree);
            double next = UnitConstants.ZeroCelsiusInKelvin + ((double)(node + 1) / NodesPerDegree);
            for (var quantity = 0; quantity < Quantities; quantity++)
            {
                double logarithm = Logarithm(quantity, here);
                table[(node * Stride) + quantity] = Math.Exp(logarithm);
                table[(node * Stride) + Quantities + quantity] = Logarithm(quantity, next) - logarithm;
            }
        }

        return table;
    }

    private static double Logarithm(int quantity, double kelvin) => quantity switch
    {
        0 => LogarithmOfTen * EquilibriumEquations.LogK1(kelvin),
        1 => LogarithmOfTen * EquilibriumEquations.LogK2(kelvin),
        2 => LogarithmOfTen * EquilibriumEquations.LogHenry(kelvin),
        3 => LogarithmOfTen * EquilibriumEquations.LogWater(kelvin),
        4 => LogarithmOfTen * EquilibriumEquations.LogPhosphate(kelvin),
        5 => LogarithmOfTen * EquilibriumEquations.LogAmmonium(kelvin),
        6 => LogarithmOfTen * EquilibriumEquations.LogCalcite(kelvin),
        _ => Math.Log(EquilibriumEquations.DebyeHuckel(kelvin)),
    };
}
