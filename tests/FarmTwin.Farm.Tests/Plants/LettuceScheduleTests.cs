using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

/// <summary>Whole schedules from seed to head, through lots with their nutrient pools in a rich solution.</summary>
public sealed class LettuceScheduleTests
{
    [Fact]
    public void Calibrated_Cornell_lettuce_reaches_five_ounces_in_35_days()
    {
        PlantLot lot = Head(17, 24, 19);
        Crops.InBand("cornell_lettuce", lot.FreshShootGrams(Crops.Lettuce));
        Assert.Equal(6.73, lot.GramsDryPerPlant, 0.005);
        Assert.Equal(1, lot.LastStress.Nutrient, 9);
    }

    [Fact]
    public void The_light_scan_is_reproduced()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("plants-lettuce-light-scan").Rows)
        {
            double Of(string column) => PublishedTable.Number(row, column);
            PlantLot lot = Head(
                Of("dli"), 24, 19, Of("co2"), Of("transplant_density"), Of("final_density"), (int)Of("nursery_to"), (int)Of("trough_to"), (int)Of("last_day"));
            Assert.Equal(Of("shoot_g"), lot.FreshShootGrams(Crops.Lettuce), 0.6);
        }
    }

    [Fact]
    public void The_temperature_scan_is_reproduced()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("plants-lettuce-temperature-scan").Rows)
        {
            double mean = PublishedTable.Number(row, "mean_celsius");
            PlantLot lot = Head(17, mean + (5.0 * 8 / 24), mean - (5.0 * 16 / 24));
            Assert.Equal(PublishedTable.Number(row, "shoot_g"), lot.FreshShootGrams(Crops.Lettuce), 1.5);
        }
    }

    [Fact]
    public void Winter_light_stretches_the_days_to_a_saleable_head()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("plants-small-farm-finishing-days").Rows)
        {
            PlantParameters common = Crops.Common with { SiteFactor = PublishedTable.Number(row, "site_factor") };
            DayLight day = Crops.Day(Crops.Lettuce, PublishedTable.Number(row, "dli"), 16, 23, 18, 420);
            PlantLot lot = Crops.Seedlings(Crops.Lettuce);
            Crops.Grow(lot, Crops.Lettuce, Crops.Day(Crops.Lettuce, 120 * 16 * 0.0036, 16, 23, 18, 420), Crops.Rich, common, 12);
            Crops.Space(lot, 97);
            Crops.Grow(lot, Crops.Lettuce, day, Crops.Rich, common, 14);
            Crops.Space(lot, 28);
            int days = 0;
            while (lot.FreshShootGrams(Crops.Lettuce) < 170)
            {
                Crops.Grow(lot, Crops.Lettuce, day, Crops.Rich, common, 1);
                days++;
            }

            Assert.Equal(PublishedTable.Number(row, "days"), days, 1.0);
        }
    }

    [Fact]
    public void Dry_matter_content_is_a_free_statement_of_water()
    {
        PlantLot lot = Head(17, 24, 19);
        double thin = lot.FreshShootGrams(Crops.Lettuce with { DryMatterContent = 0.025 });
        double thick = lot.FreshShootGrams(Crops.Lettuce with { DryMatterContent = 0.055 });
        Assert.Equal(2.2, thin / thick, 9);
        Assert.Equal((lot.DryGrams / 0.04) - lot.DryGrams, lot.WaterLitres(Crops.Lettuce) * 1000, 9);
    }

    [Fact]
    public void Light_is_never_used_better_than_the_best_report()
    {
        double before = Head(17, 24, 19, last: 21).FreshShootGrams(Crops.Lettuce);
        double finish = (Head(17, 24, 19).FreshShootGrams(Crops.Lettuce) - before) * 38 / (17 * 14);
        Assert.InRange(finish, 18, 22);
        for (double ppfd = 50; ppfd <= 1000; ppfd += 50)
        {
            DayLight day = Crops.Day(Crops.Lettuce, ppfd * 24 * 0.0036, 24, 23, 23);
            Crops.InBand(
                "light_bound", Growth.ClosedCanopy(Crops.Lettuce, day, 1) * 0.87 / 0.04 / day.MolesPerSquareMetre);
        }
    }

    [Fact]
    public void The_finishing_raft_takes_up_what_lettuce_growers_measure()
    {
        PlantLot lot = Head(17, 24, 19, last: 21);
        double nitrogen = 0;
        double iron = 0;
        DayLight day = Crops.Day(Crops.Lettuce, 17, 16, 24, 19);
        Crops.Space(lot, 38);
        for (int i = 0; i < 14; i++)
        {
            Uptake.PlanDay(lot, Crops.Lettuce, Crops.Research, Crops.Rich);
            nitrogen += lot.Planned.Nitrogen;
            iron += lot.Planned.Iron;
            lot.Take(lot.Planned);
            Growth.DailyStep(lot, Crops.Lettuce, day, Crops.Rich, Crops.Research);
        }

        // Own figure for Cornell growth: 0.72 g N and 1.9 mg Fe a square metre and day. Above 1.5 would be a bug.
        Assert.Equal(0.72, nitrogen / 14 / lot.AreaSquareMetres, 0.05);
        Assert.Equal(1.9e-3, iron / 14 / lot.AreaSquareMetres, 0.2e-3);
    }

    internal static PlantLot Head(
        double dli,
        double litCelsius,
        double darkCelsius,
        double co2 = 400,
        double troughDensity = 97,
        double finalDensity = 38,
        int nurseryTo = 11,
        int troughTo = 21,
        int last = 35)
    {
        PlantLot lot = Crops.Seedlings(Crops.Lettuce);
        Crops.Grow(lot, Crops.Lettuce, Crops.Day(Crops.Lettuce, 21.6, 24, 24, 24), Crops.Rich, Crops.Research, nurseryTo - 2);
        DayLight day = Crops.Day(Crops.Lettuce, dli, 16, litCelsius, darkCelsius, co2);
        Crops.Space(lot, troughDensity);
        Crops.Grow(lot, Crops.Lettuce, day, Crops.Rich, Crops.Research, troughTo - nurseryTo);
        Crops.Space(lot, finalDensity);
        Crops.Grow(lot, Crops.Lettuce, day, Crops.Rich, Crops.Research, last - troughTo);
        return lot;
    }
}
