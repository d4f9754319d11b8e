using System.Runtime.Intrinsics;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Powdered calcium carbonate that lies in a basin and dissolves only while the water is short of saturation.</summary>
/// <remarks>Rate = k × store × (1 − Ω), Ω the saturation ratio of calcite at the step's end; nothing at or above saturation. See docs/model/water-minerals.md.</remarks>
public sealed class CarbonateStore
{
    private const double GramsPerMole = 2 * UnitConstants.GramsCalciumCarbonatePerEquivalent;
    private const int MostIterations = 60;
    private const double Tolerance = 0.02;
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

            _dissolved[b] = Dissolved(b, store);
            if (_dissolved[b] <= 0)
            {
                continue;
            }

            double moles = _dissolved[b] / GramsPerMole / step.Hours;
            step.Add(b, Substance.Calcium, moles * UnitConstants.AtomicWeight.Calcium);
            step.Add(b, Substance.InorganicCarbon, moles * UnitConstants.AtomicWeight.Carbon);
        }
    }

    // Grams that dissolve in the step: x = store (1 − exp(−k (1 − Ω(x)) dt)), with Ω of the water at the end, so that no dose and no step
    // carries the water beyond saturation. Illinois' variant of false position; a few steps at most.
    private double Dissolved(int b, double store)
    {
        var water = new StoreWater(_farm, b);
        double omega = water.Saturation(0);
        if (omega >= 1)
        {
            return 0;
        }

        double low = 0;
        double high = DissolvedAt(store, omega);
        double lowRest = high;
        double highRest = DissolvedAt(store, water.Saturation(high)) - high;
        if (highRest >= -Tolerance * high)
        {
            return high;
        }

        for (int i = 0; i < MostIterations && high - low > Tolerance * high; i++)
        {
            double middle = ((high * lowRest) - (low * highRest)) / (lowRest - highRest);
            double rest = DissolvedAt(store, water.Saturation(middle)) - middle;
            if (Math.Abs(rest) <= Tolerance * middle)
            {
                return middle;
            }

            if (rest > 0)
            {
                low = middle;
                lowRest = rest;
                highRest /= 2;
            }
            else
            {
                high = middle;
                highRest = rest;
                lowRest /= 2;
            }
        }

        return low;
    }

    // Grams of the store that dissolve in the step in water that keeps this saturation ratio.
    private double DissolvedAt(double store, double saturation) => store
        * (1 - Math.Exp(-Minerals.CalciteDissolutionAtRatioPerHour(saturation, _farm.Parts.Minerals) * _farm.Step.Hours));

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

    // The water that a basin holds and passes on in the step, as the store dissolves into it.
    private readonly struct StoreWater
    {
        private readonly EffectiveLanes _constants;
        private readonly double _solubilityProduct;
        private readonly double _hydrogen;
        private readonly double _litres;
        private readonly double _alkalinity;
        private readonly double _carbon;
        private readonly double _calcium;
        private readonly double _phosphorus;
        private readonly double _tan;

        public StoreWater(FarmContext farm, int b)
        {
            Basins basins = farm.State.Basins;
            Ions ions = basins.IonsOf(b);
            ref readonly CarbonateConstants constants = ref farm.Chemistry.Constants(b);
            _constants = new EffectiveLanes(new ConstantLanes(in constants), Vector256.Create(IonicStrength.MolesPerLitre(ions)));
            _solubilityProduct = constants.KspCalcite;
            _hydrogen = farm.Chemistry.Hydrogen[b];
            _litres = basins.Litres[b] + (farm.Network.Outflow(b) * farm.Step.Hours);
            _alkalinity = Alkalinity.EquivalentsPerLitre(ions);
            _carbon = basins.Grams[WaterStep.At(b, Substance.InorganicCarbon)] / basins.Litres[b] / UnitConstants.AtomicWeight.Carbon;
            _calcium = ions.Ca;
            _phosphorus = ions.P;
            _tan = ions.TAN;
        }

        // Saturation ratio of calcite once some grams are dissolved.
        public double Saturation(double dissolvedGrams)
        {
            double moles = dissolvedGrams / GramsPerMole / _litres;
            Vector256<double> carbon = Vector256.Create(_carbon + moles);
            var water = new CarbonateLanes(
                Vector256.Create(_alkalinity + (2 * moles)), Vector256.Create(_phosphorus), Vector256.Create(_tan), in _constants);
            CarbonateRoots found = CarbonateSystem.SolveFour(in water, carbon, Vector256.Create(_hydrogen), CarbonateSystem.StepTolerance);
            return CalciteKinetics.SaturationRatio(
                Vector256.Create(_calcium + moles), carbon, found.Hydrogen, in _constants, Vector256.Create(_solubilityProduct)).ToScalar();
        }
    }
}
