using FarmTwin.Farm.Business;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Tests.Climate;
using static FarmTwin.Farm.Tests.PublishedTable;

namespace FarmTwin.Farm.Tests.Validation;

/// <summary>Sun, moist air, evaporation, heat, fuel.</summary>
internal static class ClimateCases
{
    public static CaseList All()
    {
        var list = new CaseList("Climate, heat and fuel");
        list.Quantities("climate-fao56-examples", "Allen et al. 1998, FAO 56", "published, second hand; example 6 and parts of 18-19 from memory", Fao56Tests.Examples());
        list.Worst("climate-fao56-table-2-6", "Extraterrestrial radiation, 40° N, by month", "Allen et al. 1998, table 2.6", "from memory", "extraterrestrial", 1,
            r => SolarGeometry.ExtraterrestrialDaily(new DateOnly(2025, (int)Number(r, "month"), 15).DayOfYear, 40));
        list.Quantities("climate-sun-positions", "Reda & Andreas solar position tester; Duffie & Beckman", "second hand; Duffie & Beckman from memory", SunTests.Positions());
        list.Quantities("climate-light", "bigleaf manual; a light sensor's table", "second hand", LightTests.Conversions());
        list.Quantities("climate-moist-air", "ASHRAE Fundamentals 2017, chapter 1, example 1; EnergyPlus weather dictionary", "second hand; wet bulb and pad own calculation", MoistAirTests.Handbook(),
            "handbook formula humidity ratio kg/kg", "wet bulb of 35 C 40 % C", "air behind pad C");
        list.Worst("climate-psychrometrics-recorded", "Saturation pressure, 1-40 °C", "psychrolib 1.1.1", "independent program", "saturationPressure", 0.15,
            r => Psychrometrics.SaturationPressureKilopascal(Number(r, "celsius")));
        list.Quantities("climate-water-surfaces", "engineering pages on open tanks and pools", "published; humidity of the table taken as 50 %", WaterSurfaceTests.OpenTanks());
        list.Quantities("climate-heat-exchanger", "Incropera & DeWitt, example 11.1", "inputs second hand, outputs from memory", MachineTests.Exchanger());
        list.Quantities("climate-fuels", "40 CFR 98 table C-1; two utilities' comparison sheets", "published; stoichiometry own calculation", MachineTests.Fuels(),
            "stoichiometric carbon dioxide kg/gal");
        list.Near("Water cooling without heat: 2500 L, 12 W/K, from 27 °C in 5 °C air, after 24 h", "closed form", "own calculation", 24.92, 0.02, "°C",
            () => PowerOutage.TemperatureAfter(27, 5, PowerOutage.CoolingTimeConstantHours(2500, 12), 24));
        list.Near("Sodium of a closed loop after 180 d: 12 m3, 400 L/d at 30 mg/L", "closed form", "own calculation", 210, 1e-6, "mg/L",
            () => SaltBuildUp.MilligramsPerLitreAfter(30, 30, 400, 12_000, 0, 180));
        foreach ((string end, double price) in new[] { ("low", 0.87), ("high", 0.92) })
        {
            double printed = Number(PublishedTable.Read("business-cases").Rows.Single(r => r["name"] == $"romaine-value-{end}-per-m2-week"), "value");
            list.Near($"Value of romaine, 16/m2 over 4 weeks, {end} price", "Bailey & Ferrarezi 2017", "second hand", printed, 0.005, "$/(m2 week)",
                () => ValueDensity.PerSquareMetreWeek(16 * price, 1, 28)!.Value, Standing.Arithmetic);
        }

        return list;
    }
}
