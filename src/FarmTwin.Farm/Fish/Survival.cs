namespace FarmTwin.Farm.Fish;

/// <summary>Deaths as expected values: a hazard an hour for each cause, survival the exponential of their sum.</summary>
/// <remarks>
/// Deterministic. Disease, predators and theft are outside a mass balance. The dead leave with the mean weight of the cohort, so
/// mean and spread stay. No allocation.
/// </remarks>
public static class Survival
{
    // Median lethal concentrations are published for 96 hours of exposure.
    private const double LethalTestHours = 96;
    private const double LogTwo = 0.693147180559945309;

    /// <summary>Every hazard just now.</summary>
    /// <param name="cohort">The fish.</param>
    /// <param name="parameters">The species.</param>
    /// <param name="water">Their water.</param>
    public static HazardsPerHour Hazards(Cohort cohort, FishParameters parameters, in FishWater water) => new(
        parameters.BaseMortalityPerDay / UnitConstants.HoursPerDay,
        SquareBeyond(parameters.ColdLimitCelsius - water.TemperatureCelsius, parameters.ColdHazardPerHourSquareKelvin),
        SquareBeyond(water.TemperatureCelsius - parameters.HeatLimitCelsius, parameters.HeatHazardPerHourSquareKelvin),
        LowOxygenHazardPerHour(parameters, water.OxygenMilligramsPerLitre),
        LethalHazardPerHour(
            parameters,
            water.UnionizedAmmoniaMilligramsNPerLitre,
            AmmoniaLethalMilligramsNPerLitre(parameters, cohort.MeanGrams)),
        LethalHazardPerHour(
            parameters,
            water.NitriteMilligramsNPerLitre,
            NitriteLethalMilligramsNPerLitre(parameters, water.ChlorideMilligramsPerLitre)),
        cohort.HandlingHoursLeft > 0
            ? HandlingHazardPerHour(parameters, water.TemperatureCelsius) + cohort.ShockHazardPerHour
            : 0,
        LethalHazardPerHour(parameters, water.ChlorineMilligramsPerLitre, parameters.ChlorineLethalMilligramsPerLitre),
        LethalHazardPerHour(parameters, water.PesticideLethalShare, 1));

    /// <summary>The un-ionized ammonia that kills half in 96 h at a weight, mg N/L: straight in the logarithm of weight between the two
    /// sizes that Abdalla &amp; McNabb (1998) tested, constant beyond.</summary>
    public static double AmmoniaLethalMilligramsNPerLitre(FishParameters parameters, double grams)
    {
        double size = grams <= parameters.AmmoniaLethalSmallGrams ? 0
            : grams >= parameters.AmmoniaLethalLargeGrams ? 1
            : Math.Log(grams / parameters.AmmoniaLethalSmallGrams)
                / Math.Log(parameters.AmmoniaLethalLargeGrams / parameters.AmmoniaLethalSmallGrams);
        return parameters.AmmoniaLethalSmallMilligramsNPerLitre + (size
            * (parameters.AmmoniaLethalLargeMilligramsNPerLitre - parameters.AmmoniaLethalSmallMilligramsNPerLitre));
    }

    /// <summary>The nitrite that kills half in 96 h at a chloride level, mg N/L: the straight line through the two levels tested, continued
    /// to fresh water and held constant above the higher level, where no data promise more protection.</summary>
    public static double NitriteLethalMilligramsNPerLitre(FishParameters parameters, double chlorideMilligramsPerLitre)
    {
        double chloride = Math.Clamp(chlorideMilligramsPerLitre, 0, parameters.NitriteHighChlorideMilligramsPerLitre);
        double slope = (parameters.NitriteLethalHighMilligramsNPerLitre - parameters.NitriteLethalLowMilligramsNPerLitre)
            / (parameters.NitriteHighChlorideMilligramsPerLitre - parameters.NitriteLowChlorideMilligramsPerLitre);
        return parameters.NitriteLethalLowMilligramsNPerLitre
            + (slope * (chloride - parameters.NitriteLowChlorideMilligramsPerLitre));
    }

