using FarmTwin.Farm.Fish;
using FarmTwin.Scenarios.Library;
using static FarmTwin.Farm.Tests.PublishedTable;

namespace FarmTwin.Farm.Tests.Fish;

public class StressAndSurvivalTests
{
    private static readonly FishParameters Nile = FishLibrary.Nile;

    [Fact]
    public void Growth_under_ammonia_follows_the_straight_line_that_was_measured()
    {
        foreach (IReadOnlyDictionary<string, string> row in Read("fish-ammonia-growth").Rows)
        {
            Assert.Equal(Number(row, "growth"), Stress.AmmoniaFactor(Nile, Number(row, "ammonia")), 0.03);
        }

        var cautious = FishParameters.From(ParameterLibrary.Load("fish", "nile-tilapia"), cautiousAmmonia: true);
        Assert.Equal(1, Stress.AmmoniaFactor(cautious, 0.068));
        Assert.Equal(0, Stress.AmmoniaFactor(cautious, 0.50));
        Assert.True(Stress.AmmoniaFactor(cautious, 0.262) < Stress.AmmoniaFactor(Nile, 0.262));
    }

    [Fact]
    public void Nitrate_to_500_costs_no_growth_and_never_more_than_half()
    {
        Assert.InRange(Stress.NitrateFactor(Nile, 500), 0.97, 1);
        Assert.Equal(2.0 / 3, Stress.NitrateFactor(Nile, 1000), 12);
        Assert.Equal(0.5, Stress.NitrateFactor(Nile, 5000));
    }

    [Fact]
    public void Low_oxygen_cuts_intake_and_conversion_as_measured()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = Read("fish-low-oxygen").Rows;
        FishWater low = FishLibrary.Clean(28) with { OxygenMilligramsPerLitre = Number(rows[1], "oxygen") };
        double intake = Feeding.AppetiteGramsPerFishDay(Nile, 8.1, low) / Feeding.AppetiteGramsPerFishDay(Nile, 8.1, FishLibrary.Clean(28));
        Assert.InRange(intake, 0.45, 0.70);
        Assert.Equal(0.58, intake, 0.005);
        Assert.InRange(Number(rows[1], "intakeRatio"), 0.45, 0.70);

