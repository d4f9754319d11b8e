namespace FarmTwin.Farm.Description;

/// <summary>Where a farm stands.</summary>
public sealed record SiteDescription
{
    /// <summary>Latitude, degrees north positive.</summary>
    [Input("latitude", "Latitude, north positive", Unit = "°", Low = -66, High = 66)]
    public required double LatitudeDegrees { get; init; }

    /// <summary>Longitude, degrees east positive.</summary>
    [Input("longitude", "Longitude, east positive", Unit = "°", Low = -180, High = 180)]
    public required double LongitudeDegrees { get; init; }

    /// <summary>Elevation, m.</summary>
    [Input("elevation", "Height above the sea", Unit = "m", Low = -400, High = 4000)]
    public required double ElevationMetres { get; init; }

    /// <summary>Hours from Greenwich of local standard time.</summary>
    [Input("timeZone", "Local standard time from Greenwich; no daylight saving", Unit = "h", Low = -12, High = 14)]
    public required double TimeZoneHours { get; init; }

    /// <summary>Monthly normals, January to December.</summary>
    [Input("normals", "Monthly normals from which the weather is generated, January to December; may be left out beside a weatherFile")]
    public WeatherNormalsDescription? Normals { get; init; }

    /// <summary>A year of hourly weather that is used instead of generated weather.</summary>
    [Input("weatherFile", "A file with a year of hourly weather, used instead of weather generated from the normals")]
    public WeatherFileDescription? WeatherFile { get; init; }

    /// <summary>Added to all outside temperatures, K.</summary>
    [Input("warmer", "Added to every outside temperature, for a warm or a cold year", Unit = "K", Low = -15, High = 15)]
    public double WarmerKelvin { get; init; }
}

/// <summary>What becomes of hours that a weather file leaves out.</summary>
public enum WeatherFill
{
    /// <summary>The file is refused.</summary>
    Refuse,

    /// <summary>Short gaps are bridged between their neighbours.</summary>
    Interpolate,

    /// <summary>They are taken from the monthly normals.</summary>
    FromNormals,
}

/// <summary>A file with a year of hourly weather.</summary>
public sealed record WeatherFileDescription
{
    /// <summary>The file.</summary>
    [Input("file", "The file, relative to the scenario that names it: EPW, TMY3 or plain CSV, told apart by what stands in it")]
    public required string File { get; init; }

    /// <summary>What becomes of missing values.</summary>
    [Input("fill", "What becomes of missing values: refuse, interpolate (gaps up to longestGap), from-normals")]
    public WeatherFill Fill { get; init; } = WeatherFill.Refuse;

    /// <summary>Longest gap that is interpolated, h.</summary>
    [Input("longestGap", "Longest gap that is interpolated", Unit = "h", Low = 1, High = 72)]
    public double LongestGapHours { get; init; } = 6;

    /// <summary>What stands in the file; set by whoever read it, since a season reads no files.</summary>
    public Climate.WeatherYear? Year { get; init; }
}

/// <summary>Monthly normals, twelve values each, January to December.</summary>
public sealed record WeatherNormalsDescription
{
    /// <summary>Mean daily maximum, °C.</summary>
    [Input("dailyMaximum", "Mean daily maximum of air temperature", Unit = "°C", Low = -50, High = 55, Length = 12)]
    public required IReadOnlyList<double> DailyMaximumCelsius { get; init; }

    /// <summary>Mean daily minimum, °C.</summary>
    [Input("dailyMinimum", "Mean daily minimum of air temperature", Unit = "°C", Low = -60, High = 45, Length = 12)]
    public required IReadOnlyList<double> DailyMinimumCelsius { get; init; }

    /// <summary>Spread of the daily maximum, K.</summary>
    [Input("maximumSpread", "Standard deviation of the daily maximum", Unit = "K", Low = 0.1, High = 15, Length = 12)]
    public required IReadOnlyList<double> MaximumSpreadKelvin { get; init; }

    /// <summary>Spread of the daily minimum, K.</summary>
    [Input("minimumSpread", "Standard deviation of the daily minimum", Unit = "K", Low = 0.1, High = 15, Length = 12)]
    public required IReadOnlyList<double> MinimumSpreadKelvin { get; init; }

    /// <summary>Mean global radiation, MJ/m² a day.</summary>
    [Input("radiation", "Mean global radiation on the level", Unit = "MJ/m2/d", Low = 0.1, High = 45, Length = 12)]
    public required IReadOnlyList<double> RadiationMegajoules { get; init; }

