namespace FarmTwin.Farm.Climate;

/// <summary>Quasi-steady air of a house with one dynamic floor.</summary>
/// <remarks>
/// Air holds minutes of heat, so over a step its balance is algebraic; the floor holds a day's and is solved exactly within the
/// step (exponential approach to a constant air). Vents and heater work as ideal proportional controllers up to their capacity.
/// U-values hold the heat of condensation and the sky, so neither is added. No state: safe to share between threads.
/// </remarks>
/// <param name="parameters">The house.</param>
public sealed class HouseAirBalance(HouseParameters parameters)
{
    private const double AirSpecificHeatJoules = 1006;
    private const double DensityCelsius = 20;

    // The airing is found to a thousandth of its largest.
    private const int PurgeHalvings = 10;

    private readonly HouseParameters _house = Checked(parameters);

    // Volumes of air are counted at 20 °C and the site's pressure, whatever passes the opening.
    private readonly double _dryAirDensity = Psychrometrics.DryAirDensity(DensityCelsius, 0, parameters.PressureKilopascal);
    private readonly double _floorConductance =
        parameters.FloorSquareMetres * parameters.Air.FloorFilmWattsPerSquareMetreKelvin;

    private readonly double _floorCapacity = parameters.FloorSquareMetres * UnitConstants.GramsPerKilogram
        * parameters.Air.FloorCapacityKilojoulesPerSquareMetreKelvin;

    /// <summary>The house.</summary>
    public HouseParameters House => _house;

    /// <summary>All losses to the outside with vents shut, W/K.</summary>
    /// <param name="windMetresPerSecond">m/s.</param>
    /// <param name="night">Whether the thermal screen, if any, is drawn.</param>
    public double LossWattsPerKelvin(double windMetresPerSecond, bool night) =>
        CoverConductance(windMetresPerSecond, night) + InfiltrationConductance + _house.PerimeterWattsPerKelvin;

    /// <summary>Solves the air for one step.</summary>
    /// <param name="conditions">What acts on it.</param>
    public HouseAir Solve(in HouseConditions conditions)
    {
        double outside = conditions.OutsideCelsius;
        double cover = CoverConductance(conditions.WindMetresPerSecond, conditions.Night && outside < _house.ScreenBelowCelsius);
        double infiltration = InfiltrationConductance;
        double perimeter = _house.PerimeterWattsPerKelvin;
        double water = conditions.WaterConductanceWattsPerKelvin;

        double solar = _house.Air.AbsorbedSolarShare * _house.SolarTransmission * (1 - conditions.ShadeShare)
            * conditions.RadiationWattsPerSquareMetre * _house.FloorSquareMetres;
        double floorSolar = _house.Air.FloorSolarShare * solar;
        double latent = conditions.TranspirationKilogramsPerHour * 1e6 / UnitConstants.SecondsPerHour
            * Psychrometrics.LatentHeatMegajoulesPerKilogram(conditions.FloorCelsius);

        // Mean heat from the floor over the step: conductance * (mean share * (floor - air)) + (1 - mean share) * its sun.
        double exponent = _floorConductance * conditions.DurationHours * UnitConstants.SecondsPerHour / _floorCapacity;
        double meanShare = MeanShare(exponent);
        double floor = _floorConductance * meanShare;
        double floorSolarNow = floorSolar * (1 - meanShare);

        double gains = solar - floorSolar + floorSolarNow + conditions.LampWatts + conditions.MotorWatts - latent
            + ((cover + infiltration + perimeter) * outside) + (water * conditions.WaterCelsius)
            + (floor * conditions.FloorCelsius);
        double losses = cover + infiltration + perimeter + water + floor;
        double air = gains / losses;
        double vent = 0;
        double heater = 0;
        double purgeHeater = 0;
        bool purges = false;
        var pad = default(Pad);
        Vapour vapour;
        if (air > _house.VentSetPointCelsius && air > outside)
        {
            vent = VentConductance(gains, losses, outside, conditions.VentShare);
            pad = WetPad(conditions, gains, losses, vent);
            air = (gains + (vent * (outside - pad.CoolingKelvin))) / (losses + vent);
            vapour = SolveVapour(conditions, air, cover, vent, pad.KilogramsPerSecond);
        }
        else
        {
            (air, heater) = Heated(gains, losses, conditions.HeaterShare);
            vapour = SolveVapour(conditions, air, cover, 0, 0);
            vent = PurgeConductance(conditions, gains, losses, cover, vapour, air);
            purges = vent > 0;
            if (purges)
            {
                double without = heater;
                (air, heater) = Heated(gains + (vent * outside), losses + vent, conditions.HeaterShare);
                purgeHeater = Math.Max(0, heater - without);
                vapour = SolveVapour(conditions, air, cover, vent, 0);
            }
        }

        double flow = vent / (_dryAirDensity * AirSpecificHeatJoules);
        double floorHeat = (floor * (conditions.FloorCelsius - air)) + floorSolarNow;
        double floorAfter = conditions.FloorCelsius
            + ((floorSolar - floorHeat) * conditions.DurationHours * UnitConstants.SecondsPerHour / _floorCapacity);
        double saturation = Psychrometrics.SaturationPressureKilopascal(air);
        return new HouseAir(air, vapour.PressureKilopascal, 100 * vapour.PressureKilopascal / saturation, heater, purges ? 0 : flow,
            floorHeat, floorAfter, solar, floorSolar, latent, water * (conditions.WaterCelsius - air),
            cover * (air - outside), infiltration * (air - outside), perimeter * (air - outside), vent * (air - outside + pad.CoolingKelvin),
            vapour.CondensedKilogramsPerHour, vapour.CarriedOutKilogramsPerHour)
        {
            PurgeCubicMetresPerSecond = purges ? flow : 0,
            PurgeHeaterWatts = purgeHeater,
            PadWetShare = pad.Share,
            PadKilogramsPerHour = pad.KilogramsPerSecond * UnitConstants.SecondsPerHour,
        };
    }

