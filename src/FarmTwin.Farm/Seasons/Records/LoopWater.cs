using FarmTwin.Farm.Description;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>The water of a loop as the record shows it: means over its basins by volume.</summary>
internal sealed class LoopWater
{
    private readonly FarmContext _farm;
    private readonly int[] _basins;
    private readonly double[] _concentration = new double[Substance.LastDissolved + 1];

    /// <summary>Finds the basins of a loop.</summary>
    public LoopWater(FarmContext farm, IReadOnlyList<BasinUse> uses)
    {
        _farm = farm;
        BasinDescription[] basins = farm.Parts.Basins;
        _basins = [.. Enumerable.Range(0, basins.Length).Where(b => uses.Contains(basins[b].Use))];
    }

    /// <summary>Temperature, °C.</summary>
    public double Celsius => Mean(_farm.State.Basins.Celsius);

    /// <summary>Alkalinity, mg/L as CaCO3.</summary>
    public double AlkalinityMilligramsPerLitre =>
        Alkalinity.MilligramsCalciumCarbonatePerLitre(Mean(_farm.State.Basins.Alkalinity));

    /// <summary>Iron of all holders as of the last <see cref="Look"/>, mg/L.</summary>
    public double Iron
    {
        get
        {
            double sum = 0;
            for (int holder = 0; holder < Substance.IronHolders; holder++)
            {
                sum += _concentration[Substance.Iron + holder];
            }

            return sum;
        }
    }

    /// <summary>Solids in suspension, mg/L; not a number in a loop without water.</summary>
    public double Solids
    {
        get
        {
            double grams = 0;
            double litres = 0;
            foreach (int b in _basins)
            {
                grams += _farm.State.Basins.SolidsGrams(b);
                litres += _farm.State.Basins.Litres[b];
            }

            return litres > 0 ? grams * UnitConstants.GramsPerKilogram / litres : double.NaN;
        }
    }

    /// <summary>A dissolved substance as of the last <see cref="Look"/>, mg/L.</summary>
    public double Concentration(int substance) => _concentration[substance];

    /// <summary>Works the concentrations out, once a step for all columns that show them.</summary>
    public void Look()
    {
        Array.Clear(_concentration);
        Basins basins = _farm.State.Basins;
        double litres = 0;
        foreach (int b in _basins)
        {
            ReadOnlySpan<double> grams = basins.Grams.AsSpan(WaterStep.At(b, 0), _concentration.Length);
            for (int i = 0; i < _concentration.Length; i++)
            {
                _concentration[i] += grams[i];
            }

            litres += basins.Litres[b];
        }

        double scale = litres > 0 ? UnitConstants.GramsPerKilogram / litres : double.NaN;
        for (int i = 0; i < _concentration.Length; i++)
        {
            _concentration[i] *= scale;
        }
    }

    private double Mean(double[] values)
    {
        double sum = 0;
        double litres = 0;
        foreach (int b in _basins)
        {
            sum += values[b] * _farm.State.Basins.Litres[b];
            litres += _farm.State.Basins.Litres[b];
        }

        return litres > 0 ? sum / litres : double.NaN;
    }
}
