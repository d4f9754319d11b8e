using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Husbandry;

/// <summary>Each mishap of husbandry has its effect and its line, and every ledger closes whatever happens.</summary>
public class MishapTests
{
    private const int Day = 60;

    private static readonly FarmDescription Farm = Farms.FirstSeason with
    {
        Stocking = Farms.FirstSeason.Stocking.With("first", s => s with { WaitForCycle = false, AfterDays = 25, MeanGrams = 120 }),
    };

    private static readonly Lazy<Season> Usual = new(() => Farms.Run(Farm, Day + 8));

    [Fact]
    public void Missed_chores_leave_fish_unfed_and_a_settling_tank_without_air()
    {
        Season season = Run(new MissChores { Day = Day, Days = 3 });
        Assert.Equal(0, Sum(season, "feed_kg", Day + 1, 2), 12);
        Assert.True(Sum(Usual.Value, "feed_kg", Day + 1, 2) > 0.1);
        Assert.True(season.State.Husbandry.DutiesMissed > 15);
        Assert.Contains(season.Log.Events, e => e.What == "chores missed");
    }

    [Fact]
    public void Only_the_named_chores_are_missed()
    {
        Season season = Run(new MissChores { Day = Day, Days = 5, Chores = [Duty.Washing] });
        Assert.Equal(Sum(Usual.Value, "feed_kg", Day, 4), Sum(season, "feed_kg", Day, 4), 2);
        Assert.DoesNotContain(season.Log.Events, e => e.What == "wash filter" && FarmWork.DayOf(e.Seconds) is > Day + 0.4 and < Day + 5);
    }

    [Fact]
    public void Overfeeding_leaves_feed_that_turns_to_solids_and_ammonia()
    {
        Season season = Run(new Overfeed { Day = Day, Grams = 2000, Tank = "tank-1" });
        Assert.True(season.State.Totals.FeedGrams > Usual.Value.State.Totals.FeedGrams + 1500);
        Assert.True(Most(season, "tan_fish_loop_mgN_per_L") > 1.5 * Most(Usual.Value, "tan_fish_loop_mgN_per_L"));
        Assert.True(Most(season, "solids_fish_loop_mg_per_L") > 1.5 * Most(Usual.Value, "solids_fish_loop_mg_per_L"));
        double rationed = Run(new Overfeed { Day = Day, RationShare = 2, Days = 3 }).State.Totals.FeedGrams;
        Assert.True(rationed > 1.05 * Usual.Value.State.Totals.FeedGrams);
    }

