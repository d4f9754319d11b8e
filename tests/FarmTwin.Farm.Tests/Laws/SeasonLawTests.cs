using FarmTwin.Scenarios.Library;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;
using Xunit.Abstractions;

namespace FarmTwin.Farm.Tests.Laws;

/// <summary>Cause and effect that must hold in any season.</summary>
public class SeasonLawTests(ITestOutputHelper output)
{
    private static readonly FarmDescription Farm = Farms.FirstSeason;

    /// <summary>One tank stocked on day 0 into a filter with a third of mature media; fed by the plan whatever the water is.</summary>
    private static FarmDescription Stocked(int number, double grams) => Farm with
    {
        FishlessStart = null,
        Filters = Farm.Filters.With("beads", f => f with { MatureMediaShare = 0.3 }),
        Feeding = Farm.Feeding with { HeedWater = false, SettleInDays = 0 },
        Stocking = new Dictionary<string, StockingDescription>
        {
            ["first"] = Farm.Stocking["first"] with
            {
                Number = number, MeanGrams = grams, AfterDays = 0, WaitForCycle = false, SellFromGrams = 5000, RestockAfterDays = null,
            },
        },
        Crops = new Dictionary<string, CropPlanDescription>(),
        Lanes = new Dictionary<string, LaneDescription>(),
        Troughs = new Dictionary<string, TroughDescription>(),
        Nursery = null,
        Coupling = null,
    };

