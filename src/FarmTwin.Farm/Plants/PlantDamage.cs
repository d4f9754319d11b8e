namespace FarmTwin.Farm.Plants;

/// <summary>What heat, cold, light and long days have done to a lot so far; means over its plants.</summary>
/// <param name="BoltingDegreeDays">Warmth above the crop's bolting base, weighted by day length, °C d.</param>
/// <param name="TipBurnShare">Share of the plants with tip burn.</param>
/// <param name="ScorchedShare">Share of the plants with leaves scorched by heat.</param>
/// <param name="ChilledShare">Share of the plants spoilt by cold.</param>
/// <param name="FrostTriedShare">Share that frost has killed of those that once stood: the weakest are gone.</param>
public readonly record struct PlantDamage(double BoltingDegreeDays, double TipBurnShare, double ScorchedShare, double ChilledShare, double FrostTriedShare = 0)
{
    /// <summary>Damage of plants joined: the mean by number.</summary>
    /// <param name="other">Damage of those who join.</param>
    /// <param name="weight">Their share of all, 0–1.</param>
    public PlantDamage Joined(in PlantDamage other, double weight) => new(
        Mean(BoltingDegreeDays, other.BoltingDegreeDays, weight),
        Mean(TipBurnShare, other.TipBurnShare, weight),
        Mean(ScorchedShare, other.ScorchedShare, weight),
        Mean(ChilledShare, other.ChilledShare, weight),
        Mean(FrostTriedShare, other.FrostTriedShare, weight));

    /// <summary>Damage after a day.</summary>
    /// <param name="grades">The crop.</param>
    /// <param name="weather">What the day did.</param>
    /// <param name="leafAreaIndex">Leaf area over growing area.</param>
    /// <param name="calciumShort">Whether calcium holds growth back.</param>
    public PlantDamage After(CropGrades grades, in CropWeather weather, double leafAreaIndex, bool calciumShort)
    {
        ArgumentNullException.ThrowIfNull(grades);
        return new PlantDamage(
            BoltingDegreeDays + grades.BoltingDegrees(weather.MeanCelsius, weather.LightHours),
            Spread(TipBurnShare, grades.TipBurnADay(weather, leafAreaIndex, calciumShort)),
            Spread(ScorchedShare, grades.HeatHarmPerDegreeHour * weather.HotDegreeHours),
            Spread(ChilledShare, grades.ColdHarmPerDegreeHour * weather.ColdDegreeHours),
            FrostTriedShare);
    }

    private static double Mean(double own, double other, double weight) => own + ((other - own) * weight);

    // A harm strikes the sound and the harmed alike.
    private static double Spread(double share, double harm) => 1 - ((1 - share) * Math.Max(0, 1 - harm));
}

/// <summary>A day as it harms a crop.</summary>
/// <param name="MeanCelsius">Mean air temperature, °C.</param>
/// <param name="LightHours">Hours with light.</param>
/// <param name="LightMoles">Light at the crop, mol/m².</param>
/// <param name="HotDegreeHours">Degree hours above the crop's heat limit, °C h.</param>
/// <param name="ColdDegreeHours">Degree hours below its cold limit, °C h.</param>
/// <param name="LitVapourDeficitKilopascals">Mean vapour pressure deficit of the lit hours, kPa.</param>
/// <param name="AirMoved">Whether fans move the air over the crop.</param>
public readonly record struct CropWeather(
    double MeanCelsius,
    double LightHours,
    double LightMoles,
    double HotDegreeHours,
    double ColdDegreeHours,
    double LitVapourDeficitKilopascals,
    bool AirMoved);