    /// <summary>Floor after a step of constant air, exact, °C.</summary>
    /// <param name="floorCelsius">At the start, °C.</param>
    /// <param name="airCelsius">Air during the step, °C.</param>
    /// <param name="floorSolarWatts">Sun on the floor, W.</param>
    /// <param name="durationHours">h, 0 or more.</param>
    public double FloorAfter(double floorCelsius, double airCelsius, double floorSolarWatts, double durationHours)
    {
        double end = airCelsius + (floorSolarWatts / _floorConductance);
        return end + ((floorCelsius - end)
            * Math.Exp(-_floorConductance * durationHours * UnitConstants.SecondsPerHour / _floorCapacity));
    }

    private double InfiltrationConductance => _dryAirDensity * AirSpecificHeatJoules
        * _house.InfiltrationPerHour * _house.VolumeCubicMetres / UnitConstants.SecondsPerHour;

    private double CoverConductance(double wind, bool night)
    {
        double excess = Math.Max(0, wind - _house.Air.WindThresholdMetresPerSecond);
        double screen = night && _house.HasThermalScreen ? 1 - _house.Air.ScreenSavingShare : 1;
        return _house.CoverWattsPerKelvin * screen * (1 + (_house.Air.WindFactorPerMetrePerSecond * excess));
    }

    private double VentConductance(double gains, double losses, double outside, double share)
    {
        double greatest = _dryAirDensity * AirSpecificHeatJoules * _house.VentCubicMetresPerSecond * share;
        double target = _house.VentSetPointCelsius;
        return target > outside ? Math.Min((gains - (target * losses)) / (target - outside), greatest) : greatest;
    }

    private (double Air, double Heater) Heated(double gains, double losses, double share)
    {
        double air = gains / losses;
        if (air >= _house.HeaterSetPointCelsius)
        {
            return (air, 0);
        }

        double heater = Math.Min((_house.HeaterSetPointCelsius * losses) - gains, _house.HeaterCapacityWatts * share);
        return ((gains + heater) / losses, heater);
    }

    // The pad is wetted for the share of the step that brings the air to its set-point, when the vents alone, wide open, do not.
    private Pad WetPad(in HouseConditions conditions, double gains, double losses, double vent)
    {
        double outside = conditions.OutsideCelsius;
        double air = (gains + (vent * outside)) / (losses + vent);
        double target = Math.Max(_house.PadSetPointCelsius, _house.VentSetPointCelsius);
        if (_house.PadEffectiveness <= 0 || air <= target)
        {
            return default;
        }

        double wetBulb = Psychrometrics.WetBulb(outside, Math.Min(conditions.OutsideVapourPressureKilopascal,
            Psychrometrics.SaturationPressureKilopascal(outside)), _house.PressureKilopascal);
        double most = outside - EvaporativePad.LeavingCelsius(outside, wetBulb, _house.PadEffectiveness);
        double wanted = (air - target) * (losses + vent) / vent;
        double share = most > 0 ? Math.Min(1, wanted / most) * conditions.PadShare : 0;
        return new Pad(share, share * most, EvaporativePad.WaterKilogramsPerSecond(vent, share * most, wetBulb));
    }