    [Fact]
    public void Without_fish_and_dosing_no_ammonia_is_nitrified_and_nothing_is_sold()
    {
        Season season = Farms.Run(
            Farm with
            {
                Stocking = new Dictionary<string, StockingDescription>(),
                FishlessStart = null,
                Dosing = new Dictionary<string, DosingDescription>(),
            },
            60);
        Assert.Equal(0, season.State.Totals.NitrifiedGrams, 1e-9);
        Assert.Equal(0, season.State.Totals.FishSoldGrams);
        Assert.Equal(0, season.State.Totals.FeedGrams);
        Engine.Ledger nitrogen = season.State.Books[FarmBooks.Names.ToList().IndexOf("nitrogen")];
        Assert.Equal(nitrogen.TotalIn, nitrogen.TotalInBy(Door.SourceWater) + nitrogen.TotalInBy(Door.Seed), 1e-9);
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void More_feed_never_makes_less_ammonia()
    {
        double[] rations = [0, 0.25, 0.5, 0.75, 1, 1.4];
        double made = -1;
        double peak = -1;
        foreach (double ration in rations)
        {
            FarmDescription fed = Stocked(80, 120);
            Season season = Farms.Run(fed with { Feeding = fed.Feeding with { RationShare = ration } }, 40);
            double tan = 0;
            for (int b = 0; b < season.State.Basins.Count; b++)
            {
                tan += season.State.Basins.Grams[WaterStep.At(b, Substance.Tan)];
            }

            double now = season.State.Totals.NitrifiedGrams + tan;
            double highest = season.Record.Peaks[season.Record.Hours.ColumnIndex("tan_fish_loop_mgN_per_L")].Highest;
            output.WriteLine($"ration {ration:0.00}: fed {season.State.Totals.FeedGrams:0} g, ammonia made {now:0.0} g N, highest TAN {highest:0.00} mg N/L");
            Assert.True(now >= made, $"at ration {ration} {now} g N of ammonia were made, {made} at the ration below");
            Assert.True(highest >= peak, $"at ration {ration} TAN peaked at {highest}, {peak} at the ration below");
            made = now;
            peak = highest;
        }
    }

    [Fact]
    public void Cold_water_kills_a_cohort_when_the_heater_is_off_and_not_when_it_is_on()
    {
        FarmDescription winter = Stocked(100, 100) with
        {
            Start = new DateOnly(2027, 1, 10),
            Site = Farm.Site with { WarmerKelvin = -8 },
            House = Farm.House with { AirHeater = null },
            Basins = Farm.Basins.ToDictionary(b => b.Key, b => b.Value with { InitialTemperatureCelsius = 24 }),
        };
        Season warm = Farms.Start(winter, 12);
        Season cold = Farms.Start(winter, 12);
        cold.Apply(new SetHeater { Day = 0, Heater = "water", HoldCelsius = 0 });
        warm.AdvanceToEnd();
        cold.AdvanceToEnd();
        output.WriteLine($"warm: {Farms.Days(warm, "fish_water_C")[^1]:0.0} °C, {warm.State.Totals.FishDied:0.0} died; "
            + $"cold: {string.Join(" ", Farms.Days(cold, "fish_water_C").Select(t => t.ToString("0")))} °C, {cold.State.Totals.FishDied:0.0} died");
        Assert.InRange(warm.State.Totals.FishDied, 0, 2);
        Assert.InRange(cold.State.Totals.FishDied, 50, 100);
        LedgerLawTests.AssertClosed(cold);
    }

    [Fact]
    public void A_tank_without_air_is_stepped_by_the_minute_and_by_the_hour_again_when_air_is_back()
    {
        Season season = Farms.Start(Stocked(90, 250), 4);
        season.Advance(2 * UnitConstants.SecondsPerDay);
        Assert.True(season.State.Operations.FineUntilSeconds <= season.NowSeconds);
        season.Apply(new SetAir { Day = 2, Basin = "tank-1", Share = 0 });
        season.Advance((2 * UnitConstants.SecondsPerDay) + (20 * 3600));
        double oxygen = season.State.Basins.MilligramsPerLitre(0, Substance.Oxygen);
        output.WriteLine($"20 h without air: {oxygen:0.00} mg/L");
        Assert.InRange(oxygen, 0, 4);
        Assert.True(season.State.Operations.FineUntilSeconds > season.NowSeconds);
        season.Apply(new SetAir { Day = 2, Basin = "tank-1", Share = 2 });
        season.Advance(season.NowSeconds + (3 * 3600));
        Assert.InRange(season.State.Basins.MilligramsPerLitre(0, Substance.Oxygen), 4.5, 10);
        Assert.True(season.State.Operations.FineUntilSeconds <= season.NowSeconds);
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void Without_air_a_tank_of_twenty_kilograms_a_cubic_metre_falls_three_milligrams_in_about_half_an_hour()
    {
        // Common practice, no source: 40 kg of fish in 2.0 m3 that take 300 mg O2/kg h fall 3 mg/L in 30 min. The twin reckons the uptake itself.
        FarmDescription tank = BareFarm.Of(
            new Dictionary<string, BasinDescription>
            {
                ["tank"] = BareFarm.Closed(BasinUse.FishTank, 2000, 27) with { AirLitresPerMinute = 300, DiffuserDepthMetres = 0.75, WettedSquareMetres = 6 },
            },
            new Dictionary<string, PipeDescription>()) with
        {
            Feeding = Farm.Feeding with { HeedWater = false, SettleInDays = 0 },
            Stocking = new Dictionary<string, StockingDescription>
            {
                ["fish"] = Farm.Stocking["first"] with
                {
                    Tank = "tank", Number = 160, MeanGrams = 250, AfterDays = 0, WaitForCycle = false, SellFromGrams = 5000, RestockAfterDays = null,
                },
            },
        };
        double[] minutes = [.. new[] { 60.0, 15, 1 }.Select(step => MinutesToFall(tank, step))];
        output.WriteLine($"3 mg/L in {string.Join(" / ", minutes)} min at steps of 60 / 15 / 1 min");
        Assert.All(minutes, m => Assert.InRange(m, 20, 45));
        Assert.InRange(minutes.Max() - minutes.Min(), 0, 2);
    }

    [Fact]
    public void From_the_minute_the_air_stops_the_clock_goes_by_the_minute()
    {
        Season straight = Farms.Start(Stocked(90, 250), 2);
        Season minutely = Farms.Start(Stocked(90, 250), 2);
        long cut = UnitConstants.SecondsPerDay + (13 * 3600) + 600;
        foreach (Season season in new[] { straight, minutely })
        {
            season.Advance(cut);
            season.Apply(new SetAir { Day = 1, Basin = "tank-1", Share = 0 });
        }

        straight.Advance(cut + 3000);
        for (int minute = 1; minute <= 50; minute++)
        {
            minutely.Advance(cut + (minute * 60));
        }

        Assert.Equal(minutely.State.Basins.Grams, straight.State.Basins.Grams);
    }

    private static double MinutesToFall(FarmDescription farm, double stepMinutes)
    {
        Season season = Farms.Start(farm, 2, stepMinutes: stepMinutes);
        long cut = UnitConstants.SecondsPerDay + (13 * 3600) + 600;
        season.Advance(cut);
        double before = season.State.Basins.MilligramsPerLitre(0, Substance.Oxygen);
        season.Apply(new SetAir { Day = 1, Basin = "tank", Share = 0 });
        for (int minute = 1; ; minute++)
        {
            season.Advance(cut + (minute * 60));
            if (season.State.Basins.MilligramsPerLitre(0, Substance.Oxygen) <= before - 3)
            {
                return minute;
            }
        }
    }

    [Fact]
    public void Nitrification_takes_its_oxygen_and_its_alkalinity()
    {
        Season season = Farms.Run(Stocked(80, 120), 40);
        double nitrified = season.State.Totals.NitrifiedGrams;
        double oxygen = season.State.Books[FarmBooks.Oxygen].TotalOutBy(Door.Nitrification);
        double charge = season.State.Books[FarmBooks.Charge].TotalOutBy(Door.Nitrification)
            - season.State.Books[FarmBooks.Charge].TotalInBy(Door.Nitrification);
        output.WriteLine($"{nitrified:0} g N, {oxygen / nitrified:0.000} g O2/g N, {charge / nitrified * UnitConstants.AtomicWeight.Nitrogen:0.000} eq/mol");
        Assert.InRange(oxygen / nitrified, 4.0, 4.4);
        Assert.InRange(charge / nitrified * UnitConstants.AtomicWeight.Nitrogen, 1.95, 2.01);
    }

    [Fact]
    public void Looking_at_a_season_does_not_change_it()
    {
        Season looked = Farms.Start(Farm, 50);
        Season left = Farms.Start(Farm, 50);
        for (int hour = 13; hour < 50 * 24; hour += 25)
        {
            left.Advance(hour * 3600L);
            looked.Advance(hour * 3600L);
            looked.ClosingStocks();
            looked.Save();
        }

        looked.AdvanceToEnd();
        left.AdvanceToEnd();
        SnapshotLawTests.AssertSame(left, looked);
    }

    // The whole farm is watched and still counts the harm of a power cut; it feeds and harvests by day: its nights are plain.
    [Theory]
    [InlineData("first-season", 18, 5)]
    [InlineData("whole-farm", 0.5, 5)]
    public void A_step_allocates_nothing_once_the_farm_runs(string scenario, double fromHour, int hours)
    {
        Season season = new(Farms.Read(scenario), ShippedLibrary.Library, 1);
        long from = (120 * UnitConstants.SecondsPerDay) + (long)(fromHour * UnitConstants.SecondsPerHour);
        season.Advance(from);
        long before = GC.GetAllocatedBytesForCurrentThread();
        season.Advance(from + (long)(hours * UnitConstants.SecondsPerHour));
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        output.WriteLine($"{allocated} bytes in {hours} hours without events");
        Assert.Equal(0, allocated);
    }

    [Fact]
    public void An_event_that_names_no_part_of_the_farm_is_refused()
    {
        Season season = Farms.Start(Farm, 3);
        Assert.Throws<DescriptionException>(() => season.Apply(new SetValve { Day = 0, Valve = "nowhere", FlowLitresPerHour = 1 }));
        Assert.Throws<DescriptionException>(() => season.Apply(new SetAir { Day = 0, Basin = "nowhere", Share = 1 }));
        Assert.Throws<DescriptionException>(() => season.Apply(new Dose { Day = 0, Basin = "tank-1", Supplement = "stardust", Grams = 1 }));
        Assert.Throws<DescriptionException>(() => season.Apply(new SetHeater { Day = 0, Heater = "nowhere", HoldCelsius = 1 }));
    }

    [Fact]
    public void A_crop_that_is_sown_without_a_nursery_is_refused_before_the_season_begins()
    {
        DescriptionException refused = Assert.Throws<DescriptionException>(() => Farms.Start(Farm with { Nursery = null }, 3));
        Assert.Contains("crops.lettuce", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_crop_that_its_plan_begins_later_is_sown_then()
    {
        FarmDescription later = Farm with
        {
            Crops = Farm.Crops.With("lettuce", c => c with
            {
                CellsPerSowing = 0,
                Changes = new Dictionary<string, CropPlanChange> { ["begin"] = new() { FromDay = 10, CellsPerSowing = 100, BoardsPerWeek = 5 } },
            }),
        };
        Season season = Farms.Run(later, 20);
        long first = season.Log.Events.First(e => e.What == "sow" && e.Where == "lettuce").Seconds;
        Assert.InRange(first / (double)UnitConstants.SecondsPerDay, 10, 18);
    }

    [Fact]
    public void Every_planned_event_acts_and_leaves_the_ledgers_closed()
    {
        Season season = Farms.Start(Stocked(100, 200), 20);
        season.Advance(5 * UnitConstants.SecondsPerDay);
        season.Apply(new SetShade { Day = 5, Share = 0.3 });
        season.Apply(new SetRation { Day = 5, RationShare = 0.6 });
        season.Apply(new GradeFish { Day = 5, Tank = "tank-1", To = "tank-2", AboveGrams = 210 });
        season.Apply(new ChangeWater { Day = 5, Basin = "tank-1", Litres = 400 });
        season.Apply(new ChangeWater { Day = 5, Basin = "fish-sump", To = "plant-sump", Litres = 200 });
        season.Apply(new Dose { Day = 5, Basin = "fish-sump", Supplement = "calcium-carbonate", Grams = 200 });
        season.Apply(new SetValve { Day = 5, Valve = "coupling", FlowLitresPerHour = 800 });
        season.Advance(10 * UnitConstants.SecondsPerDay);
        season.Apply(new HarvestFish { Day = 10, Tank = "tank-2", AboveGrams = 0 });
        Assert.Empty(season.State.Cohorts[1]);
        Assert.True(season.State.Totals.FishSold > 10);
        season.AdvanceToEnd();
        LedgerLawTests.AssertSane(season, 20);
        LedgerLawTests.AssertClosed(season);
    }
}
