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
    private readonly double[] _precipitation;
    private readonly double[] _calciumLoss;
    private readonly double[] _dissolving;

    /// <summary>Makes the process.</summary>
    public PhosphatePrecipitation(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        int count = farm.Parts.Basins.Length;
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

            Ions ions = basins.IonsOf(b);
            CarbonateConstants constants = CarbonateConstants.At(basins.Celsius[b]);
            double strength = IonicStrength.MolesPerLitre(ions);
            double phosphate = basins.Grams[WaterStep.At(b, Substance.Phosphorus)];
            if (phosphate > 0 && ions.Ca > 0)
            {
                Phosphate(b, ions, constants, strength, step);
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
    private void Phosphate(int b, in Ions ions, in CarbonateConstants constants, double strength, WaterStep step)
    {
        Basins basins = _farm.State.Basins;
        double index = Minerals.CalciumPhosphateSaturationIndex(
            ions.Ca, ions.P, basins.PH[b], constants, strength, _farm.Parts.Minerals);
        double perHour = Minerals.CalciumPhosphatePrecipitationPerHour(index, _farm.Parts.Minerals);
        if (perHour > 0)
        {
            double litres = _farm.Network.LitresAfter[b];
            double phosphorus = basins.Grams[WaterStep.At(b, Substance.Phosphorus)];
            double calcium = basins.Grams[WaterStep.At(b, Substance.Calcium)];
            _precipitation[b] = perHour * litres;
            _calciumLoss[b] = perHour * litres * Math.Min(1, phosphorus * CalciumPerPhosphorusGrams / calcium);
            step.Lose(b, Substance.Phosphorus, _precipitation[b]);
            step.Lose(b, Substance.Calcium, _calciumLoss[b]);
            return;
        }

        double store = Math.Min(basins.PrecipitatedPhosphorusGrams[b], basins.PrecipitatedCalciumGrams[b] / CalciumPerPhosphorusGrams);
        if (store <= 0)
        {
            return;
        }

        double back = _farm.Parts.Minerals.CalciumPhosphatePerHour * (1 - Math.Exp(CarbonateConstants.LogarithmOfTen * index / Minerals.CalciumPhosphateIons));
        _dissolving[b] = store * (1 - Math.Exp(-back * step.Hours));
        step.Add(b, Substance.Phosphorus, _dissolving[b] / step.Hours);
        step.Add(b, Substance.Calcium, _dissolving[b] * CalciumPerPhosphorusGrams / step.Hours);
    }
}
