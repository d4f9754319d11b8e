using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Summaries;

/// <summary>Bands against which a season is read: what counts as outside, what is worth a finding. They change no result.</summary>
public sealed record SummaryBands
{
    /// <summary>Highest TAN with fish, mg N/L.</summary>
    public required double TanHigh { get; init; }

    /// <summary>Highest nitrite with fish, mg N/L.</summary>
    public required double NitriteHigh { get; init; }

    /// <summary>Highest unionized ammonia with fish, mg N/L.</summary>
    public required double UnionizedAmmoniaHigh { get; init; }

    /// <summary>Lowest oxygen with fish, mg/L.</summary>
    public required double OxygenLow { get; init; }

    /// <summary>Highest carbon dioxide with fish, mg/L.</summary>
    public required double CarbonDioxideHigh { get; init; }

    /// <summary>Lowest pH of the fish loop.</summary>
    public required double FishPHLow { get; init; }

    /// <summary>Highest pH of the fish loop.</summary>
    public required double FishPHHigh { get; init; }

    /// <summary>Lowest pH of the plant loop.</summary>
    public required double PlantPHLow { get; init; }

    /// <summary>Highest pH of the plant loop.</summary>
    public required double PlantPHHigh { get; init; }

    /// <summary>Coldest fish water, °C.</summary>
    public required double FishWaterLow { get; init; }

    /// <summary>Warmest fish water, °C.</summary>
    public required double FishWaterHigh { get; init; }

    /// <summary>Coldest plant water, °C.</summary>
    public required double PlantWaterLow { get; init; }

    /// <summary>Warmest plant water, °C.</summary>
    public required double PlantWaterHigh { get; init; }

    /// <summary>Lowest useful nitrate of the plant loop, mg N/L.</summary>
    public required double NitrateLow { get; init; }

    /// <summary>Highest useful nitrate of the plant loop, mg N/L.</summary>
    public required double NitrateHigh { get; init; }

    /// <summary>Sodium of the plant loop from which on it is worth a word, at which sensitive crops suffer, and the limit, mg/L.</summary>
    public required (double Watch, double Caution, double Limit) Sodium { get; init; }

    /// <summary>The same for chloride, mg/L.</summary>
    public required (double Watch, double Caution, double Limit) Chloride { get; init; }

    /// <summary>The usual band of a nutrient in the plants' water, mg/L; open where practice names none.</summary>
    public (double? Low, double? High) Nutrient(int element) => element switch
    {
        Element.Nitrogen => (NitrateLow, NitrateHigh),
        Element.Phosphorus => Phosphorus,
        Element.Potassium => Potassium,
        Element.Calcium => Calcium,
        Element.Magnesium => Magnesium,
        Element.Iron => Iron,
        _ => (null, null),
    };

    /// <summary>Usual phosphorus, mg/L.</summary>
    public required (double? Low, double? High) Phosphorus { get; init; }

    /// <summary>Usual potassium, mg/L.</summary>
    public required (double? Low, double? High) Potassium { get; init; }

    /// <summary>Usual calcium, mg/L.</summary>
    public required (double? Low, double? High) Calcium { get; init; }

    /// <summary>Usual magnesium, mg/L.</summary>
    public required (double? Low, double? High) Magnesium { get; init; }

    /// <summary>Usual iron by a test, mg/L.</summary>
    public required (double? Low, double? High) Iron { get; init; }

    /// <summary>Share of a heater's output from which on it is near its limit.</summary>
    public required double HeaterNearLimit { get; init; }

    /// <summary>Light at the crop below which leafy crops stall, mol/m²/d.</summary>
    public required double LightLow { get; init; }

    /// <summary>Highest air of the house before leafy crops suffer, °C.</summary>
    public required double HouseAirHigh { get; init; }

    /// <summary>Relative humidity above which grey mould and mildew spread, %.</summary>
    public required double HouseHumidityHigh { get; init; }

    /// <summary>Density that a small farm stays below, kg/m³.</summary>
    public required double DensitySmall { get; init; }

    /// <summary>Limit of a first year, kg/m³.</summary>
    public required double DensityFirstYear { get; init; }

    /// <summary>Limit of experts with backup, kg/m³.</summary>
    public required double DensityExpert { get; init; }

    /// <summary>Reads them.</summary>
    /// <param name="library">The library; its set is processes/bands.</param>
    public static SummaryBands From(FarmLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        ParameterSet set = library.Set("processes", "bands");
        return new SummaryBands
        {
            TanHigh = set.Get("tanHigh", "mg N/L"),
            NitriteHigh = set.Get("nitriteHigh", "mg N/L"),
            UnionizedAmmoniaHigh = set.Get("unionizedAmmoniaHigh", "mg N/L"),
            OxygenLow = set.Get("oxygenLow", "mg/L"),
            CarbonDioxideHigh = set.Get("carbonDioxideHigh", "mg/L"),
            FishPHLow = set.Get("fishPHLow", "1"),
            FishPHHigh = set.Get("fishPHHigh", "1"),
            PlantPHLow = set.Get("plantPHLow", "1"),
            PlantPHHigh = set.Get("plantPHHigh", "1"),
            FishWaterLow = set.Get("fishWaterLow", "°C"),
            FishWaterHigh = set.Get("fishWaterHigh", "°C"),
            PlantWaterLow = set.Get("plantWaterLow", "°C"),
            PlantWaterHigh = set.Get("plantWaterHigh", "°C"),
            NitrateLow = set.Get("nitrateLow", "mg N/L"),
            NitrateHigh = set.Get("nitrateHigh", "mg N/L"),
            Sodium = (set.Get("sodiumWatch", "mg/L"), set.Get("sodiumCaution", "mg/L"), set.Get("sodiumLimit", "mg/L")),
            Chloride = (set.Get("chlorideWatch", "mg/L"), set.Get("chlorideCaution", "mg/L"), set.Get("chlorideLimit", "mg/L")),
            Phosphorus = (set.Get("phosphorusLow", "mg/L"), set.Get("phosphorusHigh", "mg/L")),
            Potassium = (set.Get("potassiumLow", "mg/L"), set.Get("potassiumHigh", "mg/L")),
            Calcium = (set.Get("calciumLow", "mg/L"), set.Get("calciumHigh", "mg/L")),
            Magnesium = (set.Get("magnesiumLow", "mg/L"), set.Get("magnesiumHigh", "mg/L")),
            Iron = (set.Get("ironLow", "mg/L"), set.Get("ironHigh", "mg/L")),
            HeaterNearLimit = set.Get("heaterNearLimit", "1"),
            DensitySmall = set.Get("densitySmall", "kg/m3"),
            DensityFirstYear = set.Get("densityFirstYear", "kg/m3"),
            DensityExpert = set.Get("densityExpert", "kg/m3"),
            LightLow = set.Get("lightLow", "mol/m2/d"),
            HouseAirHigh = set.Get("houseAirHigh", "°C"),
            HouseHumidityHigh = set.Get("houseHumidityHigh", "%"),
        };
    }
}
