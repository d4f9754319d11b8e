using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Energy;

/// <summary>The heaters of the water: what each may give in a step, and the fuel and power of what it gave.</summary>
/// <remarks>Limits: the exchanger, the burner, the fuel that is left. See docs/model/energy.md.</remarks>
public sealed class HeatSupply
{
    private static readonly BasinUse[] FishLoop = [BasinUse.FishTank, BasinUse.Filter, BasinUse.FishSump];

    private readonly FarmContext _farm;
    private readonly HeatBalance _heat;
    private readonly int[] _crossing;
    private readonly bool[] _crossingFromFish;
    private readonly int[] _origin;
    private readonly double[] _wanted;

    /// <summary>Makes the process.</summary>
    /// <param name="farm">The farm.</param>
    /// <param name="heat">The heat solve, whose limits it sets.</param>
    public HeatSupply(FarmContext farm, HeatBalance heat)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _heat = heat;
        FarmParts parts = farm.Parts;
        PipeDescription[] pipes = [.. parts.Farm.Pipes.Values];
        bool[] fish = [.. parts.Basins.Select(b => FishLoop.Contains(b.Use))];
        _crossing = [.. Enumerable.Range(0, pipes.Length)
            .Where(p => fish[parts.BasinIndex(pipes[p].From)] != fish[parts.BasinIndex(pipes[p].To)])];
        _origin = [.. _crossing.Select(p => parts.BasinIndex(pipes[p].From))];
        _crossingFromFish = [.. _origin.Select(b => fish[b])];
        _wanted = new double[parts.FuelTanks.Length];
    }

    /// <summary>Sets what every heater may give in this step.</summary>
    public void Limit()
    {
        FarmParts parts = _farm.Parts;
        FarmState state = _farm.State;
        Array.Clear(_wanted);
        for (int h = 0; h < parts.Heaters.Length; h++)
        {
            WaterHeaterDescription heater = parts.Heaters[h];
            double coil = HeatExchanger.ImmersedCoilPowerWatts(
                heater.HotFlowLitresPerHour / UnitConstants.SecondsPerHour,
                heater.ExchangerWattsPerKelvin,
                heater.HotLoopCelsius,
                state.Basins.Celsius[parts.HeaterBasin[h]]);
            _heat.LargestWatts[h] = Math.Clamp(coil, 0, heater.OutputKilowatts * UnitConstants.GramsPerKilogram * _farm.Running.WaterHeater[h]);
            if (parts.HeaterTank[h] >= 0)
            {
                _wanted[parts.HeaterTank[h]] += FuelMegajoules(h, _heat.LargestWatts[h]);
            }
        }

        // Where the heaters of a tank could want more than it gives, each may have the same share of what it could want.
        for (int h = 0; h < parts.Heaters.Length; h++)
        {
            int tank = parts.HeaterTank[h];
            if (tank >= 0 && _wanted[tank] > 0)
            {
                double available = state.Fuel.AvailableMegajoules(tank, _farm.Step.Hours, _farm.FuelTaken[tank]);
                _heat.LargestWatts[h] *= Math.Min(1, available / _wanted[tank]);
            }
        }
    }

    /// <summary>Books heat, fuel and power of the solved step, and what went with the water to the plants.</summary>
    public void Commit()
    {
        FarmParts parts = _farm.Parts;
        FarmState state = _farm.State;
        FarmTotals totals = state.Totals;
        double seconds = _farm.Step.Hours * UnitConstants.SecondsPerHour;
        double outside = state.House.OutsideCelsius;
        double heated = 0;
        double bought = 0;
        for (int h = 0; h < parts.Heaters.Length; h++)
        {
            HeatSource source = parts.HeaterSource[h];
            double warm = state.TemperatureAfter[parts.HeaterBasin[h]];
            double megajoules = _heat.HeaterWatts[h] * seconds / 1e6;
            double units = source.UnitsFor(megajoules, warm, outside);
            state.Books.Post(Door.WaterHeaters, FarmBooks.Heat, megajoules);
            totals.WaterHeatMegajoules += megajoules;
            state.Operations.HeaterUnits[h] += units;
            state.Operations.HeaterMegajoules[h] += megajoules;
            totals.FuelCarbonDioxideKilograms += source.Fuel.CarbonDioxideKilograms(units);
            totals.WaterHeatPumpKilowattHours += parts.WaterHeatPump.UnitsFor(megajoules, warm, outside);
            heated += megajoules;
            bought += units;
            if (parts.HeaterTank[h] >= 0)
            {
                _farm.FuelTaken[parts.HeaterTank[h]] += units * UnitConstants.LitresPerUsGallon;
            }

            if (source.Fuel.IsElectric)
            {
                state.House.ElectricWatts += units / _farm.Step.Hours * UnitConstants.GramsPerKilogram;
            }
        }

        for (int t = 0; t < parts.FuelTanks.Length; t++)
        {
            state.Fuel.Burn(t, _farm.FuelTaken[t]);
        }

        BookCoupling(heated, bought);
    }

    // Heat that left the fish loop with the water through open valves, against the warmth with which water came back.
    private void BookCoupling(double heated, double bought)
    {
        double there = 0;
        double back = 0;
        double thereHeat = 0;
        double backHeat = 0;
        double[] celsius = _farm.State.TemperatureAfter;
        for (int i = 0; i < _crossing.Length; i++)
        {
            double flow = _farm.Network.EdgeFlow[_crossing[i]];
            if (_crossingFromFish[i])
            {
                there += flow;
                thereHeat += flow * celsius[_origin[i]];
            }
            else
            {
                back += flow;
                backHeat += flow * celsius[_origin[i]];
            }
        }

        if (there <= 0 || back <= 0)
        {
            return;
        }

        double carried = FarmBooks.MegajoulesOf((thereHeat - (there * backHeat / back)) * _farm.Step.Hours, 1);
        FarmTotals totals = _farm.State.Totals;
        totals.CoupledHours += _farm.Step.Hours;
        totals.CoupledHeaterMegajoules += heated;
        totals.CarriedToPlantsMegajoules += carried;

        // Only what the heater gave in the same step can have been spent on it.
        double spent = Math.Clamp(carried, 0, heated);
        totals.SpentOnPlantWaterMegajoules += spent;
        totals.SpentOnPlantWaterUnits += heated > 0 ? bought * spent / heated : 0;
    }

    private double FuelMegajoules(int heater, double watts) =>
        watts * _farm.Step.Hours * UnitConstants.SecondsPerHour / 1e6 / _farm.Parts.HeaterSource[heater].Efficiency;
}
