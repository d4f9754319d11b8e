using FarmTwin.Farm;
using UnitsNet.Units;
using U = UnitsNet;

namespace FarmTwin.Scenarios.Units;

/// <summary>The table of spellings: what users write, and which unit of UnitsNet it means.</summary>
/// <remarks>
/// UnitsNet gives the sizes; the spellings are ours, because it refuses the everyday ones (gal, m3, kg/day, C). A gallon is the US
/// liquid gallon. Left out on purpose: month (no fixed length) and ton (two masses); a spelling that is not here is refused.
/// </remarks>
internal static class UnitTable
{
    private static readonly Dimension LengthDimension = new(Length: 1);
    private static readonly Dimension AreaDimension = new(Length: 2);
    private static readonly Dimension VolumeDimension = new(Length: 3);
    private static readonly Dimension MassDimension = new(Mass: 1);
    private static readonly Dimension TimeDimension = new(Time: 1);
    private static readonly Dimension TemperatureDimension = new(Temperature: 1);
    private static readonly Dimension AmountDimension = new(Amount: 1);
    private static readonly Dimension FlowDimension = new(Length: 3, Time: -1);
    private static readonly Dimension EnergyDimension = new(Length: 2, Mass: 1, Time: -2);
    private static readonly Dimension PowerDimension = new(Length: 2, Mass: 1, Time: -3);
    private static readonly Dimension PressureDimension = new(Length: -1, Mass: 1, Time: -2);