    // The least airing that holds the humidity, as a conductance, W/K; 0 where there is none or none would help.
    private double PurgeConductance(in HouseConditions conditions, double gains, double losses, double cover, in Vapour shut, double air)
    {
        double most = _dryAirDensity * AirSpecificHeatJoules * _house.PurgeCubicMetresPerSecond * conditions.VentShare;
        double before = HumidityOf(shut, air);
        if (most <= 0 || before <= _house.PurgeHumidityPercent)
        {
            return 0;
        }

        double after = HumidityAt(most, conditions, gains, losses, cover);
        if (after >= before)
        {
            return 0;
        }

        double low = 0;
        double high = most;
        for (int i = 0; i < PurgeHalvings && after < _house.PurgeHumidityPercent; i++)
        {
            double middle = 0.5 * (low + high);
            bool dry = HumidityAt(middle, conditions, gains, losses, cover) < _house.PurgeHumidityPercent;
            low = dry ? low : middle;
            high = dry ? middle : high;
        }

        return high;
    }

    private double HumidityAt(double vent, in HouseConditions conditions, double gains, double losses, double cover)
    {
        (double air, _) = Heated(gains + (vent * conditions.OutsideCelsius), losses + vent, conditions.HeaterShare);
        return HumidityOf(SolveVapour(conditions, air, cover, vent, 0), air);
    }

    private static double HumidityOf(in Vapour vapour, double air) =>
        100 * vapour.PressureKilopascal / Psychrometrics.SaturationPressureKilopascal(air);

    // Vapour: steady in the step, condensing on the inside of the cover by the analogy of heat and mass transfer.
    private Vapour SolveVapour(in HouseConditions conditions, double air, double coverConductance, double vent, double padKilogramsPerSecond)
    {
        double pressure = _house.PressureKilopascal;
        double flow = _dryAirDensity
            * ((_house.InfiltrationPerHour * _house.VolumeCubicMetres / UnitConstants.SecondsPerHour) + (vent / (_dryAirDensity * AirSpecificHeatJoules)));
        double outsideRatio = Psychrometrics.HumidityRatio(conditions.OutsideVapourPressureKilopascal, pressure);
        double source = ((conditions.TranspirationKilogramsPerHour + conditions.EvaporationKilogramsPerHour)
            / UnitConstants.SecondsPerHour) + padKilogramsPerSecond;

        double drop = Math.Min(1, coverConductance
            / (_house.CoverSquareMetres * _house.Air.CoverFilmWattsPerSquareMetreKelvin));
        double coverCelsius = air - (drop * (air - conditions.OutsideCelsius));
        double coverRatio = Psychrometrics.HumidityRatio(
            Psychrometrics.SaturationPressureKilopascal(coverCelsius), pressure);
        double transfer = _house.CoverSquareMetres * _house.Air.CoverConvectionWattsPerSquareMetreKelvin / AirSpecificHeatJoules;

        double ratio = (flow * outsideRatio) + source > flow * coverRatio
            ? ((flow * outsideRatio) + source + (transfer * coverRatio)) / (flow + transfer)
            : outsideRatio + (source / flow);
        double saturated = Psychrometrics.HumidityRatio(Psychrometrics.SaturationPressureKilopascal(air), pressure);
        ratio = Math.Min(ratio, saturated);
        double carried = flow * (ratio - outsideRatio);
        return new Vapour(Psychrometrics.VapourPressureFromRatio(ratio, pressure),
            Math.Max(0, source - carried) * UnitConstants.SecondsPerHour, carried * UnitConstants.SecondsPerHour);
    }

    // (1 - e^-x) / x, the mean over a step of what decays at rate x per step.
    private static double MeanShare(double exponent) =>
        exponent < 1e-5 ? 1 - (0.5 * exponent) : (1 - Math.Exp(-exponent)) / exponent;

    private static HouseParameters Checked(HouseParameters house)
    {
        ArgumentNullException.ThrowIfNull(house);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(house.FloorSquareMetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(house.CoverSquareMetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(house.VolumeCubicMetres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(house.Air.FloorFilmWattsPerSquareMetreKelvin);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(house.Air.FloorCapacityKilojoulesPerSquareMetreKelvin);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(house.CoverWattsPerKelvin);
        ArgumentOutOfRangeException.ThrowIfNegative(house.InfiltrationPerHour);
        if (house.HeaterSetPointCelsius >= house.VentSetPointCelsius)
        {
            throw new ArgumentException(
                $"The heater's set-point {house.HeaterSetPointCelsius} °C must lie below the vents' {house.VentSetPointCelsius} °C.",
                nameof(house));
        }

        return house;
    }

    private readonly record struct Pad(double Share, double CoolingKelvin, double KilogramsPerSecond);

    private readonly record struct Vapour(
        double PressureKilopascal, double CondensedKilogramsPerHour, double CarriedOutKilogramsPerHour);
}
