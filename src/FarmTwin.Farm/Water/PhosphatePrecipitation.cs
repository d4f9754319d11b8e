using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Calcium phosphate that falls out above saturation, and dissolves again below it.</summary>
/// <remarks>The precipitate is a store of its own inside the farm's books. See docs/model/water-minerals.md.</remarks>
public sealed class PhosphatePrecipitation
{
    private const double CalciumPerPhosphorusGrams =
        Minerals.CalciumPerPhosphorus * UnitConstants.AtomicWeight.Calcium / UnitConstants.AtomicWeight.Phosphorus;

    private readonly FarmContext _farm;
    private readonly double _inverseSolubility;
    private readonly double[] _precipitation;
    private readonly double[] _calciumLoss;
    private readonly double[] _dissolving;

    /// <summary>Makes the process.</summary>
    public PhosphatePrecipitation(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        int count = farm.Parts.Basins.Length;
        _inverseSolubility = Math.Pow(10, -farm.Parts.Minerals.CalciumPhosphateLogSolubility);
        _precipitation = new double[count];
        _calciumLoss = new double[count];
        _dissolving = new double[count];
    }

    /// <summary>Adds what dissolves and what falls out in the step.</summary>
    public void Contribute()
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        for (int b = 0; b < basins.Count; b++)
        {
            _precipitation[b] = 0;
            _calciumLoss[b] = 0;
            _dissolving[b] = 0;
            if (basins.Litres[b] <= 0 || _farm.Network.LitresAfter[b] <= 0)
            {
                continue;
            }

            double phosphorus = basins.Grams[WaterStep.At(b, Substance.Phosphorus)];
            double calcium = basins.Grams[WaterStep.At(b, Substance.Calcium)];
            if (phosphorus > 0 && calcium > 0)
            {
                Phosphate(b, phosphorus, calcium, step);
            }
        }
    }

    /// <summary>Books it.</summary>
    public void Commit()
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        double phosphorus = 0;
        double calcium = 0;
        for (int b = 0; b < basins.Count; b++)
        {
            double fallenPhosphorus = step.Lost(b, Substance.Phosphorus, _precipitation[b]) - _dissolving[b];
            double fallenCalcium = step.Lost(b, Substance.Calcium, _calciumLoss[b]) - (_dissolving[b] * CalciumPerPhosphorusGrams);
            basins.PrecipitatedPhosphorusGrams[b] += fallenPhosphorus;
            basins.PrecipitatedCalciumGrams[b] += fallenCalcium;
            phosphorus += fallenPhosphorus;
            calcium += fallenCalcium;
        }

        FarmBooks books = _farm.State.Books;
        books.PostWater(Door.Precipitation, Substance.Phosphorus, -phosphorus);
        books.PostWater(Door.Precipitation, Substance.Calcium, -calcium);
    }

    /// <summary>Adds the precipitate's part of the stocks.</summary>
    public static void AddStocks(FarmContext farm, Span<double> stocks)
    {
        ArgumentNullException.ThrowIfNull(farm);
        for (int b = 0; b < farm.State.Basins.Count; b++)
        {
            stocks[Element.Phosphorus] += farm.State.Basins.PrecipitatedPhosphorusGrams[b];
            stocks[Element.Calcium] += farm.State.Basins.PrecipitatedCalciumGrams[b];
        }
    }

    // Phosphorus falls out as a first-order loss; calcium follows at the mineral's ratio, as a loss of its own so that neither
    // can go below zero. The two are booked as they were solved.
    private void Phosphate(int b, double phosphorus, double calcium, WaterStep step)
    {
        Basins basins = _farm.State.Basins;
        double saturation = _inverseSolubility * Minerals.CalciumPhosphateActivityProduct(
            calcium / (basins.Litres[b] * UnitConstants.AtomicWeight.Calcium),
            phosphorus / (basins.Litres[b] * UnitConstants.AtomicWeight.Phosphorus),
            _farm.Chemistry.Hydrogen(b),
            in _farm.Chemistry.Effective(b));
        double perHour = _farm.Parts.Minerals.CalciumPhosphatePerHour;
        if (saturation > 1)
        {
            double litres = perHour * (1 - (1 / Root(saturation))) * _farm.Network.LitresAfter[b];
            _precipitation[b] = litres;
            _calciumLoss[b] = litres * Math.Min(1, phosphorus * CalciumPerPhosphorusGrams / calcium);
            step.Lose(b, Substance.Phosphorus, _precipitation[b]);
            step.Lose(b, Substance.Calcium, _calciumLoss[b]);
            return;
        }

        double store = Math.Min(basins.PrecipitatedPhosphorusGrams[b], basins.PrecipitatedCalciumGrams[b] / CalciumPerPhosphorusGrams);
        if (store <= 0)
        {
            return;
        }

        double back = perHour * (1 - Root(saturation));
        _dissolving[b] = store * (1 - Math.Exp(-back * step.Hours));
        step.Add(b, Substance.Phosphorus, _dissolving[b] / step.Hours);
        step.Add(b, Substance.Calcium, _dissolving[b] * CalciumPerPhosphorusGrams / step.Hours);
    }

    // Saturation an ion: the law of Minerals.CalciumPhosphatePrecipitationPerHour without a logarithm on the way.
    private static double Root(double saturation) => Math.Pow(saturation, 1.0 / Minerals.CalciumPhosphateIons);
}