    /// <summary>Every word.</summary>
    public static readonly IReadOnlyList<UnitWord> Words =
    [
        Length(LengthUnit.Meter, "m", "metre", "metres", "meter", "meters"),
        Length(LengthUnit.Centimeter, "cm"),
        Length(LengthUnit.Millimeter, "mm"),
        Length(LengthUnit.Micrometer, "µm", "um"),
        Length(LengthUnit.Kilometer, "km"),
        Length(LengthUnit.Inch, "in", "inch", "inches"),
        Length(LengthUnit.Foot, "ft", "foot", "feet"),
        Length(LengthUnit.Yard, "yd", "yard", "yards"),
        Length(LengthUnit.Mile, "mi", "mile", "miles"),

        Area(AreaUnit.SquareMeter, "m2", "sq m"),
        Area(AreaUnit.SquareCentimeter, "cm2"),
        Area(AreaUnit.SquareMillimeter, "mm2"),
        Area(AreaUnit.Hectare, "ha"),
        Area(AreaUnit.SquareInch, "in2", "sq in"),
        Area(AreaUnit.SquareFoot, "ft2", "sq ft", "sqft"),
        Area(AreaUnit.SquareYard, "yd2"),
        Area(AreaUnit.Acre, "acre", "acres"),

        Volume(VolumeUnit.Liter, "L", "l", "litre", "litres", "liter", "liters"),
        Volume(VolumeUnit.Milliliter, "mL", "ml", "cm3"),
        Volume(VolumeUnit.Microliter, "µL", "uL"),
        Volume(VolumeUnit.CubicMeter, "m3", "cu m"),
        Volume(VolumeUnit.UsGallon, "gal", "US gal", "gallon", "gallons"),
        Volume(VolumeUnit.UsQuart, "qt"),
        Volume(VolumeUnit.UsPint, "pt"),
        Volume(VolumeUnit.UsOunce, "fl oz"),
        Volume(VolumeUnit.CubicInch, "in3", "cu in"),
        Volume(VolumeUnit.CubicFoot, "ft3", "cu ft", "cuft"),
        Volume(VolumeUnit.CubicYard, "yd3", "cu yd"),

        Mass(MassUnit.Kilogram, "kg"),
        Mass(MassUnit.Gram, "g"),
        Mass(MassUnit.Milligram, "mg"),
        Mass(MassUnit.Microgram, "µg", "ug"),
        Mass(MassUnit.Tonne, "t", "tonne", "tonnes"),
        Mass(MassUnit.Pound, "lb", "lbs", "pound", "pounds"),
        Mass(MassUnit.Ounce, "oz"),
        Mass(MassUnit.ShortTon, "short ton", "short tons"),

        Time(DurationUnit.Second, "s", "sec", "second", "seconds"),
        Time(DurationUnit.Minute, "min", "minute", "minutes"),
        Time(DurationUnit.Hour, "h", "hr", "hrs", "hour", "hours"),
        Time(DurationUnit.Day, "d", "day", "days"),
        Time(DurationUnit.Week, "wk", "week", "weeks"),
        Time(DurationUnit.Year365, "yr", "year", "years"),
        new(["Hz"], new(Time: -1), 1),
        new(["ACH"], new(Time: -1), 1 / U.Duration.FromHours(1).Seconds),

        new(["K"], TemperatureDimension, 1),
        Temperature(TemperatureUnit.DegreeCelsius, TemperatureDeltaUnit.DegreeCelsius, "°C", "C", "degC", "deg C"),
        Temperature(TemperatureUnit.DegreeFahrenheit, TemperatureDeltaUnit.DegreeFahrenheit, "°F", "F", "degF", "deg F"),

        Amount(AmountOfSubstanceUnit.Mole, "mol"),
        Amount(AmountOfSubstanceUnit.Millimole, "mmol"),
        Amount(AmountOfSubstanceUnit.Micromole, "µmol", "umol"),
        Amount(AmountOfSubstanceUnit.Kilomole, "kmol"),

        Flow(VolumeFlowUnit.UsGallonPerMinute, "gpm", "GPM"),
        Flow(VolumeFlowUnit.UsGallonPerHour, "gph", "GPH"),
        Flow(VolumeFlowUnit.UsGallonPerDay, "gpd", "GPD"),
        Flow(VolumeFlowUnit.CubicFootPerMinute, "cfm", "CFM"),
        new(["mph"], new(Length: 1, Time: -1), new U.Speed(1, SpeedUnit.MilePerHour).MetersPerSecond),

        Energy(EnergyUnit.Joule, "J"),
        Energy(EnergyUnit.Kilojoule, "kJ"),
        Energy(EnergyUnit.Megajoule, "MJ"),
        Energy(EnergyUnit.Gigajoule, "GJ"),
        Energy(EnergyUnit.WattHour, "Wh"),
        Energy(EnergyUnit.KilowattHour, "kWh"),
        Energy(EnergyUnit.MegawattHour, "MWh"),
        Energy(EnergyUnit.Kilocalorie, "kcal"),
        Energy(EnergyUnit.BritishThermalUnit, "Btu", "BTU"),
        Energy(EnergyUnit.MegabritishThermalUnit, "MMBtu"),
        Energy(EnergyUnit.ThermUs, "therm", "therms"),

        Power(PowerUnit.Watt, "W"),
        Power(PowerUnit.Kilowatt, "kW"),
        Power(PowerUnit.Megawatt, "MW"),

        // 550 foot-pounds of force a second; the constant of UnitsNet is rounded to 745.69 W.
        new(["hp", "HP"], PowerDimension, 550 * 0.3048 * 0.45359237 * 9.80665),

        Pressure(PressureUnit.Pascal, "Pa"),
        Pressure(PressureUnit.Hectopascal, "hPa"),
        Pressure(PressureUnit.Kilopascal, "kPa"),
        Pressure(PressureUnit.Millibar, "mbar"),
        Pressure(PressureUnit.Bar, "bar"),
        Pressure(PressureUnit.Atmosphere, "atm"),
        Pressure(PressureUnit.MillimeterOfMercury, "mmHg"),
        Pressure(PressureUnit.InchOfMercury, "inHg"),
        Pressure(PressureUnit.InchOfWaterColumn, "inH2O", "inwc"),
        Pressure(PressureUnit.PoundForcePerSquareInch, "psi"),

        new(["%", "percent"], Dimension.None, new U.Ratio(1, RatioUnit.Percent).DecimalFractions),
        new(["ppm"], Dimension.None, new U.Ratio(1, RatioUnit.PartPerMillion).DecimalFractions),
        new(["1"], Dimension.None, 1),
        new(["°", "deg", "degree", "degrees"], new(Angle: 1), 1),
        new(["rad"], new(Angle: 1), new U.Angle(1, AngleUnit.Radian).Degrees),

        Conductance(ElectricConductanceUnit.Siemens, 1, "S"),
        Conductance(ElectricConductanceUnit.Millisiemens, 1, "mS"),
        Conductance(ElectricConductanceUnit.Microsiemens, 1, "µS", "uS"),
        Conductance(ElectricConductanceUnit.Siemens, 0.1, "dS"),
        new(["A"], new(Current: 1), 1),
        new(["mA"], new(Current: 1), new U.ElectricCurrent(1, ElectricCurrentUnit.Milliampere).Amperes),
        new(["Ah"], new(Current: 1, Time: 1), new U.ElectricCharge(1, ElectricChargeUnit.AmpereHour).Coulombs),
        new(["V"], new(Length: 2, Mass: 1, Time: -3, Current: -1), 1),
        new(["lm"], new(Light: 1), 1),
        new(["lx", "lux"], new(Light: 1, Length: -2), 1),
        new(["klx"], new(Light: 1, Length: -2), new U.Illuminance(1, IlluminanceUnit.Kilolux).Lux),

        // An equivalent of alkalinity is stated as the CaCO3 that it neutralizes; a German degree is 10 mg CaO/L (molar masses
        // 100.0869 and 56.0774 g/mol).
        new(["meq"], MassDimension, UnitConstants.GramsCalciumCarbonatePerEquivalent * 1e-6, 0, "CaCO3"),
        new(["dKH"], new(Mass: 1, Length: -3), 10e-3 * 100.0869 / 56.0774, 0, "CaCO3"),
    ];

