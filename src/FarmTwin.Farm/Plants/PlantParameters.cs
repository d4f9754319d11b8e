using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Plants;

/// <summary>What all crops share: stress, uptake, transpiration, iron.</summary>
/// <remarks>Immutable.</remarks>
public sealed record PlantParameters
{
    /// <summary>f_site: this site against a well-run research house, 0–1.</summary>
    public required double SiteFactor { get; init; }

    /// <summary>q: uptake that a rich solution allows, over what potential growth needs.</summary>
    public required double SupplyOverDemand { get; init; }

    /// <summary>Critical over target content of tissue, for all nutrients but nitrogen.</summary>
    public required double CriticalShareOfTarget { get; init; }

    /// <summary>Nutrition index at which growth stops, for N, P and Ca.</summary>
    public required double StructuralIndexFloor { get; init; }

    /// <summary>Nutrition index at which growth stops, for K, Mg, S and Fe.</summary>
    public required double MobileIndexFloor { get; init; }

    /// <summary>Half saturation of nitrate uptake, mg N/L.</summary>
    public required double NitrateHalfSaturationMilligramsNPerLitre { get; init; }

    /// <summary>Nitrate below which there is no net uptake, mg N/L.</summary>
    public required double NitrateMinimumMilligramsNPerLitre { get; init; }

    /// <summary>Half saturation of ammonium uptake, mg N/L.</summary>
    public required double AmmoniumHalfSaturationMilligramsNPerLitre { get; init; }

    /// <summary>Largest share of the nitrogen demand that ammonium fills, before nitrate.</summary>
    public required double AmmoniumDemandShare { get; init; }

    /// <summary>Half saturation of phosphorus uptake, mg P/L.</summary>
    public required double PhosphorusHalfSaturationMilligramsPerLitre { get; init; }

    /// <summary>Half saturation of potassium uptake, mg K/L.</summary>
    public required double PotassiumHalfSaturationMilligramsPerLitre { get; init; }

    /// <summary>Half saturation of calcium uptake, mg Ca/L.</summary>
    public required double CalciumHalfSaturationMilligramsPerLitre { get; init; }

    /// <summary>Half saturation of magnesium uptake, mg Mg/L.</summary>
    public required double MagnesiumHalfSaturationMilligramsPerLitre { get; init; }

    /// <summary>Half saturation of sulfate uptake, mg S/L.</summary>
    public required double SulfurHalfSaturationMilligramsPerLitre { get; init; }

    /// <summary>Half saturation of the uptake of available iron, mg Fe/L.</summary>
    public required double IronHalfSaturationMilligramsPerLitre { get; init; }

    /// <summary>Share of growth lost to one nutrient at which a grower sees it.</summary>
    public required double DeficiencyShowsAt { get; init; }

    /// <summary>Share of dissolved nitrogen that may be ammonium without harm.</summary>
    public required double AmmoniumToleratedShare { get; init; }

    /// <summary>Ammonium beyond that share which halves growth, mg N/L.</summary>
    public required double AmmoniumExcessHalfMilligramsNPerLitre { get; init; }

    /// <summary>Oxygen at and below which roots do nothing, mg/L.</summary>
    public required double OxygenFloorMilligramsPerLitre { get; init; }

    /// <summary>From there to no effect, mg/L.</summary>
    public required double OxygenSpanMilligramsPerLitre { get; init; }

    /// <summary>How much higher than NaCl's the EC of nutrient salts may be, mS/cm.</summary>
    public required double NutrientSaltAllowanceMillisiemens { get; init; }

    /// <summary>Sodium's uptake concentration over the water's.</summary>
    public required double SodiumUptakeShare { get; init; }

    /// <summary>Chloride's uptake concentration over the water's.</summary>
    public required double ChlorideUptakeShare { get; init; }

    /// <summary>A: share of the intercepted radiation that evaporates water.</summary>
    public required double RadiationShare { get; init; }

    /// <summary>k: extinction of radiation in the canopy.</summary>
    public required double RadiationExtinction { get; init; }

