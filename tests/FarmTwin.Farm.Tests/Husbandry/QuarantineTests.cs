using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Farm.Water;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Husbandry;

/// <summary>Deliveries, quarantine, moves and treatments.</summary>
public class QuarantineTests
{
    private static readonly HusbandryParameters Numbers = HusbandryParameters.From(ParameterLibrary.Load("processes", "husbandry"));

    // Practice: temper at 1–2 °C an hour, move within 3–5 °C.
    [Fact]
    public void Tempered_fish_and_small_differences_cost_nothing_and_a_plunge_of_10_kelvin_most_of_them()
    {
        Assert.Equal(0, TransferShock.Share(Numbers, 15, 0, 1.5));
        Assert.Equal(0, TransferShock.Share(Numbers, -3, 0.4, 1000));
        Assert.InRange(TransferShock.Share(Numbers, 5, 0, 1000), 0.01, 0.1);
        Assert.InRange(TransferShock.Share(Numbers, -13, 0, 1000), 0.5, 0.8);
        Assert.True(TransferShock.Share(Numbers, 0, 2, 1000) > 0.2);
        Assert.True(TransferShock.Share(Numbers, 10, 0, 4) < TransferShock.Share(Numbers, 10, 0, 40));
    }

    [Fact]
    public void A_shock_kills_its_share_within_the_days_after_the_move_and_no_longer()
    {
        FishParameters fish = FishParameters.From(ParameterLibrary.Load("fish", "nile-tilapia"));
        var cohort = new Cohort("some", 0, 1000, 50, 0.1, 0);
        Survival.Handle(cohort, fish, 0.2);
        for (int hour = 0; hour < 24 * 30; hour++)
        {
            Survival.Step(cohort, fish, 1, new FishWater(27, 7, 0, 0, 0, 50));
        }

        Assert.Equal(1000 * 0.8 * 0.99 * Math.Exp(-30 * fish.BaseMortalityPerDay), cohort.Number, 2);
        Assert.Equal(0, cohort.ShockHazardPerHour);
    }

    [Fact]
    public void Fish_wait_in_quarantine_and_then_stand_in_their_tank_with_nothing_lost_on_the_way()
    {
        Season season = Farms.Run(WithQuarantine(), 60);
        int quarantine = season.Parts.BasinIndex("quarantine");
        LoggedEvent[] deliveries = [.. season.Log.Events.Where(e => e.What == "deliver fish")];
        Assert.Equal(2, deliveries.Length);
        Assert.All(deliveries, e => Assert.Equal("quarantine", e.Where));
        Assert.Equal(45, deliveries.Sum(e => e.Amount));
        LoggedEvent first = season.Log.Events.First(e => e.What == "end quarantine");
        Assert.Equal(30 + 14, Math.Floor(FarmWork.DayOf(first.Seconds)));
        Assert.Single(season.State.Cohorts[season.Parts.BasinIndex("tank-1")]);
        Assert.Single(season.State.Cohorts[quarantine]);
        Assert.Contains(season.Log.Events, e => e.What == "change quarantine water" && e.Note.Contains("plant-sump", StringComparison.Ordinal));
        Assert.Equal(season.State.Totals.FishDelivered, season.State.Totals.FishDied + season.State.Cohorts.Sum(t => t.Sum(c => c.Number)), 9);
        Assert.True(season.State.Basins.Celsius[quarantine] > 25);
        LedgerLawTests.AssertClosed(season);
        LedgerLawTests.AssertSane(season, 60);
    }