    [Fact]
    public void Chlorinated_water_kills_film_and_burns_gills()
    {
        // Two cubic metres changed for water of 4 mg/L, the most that waterworks may send out.
        var plan = new Dictionary<string, PlannedEvent>
        {
            ["chlorine"] = new ChlorinatedTopUp { Day = Day, Hour = 8, ChlorineMilligramsPerLitre = 4, Days = 1 },
            ["one"] = new ChangeWater { Day = Day, Basin = "tank-1", Litres = 700 },
            ["two"] = new ChangeWater { Day = Day, Basin = "tank-2", Litres = 700 },
            ["three"] = new ChangeWater { Day = Day, Basin = "tank-3", Litres = 700 },
        };
        Season season = Farms.Run(Farm with { Plan = plan }, Day + 3);
        plan.Remove("chlorine");
        Season clean = Farms.Run(Farm with { Plan = plan }, Day + 3);
        int filter = season.Parts.FilterBasin[0];
        Assert.InRange(season.State.Basins.AmmoniaOxidizers[filter] / clean.State.Basins.AmmoniaOxidizers[filter], 0.4, 0.9);
        Assert.InRange(Most(season, "chlorine_tanks_highest_mg_per_L"), 0.2, 2);
        Assert.True(season.State.Totals.FishDied > clean.State.Totals.FishDied + 1);
        Assert.True(Farms.Days(season, "chlorine_tanks_highest_mg_per_L")[Day + 2] < 0.01);
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void Dechlorinated_source_water_brings_no_chlorine_and_a_careless_farm_loses_its_films()
    {
        FarmDescription chlorinated = Farm with { SourceWater = Farm.SourceWater with { ChlorineMilligramsPerLitre = 1 } };
        Assert.Equal(0, Farms.Days(Farms.Run(chlorinated, 3), "chlorine_tanks_highest_mg_per_L").Max());
        Season careless = Farms.Run(chlorinated with { SourceWater = chlorinated.SourceWater with { Dechlorinated = false } }, 3);
        Season careful = Farms.Run(chlorinated, 3);
        int filter = careful.Parts.FilterBasin[0];
        Assert.True(careless.State.Basins.AmmoniaOxidizers[filter] < 0.95 * careful.State.Basins.AmmoniaOxidizers[filter]);
    }

    [Fact]
    public void A_spray_on_coupled_plants_kills_fish_and_on_a_loop_apart_none()
    {
        var spray = new Pesticide { Day = Day, Basin = "lane-1", SquareMetres = 10.8 };
        Season apart = Run(spray);
        Assert.Equal(Usual.Value.State.Totals.FishDied, apart.State.Totals.FishDied, 1);
        Assert.True(apart.State.Operations.Refused.HasFlag(CouplingGates.Pesticide));
        Season coupled = Farms.Run(
            Farm with
            {
                Coupling = Farm.Coupling! with { Way = CouplingWay.AtOnce, OnDay = Day - 2 },
                Plan = new Dictionary<string, PlannedEvent>
                {
                    ["spray"] = spray with { SquareMetres = 70, ActiveMilligramsPerSquareMetre = 60 },
                },
            },
            Day + 8);
        Assert.True(coupled.State.Totals.FishDied > 10, $"{coupled.State.Totals.FishDied} died");
        LedgerLawTests.AssertClosed(coupled);
    }

    [Fact]
    public void Uncovered_water_grows_algae_that_make_oxygen_by_day_and_drift_off_when_covered()
    {
        Season season = Run(new UncoverWater { Day = Day - 20, Basin = "lane-1", Days = 25 }, Day + 8);
        double[] algae = Farms.Days(season, "algae_g");
        Assert.True(algae[Day] > 50, $"{algae[Day]} g");
        Assert.True(algae[Day] < 10.8 * 120, $"{algae[Day]} g");
        Assert.Equal(0, algae[Day + 7], 6);
        double[] plantPH = Farms.Days(season, "pH_plant_loop");
        Assert.True(plantPH[Day] > Farms.Days(Usual.Value, "pH_plant_loop")[Day]);
        Assert.True(Farms.Days(season, "nitrate_plant_loop_mgN_per_L")[Day] < Farms.Days(Usual.Value, "nitrate_plant_loop_mgN_per_L")[Day] + 1);
    }

    [Fact]
    public void A_wash_too_hard_takes_film_along()
    {
        Season season = Run(new WashHard { Day = Day, Filter = "beads", StripShare = 0.8 }, Day + 1);
        int filter = season.Parts.FilterBasin[0];
        Season usual = Farms.Run(Farm, Day + 1);
        Assert.InRange(season.State.Basins.AmmoniaOxidizers[filter] / usual.State.Basins.AmmoniaOxidizers[filter], 0.1, 0.5);
    }

    [Fact]
    public void A_decant_before_settling_carries_solids_and_ammonia_to_the_plants()
    {
        Season season = Run(new DecantEarly { Day = Day, Mineralizer = "main", Share = 0.5 });
        Assert.Contains(season.Log.Events, e => e.What == "decant early" && e.Amount > 50);
        Assert.True(Most(season, "solids_plant_loop_mg_per_L") > 2 * Most(Usual.Value, "solids_plant_loop_mg_per_L"));
    }

    [Fact]
    public void A_bypassed_filter_lets_solids_pass()
    {
        Season season = Run(new BypassFilter { Day = Day, Filter = "beads", Days = 5 });
        Assert.True(Most(season, "solids_fish_loop_mg_per_L") > 2 * Most(Usual.Value, "solids_fish_loop_mg_per_L"));
        Assert.Contains(season.Log.Events, e => e.What == "filter takes its flow again");
    }

    [Fact]
    public void Too_much_potassium_hydroxide_lifts_the_pH_and_with_ammonium_in_the_water_the_fish_die()
    {
        var plan = new Dictionary<string, PlannedEvent>
        {
            ["ammonium"] = new Dose { Day = Day, Hour = 8, Basin = "tank-1", Supplement = "ammonium-chloride", Grams = 60 },
            ["base"] = new Dose { Day = Day, Hour = 9, Basin = "tank-1", Supplement = "potassium-hydroxide", Grams = 900 },
        };
        Season season = Farms.Run(Farm with { Plan = plan }, Day + 3);
        Assert.True(Most(season, "ammonia_unionized_tanks_highest_mgN_per_L") > 1);
        Assert.True(season.State.Totals.FishDied > 10, $"{season.State.Totals.FishDied} died");
        Assert.Contains(season.Log.Events, e => e.What == "deaths to act on");
        LedgerLawTests.AssertClosed(season);
    }

    // Chloride over nitrite nitrogen of ten to one (common practice); chloride eases nitrite as far as it was tested.
    [Fact]
    public void A_rule_keeps_chloride_at_ten_times_nitrite()
    {
        FarmDescription protectedFarm = Farm with
        {
            Dosing = new Dictionary<string, DosingDescription>(Farm.Dosing)
            {
                ["chloride"] = new ProtectFromNitrite { Basin = "fish-sump", With = ["calcium-chloride"], FromDay = 2 },
            },
        };
        Season season = Farms.Run(protectedFarm, 40);
        Assert.Contains(season.Log.Events, e => e.What == "dose" && e.Where == "chloride");
        double[] nitrite = Farms.Days(season, "nitrite_fish_loop_mgN_per_L");
        double[] chloride = Farms.Days(season, "chloride_fish_loop_mg_per_L");
        for (int day = 4; day < 40; day++)
        {
            Assert.True(nitrite[day] < 0.4 || chloride[day] > 7.5 * nitrite[day], $"day {day}: {chloride[day]} mg/L over {nitrite[day]}");
        }
    }

    [Fact]
    public void Every_ledger_closes_through_all_mishaps_at_once_and_a_snapshot_goes_on_with_them()
    {
        var plan = new Dictionary<string, PlannedEvent>
        {
            ["a"] = new UncoverWater { Day = 30, Basin = "tank-1", Days = 20 },
            ["b"] = new UncoverWater { Day = 35, Basin = "lane-2", Days = 20, Share = 0.5 },
            ["c"] = new Overfeed { Day = 36, RationShare = 3, Days = 4 },
            ["d"] = new ChlorinatedTopUp { Day = 40, ChlorineMilligramsPerLitre = 2, Days = 2 },
            ["e"] = new Pesticide { Day = 42, Basin = "lane-1", SquareMetres = 10 },
            ["f"] = new BypassFilter { Day = 44, Filter = "beads", Days = 3 },
            ["g"] = new WashHard { Day = 48, Filter = "beads" },
            ["h"] = new DecantEarly { Day = 49, Mineralizer = "main" },
            ["i"] = new TreatWithSalt { Day = 50, Basin = "tank-1", GramsPerLitre = 2 },
            ["j"] = new MissChores { Day = 52, Days = 4 },
            ["k"] = new MoveFish { Day = 57, Tank = "tank-1", To = "tank-3", Share = 0.4, TemperKelvinPerHour = 100 },
        };
        Season season = Farms.Start(Farm with { Plan = plan }, 64);
        season.Advance(46 * (long)UnitConstants.SecondsPerDay);
        SeasonSnapshot saved = season.Save();
        season.AdvanceToEnd();
        LedgerLawTests.AssertClosed(season);
        LedgerLawTests.AssertSane(season, 64);
        double nitrogen = season.ClosingStocks()[0];
        int lines = season.Log.Events.Count;
        season.Restore(saved);
        season.AdvanceToEnd();
        Assert.Equal(nitrogen, season.ClosingStocks()[0]);
        Assert.Equal(lines, season.Log.Events.Count);
    }

    private static Season Run(PlannedEvent mishap, int days = Day + 8)
    {
        Season season = Farms.Run(Farm with { Plan = new Dictionary<string, PlannedEvent> { ["mishap"] = mishap } }, days);
        LedgerLawTests.AssertClosed(season);
        LedgerLawTests.AssertSane(season, days);
        return season;
    }

    private static double Sum(Season season, string column, int from, int days) => Farms.Days(season, column).Skip(from).Take(days).Sum();

    private static double Most(Season season, string column) => Farms.Days(season, column).Skip(Day).DefaultIfEmpty(0).Max();
}