    /// <summary>B by day, kg/m²/h/kPa.</summary>
    public required double DayVapourCoefficientKilogramsPerSquareMetreHourKilopascal { get; init; }

    /// <summary>B by night, kg/m²/h/kPa.</summary>
    public required double NightVapourCoefficientKilogramsPerSquareMetreHourKilopascal { get; init; }

    /// <summary>Calcium in the transpired stream over that of the water, at most.</summary>
    public required double CalciumStreamShare { get; init; }

    /// <summary>Calcium of a fruit over its target below which blossom-end rot begins.</summary>
    public required double BlossomEndRotFrom { get; init; }

    /// <summary>Calcium over target at which blossom-end rot is at its worst.</summary>
    public required double BlossomEndRotFull { get; init; }

    /// <summary>Share of the fruit that has blossom-end rot at its worst.</summary>
    public required double BlossomEndRotWorst { get; init; }

    /// <summary>Days in which half of a chelate is lost in the dark at 20 °C.</summary>
    public required double ChelateDarkHalfLifeDays { get; init; }

    /// <summary>Growth of that loss with temperature, 1/K.</summary>
    public required double ChelateWarmthPerKelvin { get; init; }

    /// <summary>Days in which half of the iron that a chelate lets go at a pH falls out.</summary>
    public required double ReleasedIronHalfLifeDays { get; init; }

    /// <summary>Days in which half of the iron that is neither chelated nor held by the water at a pH falls out.</summary>
    public required double UnchelatedIronHalfLifeDays { get; init; }

    /// <summary>Attenuation of blue light in farm water, 1/m.</summary>
    public required double BlueLightAttenuationPerMetre { get; init; }

    /// <summary>Loss of iron on EDDHA to light, m²/mol.</summary>
    public required double EddhaPhotolysisSquareMetresPerMole { get; init; }

    /// <summary>Loss of iron on DTPA to light, m²/mol.</summary>
    public required double DtpaPhotolysisSquareMetresPerMole { get; init; }

    /// <summary>Loss of iron on EDTA to light, m²/mol.</summary>
    public required double EdtaPhotolysisSquareMetresPerMole { get; init; }

    /// <summary>Iron that water holds without a chelate by pH, mg/L.</summary>
    public required LineTable UnchelatedIronHeld { get; init; }

    /// <summary>Available share of iron on EDTA by pH.</summary>
    public required LineTable EdtaAvailability { get; init; }

    /// <summary>Available share of iron on DTPA by pH.</summary>
    public required LineTable DtpaAvailability { get; init; }

    /// <summary>Available share of iron on EDDHA by pH.</summary>
    public required LineTable EddhaAvailability { get; init; }

    /// <summary>The nutrition index at which growth stops for a nutrient.</summary>
    public double GrowthStopsAtIndex(int nutrient) =>
        nutrient is Element.Nitrogen or Element.Phosphorus or Element.Calcium ? StructuralIndexFloor : MobileIndexFloor;

