using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Energy;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Heaters against the design night, with the loops apart and joined, and the days that the fuel lasts.</summary>
internal static class HeatLines
{
    private const string Group = "Heat";
    private const double MegajoulesADayPerKilowatt = 86.4;

    public static IEnumerable<SheetLine> Of(DesignCase design)
    {
        DesignBands bands = design.Bands;
        DesignNight night = design.Night;
        double air = design.Heat.HouseAirCelsius(night.OutsideCelsius);
        yield return new SheetLine
        {
            Group = Group,
            Key = "designNight",
            Name = $"design night, month {night.Month}",
            Value = night.OutsideCelsius,
            Unit = "°C",
            Source = bands.SourceOf("nightDeviations"),
            Verdict = Verdict.NoVerdict,
            Advice = (night.FromFile ? "The coldest hour of the weather file." : $"Mean minimum less {bands.Get("nightDeviations", "1"):0.#} standard deviations; wind {night.WindMetresPerSecond:0.#} m/s.")
                + $" The house loses {design.Heat.HouseWattsPerKelvin:0} W/K and is then at {air:0.#} °C; sun, floor, lamps and warm water are not counted.",
        };
        if (design.Farm.House.AirHeater is { } heater)
        {
            yield return Heater(design, "house", "air heater over design loss", heater.OutputKilowatts, design.Heat.HouseKilowatts(night.OutsideCelsius),
                $"It then holds {air:0.#} °C in place of {heater.HoldCelsius:0.#}.");
        }

        if (design.LoopHeaters.Any())
        {
            double output = design.Heat.WaterHeaterKilowatts;
            yield return Heater(design, "waterApart", "water heater over loss, loops apart", output, design.Heat.ApartKilowatts(air),
                "The fish cool: a larger heater or exchanger, lids, insulation.");
            if (design.Farm.Coupling is { Way: not CouplingWay.Never } coupling)
            {
                double flow = coupling.FullFlowLitresPerHour;
                yield return Heater(design, "waterCoupled", "water heater over loss, joined", output, design.Heat.CoupledKilowatts(flow, air),
                    $"It holds the fish up to an exchange of {design.Heat.LargestExchange(air, flow):0} of {flow:0} L/h: throttle the valve on such nights, warm the house, or fit more heat.",
                    $"The plant loop is then at {design.Heat.PlantLoopCelsius(flow, air):0.0} °C.");
            }
        }

        foreach (FuelTank tank in design.Parts.FuelTanks)
        {
            yield return Fuel(design, tank);
        }
    }

    private static SheetLine Heater(DesignCase design, string key, string name, double output, double need, string whenShort, string always = "")
    {
        double margin = design.Bands.Get("heaterMargin", "1");
        double ratio = need > 0 ? output / need : double.PositiveInfinity;
        return new SheetLine
        {
            Group = Group,
            Key = $"heater.{key}",
            Name = name,
            Value = ratio,
            Low = margin,
            Source = design.Bands.SourceOf("heaterMargin"),
            Verdict = Judge.More(ratio, 1, margin),
            Advice = string.Join(' ', new[] { $"{output:0.0} kW against {need:0.0} kW.", always, ratio < 1 ? whenShort : string.Empty }.Where(s => s.Length > 0)),
        };
    }

    private static SheetLine Fuel(DesignCase design, FuelTank tank)
    {
        FuelTankDescription described = tank.Description;
        double mean = LitresADay(design, tank, design.Night.MeanCelsius);
        double cold = LitresADay(design, tank, design.Night.OutsideCelsius);
        double leftAtOrder = described.OrderBelowShare * described.CapacityLitres;
        double days = mean > 0 ? leftAtOrder / mean : double.PositiveInfinity;
        double wanted = described.LeadDays + design.Bands.Get("fuelReserve", "d");
        return new SheetLine
        {
            Group = Group,
            Key = $"fuel.{tank.Name}",
            Name = $"days of fuel when ordered, {tank.Name}",
            Value = days,
            Unit = "d",
            Low = wanted,
            Source = design.Bands.SourceOf("fuelReserve"),
            Verdict = Judge.More(days, described.LeadDays, wanted),
            Advice = $"{mean:0} L on a mean day of that month, {cold:0} L on a day like the design night: a full tank lasts {described.CapacityLitres / mean:0} and {described.CapacityLitres / cold:0} days."
                + (days < wanted ? " Order earlier, or a larger tank." : string.Empty),
        };
    }

    private static double LitresADay(DesignCase design, FuelTank tank, double outside)
    {
        double air = design.Heat.HouseAirCelsius(outside);
        double units = tank.Description.AirHeater && design.Parts.AirHeaterSource is { } house
            ? house.UnitsFor(Math.Min(design.Heat.HouseKilowatts(outside), design.Farm.House.AirHeater!.OutputKilowatts) * MegajoulesADayPerKilowatt, air, outside)
            : 0;
        double need = design.Farm.Coupling is { Way: not CouplingWay.Never } coupling
            ? design.Heat.CoupledKilowatts(coupling.FullFlowLitresPerHour, air)
            : design.Heat.ApartKilowatts(air);
        double all = design.LoopHeaters.Sum(h => design.Parts.Heaters[h].OutputKilowatts);
        foreach (int h in design.LoopHeaters)
        {
            if (design.Parts.HeaterTank[h] >= 0 && design.Parts.FuelTanks[design.Parts.HeaterTank[h]] == tank)
            {
                WaterHeaterDescription heater = design.Parts.Heaters[h];
                double kilowatts = Math.Min(Math.Max(0, need) * heater.OutputKilowatts / all, heater.OutputKilowatts);
                units += design.Parts.HeaterSource[h].UnitsFor(kilowatts * MegajoulesADayPerKilowatt, heater.HoldCelsius, outside);
            }
        }

        return units * UnitConstants.LitresPerUsGallon;
    }
}