    /// <summary>Begins the days of raised mortality after grading, moving or arriving; a second handling restarts them, and what was
    /// left of an earlier shock is spread over the new days.</summary>
    /// <param name="cohort">The fish; changed.</param>
    /// <param name="parameters">The species.</param>
    /// <param name="shockShare">Share that dies over these days of the move's shock besides the handling, 0 to below 1.</param>
    public static void Handle(Cohort cohort, FishParameters parameters, double shockShare = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(shockShare);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(shockShare, 1);
        double hours = parameters.HandlingDays * UnitConstants.HoursPerDay;
        double left = cohort.ShockHazardPerHour * cohort.HandlingHoursLeft;
        cohort.HandlingHoursLeft = hours;
        cohort.ShockHazardPerHour = (left - Math.Log(1 - shockShare)) / hours;
    }

    /// <summary>Expected deaths over a span in constant water; the cohort is not changed.</summary>
    /// <param name="cohort">The fish.</param>
    /// <param name="parameters">The species.</param>
    /// <param name="hours">Length of the span, h.</param>
    /// <param name="water">Their water.</param>
    public static double ExpectedDeaths(Cohort cohort, FishParameters parameters, double hours, in FishWater water) =>
        ExpectedDeaths(cohort, Hazards(cohort, parameters, water), hours);

    /// <summary>Lives a span: the expected number dies, and the days after handling run down.</summary>
    public static DeathResult Step(Cohort cohort, FishParameters parameters, double hours, in FishWater water)
    {
        HazardsPerHour hazards = Hazards(cohort, parameters, water);
        double deaths = ExpectedDeaths(cohort, hazards, hours);
        double grams = deaths * cohort.MeanGrams;
        cohort.HandlingHoursLeft = Math.Max(0, cohort.HandlingHoursLeft - hours);
        cohort.ShockHazardPerHour = cohort.HandlingHoursLeft > 0 ? cohort.ShockHazardPerHour : 0;
        return new DeathResult(deaths, grams, Die(cohort, parameters, deaths), hazards);
    }

    /// <summary>Lets a number of average fish die and returns every element that leaves with the bodies, g.</summary>
    /// <remarks>Also serves culls. Time does not pass: see <see cref="Step"/>.</remarks>
    /// <param name="cohort">The fish; changed.</param>
    /// <param name="parameters">The species.</param>
    /// <param name="number">Deaths; more than there are fish means all.</param>
    public static ElementGrams Die(Cohort cohort, FishParameters parameters, double number)
    {
        double dead = Math.Clamp(number, 0, cohort.Number);
        if (dead <= 0)
        {
            return ElementGrams.Zero;
        }

        double mean = cohort.MeanGrams;
        double grams = dead * mean;
        ElementGrams leaving = cohort.Remove(parameters, dead, grams);
        cohort.MeanGrams = mean;
        cohort.DiedNumber += dead;
        cohort.DiedGrams += grams;
        return leaving;
    }

    private static double ExpectedDeaths(Cohort cohort, in HazardsPerHour hazards, double hours)
    {
        double handled = hazards.Handling * Math.Min(hours, cohort.HandlingHoursLeft);
        double dose = ((hazards.Total - hazards.Handling) * hours) + handled;
        return cohort.Number * (1 - Math.Exp(-dose));
    }

    private static double SquareBeyond(double degrees, double coefficient) => degrees > 0 ? coefficient * degrees * degrees : 0;

    private static double LowOxygenHazardPerHour(FishParameters parameters, double oxygenMilligramsPerLitre) =>
        oxygenMilligramsPerLitre < parameters.VeryLowOxygenMilligramsPerLitre ? parameters.VeryLowOxygenHazardPerHour
        : oxygenMilligramsPerLitre < parameters.LowOxygenMilligramsPerLitre ? parameters.LowOxygenHazardPerHour
        : 0;

    // Half are dead after the test at the lethal concentration; the steepness is that of a dose response in log concentration.
    private static double LethalHazardPerHour(FishParameters parameters, double concentration, double lethal) => concentration > 0
        ? LogTwo / LethalTestHours * Math.Pow(concentration / lethal, parameters.LethalSteepness)
        : 0;

    private static double HandlingHazardPerHour(FishParameters parameters, double temperatureCelsius) =>
        -Math.Log(1 - parameters.HandlingMortality) / (parameters.HandlingDays * UnitConstants.HoursPerDay)
        * (temperatureCelsius < parameters.HandlingColdCelsius ? parameters.HandlingColdMultiplier : 1);
}