    [Fact]
    public void Treated_water_leaves_the_farm_and_never_reaches_the_plants()
    {
        FarmDescription farm = WithQuarantine();
        farm = farm with
        {
            Plan = new Dictionary<string, PlannedEvent> { ["salt"] = new TreatWithSalt { Day = 31, Basin = "quarantine", GramsPerLitre = 3 } },
        };
        Season treated = Farms.Run(farm, 44);
        Assert.All(
            treated.Log.Events.Where(e => e.What == "change quarantine water" && FarmWork.DayOf(e.Seconds) > 31),
            e => Assert.Contains("it was treated", e.Note, StringComparison.Ordinal));
        Season usual = Farms.Run(WithQuarantine(), 44);
        int sump = usual.Parts.BasinIndex("plant-sump");
        Assert.True(treated.State.Basins.MilligramsPerLitre(sump, Substance.Sodium) <= usual.State.Basins.MilligramsPerLitre(sump, Substance.Sodium) + 0.5);

        // Only the changes of water thin the salt, each by its share.
        int changes = treated.Log.Events.Count(e => e.What == "change quarantine water" && FarmWork.DayOf(e.Seconds) > 31.4);
        double expected = 3 * Math.Pow(0.7, changes);
        Assert.InRange(QuarantineCare.SaltGramsPerLitre(treated.State.Basins, treated.Parts.BasinIndex("quarantine")), 0.9 * expected, expected + 0.1);
        LedgerLawTests.AssertClosed(treated);
    }

    [Fact]
    public void Salt_in_the_fish_loop_and_a_spray_hold_the_coupling_valves_shut()
    {
        FarmDescription farm = Farms.FirstSeason with
        {
            Plan = new Dictionary<string, PlannedEvent> { ["salt"] = new TreatWithSalt { Day = 3, Basin = "tank-1", GramsPerLitre = 4 } },
        };
        Season season = Farms.Run(farm, 25);
        Assert.True(season.State.Operations.Refused.HasFlag(CouplingGates.Treatment));
        Assert.False(Farms.Run(Farms.FirstSeason, 25).State.Operations.Refused.HasFlag(CouplingGates.Treatment));
    }

    [Fact]
    public void Moved_fish_keep_their_number_and_are_handled()
    {
        FarmDescription farm = Farms.FirstSeason with
        {
            Stocking = Farms.FirstSeason.Stocking.With("first", s => s with { WaitForCycle = false, AfterDays = 20 }),
            Plan = new Dictionary<string, PlannedEvent>
            {
                ["move"] = new MoveFish { Day = 30, Tank = "tank-1", To = "tank-2", Share = 0.5 },
            },
        };
        Season season = Farms.Run(farm, 31);
        Cohort stayed = Assert.Single(season.State.Cohorts[season.Parts.BasinIndex("tank-1")]);
        Cohort moved = Assert.Single(season.State.Cohorts[season.Parts.BasinIndex("tank-2")]);
        Assert.Equal(stayed.Number, moved.Number, 1);
        Assert.True(stayed.HandlingHoursLeft > 0 && moved.HandlingHoursLeft > 0);
        LedgerLawTests.AssertClosed(season);
    }

    [Fact]
    public void Hours_are_booked_for_watching_changing_water_treating_and_moving()
    {
        FarmDescription farm = WithQuarantine() with
        {
            Plan = new Dictionary<string, PlannedEvent>
            {
                ["salt"] = new TreatWithSalt { Day = 31, Basin = "quarantine", GramsPerLitre = 3 },
                ["by-hand"] = new ChangeWater { Day = 10, Basin = "fish-sump", Litres = 50 },
                ["move"] = new MoveFish { Day = 47, Tank = "tank-1", To = "tank-2", Share = 0.5 },
            },
        };
        Season season = Farms.Run(farm, 60);
        LabourState labour = season.State.Labour;
        int Count(string what) => season.Log.Events.Count(e => e.What == what);

        // The first part is there on the mornings of days 30 to 43, the second from day 50 on.
        Assert.Equal(14 + 10, labour.CountOf(Chore.WatchQuarantine));
        Assert.True(Count("change quarantine water") > 0);
        Assert.Equal(Count("change quarantine water") + 1, labour.CountOf(Chore.ChangeWater));
        Assert.Equal(1, labour.CountOf(Chore.TreatFish));
        Assert.Equal(1 + 1, labour.CountOf(Chore.MoveFish));
        Assert.Equal(2, labour.CountOf(Chore.ReceiveFish));
        Assert.True(labour.Ledger.ClosureError(labour.ClosingHours(season.Parts.ChoreTimes)) < 1e-9);
    }