        double worse = Conversion(low) / Conversion(FishLibrary.Clean(28));
        Assert.InRange(worse, 2, 5);
        Assert.Equal(3.3, worse, 0.15);
    }

    internal static double Conversion(FishWater water)
    {
        var tank = new ConstantTank(Nile, water, 1, 8.1);
        tank.Run(7);
        return tank.FeedConversion;
    }

    [Fact]
    public void More_oxygen_means_heavier_fish_in_the_long_run()
    {
        double before = 0;
        foreach (IReadOnlyDictionary<string, string> row in Read("fish-oxygen-long-run").Rows.OrderBy(r => Number(r, "rank")))
        {
            var tank = new ConstantTank(
                FishLibrary.Blue, FishLibrary.Clean(28) with { OxygenMilligramsPerLitre = Number(row, "oxygen") }, 1, 27.3);
            tank.Run(200);
            Assert.True(tank.Cohort.MeanGrams > before * 1.05);
            before = tank.Cohort.MeanGrams;
        }
    }

    [Fact]
    public void The_critical_oxygen_rises_with_size()
    {
        Assert.Equal(1, Stress.OxygenFactor(Nile, 100, 3));
        Assert.Equal(4.0 / 5.5, Stress.OxygenFactor(Nile, 400, 4), 12);
        Assert.Equal(4.0 / 4.25, Stress.OxygenFactor(Nile, 200, 4), 12);
    }

    [Fact]
    public void Cold_kills_within_the_published_ranges()
    {
        foreach (IReadOnlyDictionary<string, string> row in Read("fish-cold-deaths").Rows)
        {
            double dead = 100 * Dead(FishLibrary.Clean(Number(row, "celsius")), 100, Number(row, "hours"));
            Assert.InRange(dead, Number(row, "leastPercentDead"), Number(row, "mostPercentDead"));
        }

        Assert.Equal(0.42, Dead(FishLibrary.Clean(10.5), 100, 24), 0.005);
        Assert.Equal(0.80, Dead(FishLibrary.Clean(10.5), 100, 72), 0.005);
        Assert.InRange(Dead(FishLibrary.Clean(8), 100, 24), 0.95, 1);
    }

    [Fact]
    public void Half_are_dead_after_96_hours_at_the_lethal_concentrations()
    {
        foreach (IReadOnlyDictionary<string, string> row in Read("fish-lethal-concentrations").Rows)
        {
            double lethal = Number(row, "lethal");
            FishWater water = FishLibrary.Clean(28) with { ChlorideMilligramsPerLitre = Number(row, "chloride") };
            water = row["toxin"] == "ammonia"
                ? water with { UnionizedAmmoniaMilligramsNPerLitre = lethal }
                : water with { NitriteMilligramsNPerLitre = lethal };
            Assert.Equal(0.5, Dead(water, Number(row, "grams"), 96), 0.01);
        }
    }

    [Fact]
    public void Chloride_protects_against_nitrite_as_far_as_it_was_tested()
    {
        double before = 0;
        for (int chloride = 0; chloride <= 70; chloride += 10)
        {
            double lethal = Survival.NitriteLethalMilligramsNPerLitre(Nile, chloride);
            Assert.True(lethal > before);
            before = lethal;
        }

        Assert.Equal(before, Survival.NitriteLethalMilligramsNPerLitre(Nile, 300));
    }

    [Fact]
    public void Ammonia_within_the_growth_limit_kills_nobody_and_a_jump_kills_within_hours()
    {
        Assert.InRange(Dead(FishLibrary.Clean(28) with { UnionizedAmmoniaMilligramsNPerLitre = 0.1 }, 50, 240) - Dead(FishLibrary.Clean(28), 50, 240), 0, 1e-6);
        Assert.InRange(Dead(FishLibrary.Clean(28) with { UnionizedAmmoniaMilligramsNPerLitre = 5 }, 50, 12), 0.9, 1);
    }

    [Fact]
    public void Suffocation_begins_below_one_milligram()
    {
        Assert.InRange(Dead(FishLibrary.Clean(28) with { OxygenMilligramsPerLitre = 1.1 }, 50, 10), 0, 0.001);
        Assert.Equal(1 - Math.Exp(-0.5), Dead(FishLibrary.Clean(28) with { OxygenMilligramsPerLitre = 0.8 }, 50, 10), 0.001);
        Assert.Equal(1 - Math.Exp(-1), Dead(FishLibrary.Clean(28) with { OxygenMilligramsPerLitre = 0.2 }, 50, 2), 0.001);
    }

    [Theory]
    [InlineData(0.983, 1.0206e-4)]
    [InlineData(0.899, 6.34e-4)]
    public void A_survival_over_168_days_is_a_daily_hazard(double survival, double perDay)
    {
        // Calibrated: the base mortalities of the two species are these.
        Assert.Equal(perDay, -Math.Log(survival) / 168, perDay * 0.001);
        FishParameters parameters = survival > 0.95 ? Nile : FishLibrary.Red;
        Assert.Equal(1 - survival, Dead(FishLibrary.Clean(28), 100, 168 * 24, parameters), 0.0005);
    }

    [Theory]
    [InlineData(25, 0.01)]
    [InlineData(18, 0.0199)]
    public void Handling_costs_its_share_within_a_week_and_twice_that_in_the_cold(double celsius, double share)
    {
        var cohort = new Cohort("c", 0, 1000, 100, 0.1, 0);
        Survival.Handle(cohort, Nile);
        double dead = 0;
        for (int hour = 0; hour < 24 * 14; hour++)
        {
            dead += Survival.Step(cohort, Nile, 1, FishLibrary.Clean(celsius)).Number;
        }

        Assert.Equal(0, cohort.HandlingHoursLeft);
        double expected = 1 - ((1 - share) * Math.Exp(-14 * Nile.BaseMortalityPerDay));
        Assert.Equal(expected * 1000, dead, 1e-6 * 1000);
    }

    [Fact]
    public void Deaths_do_not_depend_on_the_step_and_bodies_take_their_pools()
    {
        var once = new Cohort("c", 0, 1000, 100, 0.1, 0);
        Feeding.Meal(once, Nile, FishLibrary.Feed, 1000, 1, 0.03, FishLibrary.Clean(28));
        Survival.Handle(once, Nile);
        Cohort often = once.Clone();
        FishWater cold = FishLibrary.Clean(11);
        ElementGrams whole = Survival.Step(once, Nile, 200, cold).Elements;
        ElementGrams sum = ElementGrams.Zero;
        for (int i = 0; i < 200; i++)
        {
            sum += Survival.Step(often, Nile, 1, cold).Elements;
        }

        Assert.Equal(once.Number, often.Number, once.Number * 1e-11);
        Assert.Equal(whole.Nitrogen, sum.Nitrogen, whole.Nitrogen * 1e-11);
        double pools = once.DissolvedNitrogenFirstStageGrams / once.Number;
        Assert.Equal(pools, often.DissolvedNitrogenFirstStageGrams / often.Number, pools * 1e-11);
        Assert.Equal(1000, once.DiedNumber + once.Number, 1e-9);
    }

    internal static double Dead(FishWater water, double grams, double hours, FishParameters? parameters = null)
    {
        var cohort = new Cohort("c", 0, 1, grams, 0.1, 0);
        return Survival.ExpectedDeaths(cohort, parameters ?? Nile, hours, water);
    }
}
