using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Solids;

/// <summary>Parameters of the mineralization tank and of denitrification, as <c>processes/mineralization.json</c> states them.</summary>
/// <remarks>Immutable. Suspended solids and blanket in g dry matter/L, nitrate and TAN in mg N/L.</remarks>
public sealed record MineralizationParameters
{
    /// <summary>Blanket concentration after the first, second and third settling times, g/L.</summary>
    public required double EarlyBlanketGramsPerLitre { get; init; }

    /// <inheritdoc cref="EarlyBlanketGramsPerLitre"/>
    public required double MiddleBlanketGramsPerLitre { get; init; }

    /// <inheritdoc cref="EarlyBlanketGramsPerLitre"/>
    public required double LateBlanketGramsPerLitre { get; init; }

    /// <summary>First settling time, h.</summary>
    public required double EarlyHours { get; init; }

    /// <summary>Second settling time, h.</summary>
    public required double MiddleHours { get; init; }

    /// <summary>Third settling time, h; the blanket thickens no more after it.</summary>
    public required double LateHours { get; init; }

    /// <summary>Time constant of clearing, h.</summary>
    public required double ClearingHours { get; init; }

    /// <summary>Share of the suspended solids that never settles.</summary>
    public required double NonSettlingShare { get; init; }

    /// <summary>Least suspended solids that settling leaves, g/L.</summary>
    public required double LowestResidualGramsPerLitre { get; init; }

    /// <summary>Water left standing above the blanket, m.</summary>
    public required double DecantClearanceMetres { get; init; }

    /// <summary>Denitrification at 20 °C, g N per g volatile solids and day.</summary>
    public required double DenitrificationGramsPerGramDay { get; init; }

    /// <summary>Growth of denitrification per °C (base of the power; reference 20 °C).</summary>
    public required double DenitrificationTemperatureBase { get; init; }

    /// <summary>Half-saturation of denitrification for nitrate, mg N/L.</summary>
    public required double NitrateHalfSaturationMilligramsNPerLitre { get; init; }

    /// <summary>Oxygen that halves denitrification, mg/L.</summary>
    public required double OxygenInhibitionMilligramsPerLitre { get; init; }

    /// <summary>Exchange of the clear water with the blanket, share of the clear water a day.</summary>
    public required double ExchangeSharePerDay { get; init; }

    /// <summary>Background denitrification of standing water in beds and pockets at 20 °C, 1/d.</summary>
    public required double BackgroundDenitrificationPerDay { get; init; }

    /// <summary>Nitrification of the developed tank, mg N/(L h).</summary>
    public required double NitrificationMilligramsPerLitreHour { get; init; }

    /// <summary>Days in which it develops.</summary>
    public required double NitrificationRampDays { get; init; }

    /// <summary>Below this the blanket counts as without nitrate, mg N/L.</summary>
    public required double NitrateGoneMilligramsNPerLitre { get; init; }

    /// <summary>Longest time with the air off, h.</summary>
    public required double AirOffAllowedHours { get; init; }

    /// <summary>Longest time of the blanket without nitrate at 20 °C, h.</summary>
    public required double NitrateGoneAllowedHours { get; init; }

    /// <summary>Shortest settling before a decant, h.</summary>
    public required double SettlingHours { get; init; }

    /// <summary>Most suspended solids in a decant, g/L.</summary>
    public required double DecantResidualGramsPerLitre { get; init; }

    /// <summary>Highest TAN that a decant may leave in the plant sump, mg N/L.</summary>
    public required double PlantSumpTanMilligramsNPerLitre { get; init; }

    /// <summary>Highest nitrite that a decant may leave in the plant sump, mg N/L.</summary>
    public required double PlantSumpNitriteMilligramsNPerLitre { get; init; }

    /// <summary>Hours of settling after which gas may lift the sludge at high nitrate.</summary>
    public required double RisingSludgeHours { get; init; }

    /// <summary>Temperature above which it may, °C.</summary>
    public required double RisingSludgeCelsius { get; init; }

    /// <summary>Nitrate above which it may, mg N/L.</summary>
    public required double RisingSludgeNitrateMilligramsNPerLitre { get; init; }

    /// <summary>Reads every value by name and unit.</summary>
    /// <param name="set">The set <c>processes/mineralization</c>.</param>
    /// <exception cref="KeyNotFoundException">A value is missing.</exception>
    /// <exception cref="ArgumentException">A value is stated in another unit.</exception>
    public static MineralizationParameters From(ParameterSet set) => new()
    {
        EarlyBlanketGramsPerLitre = set.Get("earlyBlanket", "g DM/L"),
        MiddleBlanketGramsPerLitre = set.Get("middleBlanket", "g DM/L"),
        LateBlanketGramsPerLitre = set.Get("lateBlanket", "g DM/L"),
        EarlyHours = set.Get("earlyTime", "h"),
        MiddleHours = set.Get("middleTime", "h"),
        LateHours = set.Get("lateTime", "h"),
        ClearingHours = set.Get("clearingTime", "h"),
        NonSettlingShare = set.Get("nonSettlingShare", "1"),
        LowestResidualGramsPerLitre = set.Get("lowestResidual", "g DM/L"),
        DecantClearanceMetres = set.Get("decantClearance", "m"),
        DenitrificationGramsPerGramDay = set.Get("denitrificationRate", "g N/g VS/d"),
        DenitrificationTemperatureBase = set.Get("denitrificationTemperatureBase", "1"),
        NitrateHalfSaturationMilligramsNPerLitre = set.Get("nitrateHalfSaturation", "mg N/L"),
        OxygenInhibitionMilligramsPerLitre = set.Get("oxygenInhibition", "mg/L"),
        ExchangeSharePerDay = set.Get("exchange", "1/d"),
        BackgroundDenitrificationPerDay = set.Get("backgroundDenitrification", "1/d"),
        NitrificationMilligramsPerLitreHour = set.Get("nitrificationRate", "mg N/L/h"),
        NitrificationRampDays = set.Get("nitrificationRamp", "d"),
        NitrateGoneMilligramsNPerLitre = set.Get("nitrateGone", "mg N/L"),
        AirOffAllowedHours = set.Get("airOffAllowed", "h"),
        NitrateGoneAllowedHours = set.Get("nitrateGoneAllowed", "h"),
        SettlingHours = set.Get("settlingTime", "h"),
        DecantResidualGramsPerLitre = set.Get("decantResidual", "g DM/L"),
        PlantSumpTanMilligramsNPerLitre = set.Get("plantSumpTan", "mg N/L"),
        PlantSumpNitriteMilligramsNPerLitre = set.Get("plantSumpNitrite", "mg N/L"),
        RisingSludgeHours = set.Get("risingSludgeTime", "h"),
        RisingSludgeCelsius = set.Get("risingSludgeTemperature", "degC"),
        RisingSludgeNitrateMilligramsNPerLitre = set.Get("risingSludgeNitrate", "mg N/L"),
    };
}
