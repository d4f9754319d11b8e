using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Powdered calcium carbonate that lies in a basin and dissolves only while the water is short of saturation.</summary>
/// <remarks>Rate = k × store × (1 − Ω), Ω the saturation ratio of calcite; nothing at or above saturation. See docs/model/water-dosing.md.</remarks>
public sealed class CarbonateStore
{
    private const double GramsPerMole = 2 * UnitConstants.GramsCalciumCarbonatePerEquivalent;
    private readonly FarmContext _farm;
    private readonly double[] _dissolved;

    /// <summary>Makes the process.</summary>
    public CarbonateStore(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _dissolved = new double[farm.Parts.Basins.Length];
    }

    /// <summary>Adds what dissolves in the step.</summary>
    public void Contribute()
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        for (int b = 0; b < basins.Count; b++)
        {
            _dissolved[b] = 0;
            double store = basins.UndissolvedCarbonateGrams[b];
            if (store <= 0 || basins.Litres[b] <= 0)
            {
                continue;
            }

            Ions ions = basins.IonsOf(b);
            double carbon = basins.Grams[WaterStep.At(b, Substance.InorganicCarbon)] / basins.Litres[b] / UnitConstants.AtomicWeight.Carbon;
            double index = CarbonateSystem.CalciteSaturationIndex(
                ions.Ca, carbon, basins.PH[b], CarbonateConstants.At(basins.Celsius[b]), IonicStrength.MolesPerLitre(ions));
            if (index >= 0)
            {
                continue;
            }

            double rate = _farm.Parts.Practice.CarbonateDissolutionPerHour * (1 - Math.Pow(10, index));
            _dissolved[b] = store * (1 - Math.Exp(-rate * step.Hours));
            double moles = _dissolved[b] / GramsPerMole / step.Hours;
            step.Add(b, Substance.Calcium, moles * UnitConstants.AtomicWeight.Calcium);
            step.Add(b, Substance.InorganicCarbon, moles * UnitConstants.AtomicWeight.Carbon);
        }
    }

    /// <summary>Books it.</summary>
    public void Commit()
    {
        double total = 0;
        for (int b = 0; b < _dissolved.Length; b++)
        {
            _farm.State.Basins.UndissolvedCarbonateGrams[b] -= _dissolved[b];
            total += _dissolved[b];
        }

        if (total > 0)
        {
            double moles = total / GramsPerMole;
            _farm.State.Books.PostWaterFromOutside(Door.Dosing, Substance.Calcium, moles * UnitConstants.AtomicWeight.Calcium);
            _farm.State.Books.PostWaterFromOutside(Door.Dosing, Substance.InorganicCarbon, moles * UnitConstants.AtomicWeight.Carbon);
        }
    }
}
