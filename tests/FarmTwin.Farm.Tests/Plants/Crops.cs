using FarmTwin.Farm.Plants;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Plants;

/// <summary>Crops, waters and days that the tests share.</summary>
internal static class Crops
{
    public static CropParameters Lettuce { get; } = CropParameters.From(ParameterLibrary.Load("crops", "lettuce"));

    public static CropParameters Basil { get; } = CropParameters.From(ParameterLibrary.Load("crops", "basil"));

    public static PlantParameters Common { get; } = PlantParameters.From(ParameterLibrary.Load("processes", "plants"));

    /// <summary>The same at a research house: no site loss.</summary>
    public static PlantParameters Research { get; } = Common with { SiteFactor = 1 };

    /// <summary>Lettuce solution of Sonneveld's type, from memory: nothing is short.</summary>
    public static RootZone Rich { get; } = new(22, 8, 1.5, 6, 150, 0, 31, 210, 90, 24, 32, 1.0);

    public static CropParameters Load(string name) => CropParameters.From(ParameterLibrary.Load("crops", name));

    /// <summary>A day with steady light: so many lit hours at one temperature, the rest dark at another.</summary>
    public static DayLight Day(CropParameters crop, double dli, double litHours, double litCelsius, double darkCelsius, double co2 = 400)
    {
        var day = default(DayLight);
        day.AddHour(crop, litHours, dli / (litHours * 0.0036), co2, litCelsius);
        if (litHours < 24)
        {
            day.AddHour(crop, 24 - litHours, 0, co2, darkCelsius);
        }

        return day;
    }

    public static PlantLot Seedlings(CropParameters crop, double plants = 1, double density = 1550) =>
        PlantLot.FromSeed(0, crop, plants, plants / density, 0);

    /// <summary>Plans, takes all that was planned, and grows, day after day.</summary>
    public static void Grow(PlantLot lot, CropParameters crop, DayLight day, RootZone root, PlantParameters common, int days)
    {
        for (int i = 0; i < days; i++)
        {
            Uptake.PlanDay(lot, crop, common, root);
            lot.Take(lot.Planned);
            Growth.DailyStep(lot, crop, day, root, common);
        }
    }

    public static void Space(PlantLot lot, double density) => lot.AreaSquareMetres = lot.Plants / density;

    /// <summary>A band of a published case.</summary>
    public static void InBand(string name, double value)
    {
        IReadOnlyDictionary<string, string> row = PublishedTable.Read("plants-cases").Rows.Single(r => r["case"] == name);
        Assert.InRange(value, PublishedTable.Number(row, "low"), PublishedTable.Number(row, "high"));
    }
}
