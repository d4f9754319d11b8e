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
        };
        double megajoules = 0;
        if (parts.Heaters.Length > 0)
        {
            Take("water", parts.HeaterFuel[0], parts.Heaters[0].Fuel, totals.WaterFuelUnits, totals.WaterHeatMegajoules);
        }

        if (parts.AirHeaterFuel is { } airFuel)
        {
            Take("air", airFuel, parts.Farm.House.AirHeater!.Fuel, totals.AirFuelUnits, totals.AirHeatMegajoules);
        }

        string[] units = [.. heaters.Values.Select(h => h.Unit).Distinct()];
        FuelProperties pump = FuelProperties.From(library.Set("fuels", "electricity-heat-pump"));
        return new EnergySummary
        {
            Fuel = units.Length <= 1 ? heaters.Values.Sum(h => h.Amount) : megajoules,
            FuelUnit = units.Length == 1 ? units[0] : "MJ",
            Heaters = heaters,
            KWh = use.Values.Sum(),
            KWhByUse = use,
            FuelCarbonDioxideKg = totals.FuelCarbonDioxideKilograms,
            SameHeatByResistanceKWh = (totals.WaterHeatMegajoules + totals.AirHeatMegajoules) / UnitConstants.MegajoulesPerKilowattHour,
            SameHeatByHeatPumpKWh = pump.UnitsFor(totals.WaterHeatMegajoules, pump.WaterHeaterEfficiency)
                + pump.UnitsFor(totals.AirHeatMegajoules, pump.AirHeaterEfficiency),
            PeakWaterHeatKW = Peak(record.Days("water_heat_kWh"), parts.Heaters.Length > 0),
            WaterHeaterRatedKW = parts.Heaters.Sum(h => h.OutputKilowatts),
            LampShareOfLight = LampShare(record),
        };

        void Take(string name, FuelProperties fuel, string fuelName, double amount, double heat)
        {
            if (fuel.SaleUnit == Electric)
            {
                use[name + "Heater"] = amount;
                return;
            }

            megajoules += amount * fuel.HeatMegajoulesPerUnit;
            heaters.Add(name, new HeaterSummary(
                fuelName, amount, fuel.SaleUnit, fuel.SaleUnit == "gal" ? amount * UnitConstants.LitresPerUsGallon : null,
                heat, heat / UnitConstants.MegajoulesPerKilowattHour));
        }
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