    [Fact]
    public void The_wait_for_the_first_sale_counts_from_the_delivery_into_quarantine()
    {
        FarmDescription farm = WithQuarantine() with
        {
            Plan = new Dictionary<string, PlannedEvent> { ["sale"] = new HarvestFish { Day = 48, Tank = "tank-1", AboveGrams = 1 } },
        };
        FishSummary fish = SeasonSummary.Of(Farms.Run(farm, 49), ShippedLibrary.Library, "test").Fish;
        Assert.Equal(30, fish.FirstDeliveryDay);
        Assert.Equal(48, fish.FirstSaleDay);
        Assert.Equal(18, fish.DaysFromDeliveryToFirstSale);
    }

    // A heater that never runs has all of its watts to spare; those are of no use to the fish loop.
    [Fact]
    public void The_ramp_reckons_with_the_heaters_of_the_fish_loop_alone()
    {
        FarmDescription farm = WithQuarantine();
        WaterHeaterDescription small = farm.WaterHeaters["water"] with { OutputKilowatts = 2 };
        WaterHeaterDescription idle = farm.WaterHeaters["quarantine"] with { HoldCelsius = 1, OutputKilowatts = 6 };
        farm = farm with
        {
            Coupling = farm.Coupling! with { OnDay = 10 },
            WaterHeaters = new Dictionary<string, WaterHeaterDescription> { ["water"] = small },
        };
        LoggedEvent[] one = Steps(farm);
        LoggedEvent[] two = Steps(farm with { WaterHeaters = new Dictionary<string, WaterHeaterDescription> { ["quarantine"] = idle, ["water"] = small } });
        Assert.Contains(one, e => e.Note.Contains("capped by the heater", StringComparison.Ordinal));
        Assert.Equal(one.Select(e => (e.Seconds, e.Amount)), two.Select(e => (e.Seconds, e.Amount)));

        static LoggedEvent[] Steps(FarmDescription farm) => [.. Farms.Run(farm, 25).Log.Events.Where(e => e.What == "coupling step")];
    }

    private static FarmDescription WithQuarantine()
    {
        FarmDescription farm = Farms.FirstSeason;
        var basins = new Dictionary<string, BasinDescription>(farm.Basins)
        {
            ["quarantine"] = new()
            {
                Use = BasinUse.Quarantine,
                VolumeLitres = 600,
                SurfaceSquareMetres = 0.8,
                CoveredShare = 0.8,
                WallWattsPerKelvin = 4,
                WettedSquareMetres = 30,
                AirLitresPerMinute = 20,
                DiffuserDepthMetres = 0.6,
                Blower = "main",
                InitialTemperatureCelsius = 20,
            },
        };
        var heaters = new Dictionary<string, WaterHeaterDescription>(farm.WaterHeaters)
        {
            ["quarantine"] = new() { Basin = "quarantine", OutputKilowatts = 0.6, HoldCelsius = 27, Fuel = "electricity", Efficiency = 1, PowerWatts = 0 },
        };
        return farm with
        {
            Basins = basins,
            WaterHeaters = heaters,
            Quarantines = new Dictionary<string, QuarantineDescription>
            {
                ["watch"] = new() { Basin = "quarantine", WaterFrom = "fish-sump", WaterTo = "plant-sump" },
            },
            Stocking = new Dictionary<string, StockingDescription>
            {
                ["first"] = new()
                {
                    Tank = "tank-1",
                    Number = 45,
                    MeanGrams = 50,
                    WaitForCycle = false,
                    AfterDays = 30,
                    Deliveries = 2,
                    DeliveriesEveryDays = 20,
                    Transport = new TransportDescription { Celsius = 22, PH = 7 },
                    Quarantine = new QuarantineStayDescription { In = "watch", Days = 14 },
                },
            },
        };
    }
}