    /// <summary>Reads them from their data.</summary>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A unit is not the expected one.</exception>
    public static PlantParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new PlantParameters
        {
            SiteFactor = set.Get("siteFactor", "1"),
            SupplyOverDemand = set.Get("supplyOverDemand", "1"),
            CriticalShareOfTarget = set.Get("criticalShareOfTarget", "1"),
            StructuralIndexFloor = set.Get("structuralIndexFloor", "1"),
            MobileIndexFloor = set.Get("mobileIndexFloor", "1"),
            NitrateHalfSaturationMilligramsNPerLitre = set.Get("nitrateHalfSaturation", "mg N/L"),
            NitrateMinimumMilligramsNPerLitre = set.Get("nitrateMinimum", "mg N/L"),
            AmmoniumHalfSaturationMilligramsNPerLitre = set.Get("ammoniumHalfSaturation", "mg N/L"),
            AmmoniumDemandShare = set.Get("ammoniumDemandShare", "1"),
            PhosphorusHalfSaturationMilligramsPerLitre = set.Get("phosphorusHalfSaturation", "mg/L"),
            PotassiumHalfSaturationMilligramsPerLitre = set.Get("potassiumHalfSaturation", "mg/L"),
            CalciumHalfSaturationMilligramsPerLitre = set.Get("calciumHalfSaturation", "mg/L"),
            MagnesiumHalfSaturationMilligramsPerLitre = set.Get("magnesiumHalfSaturation", "mg/L"),
            SulfurHalfSaturationMilligramsPerLitre = set.Get("sulfurHalfSaturation", "mg/L"),
            IronHalfSaturationMilligramsPerLitre = set.Get("ironHalfSaturation", "mg/L"),
            DeficiencyShowsAt = set.Get("deficiencyShowsAt", "1"),
            AmmoniumToleratedShare = set.Get("ammoniumToleratedShare", "1"),
            AmmoniumExcessHalfMilligramsNPerLitre = set.Get("ammoniumExcessHalf", "mg N/L"),
            OxygenFloorMilligramsPerLitre = set.Get("oxygenFloor", "mg/L"),
            OxygenSpanMilligramsPerLitre = set.Get("oxygenSpan", "mg/L"),
            NutrientSaltAllowanceMillisiemens = set.Get("nutrientSaltAllowance", "mS/cm"),
            SodiumUptakeShare = set.Get("sodiumUptakeShare", "1"),
            ChlorideUptakeShare = set.Get("chlorideUptakeShare", "1"),
            RadiationShare = set.Get("transpirationRadiationShare", "1"),
            RadiationExtinction = set.Get("transpirationExtinction", "1"),
            DayVapourCoefficientKilogramsPerSquareMetreHourKilopascal = set.Get("transpirationVapourDay", "kg/m2/h/kPa"),
            NightVapourCoefficientKilogramsPerSquareMetreHourKilopascal = set.Get("transpirationVapourNight", "kg/m2/h/kPa"),
            CalciumStreamShare = set.Get("calciumStreamShare", "1"),
            BlossomEndRotFrom = set.Get("blossomEndRotFrom", "1"),
            BlossomEndRotFull = set.Get("blossomEndRotFull", "1"),
            BlossomEndRotWorst = set.Get("blossomEndRotWorst", "1"),
            ChelateDarkHalfLifeDays = set.Get("chelateDarkHalfLife", "d"),
            ChelateWarmthPerKelvin = set.Get("chelateWarmth", "1/K"),
            ReleasedIronHalfLifeDays = set.Get("releasedIronHalfLife", "d"),
            UnchelatedIronHalfLifeDays = set.Get("unchelatedIronHalfLife", "d"),
            BlueLightAttenuationPerMetre = set.Get("blueLightAttenuation", "1/m"),
            EddhaPhotolysisSquareMetresPerMole = set.Get("eddhaPhotolysis", "m2/mol"),
            DtpaPhotolysisSquareMetresPerMole = set.Get("dtpaPhotolysis", "m2/mol"),
            EdtaPhotolysisSquareMetresPerMole = set.Get("edtaPhotolysis", "m2/mol"),
            UnchelatedIronHeld = new LineTable(
                [set.Get("unchelatedAcid", "pH"), set.Get("unchelatedNeutral", "pH"), set.Get("unchelatedAlkaline", "pH")],
                [set.Get("unchelatedHeldAcid", "mg/L"), set.Get("unchelatedHeldNeutral", "mg/L"), set.Get("unchelatedHeldAlkaline", "mg/L")]),
            EdtaAvailability = new LineTable([set.Get("edtaFullTo", "pH"), set.Get("edtaNoneFrom", "pH")], [1, 0]),
            DtpaAvailability = new LineTable(
                [set.Get("dtpaFullTo", "pH"), set.Get("dtpaHalfAt", "pH"), set.Get("dtpaNoneFrom", "pH")], [1, 0.5, 0]),
            EddhaAvailability = new LineTable([set.Get("eddhaFullTo", "pH"), set.Get("eddhaNoneFrom", "pH")], [1, 0]),
        };
    }
}
