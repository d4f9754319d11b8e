namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of electricity and fuel, and of the water of the pads.</summary>
internal static class EnergyColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm)
    {
        FarmTotals Totals() => farm.State.Totals;
        FarmParts parts = farm.Parts;
        double[] units = farm.State.Operations.HeaterUnits;
        int[] electric = [.. Enumerable.Range(0, units.Length).Where(h => parts.HeaterFuel[h].IsElectric)];
        int burner = Array.FindIndex(parts.HeaterFuel, f => !f.IsElectric);
        int[] burners = [.. Enumerable.Range(0, units.Length).Where(h => burner >= 0 && parts.Heaters[h].Fuel == parts.Heaters[burner].Fuel)];
        bool electricAir = parts.AirHeaterFuel?.IsElectric ?? false;
        double Heaters() => UnitsOf(electric) + (electricAir ? Totals().AirFuelUnits : 0);
        columns.Sum("electricity_kWh", "kWh", () => Totals().PumpKilowattHours + Totals().BlowerKilowattHours + Totals().LampKilowattHours
            + Totals().NurseryKilowattHours + Totals().FanKilowattHours + Totals().PadKilowattHours + Heaters());
        columns.Sum("electricity_pumps_kWh", "kWh", () => Totals().PumpKilowattHours);
        columns.Sum("electricity_blowers_kWh", "kWh", () => Totals().BlowerKilowattHours);
        columns.Sum("electricity_lamps_kWh", "kWh", () => Totals().LampKilowattHours);
        columns.Sum("electricity_nursery_kWh", "kWh", () => Totals().NurseryKilowattHours);
        columns.Sum("electricity_fans_kWh", "kWh", () => Totals().FanKilowattHours + Totals().PadKilowattHours);
        columns.Sum("electricity_heaters_kWh", "kWh", Heaters);
        columns.Sum("pad_water_L", "L", () => Totals().PadLitres);
        if (burner >= 0)
        {
            columns.Sum($"water_fuel_{parts.HeaterFuel[burner].SaleUnit}", parts.HeaterFuel[burner].SaleUnit, () => UnitsOf(burners));
        }

        if (parts.AirHeaterFuel is { IsElectric: false } air)
        {
            columns.Sum($"air_fuel_{air.SaleUnit}", air.SaleUnit, () => Totals().AirFuelUnits);
        }

        for (int t = 0; t < parts.FuelTanks.Length; t++)
        {
            int tank = t;
            columns.Instant($"fuel_{parts.FuelTanks[t].Name}_L", "L", () => farm.State.Fuel.Litres[tank]);
            columns.Instant($"fuel_{parts.FuelTanks[t].Name}_days", "d", () => farm.State.Fuel.DaysLeft(tank));
        }

        double UnitsOf(int[] heaters)
        {
            double sum = 0;
            foreach (int h in heaters)
            {
                sum += units[h];
            }

            return sum;
        }
    }
}
