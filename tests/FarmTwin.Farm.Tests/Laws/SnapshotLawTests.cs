using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Tests.Laws;

/// <summary>The same seed gives the same bytes; a saved season goes on as if it had never stopped.</summary>
public class SnapshotLawTests
{
    private const int Days = 60;
    private const int SavedAt = 40;
    private static readonly FarmDescription Farm = Farms.FirstSeason;
    private static readonly Season Through = Farms.Run(Farm, Days);

    [Fact]
    public void The_same_seed_gives_the_same_bytes_and_another_seed_others()
    {
        AssertSame(Through, Farms.Run(Farm, Days));
        Season other = Farms.Run(Farm, Days, seed: 2);
        Assert.NotEqual(Farms.Days(Through, "outside_air_C"), Farms.Days(other, "outside_air_C"));
        Assert.NotEqual(Farms.Days(Through, "nitrate_plant_loop_mgN_per_L"), Farms.Days(other, "nitrate_plant_loop_mgN_per_L"));
    }

    [Fact]
    public void A_season_saved_and_gone_back_to_goes_on_bit_for_bit_in_itself_and_in_an_equal_one()
    {
        Season season = Farms.Start(Farm, Days);
        season.Advance(SavedAt * UnitConstants.SecondsPerDay);
        SeasonSnapshot saved = season.Save();
        season.AdvanceToEnd();
        AssertSame(Through, season);

        season.Restore(saved);
        Assert.Equal(SavedAt * UnitConstants.SecondsPerDay, season.NowSeconds);
        season.AdvanceToEnd();
        AssertSame(Through, season);

        Season equal = Farms.Start(Farm, Days);
        equal.Restore(saved);
        equal.AdvanceToEnd();
        AssertSame(Through, equal);
    }

