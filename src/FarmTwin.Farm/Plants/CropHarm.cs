using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>What the air of the house does to the quality of what stands in it: adds up through the day, strikes at midnight.</summary>
/// <remarks>See docs/model/grades.md. The nursery is spared: its trays are short and move on.</remarks>
public sealed class CropHarm
{
    private readonly FarmContext _farm;

    /// <summary>Makes it.</summary>
    public CropHarm(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
    }

    /// <summary>Adds a step.</summary>
    public void AddStep(in StepLight light)
    {
        GrowingState growing = _farm.State.Growing;
        double hours = _farm.Step.Hours;
        growing.ColdestCelsius = Math.Min(growing.ColdestCelsius, light.AirCelsius);
        CropParameters[] crops = _farm.Parts.Crops;
        for (int crop = 0; crop < growing.ChillDegreeHours.Length; crop++)
        {
            growing.ChillDegreeHours[crop] += crops[crop].Cold is { } cold ? hours * Math.Max(0, cold.ChillLimitCelsius - light.AirCelsius) : 0;
        }

        CropGrades?[] grades = _farm.Parts.Grades;
        for (int crop = 0; crop < grades.Length; crop++)
        {
            if (grades[crop] is { } grade)
            {
                growing.HotDegreeHours[crop] += hours * Math.Max(0, light.AirCelsius - grade.HeatLimitCelsius);
                growing.ColdDegreeHours[crop] += hours * Math.Max(0, grade.ColdLimitCelsius - light.AirCelsius);
            }
        }

        if (light.InsideMegajoules > 0)
        {
            growing.LitVapourDeficitHours += hours * light.VapourDeficitKilopascals;
            growing.SunHours += hours;
        }
    }

    /// <summary>Lets the day strike a lot.</summary>
    public void EndDay(PlantLot lot, CropParameters crop, in DayLight day)
    {
        ArgumentNullException.ThrowIfNull(lot);
        if (lot.Crop >= _farm.Parts.Grades.Length || _farm.Parts.Grades[lot.Crop] is not { } grade)
        {
            return;
        }

        GrowingState growing = _farm.State.Growing;
        var weather = new CropWeather(
            day.MeanCelsius,
            day.LitHours,
            day.MolesPerSquareMetre,
            growing.HotDegreeHours[lot.Crop],
            growing.ColdDegreeHours[lot.Crop],
            growing.SunHours > 0 ? growing.LitVapourDeficitHours / growing.SunHours : double.PositiveInfinity,
            _farm.Parts.Farm.House.AirMovement);
        bool calcium = lot.LastStress.Nutrient < 1 && lot.LastStress.ShortestNutrient == Element.Calcium;
        lot.Damage = lot.Damage.After(grade, weather, lot.LeafAreaIndex(crop), calcium);
    }

    /// <summary>Starts a new day.</summary>
    public void BeginDay()
    {
        GrowingState growing = _farm.State.Growing;
        Array.Clear(growing.HotDegreeHours);
        Array.Clear(growing.ChillDegreeHours);
        growing.ColdestCelsius = double.PositiveInfinity;
        Array.Clear(growing.ColdDegreeHours);
        growing.LitVapourDeficitHours = 0;
        growing.SunHours = 0;
    }
}