    private static readonly Dictionary<string, UnitWord> BySpelling =
        Words.SelectMany(w => w.Spellings.Select(s => (s, w))).ToDictionary(p => p.s, p => p.w, StringComparer.Ordinal);

    /// <summary>Every spelling.</summary>
    public static IEnumerable<string> Spellings => BySpelling.Keys;

    /// <summary>The word of a spelling, or null.</summary>
    public static UnitWord? Find(string spelling) => BySpelling.GetValueOrDefault(spelling);

    private static UnitWord Length(LengthUnit unit, params string[] spellings) =>
        new(spellings, LengthDimension, new U.Length(1, unit).Meters);

    private static UnitWord Area(AreaUnit unit, params string[] spellings) =>
        new(spellings, AreaDimension, new U.Area(1, unit).SquareMeters);

    private static UnitWord Volume(VolumeUnit unit, params string[] spellings) =>
        new(spellings, VolumeDimension, new U.Volume(1, unit).CubicMeters);

    private static UnitWord Mass(MassUnit unit, params string[] spellings) =>
        new(spellings, MassDimension, new U.Mass(1, unit).Kilograms);

    private static UnitWord Time(DurationUnit unit, params string[] spellings) =>
        new(spellings, TimeDimension, new U.Duration(1, unit).Seconds);

    private static UnitWord Temperature(TemperatureUnit scale, TemperatureDeltaUnit degree, params string[] spellings) =>
        new(spellings, TemperatureDimension, new U.TemperatureDelta(1, degree).Kelvins, new U.Temperature(0, scale).Kelvins);

    private static UnitWord Amount(AmountOfSubstanceUnit unit, params string[] spellings) =>
        new(spellings, AmountDimension, new U.AmountOfSubstance(1, unit).Moles);

    private static UnitWord Flow(VolumeFlowUnit unit, params string[] spellings) =>
        new(spellings, FlowDimension, new U.VolumeFlow(1, unit).CubicMetersPerSecond);

    private static UnitWord Energy(EnergyUnit unit, params string[] spellings) =>
        new(spellings, EnergyDimension, new U.Energy(1, unit).Joules);

    private static UnitWord Power(PowerUnit unit, params string[] spellings) =>
        new(spellings, PowerDimension, (double)new U.Power(1, unit).Watts);

    private static UnitWord Pressure(PressureUnit unit, params string[] spellings) =>
        new(spellings, PressureDimension, new U.Pressure(1, unit).Pascals);

    private static UnitWord Conductance(ElectricConductanceUnit unit, double size, params string[] spellings) =>
        new(spellings, new(Mass: -1, Length: -2, Time: 3, Current: 2), new U.ElectricConductance(size, unit).Siemens);
}
