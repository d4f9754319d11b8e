using FarmTwin.Farm.Biofilter;

namespace FarmTwin.Farm.Tests.Biofilter;

public sealed class StartUpTests
{
    [Fact]
    public void Start_up_courses_repeat_the_recorded_peaks_and_days()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-startup-regression").Rows)
        {
            StartUpCourse course = TankOf(row).Explicit(120, 1);
            string name = row["case"];
            Near(PublishedTable.Number(row, "tanPeak"), course.Tan.Max(), 0.03, name);
            Near(PublishedTable.Number(row, "nitritePeak"), course.Nitrite.Max(), 0.03, name);
            NearDay(row, "tanPeakDay", StartUpCourse.DayOfPeak(course.Tan));
            NearDay(row, "nitritePeakDay", StartUpCourse.DayOfPeak(course.Nitrite));
            NearDay(row, "tanClearDay", StartUpCourse.BelowFrom(course.Tan, 0.5));
            NearDay(row, "nitriteClearDay", StartUpCourse.BelowFrom(course.Nitrite, 0.5));
        }
    }

    [Fact]
    public void The_hourly_joint_solve_repeats_the_explicit_six_minute_course_within_three_percent()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-startup-regression").Rows)
        {
            StartUpTank tank = TankOf(row);
            StartUpCourse fine = tank.Explicit(120, 0.1), hourly = tank.Implicit(120, 1);
            string name = row["case"];
            Near(fine.Tan.Max(), hourly.Tan.Max(), 0.03, name);
            Near(fine.Nitrite.Max(), hourly.Nitrite.Max(), 0.03, name);
            Near(fine.Nitrate[120], hourly.Nitrate[120], 0.01, name);
            Assert.InRange(StartUpCourse.BelowFrom(hourly.Tan, 0.5) - StartUpCourse.BelowFrom(fine.Tan, 0.5), -1, 1);
            Assert.InRange(StartUpCourse.BelowFrom(hourly.Nitrite, 0.5) - StartUpCourse.BelowFrom(fine.Nitrite, 0.5), -1, 1);
        }
    }

    [Fact]
    public void The_joint_solve_closes_nitrogen_and_stays_positive_where_an_explicit_step_would_not()
    {
        var bed = new StartUpTank(1150, 25, 7.5, 6, 0.5, 0.5) { LoadPerDay = _ => 350 };
        StartUpCourse course = bed.Implicit(30, 1);
        for (int day = 0; day <= 30; day++)
        {
            Assert.True(course.Tan[day] >= 0 && course.Nitrite[day] >= 0);
            Assert.Equal(350.0 * day, course.Tan[day] + course.Nitrite[day] + course.Nitrate[day], 1e-6 * 350 * 30);
        }
    }

    [Fact]
    public void Carp_filter_maturation_calibrated_has_the_published_levels_and_days()
    {
        Dictionary<string, double> measured = CarpFilter();
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-carp-maturation").Rows)
        {
            Assert.InRange(measured[row["quantity"]], PublishedTable.Number(row, "low"), PublishedTable.Number(row, "high"));
        }
    }

    internal static Dictionary<string, double> CarpFilter()
    {
        var tank = new StartUpTank(50, 23, 7.6, 6.5, 1.5e-3, 3e-4) { LoadPerDay = _ => 0.8 };
        StartUpCourse course = tank.Explicit(60, 1);
        return new Dictionary<string, double>
        {
            ["tanPeak"] = course.Tan.Max(),
            ["tanPeakDay"] = StartUpCourse.DayOfPeak(course.Tan),
            ["tanBelowQuarterDay"] = StartUpCourse.BelowFrom(course.Tan, 0.25),
            ["nitritePeak"] = course.Nitrite.Max(),
            ["nitritePeakDay"] = StartUpCourse.DayOfPeak(course.Nitrite),
        };
    }

    [Fact]
    public void Five_percent_mature_media_cut_the_ammonia_peak_by_more_than_four_fifths_and_cycle_within_ten_days()
    {
        StartUpCourse bare = Constant(1e-4).Explicit(60, 1);
        double xA = 0, xB = 0;
        FilmGrowth.Seed(StartUpTank.Parameters, ref xA, ref xB, 0.05);
        double share = xA / StartUpTank.Parameters.AmmoniaOxidizers.MaximumBiomassGramsCodPerSquareMetre;
        StartUpCourse seeded = Constant(1e-4 + share).Explicit(60, 1);
        Assert.True(seeded.Tan.Max() < 0.2 * bare.Tan.Max());
        Assert.True(StartUpCourse.BelowFrom(seeded.Tan, 0.5) < 10 && StartUpCourse.BelowFrom(seeded.Nitrite, 0.5) < 10);
    }

    [Fact]
    public void Nitrite_peaks_about_a_fortnight_after_ammonia_without_seeding()
    {
        StartUpCourse course = Constant(1e-4).Explicit(60, 1);
        Assert.InRange(StartUpCourse.DayOfPeak(course.Nitrite) - StartUpCourse.DayOfPeak(course.Tan), 12, 16);
    }

    [Fact]
    public void A_ramp_of_feed_on_a_seeded_small_farm_keeps_both_below_the_recorded_limits()
    {
        var farm = new StartUpTank(114 / 3.0, 26, 7.2, 6.5, 0.0501, 0.0501)
        {
            LoadPerDay = day => (60 + (540 * Math.Min(1, day / 60))) * 0.092 * 0.32 / 3,
        };
        StartUpCourse course = farm.Implicit(120, 1);
        Assert.InRange(course.Tan.Max(), 0.45, 0.50);
        Assert.InRange(course.Nitrite.Max(), 0.52, 0.58);
    }

    private static StartUpTank Constant(double start) => new(40, 25, 7.4, 6.5, start, start) { LoadPerDay = _ => 1 };

    private static StartUpTank TankOf(IReadOnlyDictionary<string, string> row)
    {
        double load = PublishedTable.Number(row, "load"), start = PublishedTable.Number(row, "start");
        double from = row["rampDays"].Length == 0 ? load : PublishedTable.Number(row, "rampFrom");
        double days = row["rampDays"].Length == 0 ? 1 : PublishedTable.Number(row, "rampDays");
        return new StartUpTank(
            PublishedTable.Number(row, "area"), PublishedTable.Number(row, "celsius"), PublishedTable.Number(row, "ph"), PublishedTable.Number(row, "oxygen"), start, start)
        {
            Dose = PublishedTable.Number(row, "dose"),
            LoadPerDay = day => from + ((load - from) * Math.Min(1, day / days)),
        };
    }

    private static void Near(double expected, double actual, double relative, string name) =>
        Assert.True(Math.Abs(actual - expected) <= relative * expected, $"{name}: {actual} against {expected}");

    private static void NearDay(IReadOnlyDictionary<string, string> row, string column, int actual)
    {
        if (row[column].Length > 0)
        {
            Assert.True(Math.Abs(actual - PublishedTable.Number(row, column)) <= 1, $"{row["case"]} {column}: {actual} against {row[column]}");
        }
    }
}