    /// <summary>Share of wet days.</summary>
    [Input("wetDays", "Share of days with rain or snow", Unit = "1", Low = 0, High = 1, Length = 12)]
    public required IReadOnlyList<double> WetDayShare { get; init; }

    /// <summary>Mean wind speed, m/s.</summary>
    [Input("wind", "Mean wind speed", Unit = "m/s", Low = 0, High = 20, Length = 12)]
    public required IReadOnlyList<double> WindMetresPerSecond { get; init; }
}

/// <summary>The house over a farm.</summary>
public sealed record HouseDescription
{
    /// <summary>Floor area, m².</summary>
    [Input("floor", "Floor area", Unit = "m2", Low = 1, High = 20000)]
    public required double FloorSquareMetres { get; init; }

    /// <summary>Area of the transparent cover, m².</summary>
    [Input("coverArea", "Area of roof and walls that are covered by the cover material", Unit = "m2", Low = 1, High = 60000)]
    public required double CoverSquareMetres { get; init; }

    /// <summary>Air volume, m³.</summary>
    [Input("air", "Air volume", Unit = "m3", Low = 1, High = 100000)]
    public required double AirCubicMetres { get; init; }

    /// <summary>Perimeter, m.</summary>
    [Input("perimeter", "Perimeter of the floor", Unit = "m", Low = 1, High = 2000)]
    public required double PerimeterMetres { get; init; }

    /// <summary>Cover material.</summary>
    [Input("cover", "Cover material", LibraryFolder = "covers")]
    public required string Cover { get; init; }

    /// <summary>Air changes an hour with everything closed.</summary>
    [Input("infiltration", "Air changes an hour with vents closed", Unit = "1/h", Low = 0, High = 10)]
    public double InfiltrationPerHour { get; init; } = 0.75;

    /// <summary>Whether a thermal screen is drawn at night.</summary>
    [Input("screen", "Whether a thermal screen is drawn at night")]
    public bool Screen { get; init; }

    /// <summary>Shade, share of light kept out.</summary>
    [Input("shade", "Share of the light kept out by shade cloth or whitening", Unit = "1", Low = 0, High = 0.9)]
    public double ShadeShare { get; init; }

    /// <summary>Whether fans move the air over the crop.</summary>
    [Input("airMovement", "Whether fans move the air over the crop, as usual; say false where none do: in still air bright days bring tip burn")]
    public bool AirMovement { get; init; } = true;

    /// <summary>Air temperature at which vents open, °C.</summary>
    [Input("ventAt", "Air temperature at which the vents open", Unit = "°C", Low = 5, High = 45)]
    public double VentCelsius { get; init; } = 26;

    /// <summary>Largest ventilation, air changes an hour.</summary>
    [Input("largestVentilation", "Air changes an hour with vents fully open", Unit = "1/h", Low = 0, High = 120)]
    public double LargestVentilationPerHour { get; init; } = 45;

    /// <summary>Share of the ventilation that works without power.</summary>
    [Input("ventilationWithoutPower", "Share of the ventilation that works without power: roof vents cranked by hand or driven by wax", Unit = "1", Low = 0, High = 1)]
    public double VentilationWithoutPower { get; init; }

    /// <summary>Outside temperature below which the screen is drawn at night, °C; null: every night.</summary>
    [Input("screenBelow", "The screen is drawn on nights colder than this outside; every night when left out", Unit = "°C", Low = -40, High = 40)]
    public double? ScreenBelowCelsius { get; init; }

    /// <summary>Exhaust fans, if any.</summary>
    [Input("fans", "Exhaust fans; left out, the house is ventilated by openings")]
    public FansDescription? Fans { get; init; }

    /// <summary>A wet pad, if any.</summary>
    [Input("evaporativePad", "A wet pad through which the fans draw the air")]
    public EvaporativePadDescription? EvaporativePad { get; init; }

    /// <summary>Airing against humidity, if any.</summary>
    [Input("humidityPurge", "Airing against humidity while the vents are shut, with the heater making up for it")]
    public HumidityPurgeDescription? HumidityPurge { get; init; }

    /// <summary>Carbon dioxide of the air, ppm.</summary>
    [Input("carbonDioxide", "Carbon dioxide of the house air; of the outside air where the house's is computed", Unit = "ppm", Low = 200, High = 3000)]
    public double CarbonDioxidePpm { get; init; } = 420;

