using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Steady losses of house and water: no sun, no heat from floor or lamps, nothing stored.</summary>
public sealed class DesignHeat
{
    private const double KilowattsPerWatt = 1e-3;
    private const double Halvings = 60;

    private readonly DesignCase _design;
    private readonly double _pressure;

    /// <summary>Prepares them.</summary>
    public DesignHeat(DesignCase design)
    {
        ArgumentNullException.ThrowIfNull(design);
        _design = design;
        _pressure = Psychrometrics.PressureKilopascal(design.Farm.Site.ElevationMetres);
    }

    /// <summary>Loss of the house with vents shut and the screen, if any, drawn, W/K.</summary>
    public double HouseWattsPerKelvin =>
        _design.Season.House.LossWattsPerKelvin(_design.Night.WindMetresPerSecond, night: true);

    /// <summary>Heat that holds the house's air against an outside, kW; 0 without an air heater.</summary>
    public double HouseKilowatts(double outsideCelsius) => _design.Farm.House.AirHeater is { } heater
        ? Math.Max(0, heater.HoldCelsius - outsideCelsius) * HouseWattsPerKelvin * KilowattsPerWatt
        : 0;

    /// <summary>Air of the house at night, °C: held, or as far as the heater reaches, or a little above the outside.</summary>
    public double HouseAirCelsius(double outsideCelsius)
    {
        double unheated = outsideCelsius + _design.Bands.Get("unheatedRise", "K");
        return _design.Farm.House.AirHeater is { } heater
            ? Math.Max(unheated, Math.Min(heater.HoldCelsius, outsideCelsius + (heater.OutputKilowatts / KilowattsPerWatt / HouseWattsPerKelvin)))
            : unheated;
    }

    /// <summary>Loss of basins by walls and open surfaces, kW.</summary>
    /// <param name="basins">The basins.</param>
    /// <param name="waterCelsius">Their water, °C.</param>
    /// <param name="airCelsius">Air of the house, °C.</param>
    public double WaterKilowatts(IEnumerable<int> basins, double waterCelsius, double airCelsius)
    {
        ArgumentNullException.ThrowIfNull(basins);
        FarmParts parts = _design.Parts;
        double vapour = _design.Bands.Get("airVapourShare", "1") * Psychrometrics.SaturationPressureKilopascal(airCelsius);
        double watts = 0;
        foreach (int b in basins)
        {
            BasinDescription basin = parts.Basins[b];
            double activity = basin.AirLitresPerMinute > 0 ? parts.Practice.BubblingEvaporation : 1;
            double open = basin.SurfaceSquareMetres * (1 - basin.CoveredShare);
            watts += basin.WallWattsPerKelvin * (waterCelsius - airCelsius);
            watts += open * WaterSurface.At(waterCelsius, airCelsius, vapour, _pressure, activity).LossWattsPerSquareMetre;
        }

        return watts * KilowattsPerWatt;
    }

    /// <summary>Heat for the source water that replaces what evaporates, kW.</summary>
    public double TopUpKilowatts(double litresPerDay) => TwoLoopExchange.HeatKilowatts(
        litresPerDay / UnitConstants.HoursPerDay, new LoopPair(_design.HoldCelsius, _design.Farm.SourceWater.TemperatureCelsius));

    /// <summary>Heat that holds the fish loop while it stands apart, kW.</summary>
    public double ApartKilowatts(double airCelsius)
    {
        double share = _design.FishLoop.Sum(b => _design.Parts.Basins[b].VolumeLitres) / _design.WaterLitres;
        return WaterKilowatts(_design.FishLoop, _design.HoldCelsius, airCelsius) + TopUpKilowatts(share * _design.TopUpLitresPerDay);
    }

    /// <summary>The plant loop's water at a steady exchange with the held fish loop, °C: what arrives is what it loses.</summary>
    public double PlantLoopCelsius(double flowLitresPerHour, double airCelsius)
    {
        double low = Math.Min(airCelsius, _design.HoldCelsius);
        double high = _design.HoldCelsius;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            bool tooCold = TwoLoopExchange.HeatKilowatts(flowLitresPerHour, new LoopPair(_design.HoldCelsius, middle))
                > WaterKilowatts(_design.PlantLoop, middle, airCelsius);
            low = tooCold ? middle : low;
            high = tooCold ? high : middle;
        }

        return (low + high) / 2;
    }

    /// <summary>Heat that holds the fish loop while it exchanges water with the plant loop, kW.</summary>
    public double CoupledKilowatts(double flowLitresPerHour, double airCelsius) =>
        WaterKilowatts(_design.FishLoop, _design.HoldCelsius, airCelsius) + TopUpKilowatts(_design.TopUpLitresPerDay)
            + WaterKilowatts(_design.PlantLoop, PlantLoopCelsius(flowLitresPerHour, airCelsius), airCelsius);

    /// <summary>What the water heaters can give at the held temperature: burner or exchanger, kW.</summary>
    public double WaterHeaterKilowatts => _design.LoopHeaters.Select(h => _design.Parts.Heaters[h]).Sum(h => Math.Min(h.OutputKilowatts, KilowattsPerWatt
        * Math.Max(0, HeatExchanger.ImmersedCoilPowerWatts(
            h.HotFlowLitresPerHour / UnitConstants.SecondsPerHour, h.ExchangerWattsPerKelvin, h.HotLoopCelsius, _design.HoldCelsius))));

    /// <summary>The largest exchange that the heaters hold, L/h; 0 where they do not hold the fish loop alone.</summary>
    public double LargestExchange(double airCelsius, double fullFlow)
    {
        double low = 0;
        double high = fullFlow;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (low + high) / 2;
            bool held = CoupledKilowatts(middle, airCelsius) <= WaterHeaterKilowatts;
            low = held ? middle : low;
            high = held ? high : middle;
        }

        return low;
    }
}
