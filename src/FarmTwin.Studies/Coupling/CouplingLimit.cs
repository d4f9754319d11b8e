using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Studies.Coupling;

/// <summary>A limit that must hold in the days after the valves are opened.</summary>
/// <param name="Key">Its key in files.</param>
/// <param name="Name">What a reader sees.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="IsUpper">Whether the figure must stay at or below it; else at or above.</param>
/// <param name="Limit">The limit of a farm.</param>
/// <param name="Measure">The worst of the window, from the season's record.</param>
public sealed record CouplingLimit(string Key, string Name, string Unit, bool IsUpper, Func<Season, SummaryBands, double> Limit, Func<WindowRecord, double> Measure)
{
    /// <summary>Every limit, what harms fish first.</summary>
    public static IReadOnlyList<CouplingLimit> All { get; } =
    [
        new("tan", "TAN", "mg N/L", true, (s, _) => s.Parts.Practice.RampStopsTan, w => w.Highest("tan_fish_loop_mgN_per_L")),
        new("nitrite", "nitrite", "mg N/L", true, (s, _) => s.Parts.Practice.RampStopsNitrite, w => w.Highest("nitrite_fish_loop_mgN_per_L")),
        new("unionized", "unionized ammonia", "mg N/L", true, (_, b) => b.UnionizedAmmoniaHigh, w => w.Highest("ammonia_unionized_tanks_mgN_per_L")),
        new("oxygen", "oxygen", "mg/L", false, (s, _) => s.Parts.Practice.RampStopsOxygen, w => w.Lowest("oxygen_tanks_mg_per_L")),
        new("coldest", "coldest fish water", "°C", false, (_, b) => b.FishWaterLow, w => w.Lowest("fish_water_C")),
        new("fall-hour", "fall of the fish's water in an hour", "K", true, (s, _) => s.Parts.Farm.Coupling!.FastestKelvinPerHour, w => w.LargestFall("fish_water_C", 1)),
        new("fall-day", "fall of the fish's water in a day", "K", true, (s, _) => s.Parts.Practice.RampStopsCooling, w => w.LargestFall("fish_water_C", 24)),
        new("pH-day", "change of the fish's pH in a day", string.Empty, true, (s, _) => s.Parts.Practice.CouplingMostPHStep, w => w.LargestStepOfDays("pH_fish_loop")),
        new("nitrate", "nitrate of the plant loop", "mg N/L", false, (_, b) => b.NitrateLow, w => w.Lowest("nitrate_plant_loop_mgN_per_L")),
        new("heater", "hardest day of the water heater, share of its output", string.Empty, true, (_, _) => 1, w => w.HeaterShare),
        new("ramp-held", "ramps broken off", string.Empty, true, (_, _) => 0, w => w.RampsHeld),
        new("deaths", "fish dead of other causes than the usual", string.Empty, true, (_, _) => 1, w => w.UnusualDeaths),
    ];
}
