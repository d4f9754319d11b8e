namespace FarmTwin.Farm.Climate;

/// <summary>Air and floor of the house.</summary>
public sealed class HouseState
{
    /// <summary>Air, mean of the last step, °C.</summary>
    public double AirCelsius { get; set; } = 12;

    /// <summary>Vapour pressure of the air, kPa.</summary>
    public double VapourPressureKilopascal { get; set; } = 1;

    /// <summary>Floor, °C.</summary>
    public double FloorCelsius { get; set; } = 12;

    /// <summary>Relative humidity, %.</summary>
    public double RelativeHumidityPercent { get; set; } = 75;

    /// <summary>Outside air, °C.</summary>
    public double OutsideCelsius { get; set; }

    /// <summary>Air heater in the last step, W.</summary>
    public double AirHeaterWatts { get; set; }

    /// <summary>Electric power of everything in the last step, W.</summary>
    public double ElectricWatts { get; set; }

    /// <summary>Daylight at the crop in the last step, µmol/(m² s).</summary>
    public double NaturalPhotons { get; set; }

    /// <summary>Daylight at the crop so far today, mol/m².</summary>
    public double NaturalMolesToday { get; set; }

    /// <summary>Mean lamp light over the rafts so far today, mol/m².</summary>
    public double LampMolesToday { get; set; }

    /// <summary>Nursery degree hours of today, °C h.</summary>
    public double NurseryCelsiusHours { get; set; }

    /// <summary>Hours of today.</summary>
    public double HoursToday { get; set; }

    /// <summary>Share of the light that shade keeps out.</summary>
    public double ShadeShare { get; set; }

    /// <summary>Carbon dioxide of the air, ppm.</summary>
    public double CarbonDioxidePpm { get; set; } = 420;

    /// <summary>Carbon that the water gave to the air in the last step, g C/h; negative where it took some up.</summary>
    public double WaterCarbonGramsPerHour { get; set; }

    /// <summary>Dry matter that all plants gained at the last midnight, g.</summary>
    public double CropGainGrams { get; set; }

    /// <summary>Carbon dioxide fixed for a mole of light on a square metre, g, by yesterday.</summary>
    public double FixedGramsPerMole { get; set; }

    /// <summary>Carbon dioxide that the plants respire, g/h, by yesterday.</summary>
    public double RespiredGramsPerHour { get; set; }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(HouseState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        ShadeShare = other.ShadeShare;
        CarbonDioxidePpm = other.CarbonDioxidePpm;
        WaterCarbonGramsPerHour = other.WaterCarbonGramsPerHour;
        CropGainGrams = other.CropGainGrams;
        FixedGramsPerMole = other.FixedGramsPerMole;
        RespiredGramsPerHour = other.RespiredGramsPerHour;
        AirCelsius = other.AirCelsius;
        VapourPressureKilopascal = other.VapourPressureKilopascal;
        FloorCelsius = other.FloorCelsius;
        RelativeHumidityPercent = other.RelativeHumidityPercent;
        OutsideCelsius = other.OutsideCelsius;
        AirHeaterWatts = other.AirHeaterWatts;
        ElectricWatts = other.ElectricWatts;
        NaturalPhotons = other.NaturalPhotons;
        NaturalMolesToday = other.NaturalMolesToday;
        LampMolesToday = other.LampMolesToday;
        NurseryCelsiusHours = other.NurseryCelsiusHours;
        HoursToday = other.HoursToday;
    }
}
