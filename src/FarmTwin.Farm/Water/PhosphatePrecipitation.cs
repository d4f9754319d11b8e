using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;
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

    // Of each basin: zero where there is no water.
    private readonly double[] _calcium;
    private readonly double[] _phosphorus;
    private readonly double[] _root;

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
        _calcium = Fours.Zeros(count);
        _phosphorus = Fours.Zeros(count);
        _root = Fours.Zeros(count);
    }

    /// <summary>Adds what dissolves and what falls out in the step.</summary>
    public void Contribute()
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        FindRoots();
        for (int b = 0; b < basins.Count; b++)
        {
            _precipitation[b] = 0;
            _calciumLoss[b] = 0;
            _dissolving[b] = 0;
            if (_calcium[b] > 0 && _phosphorus[b] > 0)
            {
                Phosphate(b, step);
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

    // Saturation an ion, the fifth root of the saturation ratio: the law of Minerals.CalciumPhosphatePrecipitationPerHour.
    private void FindRoots()
    {
        Basins basins = _farm.State.Basins;
        for (int b = 0; b < basins.Count; b++)
        {
            double perLitre = basins.Litres[b] > 0 && _farm.Network.LitresAfter[b] > 0 ? 1 / basins.Litres[b] : 0;
            _calcium[b] = basins.Grams[WaterStep.At(b, Substance.Calcium)] * perLitre / UnitConstants.AtomicWeight.Calcium;
            _phosphorus[b] = basins.Grams[WaterStep.At(b, Substance.Phosphorus)] * perLitre / UnitConstants.AtomicWeight.Phosphorus;
        }

        for (int first = 0; first < _root.Length; first += Fours.Width)
        {
            Vector256<double> saturation = _inverseSolubility * Minerals.CalciumPhosphateActivityProduct(
                Vector256.Create(_calcium, first),
                Vector256.Create(_phosphorus, first),
                Vector256.Create(_farm.Chemistry.Hydrogen, first),
                in _farm.Chemistry.Effective4(first));
            FourFunctions.Exp(FourFunctions.Log(saturation) / Minerals.CalciumPhosphateIons).CopyTo(_root, first);
        }
    }

    // Phosphorus falls out as a first-order loss; calcium follows at the mineral's ratio, as a loss of its own so that neither
    // can go below zero. The two are booked as they were solved.
    private void Phosphate(int b, WaterStep step)
    {
        Basins basins = _farm.State.Basins;
        double perHour = _farm.Parts.Minerals.CalciumPhosphatePerHour;
        if (_root[b] > 1)
        {
            double litres = perHour * (1 - (1 / _root[b])) * _farm.Network.LitresAfter[b];
            _precipitation[b] = litres;
            _calciumLoss[b] = litres * Math.Min(1, _phosphorus[b] * Minerals.CalciumPerPhosphorus / _calcium[b]);
            step.Lose(b, Substance.Phosphorus, _precipitation[b]);
            step.Lose(b, Substance.Calcium, _calciumLoss[b]);
            return;
        }

        double store = Math.Min(basins.PrecipitatedPhosphorusGrams[b], basins.PrecipitatedCalciumGrams[b] / CalciumPerPhosphorusGrams);
        if (store <= 0)
        {
            return;
        }

        double back = perHour * (1 - _root[b]);
        _dissolving[b] = store * (1 - Math.Exp(-back * step.Hours));
        step.Add(b, Substance.Phosphorus, _dissolving[b] / step.Hours);
        step.Add(b, Substance.Calcium, _dissolving[b] * CalciumPerPhosphorusGrams / step.Hours);
    }
}
