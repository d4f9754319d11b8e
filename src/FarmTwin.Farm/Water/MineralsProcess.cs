using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Solids of calcium: powdered carbonate that dissolves while the water is short of saturation, and calcium phosphate that falls out above it.</summary>
/// <remarks>
/// Dosed carbonate is booked as it dissolves. Precipitated phosphate is a store of its own inside the farm's books; it dissolves
/// again where the water is short of saturation. See docs/model/water-minerals.md.
/// </remarks>
public sealed class MineralsProcess
{
    private const double CarbonateGramsPerMole = 2 * UnitConstants.GramsCalciumCarbonatePerEquivalent;
    private const double CalciumPerPhosphorusGrams =
        Minerals.CalciumPerPhosphorus * UnitConstants.AtomicWeight.Calcium / UnitConstants.AtomicWeight.Phosphorus;

    private readonly FarmContext _farm;
    private readonly double[] _carbonate;
    private readonly double[] _precipitation;
    private readonly double[] _calciumLoss;
    private readonly double[] _dissolving;

    /// <summary>Makes the process.</summary>
    public MineralsProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        int count = farm.Parts.Basins.Length;
        _carbonate = new double[count];
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
            _carbonate[b] = 0;
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
            if (basins.UndissolvedCarbonateGrams[b] > 0)
            {
                DissolveCarbonate(b, ions, constants, strength);
            }

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
        double carbonate = 0;
        double phosphorus = 0;
        double calcium = 0;
        for (int b = 0; b < basins.Count; b++)
        {
            basins.UndissolvedCarbonateGrams[b] -= _carbonate[b];
            carbonate += _carbonate[b];
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
        if (carbonate > 0)
        {
            double moles = carbonate / CarbonateGramsPerMole;
            books.PostWaterFromOutside(Door.Dosing, Substance.Calcium, moles * UnitConstants.AtomicWeight.Calcium);
            books.PostWaterFromOutside(Door.Dosing, Substance.InorganicCarbon, moles * UnitConstants.AtomicWeight.Carbon);
        }
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

    private void DissolveCarbonate(int b, in Ions ions, in CarbonateConstants constants, double strength)
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        double carbon = basins.Grams[WaterStep.At(b, Substance.InorganicCarbon)] / basins.Litres[b] / UnitConstants.AtomicWeight.Carbon;
        double index = CarbonateSystem.CalciteSaturationIndex(ions.Ca, carbon, basins.PH[b], constants, strength);
        double rate = Minerals.CalciteDissolutionPerHour(index, _farm.Parts.Minerals);
        _carbonate[b] = basins.UndissolvedCarbonateGrams[b] * (1 - Math.Exp(-rate * step.Hours));
        double moles = _carbonate[b] / CarbonateGramsPerMole / step.Hours;
        step.Add(b, Substance.Calcium, moles * UnitConstants.AtomicWeight.Calcium);
        step.Add(b, Substance.InorganicCarbon, moles * UnitConstants.AtomicWeight.Carbon);
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
