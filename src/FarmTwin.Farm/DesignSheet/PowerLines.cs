using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Connected load and the energy of a winter day.</summary>
internal static class PowerLines
{
    private const string Group = "Electricity";
    private const double KilowattsPerWatt = 1e-3;

    public static IEnumerable<SheetLine> Of(DesignCase design)
    {
        FarmDescription farm = design.Farm;
        double pumps = farm.Pipes.Values.Where(p => p.Drive == PipeDrive.Pump).Sum(p => p.PowerWatts) + farm.WaterHeaters.Values.Sum(h => h.PowerWatts);
        double blowers = farm.Blowers.Values.Sum(b => b.PowerWatts);
        double lamps = farm.Lamps.Values.Sum(l => l.Count * l.PowerWatts);
        double nursery = Enumerable.Range(0, design.Parts.Tiers.Count).Sum(design.Parts.Tiers.Watts);
        double heaters = design.Parts.Heaters.Select((h, i) => design.Parts.HeaterFuel[i].IsElectric
                ? h.OutputKilowatts / KilowattsPerWatt / design.Parts.HeaterSource[i].EfficiencyAt(h.HoldCelsius, design.Night.OutsideCelsius) : 0).Sum()
            + (design.Parts.AirHeaterSource is { Fuel.IsElectric: true } air
                ? farm.House.AirHeater!.OutputKilowatts / KilowattsPerWatt / air.EfficiencyAt(farm.House.AirHeater.HoldCelsius, design.Night.OutsideCelsius) : 0);
        double fans = farm.House.Fans is { } fan ? farm.House.LargestVentilationPerHour * farm.House.AirCubicMetres / fan.CubicMetresPerWattHour : 0;
        double pad = farm.House.EvaporativePad?.PowerWatts ?? 0;
        yield return Line("connected", "connected load", (pumps + blowers + lamps + nursery + heaters + fans + pad) * KilowattsPerWatt, "kW",
            $"Pumps {pumps:0} W, blowers {blowers:0}, lamps {lamps:0}, nursery {nursery:0}, fans and pad {fans + pad:0}, electric heat {heaters:0}.");
        yield return Line("lifeline", "of it pumps and blowers", (pumps + blowers) * KilowattsPerWatt, "kW", "What a generator must carry for the fish.");
        double day = (((pumps + blowers) * UnitConstants.HoursPerDay) + farm.Lamps.Values.Sum(l => l.Count * l.PowerWatts * Math.Min(UnitConstants.HoursPerDay, l.BeforeSunriseHours + l.AfterSunsetHours))
            + Enumerable.Range(0, design.Parts.Tiers.Count).Sum(t => design.Parts.Tiers.Watts(t) * design.Parts.Tiers.LightHours(t))) * KilowattsPerWatt;
        yield return Line("daily", "electricity of a day", day, "kWh/d", "Everything that runs every day; fans and electric heat come on top.");
    }

    private static SheetLine Line(string key, string name, double value, string unit, string advice) => new()
    {
        Group = Group, Key = $"power.{key}", Name = name, Value = value, Unit = unit, Source = "common-practice", Verdict = Verdict.NoVerdict, Advice = advice,
    };
}