    [Fact]
    public void A_season_saved_in_the_middle_of_a_day_goes_on_bit_for_bit()
    {
        long noon = (SavedAt * UnitConstants.SecondsPerDay) + (UnitConstants.SecondsPerDay / 2);
        Season season = Farms.Start(Farm, Days);
        season.Advance(noon);
        SeasonSnapshot saved = season.Save();
        Season equal = Farms.Start(Farm, Days);
        equal.Restore(saved);
        equal.AdvanceToEnd();
        season.AdvanceToEnd();
        AssertSame(season, equal);
        AssertSame(Through, season);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    public void A_season_that_takes_over_the_state_of_an_equal_one_goes_on_bit_for_bit(double dayPart)
    {
        Season season = Farms.Start(Farm, Days);
        season.Advance((long)((SavedAt + dayPart) * UnitConstants.SecondsPerDay));
        Season equal = Farms.Start(Farm, Days);
        equal.TakeOver(season.Save());
        equal.AdvanceToEnd();
        AssertSame(Through, equal);
    }

    [Fact]
    public void A_season_with_alarms_and_open_faults_is_taken_over_bit_for_bit()
    {
        FarmDescription whole = Farms.Read("whole-farm");
        Season through = Farms.Start(whole, 60);
        through.Advance((45 * UnitConstants.SecondsPerDay) + (22 * 3600));
        SeasonSnapshot saved = through.Save();
        through.AdvanceToEnd();
        Season equal = Farms.Start(whole, 60);
        equal.TakeOver(saved);
        equal.AdvanceToEnd();
        AssertSame(through, equal);
    }

    [Fact]
    public void A_season_goes_on_with_a_state_of_another_plan_and_its_ledgers_close()
    {
        Season other = Farms.Start(Farm with { Stocking = Farm.Stocking.ToDictionary(s => s.Key, s => s.Value with { Number = 90, AfterDays = 2 }) }, Days);
        other.Advance(SavedAt * UnitConstants.SecondsPerDay);
        Season plan = Farms.Start(Farm, Days);
        plan.TakeOver(other.Save());
        Assert.Equal(other.State.Totals.FeedGrams, plan.State.Totals.FeedGrams);
        plan.AdvanceToEnd();
        double[] stocks = plan.ClosingStocks();
        Assert.All(Enumerable.Range(0, stocks.Length), i => Assert.InRange(plan.State.Books[i].ClosureError(stocks[i]), 0, 1e-9));
    }

    [Fact]
    public void A_season_of_another_farm_is_not_taken_over_and_the_difference_is_named()
    {
        Season other = Farms.Start(Farm, Days);
        Season plan = Farms.Start(Farm with { Lanes = Farm.Lanes.ToDictionary(l => l.Key, l => l.Value with { Boards = l.Value.Boards - 1 }) }, Days);
        DescriptionException refused = Assert.Throws<DescriptionException>(() => plan.TakeOver(other.Save()));
        Assert.Contains("'lanes' differ", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_branches_of_a_season_do_not_touch_each_other()
    {
        Season season = Farms.Start(Farm, Days);
        season.Advance(SavedAt * UnitConstants.SecondsPerDay);
        SeasonSnapshot saved = season.Save();
        var cold = new SetHeater { Day = SavedAt, Heater = "water", HoldCelsius = 20 };
        season.Apply(cold);
        season.AdvanceToEnd();
        double[] first = Farms.Days(season, "fish_water_C");

        season.Restore(saved);
        season.AdvanceToEnd();
        AssertSame(Through, season);

        season.Restore(saved);
        season.Apply(cold);
        season.AdvanceToEnd();
        Assert.Equal(first, Farms.Days(season, "fish_water_C"));
        Assert.True(first[^1] < Farms.Days(Through, "fish_water_C")[^1] - 3);
        Assert.Equal("set heater", season.Log.Events.Single(e => e.Seconds == SavedAt * UnitConstants.SecondsPerDay && e.What == "set heater").What);
    }

    [Fact]
    public void Two_plans_under_one_seed_meet_the_same_weather()
    {
        FarmDescription other = Farm with
        {
            Stocking = new Dictionary<string, StockingDescription>(),
            Feeding = Farm.Feeding with { RationShare = 0.5 },
            Crops = Farm.Crops.With("lettuce", c => c with { CellsPerSowing = 20 }),
        };
        Season season = Farms.Run(other, Days, stepMinutes: 30);
        Assert.Equal(Farms.Days(Through, "outside_air_lowest_C"), Farms.Days(season, "outside_air_lowest_C"));
    }

    [Fact]
    public void Seasons_side_by_side_on_several_threads_give_what_one_alone_gives()
    {
        var seasons = new Season[4];
        Parallel.For(0, seasons.Length, new ParallelOptions { MaxDegreeOfParallelism = 4 }, i => seasons[i] = Farms.Run(Farm, 20));
        Season alone = Farms.Run(Farm, 20);
        Assert.All(seasons, s => AssertSame(alone, s));
    }

    [Fact]
    public void Another_replicate_of_a_seed_meets_other_weather()
    {
        var replicate = new Season(Farm with { LengthDays = 10 }, Scenarios.Library.ShippedLibrary.Library, 1, replicate: 1);
        replicate.AdvanceToEnd();
        Assert.NotEqual(Farms.Days(Through, "outside_air_C")[..10], Farms.Days(replicate, "outside_air_C"));
    }

    internal static void AssertSame(Season expected, Season actual)
    {
        Assert.Equal(expected.Record.Days.RowCount, actual.Record.Days.RowCount);
        Assert.Equal(expected.Record.Hours.RowCount, actual.Record.Hours.RowCount);
        for (int row = 0; row < expected.Record.Days.RowCount; row++)
        {
            AssertRow(expected.Record.Days.Row(row), actual.Record.Days.Row(row), expected, $"day {row}");
        }

        for (int row = 0; row < expected.Record.Hours.RowCount; row++)
        {
            Assert.True(Bits(expected.Record.Hours.Row(row)).SequenceEqual(Bits(actual.Record.Hours.Row(row))), $"hour {row} differs");
        }

        Assert.Equal(expected.Log.Events, actual.Log.Events);
        Assert.Equal(expected.Record.Peaks, actual.Record.Peaks);
        Assert.Equal(expected.ClosingStocks(), actual.ClosingStocks());
    }

    private static void AssertRow(ReadOnlySpan<double> expected, ReadOnlySpan<double> actual, Season season, string what)
    {
        long[] left = Bits(expected);
        long[] right = Bits(actual);
        for (int i = 0; i < left.Length; i++)
        {
            Assert.True(left[i] == right[i], $"{what}: {season.Record.Days.Columns[i].Name} is {actual[i]:R}, not {expected[i]:R}");
        }
    }

    private static long[] Bits(ReadOnlySpan<double> row)
    {
        var bits = new long[row.Length];
        for (int i = 0; i < row.Length; i++)
        {
            bits[i] = BitConverter.DoubleToInt64Bits(row[i]);
        }

        return bits;
    }
}