    /// <summary>Whether the carbon dioxide of the house is computed.</summary>
    [Input("carbonDioxideBalance", "Whether the carbon dioxide of the house air is computed from water, plants, enrichment and air exchange")]
    public bool CarbonDioxideBalance { get; init; }

    /// <summary>Enrichment, if any.</summary>
    [Input("enrichment", "Carbon dioxide let into the house air; needs carbonDioxideBalance. Never from an unvented burner")]
    public EnrichmentDescription? Enrichment { get; init; }

    /// <summary>The air heater, if any.</summary>
    [Input("airHeater", "Heater of the air")]
    public AirHeaterDescription? AirHeater { get; init; }
}

/// <summary>A heater of the house air.</summary>
public sealed record AirHeaterDescription
{
    /// <summary>Output, kW.</summary>
    [Input("output", "Heat output", Unit = "kW", Low = 0.1, High = 2000)]
    public required double OutputKilowatts { get; init; }

    /// <summary>Air temperature held, °C.</summary>
    [Input("hold", "Air temperature that it holds", Unit = "°C", Low = -10, High = 30)]
    public required double HoldCelsius { get; init; }

    /// <summary>Fuel.</summary>
    [Input("fuel", "The fuel it burns", LibraryFolder = "fuels")]
    public string Fuel { get; init; } = "propane";

    /// <summary>Heat out per heat in (higher heating value).</summary>
    [Input("efficiency", "Heat out per heat of the fuel, on the higher heating value; of a heat pump at 7 °C outside; the fuel's usual one when left out", Unit = "1", Low = 0.3, High = 6)]
    public double? Efficiency { get; init; }
}

/// <summary>The water that fills and tops up.</summary>
public sealed record SourceWaterDescription
{
    /// <summary>Temperature, °C.</summary>
    [Input("temperature", "Temperature", Unit = "°C", Low = 0, High = 40)]
    public double TemperatureCelsius { get; init; } = 12;

    /// <summary>Alkalinity, mg/L as CaCO3.</summary>
    [Input("alkalinity", "Alkalinity", Unit = "mg/L as CaCO3", Low = 0, High = 600)]
    public required double AlkalinityMilligramsPerLitre { get; init; }

    /// <summary>pH.</summary>
    [Input("pH", "pH", Unit = "1", Low = 4, High = 10)]
    public required double PH { get; init; }

    /// <summary>Total residual chlorine, mg/L.</summary>
    [Input("chlorine", "Chlorine or chloramine, as total residual chlorine", Unit = "mg/L", Low = 0, High = 10)]
    public double ChlorineMilligramsPerLitre { get; init; }

    /// <summary>Whether it is taken out.</summary>
    [Input("dechlorinated", "Whether carbon, thiosulfate or standing takes the chlorine out before it reaches the farm")]
    public bool Dechlorinated { get; init; } = true;

    /// <summary>Calcium, mg/L.</summary>
    [Input("calcium", "Calcium", Unit = "mg/L", Low = 0, High = 500)]
    public required double CalciumMilligramsPerLitre { get; init; }

    /// <summary>Magnesium, mg/L.</summary>
    [Input("magnesium", "Magnesium", Unit = "mg/L", Low = 0, High = 300)]
    public required double MagnesiumMilligramsPerLitre { get; init; }

    /// <summary>Potassium, mg/L.</summary>
    [Input("potassium", "Potassium", Unit = "mg/L", Low = 0, High = 100)]
    public double PotassiumMilligramsPerLitre { get; init; }

    /// <summary>Sodium, mg/L.</summary>
    [Input("sodium", "Sodium", Unit = "mg/L", Low = 0, High = 1000)]
    public double SodiumMilligramsPerLitre { get; init; }

    /// <summary>Sulfate as S, mg/L.</summary>
    [Input("sulfate", "Sulfate as sulfur", Unit = "mg/L", Low = 0, High = 300)]
    public double SulfateMilligramsSulfurPerLitre { get; init; }

    /// <summary>Nitrate, mg N/L.</summary>
    [Input("nitrate", "Nitrate", Unit = "mg N/L", Low = 0, High = 50)]
    public double NitrateMilligramsNPerLitre { get; init; }

    /// <summary>Whether chloride is set so that the charges balance to the alkalinity (else sodium is raised where it must be).</summary>
    [Input("chloride", "Chloride; left out, it is set so that the charges balance to the alkalinity", Unit = "mg/L", Low = 0, High = 2000)]
    public double? ChlorideMilligramsPerLitre { get; init; }
}
