using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Plants;

/// <summary>What a fruiting crop has beyond a leafy one: when it bears, how much of its growth goes to fruit, when that is picked.</summary>
/// <remarks>Immutable. All its parameters begin with "fruit"; a crop's file has all of them or none.</remarks>
public sealed record FruitParameters
{
    private const double MilligramsPerKilogramPerUnit = 1e6;

    /// <summary>Tb, mean air temperature above which development counts, °C.</summary>
    public required double BaseCelsius { get; init; }

    /// <summary>TTf, sum from sowing to the first fruit, °C d.</summary>
    public required double OnsetSum { get; init; }

    /// <summary>Sum over which fruit takes its full share, °C d.</summary>
    public required double OnsetRamp { get; init; }

    /// <summary>TTm, sum from setting a fruit to picking it, °C d.</summary>
    public required double GrowthSum { get; init; }

    /// <summary>Sum beyond ripeness for which a fruit keeps its grade on the plant, °C d.</summary>
    public required double HoldSum { get; init; }

    /// <summary>aF, share of above-ground growth that fruit takes on a bearing plant, 0–1.</summary>
    public required double Share { get; init; }

    /// <summary>Wv,max, dry mass without fruit to which the stand is pruned, g/m².</summary>
    public required double CanopyMaximumGramsPerSquareMetre { get; init; }

    /// <summary>Share of the full canopy at which fruit gets its full share; before, young fruit drops or is pinched out.</summary>
    public required double CanopyFirst { get; init; }

    /// <summary>Daytime air temperature above which fewer flowers set, °C.</summary>
    public required double HeatFromCelsius { get; init; }

    /// <summary>Fruit set lost per kelvin above it, 1/K.</summary>
    public required double HeatSlopePerKelvin { get; init; }

    /// <summary>Fruit set that remains in any heat, 0–1.</summary>
    public required double HeatFloor { get; init; }

    /// <summary>Dry over fresh mass of the fruit.</summary>
    public required double DryMatterContent { get; init; }

    /// <summary>What a well-fed fruit holds, g per g dry mass; sodium and chloride have no target.</summary>
    public required ElementGrams TissueGramsPerGramDry { get; init; }

    /// <summary>Fresh mass of fruit, g.</summary>
    public double FreshGrams(double dryGrams) => dryGrams / DryMatterContent;

    /// <summary>Water in fruit, L: fresh mass less dry mass at 1 kg/L.</summary>
    public double WaterLitres(double dryGrams) => (FreshGrams(dryGrams) - dryGrams) / UnitConstants.GramsPerKilogram;

    /// <summary>Reads them from a crop's data; null for a crop that bears no fruit for sale.</summary>
    /// <exception cref="KeyNotFoundException">The crop has some of them but not all.</exception>
    /// <exception cref="ArgumentException">A unit is not the expected one.</exception>
    public static FruitParameters? From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return !set.Has("fruitShare")
            ? null
            : new FruitParameters
            {
                BaseCelsius = set.Get("fruitBaseTemperature", "°C"),
                OnsetSum = set.Get("fruitOnsetSum", "°C d"),
                OnsetRamp = set.Get("fruitOnsetRamp", "°C d"),
                GrowthSum = set.Get("fruitGrowthSum", "°C d"),
                HoldSum = set.Get("fruitHoldSum", "°C d"),
                Share = set.Get("fruitShare", "1"),
                CanopyMaximumGramsPerSquareMetre = set.Get("fruitingCanopyMaximum", "g/m2"),
                CanopyFirst = set.Get("fruitCanopyFirst", "1"),
                HeatFromCelsius = set.Get("fruitHeatFrom", "°C"),
                HeatSlopePerKelvin = set.Get("fruitHeatSlope", "1/K"),
                HeatFloor = set.Get("fruitHeatFloor", "1"),
                DryMatterContent = set.Get("fruitDryMatterContent", "1"),
                TissueGramsPerGramDry = new ElementGrams(
                    set.Get("fruitNitrogen", "% DM") / CropParameters.PercentPerUnit,
                    set.Get("fruitPhosphorus", "% DM") / CropParameters.PercentPerUnit,
                    set.Get("fruitPotassium", "% DM") / CropParameters.PercentPerUnit,
                    set.Get("fruitCalcium", "% DM") / CropParameters.PercentPerUnit,
                    set.Get("fruitMagnesium", "% DM") / CropParameters.PercentPerUnit,
                    Sodium: 0,
                    Chloride: 0,
                    set.Get("fruitSulfur", "% DM") / CropParameters.PercentPerUnit,
                    set.Get("fruitIron", "mg/kg DM") / MilligramsPerKilogramPerUnit),
            };
    }
}
