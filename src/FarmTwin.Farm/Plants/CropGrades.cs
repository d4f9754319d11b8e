using FarmTwin.Engine.Chance;
using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Plants;

/// <summary>What makes a head of a crop first grade, second grade or unsaleable.</summary>
/// <remarks>Immutable. See docs/model/grades.md. Thresholds of harm are own choices; a crop without a file has no grades by weight or harm.</remarks>
public sealed record CropGrades
{
    private LineTable _dayLength = new([0], [1]);

    /// <summary>Standard deviation over mean of the heads of one board.</summary>
    public required double HeadSpread { get; init; }

    /// <summary>Lightest head that sells as second grade, g.</summary>
    public required double LightestSecondGrams { get; init; }

    /// <summary>Heaviest head that sells as one first-grade head, g.</summary>
    public required double HeaviestFirstGrams { get; init; }

    /// <summary>Mean temperature above which a day brings bolting nearer, °C.</summary>
    public required double BoltingBaseCelsius { get; init; }

    /// <summary>Degree days of long days at which half of the heads have bolted, °C d.</summary>
    public required double BoltingDegreeDays { get; init; }

    /// <summary>Standard deviation over mean of that.</summary>
    public required double BoltingSpread { get; init; }

    /// <summary>Air temperature above which leaves scorch, °C.</summary>
    public required double HeatLimitCelsius { get; init; }

    /// <summary>Share of the heads scorched per degree hour above it.</summary>
    public required double HeatHarmPerDegreeHour { get; init; }

    /// <summary>Air temperature below which cold spoils heads, °C.</summary>
    public required double ColdLimitCelsius { get; init; }

    /// <summary>Share of the heads spoilt per degree hour below it.</summary>
    public required double ColdHarmPerDegreeHour { get; init; }

    /// <summary>Daily light above which tip burn threatens in still air, mol/m².</summary>
    public required double TipBurnLightMoles { get; init; }

    /// <summary>Share of the heads that a mole of light above it burns in still air.</summary>
    public required double TipBurnPerMole { get; init; }

    /// <summary>What is left of that where fans move the air.</summary>
    public required double TipBurnInMovedAir { get; init; }

    /// <summary>Vapour pressure deficit of the lit hours below which too little water, and calcium with it, is drawn, kPa.</summary>
    public required double TipBurnDampKilopascals { get; init; }

    /// <summary>The light limit in such damp air over the usual one.</summary>
    public required double TipBurnDampLight { get; init; }

    /// <summary>Share of the heads burnt a day while calcium is short.</summary>
    public required double TipBurnCalciumADay { get; init; }

    /// <summary>Leaf area index from which on heads close and can burn.</summary>
    public required double TipBurnLeafAreaIndex { get; init; }

    /// <summary>Reads them.</summary>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A unit is not the expected one.</exception>
    public static CropGrades From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new CropGrades
        {
            HeadSpread = set.Get("headSpread", "1"),
            LightestSecondGrams = set.Get("lightestSecond", "g"),
            HeaviestFirstGrams = set.Get("heaviestFirst", "g"),
            BoltingBaseCelsius = set.Get("boltingBase", "°C"),
            BoltingDegreeDays = set.Get("boltingDegreeDays", "°C d"),
            BoltingSpread = set.Get("boltingSpread", "1"),
            _dayLength = new LineTable(
                [set.Get("boltingShortDay", "h"), set.Get("boltingLongDay", "h")], [set.Get("boltingShortDayFactor", "1"), 1]),
            HeatLimitCelsius = set.Get("heatLimit", "°C"),
            HeatHarmPerDegreeHour = set.Get("heatHarm", "1/(°C h)"),
            ColdLimitCelsius = set.Get("coldLimit", "°C"),
            ColdHarmPerDegreeHour = set.Get("coldHarm", "1/(°C h)"),
            TipBurnLightMoles = set.Get("tipBurnLight", "mol/m2/d"),
            TipBurnPerMole = set.Get("tipBurnRate", "m2/mol"),
            TipBurnInMovedAir = set.Get("tipBurnMovedAir", "1"),
            TipBurnDampKilopascals = set.Get("tipBurnDamp", "kPa"),
            TipBurnDampLight = set.Get("tipBurnDampLight", "1"),
            TipBurnCalciumADay = set.Get("tipBurnCalcium", "1/d"),
            TipBurnLeafAreaIndex = set.Get("tipBurnLeafArea", "1"),
        };
    }

    /// <summary>Degree days towards bolting that a day adds, °C d.</summary>
    public double BoltingDegrees(double meanCelsius, double lightHours) =>
        Math.Max(0, meanCelsius - BoltingBaseCelsius) * _dayLength.At(lightHours);

    /// <summary>Share of the heads that have bolted, 0–1.</summary>
    public double BoltedShare(double degreeDays) => degreeDays > 0
        ? NormalDistribution.Below((degreeDays - BoltingDegreeDays) / (BoltingSpread * BoltingDegreeDays))
        : 0;

    /// <summary>Share of the sound heads that a day burns, 0–1.</summary>
    public double TipBurnADay(in CropWeather weather, double leafAreaIndex, bool calciumShort)
    {
        if (leafAreaIndex < TipBurnLeafAreaIndex)
        {
            return 0;
        }

        double limit = TipBurnLightMoles * (weather.LitVapourDeficitKilopascals < TipBurnDampKilopascals ? TipBurnDampLight : 1);
        double light = TipBurnPerMole * Math.Max(0, weather.LightMoles - limit) * (weather.AirMoved ? TipBurnInMovedAir : 1);
        return Math.Min(1, light + (calciumShort ? TipBurnCalciumADay : 0));
    }
}
