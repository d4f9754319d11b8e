using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Summaries;

/// <summary>Figures of the water.</summary>
internal static class WaterFigures
{
    private const double TdsFactor = 0.5;
    private const double Nitrogen = UnitConstants.AtomicWeight.Nitrogen;
    private const double NitratePerNitrogen = (Nitrogen + (3 * UnitConstants.AtomicWeight.Oxygen)) / Nitrogen;
    private const double NitritePerNitrogen = (Nitrogen + (2 * UnitConstants.AtomicWeight.Oxygen)) / Nitrogen;
    private const double AmmoniumPerNitrogen = (Nitrogen + (4 * UnitConstants.AtomicWeight.Hydrogen)) / Nitrogen;

    public static WaterSummary Of(Season season, RecordView record, SummaryBands bands)
    {
        OperationsState operations = season.State.Operations;
        double days = (double)season.NowSeconds / UnitConstants.SecondsPerDay;
        PeakReading? oxygen = record.Peak("oxygen_tanks_mg_per_L", highest: false);
        double topUp = season.State.Totals.SourceLitres;
        return new WaterSummary
        {
            Sodium = SaltFigures.Of(season, record, "sodium", season.Parts.Plants.SodiumUptakeShare, bands.Sodium),
            Chloride = SaltFigures.Of(season, record, "chloride", season.Parts.Plants.ChlorideUptakeShare, bands.Chloride),
            CycledDay = SeasonSummary.DayOrNull(operations.CycledDay),
            OpenedDay = SeasonSummary.DayOrNull(operations.OpenedDay),
            CoupledDay = SeasonSummary.DayOrNull(operations.CoupledDay),
            RampAborts = operations.RampAborts,
            RefusedGates = Gates(operations),
            PeakTanMgNPerL = record.Peak("tan_fish_loop_mgN_per_L", true)?.Value ?? 0,
            PeakNitriteMgNPerL = record.Peak("nitrite_fish_loop_mgN_per_L", true)?.Value ?? 0,
            PeakUnionizedAmmoniaMgNPerL = record.Peak("ammonia_unionized_tanks_mgN_per_L", true)?.Value ?? 0,
            BeforeFish = Peaks(record, stocked: false),
            WithFish = Peaks(record, stocked: true),
            LowestOxygenMgPerL = oxygen?.Value ?? double.NaN,
            LowestOxygenDay = oxygen?.Day ?? double.NaN,
            FinalNitrateMgNPerL = ByLoop(uses => MilligramsPerLitre(season, uses, Substance.Nitrate)),
            LoopPH = new Dictionary<string, ReadingRange>(StringComparer.Ordinal)
            {
                ["fishLoop"] = record.Range("pH_fish_loop"),
                ["plantLoop"] = record.Range("pH_plant_loop"),
            },
            TemperatureC = new Dictionary<string, ReadingRange>(StringComparer.Ordinal)
            {
                ["fishWater"] = record.Range("fish_water_C"),
                ["fishWaterWithFish"] = record.Range("fish_water_C", stocked: true),
                ["plantWater"] = record.Range("plant_water_C"),
                ["houseAir"] = record.Range("house_air_C"),
                ["outside"] = record.Range("outside_air_C"),
            },
            HoursOutsideBand = Bands(record, bands),
            TopUpL = topUp,
            TopUpLPerDay = days > 0 ? topUp / days : 0,
            TestKitAtEnd = ByLoop(uses => new TestKitReading(
                MilligramsPerLitre(season, uses, Substance.Nitrate) * NitratePerNitrogen,
                MilligramsPerLitre(season, uses, Substance.Nitrite) * NitritePerNitrogen,
                MilligramsPerLitre(season, uses, Substance.Tan) * AmmoniumPerNitrogen,
                Last(record.Days(uses == LoopUses.Fish ? "conductivity_fish_loop_uS_per_cm" : "conductivity_plant_loop_uS_per_cm")) is { } conductivity
                    ? Conductivity.TdsMeter(conductivity, TdsFactor)
                    : null)),
        };
    }

    private static LoopPeaks Peaks(RecordView record, bool stocked) => new(
        record.Peak("tan_fish_loop_mgN_per_L", true, stocked),
        record.Peak("nitrite_fish_loop_mgN_per_L", true, stocked),
        record.Peak("ammonia_unionized_tanks_mgN_per_L", true, stocked),
        record.Peak("oxygen_tanks_mg_per_L", false, stocked),
        record.Peak("carbon_dioxide_tanks_mg_per_L", true, stocked));

    private static Dictionary<string, BandHours> Bands(RecordView record, SummaryBands bands) => new(StringComparer.Ordinal)
    {
        ["tan"] = record.Outside("tan_fish_loop_mgN_per_L", null, bands.TanHigh, "mg N/L", true),
        ["nitrite"] = record.Outside("nitrite_fish_loop_mgN_per_L", null, bands.NitriteHigh, "mg N/L", true),
        ["unionizedAmmonia"] = record.Outside("ammonia_unionized_tanks_mgN_per_L", null, bands.UnionizedAmmoniaHigh, "mg N/L", true),
        ["oxygen"] = record.Outside("oxygen_tanks_mg_per_L", bands.OxygenLow, null, "mg/L", true),
        ["carbonDioxide"] = record.Outside("carbon_dioxide_tanks_mg_per_L", null, bands.CarbonDioxideHigh, "mg/L", true),
        ["pHFishLoop"] = record.Outside("pH_fish_loop", bands.FishPHLow, bands.FishPHHigh, "1", true),
        ["pHPlantLoop"] = record.Outside("pH_plant_loop", bands.PlantPHLow, bands.PlantPHHigh, "1"),
        ["fishWater"] = record.Outside("fish_water_C", bands.FishWaterLow, bands.FishWaterHigh, "°C", true),
        ["plantWater"] = record.Outside("plant_water_C", bands.PlantWaterLow, bands.PlantWaterHigh, "°C"),
        ["nitratePlantLoop"] = record.Outside("nitrate_plant_loop_mgN_per_L", bands.NitrateLow, bands.NitrateHigh, "mg N/L"),
    };

    private static List<GateDelay> Gates(OperationsState operations)
    {
        var gates = new List<GateDelay>();
        for (int bit = 0; bit < CouplingGateNames.Count; bit++)
        {
            if (operations.DaysRefused[bit] > 0)
            {
                gates.Add(new GateDelay(CouplingGateNames.Name(bit), operations.DaysRefused[bit]));
            }
        }

        return [.. gates.OrderByDescending(g => g.Days)];
    }

    private static Dictionary<string, T> ByLoop<T>(Func<IReadOnlyList<BasinUse>, T> reading) => new(StringComparer.Ordinal)
    {
        ["fishLoop"] = reading(LoopUses.Fish),
        ["plantLoop"] = reading(LoopUses.Plant),
    };

    private static double MilligramsPerLitre(Season season, IReadOnlyList<BasinUse> uses, int substance)
    {
        double grams = 0;
        double litres = 0;
        for (int b = 0; b < season.Parts.Basins.Length; b++)
        {
            if (uses.Contains(season.Parts.Basins[b].Use))
            {
                grams += season.State.Basins.Grams[WaterStep.At(b, substance)];
                litres += season.State.Basins.Litres[b];
            }
        }

        return litres > 0 ? grams * UnitConstants.GramsPerKilogram / litres : double.NaN;
    }

    private static double? Last(double[] values) => values.Length > 0 && double.IsFinite(values[^1]) ? values[^1] : null;
}
