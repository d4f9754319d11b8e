using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>The air of the house over the season.</summary>
public sealed record HouseSummary
{
    /// <summary>Coldest and hottest hourly mean, °C.</summary>
    public required ReadingRange AirC { get; init; }

    /// <summary>Hours above the band's highest air temperature.</summary>
    public required int HoursTooHot { get; init; }

    /// <summary>That temperature, °C.</summary>
    public required double TooHotC { get; init; }

    /// <summary>Hours above the band's highest humidity: grey mould and mildew.</summary>
    public required int HoursTooHumid { get; init; }

    /// <summary>That humidity, %.</summary>
    public required double TooHumidPercent { get; init; }

    /// <summary>Lowest and highest hourly mean of carbon dioxide, ppm.</summary>
    public required ReadingRange CarbonDioxidePpm { get; init; }

    /// <summary>Carbon dioxide let in, kg.</summary>
    public required double EnrichedKg { get; init; }

    /// <summary>Electricity of fans and pad, kWh.</summary>
    public required double FanKWh { get; init; }

    /// <summary>Hours of wet pad.</summary>
    public required double PadHours { get; init; }

    /// <summary>Water of the pad, bled water included, L; beside the farm's top-up.</summary>
    public required double PadL { get; init; }

    /// <summary>Hours of airing against humidity.</summary>
    public required double PurgeHours { get; init; }

    /// <summary>Heat of the air heater for it, MJ.</summary>
    public required double PurgeHeatMJ { get; init; }

    /// <summary>Fuel for it, in the air heater's sale unit.</summary>
    public required double PurgeFuel { get; init; }

    internal static HouseSummary Of(Season season, RecordView record, SummaryBands bands)
    {
        FarmTotals totals = season.State.Totals;
        return new HouseSummary
        {
            AirC = record.Range("house_air_C"),
            HoursTooHot = record.Hours("house_air_C").Count(t => t > bands.HouseAirHigh),
            TooHotC = bands.HouseAirHigh,
            HoursTooHumid = record.Hours("house_humidity_percent").Count(h => h > bands.HouseHumidityHigh),
            TooHumidPercent = bands.HouseHumidityHigh,
            CarbonDioxidePpm = record.Range("house_carbon_dioxide_ppm"),
            EnrichedKg = totals.EnrichedGrams / UnitConstants.GramsPerKilogram,
            FanKWh = totals.FanKilowattHours + totals.PadKilowattHours,
            PadHours = totals.PadHours,
            PadL = totals.PadLitres,
            PurgeHours = totals.PurgeHours,
            PurgeHeatMJ = totals.PurgeHeatMegajoules,
            PurgeFuel = totals.PurgeFuelUnits,
        };
    }
}
