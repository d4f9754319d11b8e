using FarmTwin.Farm.Description;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>What the planned crops take out of the water in a day, and the fruit that they bear.</summary>
/// <remarks>
/// Leafy crops: heads cut × saleable weight at its upper end × dry matter × tissue, with their roots. Fruiting crops: growth of a closed
/// canopy in the month's light, less what a stand never closes, shared between fruit and plant. Microgreens drink from the nursery's own
/// reservoir and are not counted.
/// </remarks>
public sealed class CropDemand
{
    private readonly DesignCase _design;
    private readonly DesignLight _light;

    /// <summary>Prepares it.</summary>
    public CropDemand(DesignCase design)
    {
        ArgumentNullException.ThrowIfNull(design);
        _design = design;
        _light = new DesignLight(design);
    }

    /// <summary>Mean of the settled part of the plan, g/d.</summary>
    public ElementGrams SettledGramsPerDay()
    {
        ElementGrams sum = default;
        int weeks = 0;
        for (double day = _design.SettledFrom; day < _design.Farm.LengthDays; day += UnitConstants.DaysPerWeek)
        {
            sum += GramsPerDay(day);
            weeks++;
        }

        return weeks > 0 ? sum * (1.0 / weeks) : sum;
    }

    /// <summary>All crops on a day, g/d.</summary>
    public ElementGrams GramsPerDay(double day)
    {
        FarmParts parts = _design.Parts;
        ElementGrams sum = default;
        for (int c = 0; c < parts.CropPlans.Length; c++)
        {
            CropParameters crop = parts.Crops[c];
            double fresh = HeadsPerWeek(c, day) / UnitConstants.DaysPerWeek * (parts.CropPlans[c].HeaviestFirstGrams ?? crop.SaleableFreshGramsHigh);
            sum += crop.TissueGramsPerGramDry * (fresh * crop.DryMatterContent / (1 - crop.RootShare));
            if (crop.Fruit is { } fruit)
            {
                double growth = BedGrowthGramsPerDay(c, day);
                sum += (fruit.TissueGramsPerGramDry * (growth * fruit.Share)) + (crop.TissueGramsPerGramDry * (growth * (1 - fruit.Share)));
            }
        }

        return sum;
    }

    /// <summary>Heads cut a week, saleable or not: none before the first boards are ready or while another crop has its lanes, and no
    /// more than the lanes yield at the least time on them.</summary>
    public double HeadsPerWeek(int crop, double day)
    {
        CropPlanDescription plan = _design.Parts.CropPlans[crop];
        CropSchedule schedule = _design.Parts.Schedules[crop];
        double most = schedule.HolesAt(day) / plan.LeastLaneDays * UnitConstants.DaysPerWeek * schedule.Shares.Grown;
        return day < plan.FirstSowingDay + plan.NurseryDays + plan.TroughDays + plan.LeastLaneDays
            ? 0
            : Math.Min(most, schedule.HeadsAt(day) / schedule.Shares.Sold);
    }

    /// <summary>Fresh fruit of a crop, kg a week.</summary>
    public double FruitKilogramsPerWeek(int crop, double day) => _design.Parts.Crops[crop].Fruit is { } fruit
        ? fruit.FreshGrams(BedGrowthGramsPerDay(crop, day) * fruit.Share) * UnitConstants.DaysPerWeek / UnitConstants.GramsPerKilogram
        : 0;

    /// <summary>Plants of a fruiting crop that stand on a day.</summary>
    public double FruitingPlants(int crop, double day) => BedsOn(crop, day)
        .Sum(b => _design.Parts.Beds[b].AreaSquareMetres * (_design.Parts.Beds[b].PlantsPerSquareMetre ?? _design.Parts.Crops[crop].FinalPlantsPerSquareMetre));

    private IEnumerable<int> BedsOn(int crop, double day) => _design.Parts.Plantings
        .Where(p => p.Crop == crop && day >= p.Plan.SetOutDay && day < (p.Plan.ClearDay ?? double.PositiveInfinity))
        .SelectMany(p => p.Beds).Distinct();

    private double BedGrowthGramsPerDay(int c, double day)
    {
        CropParameters crop = _design.Parts.Crops[c];
        int month = _design.DateOf(Math.Min(day, _design.Farm.LengthDays - 1)).Month - 1;
        double hours = _design.Bands.Get("daylight", "h");
        double growth = 0;
        foreach (int bed in BedsOn(c, day))
        {
            double moles = _light.SunMoles(month) + _light.LampMoles(_design.Parts.Beds[bed].Basin);
            double photons = moles / (hours * UnitConstants.SecondsPerHour * Growth.MolesPerMicromole);
            growth += _design.Parts.Beds[bed].AreaSquareMetres * _design.Bands.Get("canopyShare", "1") * moles
                * Growth.LightUseEfficiency(crop, photons, _design.Farm.House.CarbonDioxidePpm, crop.AirOptimumCelsius);
        }

        return growth;
    }
}
