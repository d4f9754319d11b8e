using System.Text;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Fish;

/// <summary>Species besides the tilapias, against what was published of them; and a species that only a file describes.</summary>
public class FishSpeciesTests
{
    private static readonly FishParameters Trout = Load("rainbow-trout");
    private static readonly FishParameters Catfish = Load("channel-catfish");
    private static readonly FishParameters Carp = Load("common-carp");

    [Fact]
    public void A_trout_batch_has_the_slope_that_its_file_takes_over()
    {
        PublishedTable table = PublishedTable.Read("fish-trout-batch");
        double slope = GrowthCurves.GrowthCoefficient(At(table, 0, "startGrams"), At(table, 0, "endGrams"), At(table, 0, "days"));
        Assert.Equal(At(table, 0, "slope"), slope, 0.01 * slope);
        Assert.Equal(slope, Trout.GrowthCoefficient, 0.01 * slope);
    }

    // Maintenance 0.40 and 1.90 % of weight a day at 12 and 30 °C (Goolish & Adelman 1984).
    [Fact]
    public void Maintenance_of_carp_rises_with_warmth_as_measured()
    {
        PublishedTable table = PublishedTable.Read("fish-carp-maintenance");
        double at30 = Feeding.MaintenanceGramsPerDay(Carp, 10, 30) / 10;
        for (int row = 0; row < table.Rows.Count; row++)
        {
            double model = Feeding.MaintenanceGramsPerDay(Carp, 10, At(table, row, "celsius")) / 10;
            Assert.InRange(model / at30 / (At(table, row, "maintenancePercent") / At(table, 3, "maintenancePercent")), 0.85, 1.15);
        }

        Assert.InRange(100 * at30, 1.8, 2.0);
    }

    [Fact]
    public void Growth_of_carp_over_temperature_has_the_measured_form_and_is_best_near_27_degrees()
    {
        PublishedTable table = PublishedTable.Read("fish-carp-growth");
        for (int row = 0; row < table.Rows.Count; row++)
        {
            double measured = At(table, row, "growthPercent") / At(table, 3, "growthPercent");
            Assert.Equal(measured, Feeding.TemperatureFactor(Carp, At(table, row, "celsius")), 0.08);
        }

        Assert.InRange(Carp.OptimumGrowthCelsius, 26, 29);
        Assert.Equal(3.57 / 3.82, Feeding.TemperatureFactor(Carp, 32), 0.05);
    }

    // Best 26–29 °C, poor below 21, none at 18; lethal 33.5 °C; feeding falls below 5 mg/L, growth is retarded below 3.
    [Fact]
    public void Catfish_keep_the_limits_that_were_reported()
    {
        Assert.True(Feeding.TemperatureFactor(Catfish, 26) > 0.85 && Feeding.TemperatureFactor(Catfish, 29) > 0.99);
        Assert.InRange(Feeding.TemperatureFactor(Catfish, 20.5), 0, 0.5);
        Assert.InRange(Feeding.TemperatureFactor(Catfish, 18), 0, 0.1);
        Assert.True(Feeding.TemperatureFactor(Catfish, 29) > Feeding.TemperatureFactor(Catfish, 25)
            && Feeding.TemperatureFactor(Catfish, 29) > Feeding.TemperatureFactor(Catfish, 33));
        Assert.Equal(0.6, Stress.OxygenFactor(Catfish, 100, 3), 3);
        Assert.Equal(1, Stress.OxygenFactor(Catfish, 100, 5), 3);
        Assert.True(Stress.ConversionFactor(Catfish, 2.5) < 1);
        Assert.Equal(0, Survival.Hazards(Some(100), Catfish, FishLibrary.Clean(33)).Heat);
        Assert.True(Survival.Hazards(Some(100), Catfish, FishLibrary.Clean(36)).Heat > 0.1);
    }

    // SRAC 283: the blue tilapia lives down to about 8.9 °C, one or two degrees below the Nile tilapia.
    [Fact]
    public void Blue_tilapia_outlive_Nile_tilapia_in_the_cold_and_die_near_9_degrees()
    {
        double Left(FishParameters fish, double celsius, double hours) =>
            1 - (Survival.ExpectedDeaths(Some(1), fish, hours, FishLibrary.Clean(celsius)) / 100);

        Assert.True(Left(FishLibrary.Nile, 10.5, 72) < 0.5);
        Assert.True(Left(FishLibrary.Blue, 10.5, 72) > 0.95);
        Assert.InRange(Left(FishLibrary.Blue, 8.9, 72), 0, 0.5);
        Assert.True(Left(FishLibrary.Blue, 7.4, 24) < 0.15);
    }

