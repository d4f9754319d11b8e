using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Calcite that grows as scale on wetted surfaces above saturation, and dissolves again below it.</summary>
/// <remarks>
/// The scale is a store of its own inside the farm's books. Clean walls let calcite start slowly: the growing surface is what the crust
/// already covers, and at least a small share of the wall. See docs/model/water-minerals.md.
/// </remarks>
public sealed class CalciteScale
{
    private const double GramsPerMole = 2 * UnitConstants.GramsCalciumCarbonatePerEquivalent;

    private readonly FarmContext _farm;
    private readonly double[] _calciumLoss;
    private readonly double[] _dissolved;

    /// <summary>Makes the process.</summary>
    public CalciteScale(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _calciumLoss = new double[farm.Parts.Basins.Length];
        _dissolved = new double[farm.Parts.Basins.Length];
    }

    /// <summary>Adds what grows and what dissolves in the step.</summary>
    public void Contribute()
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        for (int b = 0; b < basins.Count; b++)
        {
            _calciumLoss[b] = 0;
            _dissolved[b] = 0;
            double wall = _farm.Parts.Basins[b].WettedSquareMetres;
            double carbon = basins.Litres[b] > 0 && _farm.Network.LitresAfter[b] > 0 && wall > 0
                ? basins.Grams[WaterStep.At(b, Substance.InorganicCarbon)] / basins.Litres[b] / UnitConstants.AtomicWeight.Carbon
                : 0;
            if (carbon > 0 && basins.Grams[WaterStep.At(b, Substance.Calcium)] > 0)
            {
                Exchange(b, wall, carbon, step);
            }
        }
    }

    /// <summary>Takes the carbon along with the calcium that was solved. Call after the ions, before the carbon.</summary>
    public void Release()
    {
        WaterStep step = _farm.Step;
        for (int b = 0; b < _calciumLoss.Length; b++)
        {
            double moles = GrownMoles(b);
            if (moles != 0)
            {
                step.Add(b, Substance.InorganicCarbon, -moles * UnitConstants.AtomicWeight.Carbon / step.Hours);
            }
        }
    }

    /// <summary>Books it.</summary>
    public void Commit()
    {
        double moles = 0;
        for (int b = 0; b < _calciumLoss.Length; b++)
        {
            double grown = GrownMoles(b);
            _farm.State.Basins.CalciteScaleGrams[b] = Math.Max(0, _farm.State.Basins.CalciteScaleGrams[b] + (grown * GramsPerMole));
            moles += grown;
        }

        FarmBooks books = _farm.State.Books;
        books.PostWater(Door.Precipitation, Substance.Calcium, -moles * UnitConstants.AtomicWeight.Calcium);
        books.PostWater(Door.Precipitation, Substance.InorganicCarbon, -moles * UnitConstants.AtomicWeight.Carbon);
    }

    /// <summary>Adds the scale's calcium to the stocks.</summary>
    public static void AddStocks(FarmContext farm, Span<double> stocks)
    {
        ArgumentNullException.ThrowIfNull(farm);
        foreach (double grams in farm.State.Basins.CalciteScaleGrams)
        {
            stocks[Element.Calcium] += grams / GramsPerMole * UnitConstants.AtomicWeight.Calcium;
        }
    }

    private double GrownMoles(int b) =>
        (_farm.Step.Lost(b, Substance.Calcium, _calciumLoss[b]) / UnitConstants.AtomicWeight.Calcium) - _dissolved[b];

    private void Exchange(int b, double wall, double carbon, WaterStep step)
    {
        Basins basins = _farm.State.Basins;
        MineralParameters minerals = _farm.Parts.Minerals;
        ref readonly EffectiveConstants k = ref _farm.Chemistry.Effective(b);
        double hydrogen = _farm.Chemistry.Hydrogen(b);
        double calcium = basins.Grams[WaterStep.At(b, Substance.Calcium)] / basins.Litres[b] / UnitConstants.AtomicWeight.Calcium;
        double saturation = CalciteKinetics.SaturationRatio(calcium, carbon, hydrogen, in k, _farm.Chemistry.Constants(b).KspCalcite);
        double covered = Math.Min(1, basins.CalciteScaleGrams[b] / (wall * minerals.CalciteFullCoverGramsPerSquareMetre));
        if (saturation <= 1 && covered <= 0)
        {
            return;
        }

        double litres = _farm.Network.LitresAfter[b] + (_farm.Network.Outflow(b) * step.Hours);
        double surface = wall * (saturation > 1 ? Math.Max(minerals.CalciteSeedShare, covered) : covered);
        double forward = surface * step.Hours / litres
            * CalciteKinetics.ForwardMolesPerSquareMetreHour(basins.Celsius[b], hydrogen, basins.CarbonDioxideMoles[b]);
        if (saturation > 1)
        {
            forward *= CalciteKinetics.ShareLeftByPhosphate(basins.MilligramsPerLitre(b, Substance.Phosphorus), minerals);
        }

        double slope = CalciteKinetics.SlopePerMole(basins.IonsOf(b), carbon, hydrogen, in k);
        double moles = litres * CalciteKinetics.ExchangedMolesPerLitre(forward, saturation, slope);
        if (moles >= 0)
        {
            // As a first-order loss, so that calcium cannot go below zero; and never more carbon than half of what is there.
            _calciumLoss[b] = Math.Min(moles, basins.Litres[b] * carbon / 2) / calcium / step.Hours;
            step.Lose(b, Substance.Calcium, _calciumLoss[b]);
            return;
        }

        _dissolved[b] = Math.Min(-moles, basins.CalciteScaleGrams[b] / GramsPerMole);
        step.Add(b, Substance.Calcium, _dissolved[b] * UnitConstants.AtomicWeight.Calcium / step.Hours);
    }
}
