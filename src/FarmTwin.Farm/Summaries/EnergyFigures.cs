using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of fuel and power.</summary>
internal static class EnergyFigures
{
    private const string Electric = "kWh";

    public static EnergySummary Of(Season season, RecordView record, FarmLibrary library)
    {
        FarmTotals totals = season.State.Totals;
        FarmParts parts = season.Parts;
        var heaters = new Dictionary<string, HeaterSummary>(StringComparer.Ordinal);
        var use = new Dictionary<string, double>(StringComparer.Ordinal)
        {
            ["pumps"] = totals.PumpKilowattHours,
            ["blowers"] = totals.BlowerKilowattHours,
            ["lamps"] = totals.LampKilowattHours,
            ["nursery"] = totals.NurseryKilowattHours,
            ["fans"] = totals.FanKilowattHours + totals.PadKilowattHours,
        };
        double megajoules = 0;
        string? first = null;
        foreach (int[] alike in HeatersByFuel(parts))
        {
            string fuel = parts.Heaters[alike[0]].Fuel;
            bool electric = parts.HeaterFuel[alike[0]].IsElectric;
            first ??= electric ? null : fuel;
            Take(
                electric || fuel == first ? "water" : $"water, {fuel}",
                parts.HeaterFuel[alike[0]],
                fuel,
                alike.Sum(h => season.State.Operations.HeaterUnits[h]),
                alike.Sum(h => season.State.Operations.HeaterMegajoules[h]));
        }

        if (parts.AirHeaterFuel is { } airFuel)
        {
            Take("air", airFuel, parts.Farm.House.AirHeater!.Fuel, totals.AirFuelUnits, totals.AirHeatMegajoules);
        }

        string[] units = [.. heaters.Values.Select(h => h.Unit).Distinct()];
        return new EnergySummary
        {
            Fuel = units.Length <= 1 ? heaters.Values.Sum(h => h.Amount) : megajoules,
            FuelUnit = units.Length == 1 ? units[0] : "MJ",
            Heaters = heaters,
            KWh = use.Values.Sum(),
            KWhByUse = use,
            FuelCarbonDioxideKg = totals.FuelCarbonDioxideKilograms,
            SameHeatByResistanceKWh = (totals.WaterHeatMegajoules + totals.AirHeatMegajoules) / UnitConstants.MegajoulesPerKilowattHour,
            SameHeatByHeatPumpKWh = totals.WaterHeatPumpKilowattHours + totals.AirHeatPumpKilowattHours,
            Comparison = HeatingComparison.Of(season, library),
            Cost = Cost(season, heaters, use.Values.Sum()),
            Coupling = Coupling(season),
            FuelTanks = Enumerable.Range(0, parts.FuelTanks.Length).ToDictionary(t => parts.FuelTanks[t].Name, t => Tank(season, t), StringComparer.Ordinal),
            ByMonth = EnergyMonths.Of(season, record),
            PeakElectricKW = record.Peak("electric_load_kW", highest: true),
            PeakWaterHeatKW = Peak(record.Days("water_heat_kWh"), parts.Heaters.Length > 0),
            WaterHeaterRatedKW = parts.Heaters.Sum(h => h.OutputKilowatts),
            LampShareOfLight = LampShare(record),
        };

        void Take(string name, FuelProperties fuel, string fuelName, double amount, double heat)
        {
            if (fuel.SaleUnit == Electric)
            {
                use[name + "Heater"] = use.GetValueOrDefault(name + "Heater") + amount;
                return;
            }

            megajoules += amount * fuel.HeatMegajoulesPerUnit;
            heaters.Add(name, new HeaterSummary(
                fuelName, amount, fuel.SaleUnit, fuel.SaleUnit == "gal" ? amount * UnitConstants.LitresPerUsGallon : null,
                heat, heat / UnitConstants.MegajoulesPerKilowattHour));
        }
    }

    private static IEnumerable<int[]> HeatersByFuel(FarmParts parts) =>
        Enumerable.Range(0, parts.Heaters.Length).GroupBy(h => parts.Heaters[h].Fuel, StringComparer.Ordinal).Select(g => g.ToArray());

    private static double? Cost(Season season, Dictionary<string, HeaterSummary> heaters, double kilowattHours)
    {
        Description.FarmDescription farm = season.Parts.Farm;
        double? electricity = farm.Prices is { ElectricityPerKilowattHour: > 0 and var price } ? price : null;
        double? cost = kilowattHours * electricity;
        foreach (int[] alike in HeatersByFuel(season.Parts).Where(g => !season.Parts.HeaterFuel[g[0]].IsElectric))
        {
            cost += alike.Sum(h => season.State.Operations.HeaterUnits[h])
                * HeatingComparison.PriceOf(farm, season.Parts.Heaters[alike[0]].Fuel, season.Parts.HeaterFuel[alike[0]]);
        }

        if (heaters.TryGetValue("air", out HeaterSummary? air))
        {
            cost += air.Amount * HeatingComparison.PriceOf(farm, air.FuelName, season.Parts.AirHeaterFuel!);
        }

        return cost;
    }

    private static CouplingHeat? Coupling(Season season)
    {
        FarmTotals totals = season.State.Totals;
        if (totals.CoupledHours <= 0 || season.Parts.Heaters.Length == 0)
        {
            return null;
        }

        HeatSource source = season.Parts.HeaterSource[0];
        return new CouplingHeat(
            totals.CoupledHours, totals.CoupledHeaterMegajoules, totals.CarriedToPlantsMegajoules, totals.SpentOnPlantWaterMegajoules,
            totals.SpentOnPlantWaterUnits, source.Fuel.SaleUnit,
            totals.SpentOnPlantWaterUnits * HeatingComparison.PriceOf(season.Parts.Farm, source.FuelName, source.Fuel));
    }

    private static FuelTankSummary Tank(Season season, int tank)
    {
        Energy.FuelTanks fuel = season.State.Fuel;
        Energy.FuelTank of = season.Parts.FuelTanks[tank];
        double days = fuel.DaysLeft(tank);
        return new FuelTankSummary
        {
            Fuel = of.Description.Fuel,
            CapacityL = of.Description.CapacityLitres,
            BurntL = fuel.BurntLitres[tank],
            DeliveredL = fuel.DeliveredLitres[tank],
            Deliveries = fuel.Deliveries[tank],
            MissedDeliveries = fuel.MissedDeliveries[tank],
            LowestL = new PeakReading(fuel.LowestLitres[tank], fuel.LowestDay[tank]),
            EndL = fuel.Litres[tank],
            DaysLeft = double.IsNaN(days) ? null : days,
            DaysFullOnHardestDay = fuel.HighestLitresPerDay[tank] > 0 ? of.Description.CapacityLitres / fuel.HighestLitresPerDay[tank] : null,
            HoursEmpty = fuel.HoursEmpty[tank],
        };
    }

    private static PeakReading? Peak(double[] kilowattHours, bool heated)
    {
        int best = -1;
        for (int i = 0; heated && i < kilowattHours.Length; i++)
        {
            best = best < 0 || kilowattHours[i] > kilowattHours[best] ? i : best;
        }

        return best < 0 ? null : new PeakReading(kilowattHours[best] / UnitConstants.HoursPerDay, best);
    }

    private static double? LampShare(RecordView record)
    {
        double lamps = record.Days("lamp_light_at_crop_mol_per_m2").Sum();
        double all = lamps + record.Days("daylight_at_crop_mol_per_m2").Sum();
        return all > 0 ? lamps / all : null;
    }
}