    [Fact]
    public void Cold_water_suits_trout_and_warm_water_kills_them()
    {
        Assert.True(Feeding.TemperatureFactor(Trout, 15) > 0.99 && Feeding.TemperatureFactor(Trout, 13) > 0.98);
        Assert.True(Feeding.TemperatureFactor(Trout, 20.5) < 0.5);
        Assert.True(Survival.ExpectedDeaths(Some(100), Trout, 24, FishLibrary.Clean(27)) > 90);
    }

    // Roseboom & Richey (1977): half of the channel catfish die in 96 h at 0.09 mg/L of residual chlorine.
    [Fact]
    public void Residual_chlorine_kills_half_of_the_catfish_in_96_hours_at_its_lethal_level()
    {
        FishWater water = FishLibrary.Clean(25) with { ChlorineMilligramsPerLitre = 0.09 };
        Assert.Equal(Math.Log(2) / 96, Survival.Hazards(Some(100), Catfish, water).Chlorine, 6);
    }

    // Case 8 of a tilapia batch: 0.0345, 0.0383, 0.0258 and 0.0207 g^(1/3)/d; one rate for all misses the last weight by a third.
    [Fact]
    public void Steps_of_the_growth_rate_by_weight_follow_a_batch_that_slows_down()
    {
        PublishedTable table = PublishedTable.Read("fish-batch-stages");
        double early = (At(table, 1, "slopeFromBefore") + At(table, 2, "slopeFromBefore")) / 2;
        double middle = At(table, 3, "slopeFromBefore");
        FishParameters stepped = FishLibrary.Nile with
        {
            GrowthCoefficient = middle,
            FingerlingGrowthShare = early / middle,
            FingerlingGrams = At(table, 2, "grams"),
            LargeGrowthShare = At(table, 4, "slopeFromBefore") / middle,
            LargeGrams = At(table, 3, "grams"),
        };
        double root = Math.Cbrt(At(table, 0, "grams"));
        double constant = root;
        for (double day = 0; day < At(table, 4, "day"); day++)
        {
            root += stepped.GrowthCoefficientAt(root * root * root);
            constant += early;
        }

        Assert.Equal(At(table, 4, "grams"), root * root * root, 0.03 * At(table, 4, "grams"));
        Assert.True(constant * constant * constant > 1.5 * At(table, 4, "grams"));
    }

    [Fact]
    public void Every_fish_says_what_its_numbers_cannot_say() =>
        Assert.All(ParameterLibrary.Names("fish"), n => Assert.True(ParameterLibrary.Load("fish", n).About.Length > 60, n));

    [Fact]
    public void A_fish_of_ones_own_is_one_file_and_lives_a_season()
    {
        string file = File.ReadAllText(Path.Combine(Farms.Root, "src/FarmTwin.Scenarios/Library/fish/common-carp.json"))
            .Replace("Common carp and koi", "Pond perch", StringComparison.Ordinal)
            .Replace("\"growthCoefficient\": {\"value\": 0.0182", "\"growthCoefficient\": {\"value\": 0.021", StringComparison.Ordinal);
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(file));
        ParameterSet perch = ParameterLibrary.Read(stream, "pond-perch");
        Assert.Equal(0.021, perch.Get("growthCoefficient", "g^(1/3)/d"));
        var library = new FarmLibrary([.. ShippedLibrary.Library.All, ("fish", perch)]);
        FarmDescription farm = Farms.FirstSeason with
        {
            LengthDays = 60,
            Stocking = Farms.FirstSeason.Stocking.With("first", s => s with { Fish = "pond-perch", Feed = "catfish-32", WaitForCycle = false, AfterDays = 20 }),
        };
        var season = new Season(farm, library, 1);
        season.AdvanceToEnd();
        Cohort cohort = season.State.Cohorts[0][0];
        Assert.True(cohort.MeanGrams > 60 && cohort.Number > 40, $"{cohort.Number} fish of {cohort.MeanGrams} g");
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void The_strain_rate_of_a_batch_scales_its_growth_and_that_of_no_other()
    {
        FarmDescription farm = Farms.FirstSeason with
        {
            Stocking = Farms.FirstSeason.Stocking
                .With("first", s => s with { WaitForCycle = false, AfterDays = 20, StrainRate = 1.25 })
                .With("second", s => s with { WaitForCycle = false, AfterDays = 20 }),
        };
        Season season = Farms.Run(farm, 70);
        Cohort fast = season.State.Cohorts[0][0];
        Cohort usual = season.State.Cohorts[1][0];
        double ratio = (Math.Cbrt(fast.MeanGrams) - Math.Cbrt(50)) / (Math.Cbrt(usual.MeanGrams) - Math.Cbrt(50));
        Assert.InRange(ratio, 1.15, 1.3);
    }

    private static double At(PublishedTable table, int row, string column) => PublishedTable.Number(table.Rows[row], column);

    private static Cohort Some(double grams) => new("some", 0, 100, grams, 0.1, 0);

    private static FishParameters Load(string name) => FishParameters.From(ParameterLibrary.Load("fish", name));
}
