using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.DesignSheet;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.DesignSheet;

/// <summary>The sheet of the shipped first season and of farms that differ from it in one thing, for the better or the worse.</summary>
public class SheetTests
{
    private static readonly FarmDescription First = Farms.FirstSeason;
    private static readonly Lazy<Sheet> Shipped = new(() => Of(First));
    private static readonly string[] Tanks = ["tank-1", "tank-2", "tank-3"];

    private static Season Start(FarmDescription farm) => new(farm, ShippedLibrary.Library, 1);

    private static Sheet Of(FarmDescription farm) => Sheet.Of(Start(farm), ShippedLibrary.Library);

    private static FarmDescription WithTanks(Func<BasinDescription, BasinDescription> change) => First with
    {
        Basins = First.Basins.ToDictionary(b => b.Key, b => b.Value.Use == BasinUse.FishTank ? change(b.Value) : b.Value, StringComparer.Ordinal),
    };

    [Fact]
    public void Keys_are_unique_every_line_has_a_source_and_no_figure_is_not_a_number()
    {
        foreach (string scenario in new[] { "first-season", "whole-farm", "overstocked", "microgreens-only-nursery" })
        {
            Sheet sheet = Of(Farms.Read(scenario));
            Assert.Equal(sheet.Lines.Count, sheet.Lines.Select(l => l.Key).Distinct().Count());
            Assert.All(sheet.Lines, l => Assert.NotEmpty(l.Source));
            Assert.All(sheet.Lines, l => Assert.False(l.Value is double.NaN, l.Key));
            Assert.All(sheet.Lines.Where(l => l.Verdict == Verdict.Act), l => Assert.NotEmpty(l.Advice));
        }
    }

    /// <summary>1600 L/h into 1.6 m³ is one volume an hour; 500 L/h into 3.24 m³ is 0.154.</summary>
    [Fact]
    public void Turnover_is_flow_over_volume()
    {
        Assert.Equal(1, Shipped.Value["turnover.tank-1"].Value!.Value, 9);
        Assert.Equal(500 / 3240.0, Shipped.Value["turnover.lane-1"].Value!.Value, 9);
        Assert.Equal(Verdict.Act, Of(First with { Pipes = First.Pipes.With("to-tank-1", p => p with { FlowLitresPerHour = 400 }) })["turnover.tank-1"].Verdict);
    }

    /// <summary>The chain of FAO Technical Paper 589: feed over area, here 4.95 + 3 × 15 × 0.72 m². It never has a verdict.</summary>
    [Fact]
    public void The_feed_ratio_is_shown_and_not_judged()
    {
        SheetLine line = Shipped.Value["feed.ratio"];
        Assert.Equal(Start(First).SteadyFeedGramsPerDay / 37.35, line.Value!.Value, 6);
        Assert.Equal(Verdict.NoVerdict, line.Verdict);
    }

    /// <summary>Timmons &amp; Ebeling (handbook): TAN 0.092 × protein of the feed (range 0.08 to 0.10), solids 0.25 kg/kg, oxygen 0.4 to 0.5 kg/kg for
    /// fish in a fed tank, up to 0.8 with respiration at rest of large fish in warm water.</summary>
    [Fact]
    public void A_day_of_meals_gives_ammonia_solids_and_oxygen_as_the_handbook_says()
    {
        var design = new DesignCase(Start(First), ShippedLibrary.Library);
        FishDay day = design.Busiest;
        Assert.InRange(day.TanGrams / day.FeedGrams / design.Parts.Feed.ProteinFraction, 0.08, 0.10);
        Assert.InRange(day.SolidsDryGrams / day.FeedGrams, 0.2, 0.3);
        Assert.InRange(day.OxygenGrams / day.FeedGrams, 0.35, 0.8);
        Assert.InRange(day.PeakOxygenGramsPerHour * 24 / day.OxygenGrams, 1.1, 2);
        Assert.InRange(day.FeedGrams / day.GainGrams, 1.3, 2);
    }

    /// <summary>Little's law by hand: 11 boards of 18 a week, 16 days at least, over 30 boards: 452.6 plants in 540 holes.</summary>
    [Fact]
    public void Lanes_hold_what_passes_in_a_week_times_its_stay() =>
        Assert.Equal(11 * 18 / 7.0 * 16 / 540, Shipped.Value["places.lanes.lettuce"].Value!.Value, 9);

    /// <summary>December by hand: 6.3 MJ/m² × PAR share × 4.57 mol/MJ × transmission, and 1600 W × 2.7 µmol/J × 0.85 × 6 h over 37.35 m².</summary>
    [Fact]
    public void Light_is_what_cover_and_shade_let_through_and_the_lamps()
    {
        var cover = CoverParameters.From(ShippedLibrary.Library.Set("covers", First.House.Cover));
        double sun = 6.3 * Start(First).Parts.Climate.ParShare * Par.MicromolesPerJoule * cover.ParTransmission;
        double lamps = 1600 * 2.7 * 0.85 * 6 * 3600 / 1e6 / 37.35;
        Assert.Equal(sun + lamps, Shipped.Value["light.lanes"].Value!.Value, 9);
    }

    [Fact]
    public void The_sheet_foretells_what_the_season_then_does()
    {
        Season season = Farms.Run(First, 160);
        var design = new DesignCase(Start(First), ShippedLibrary.Library);
        double day = season.State.Operations.CycledDay + 2;
        double firstSold = season.Log.Events.First(l => l.What == "sell fish").Seconds / 86400.0;
        BatchCourse course = design.Fish.Courses.First(c => c.Batch == 0);
        Assert.InRange(course.FirstSaleDay!.Value - course.DeliveredDay - (firstSold - day), -10, 10);
        double heaviest = Farms.Days(season, "biomass_tank-1_kg").Max();
        Assert.InRange(design.Fish.Kilograms(design.Tanks.First(), design.Fish.FullestDay(design.Tanks.First())) / heaviest, 0.9, 1.1);
    }

    [Fact]
    public void The_house_loses_by_cover_air_and_perimeter()
    {
        var cover = CoverParameters.From(ShippedLibrary.Library.Set("covers", First.House.Cover));
        HouseAirParameters air = Start(First).Parts.Climate.House;
        double byHand = (369 * cover.HeatTransferWattsPerSquareMetreKelvin * (1 - air.ScreenSavingShare))
            + HouseHeatLoss.InfiltrationWattsPerKelvin(0.75, 643) + HouseHeatLoss.PerimeterWattsPerKelvin(air.PerimeterWattsPerMetreKelvin, 60);

        // -6.2 °C less 2.5 x 5.7 K; the method rounds the heat of the air.
        Assert.Equal(-20.45, Shipped.Value["designNight"].Value!.Value, 6);
        Assert.InRange(Shipped.Value["heater.house"].Value!.Value / (35000 / (byHand * 30.45)), 0.97, 1.03);
    }

    [Fact]
    public void A_smaller_heater_must_be_changed()
    {
        FarmDescription cold = First with
        {
            House = First.House with { AirHeater = First.House.AirHeater! with { OutputKilowatts = 20 } },
            WaterHeaters = First.WaterHeaters.With("water", h => h with { OutputKilowatts = 1.2 }),
        };
        Sheet sheet = Of(cold);
        Assert.Equal(Verdict.Act, sheet["heater.house"].Verdict);
        Assert.Equal(Verdict.Act, sheet["heater.waterCoupled"].Verdict);
        Assert.NotEqual(Verdict.Act, Shipped.Value["heater.house"].Verdict);
        Assert.Equal(Verdict.Fine, Shipped.Value["heater.waterCoupled"].Verdict);
    }

    [Fact]
    public void Half_the_air_must_be_changed()
    {
        Sheet half = Of(WithTanks(t => t with { AirLitresPerMinute = t.AirLitresPerMinute / 2 }));
        Assert.Equal(Verdict.Fine, Shipped.Value["oxygen.tank-1"].Verdict);
        Assert.Equal(Verdict.Act, half["oxygen.tank-1"].Verdict);
        Assert.True(half["air.loop"].Value < Shipped.Value["air.loop"].Value);
    }

    [Fact]
    public void Without_backup_a_power_cut_kills_and_air_on_a_battery_saves()
    {
        var battery = new BatteryAir { Basins = Tanks, AirShare = 0.6, PowerWatts = 60, BatteryWattHours = 1200, PressureSwitch = true };
        Sheet saved = Of(First with { Backups = new Dictionary<string, BackupDescription> { ["battery"] = battery } });
        Assert.Equal(Verdict.Act, Shipped.Value["outage.tank-1.harm"].Verdict);
        Assert.Equal(Verdict.Act, Shipped.Value["remark.blower"].Verdict);
        Assert.Equal(Verdict.Fine, saved["outage.tank-1.harm"].Verdict);
        Assert.Equal(Verdict.Fine, saved["remark.blower"].Verdict);

        // 1200 Wh, half of it usable, 85 % of that at the pump of 60 W: eight and a half hours, and then it goes as without.
        Assert.InRange(saved["outage.tank-1.harm"].Value!.Value, 8.5 * 60, (8.5 * 60) + 40);
    }

    [Fact]
    public void Too_many_fish_must_be_changed()
    {
        Sheet full = Of(First with { Stocking = First.Stocking.With("first", s => s with { Number = 120 }) });
        Assert.Equal(Verdict.Act, full["density.tank-1"].Verdict);
        Assert.Equal(Verdict.Fine, full["density.tank-2"].Verdict);
        Assert.Equal(Verdict.Act, full["oxygen.tank-1"].Verdict);
    }

    [Fact]
    public void A_quarter_of_the_beads_no_longer_carries_the_load()
    {
        Sheet small = Of(First with { Filters = First.Filters.With("beads", f => f with { BeadsLitres = f.BeadsLitres / 4 }) });
        Assert.Equal(Verdict.Fine, Shipped.Value["films.capacity"].Verdict);
        Assert.Equal(Verdict.Act, small["films.capacity"].Verdict);
        Assert.True(small["films.nitrite"].Value > Shipped.Value["films.nitrite"].Value);
    }

    [Fact]
    public void Potassium_without_its_rule_must_be_acted_on()
    {
        var without = First.Dosing.Where(d => d.Value is KeepNitrate).ToDictionary(d => d.Key, d => d.Value, StringComparer.Ordinal);
        Sheet sheet = Of(First with { Dosing = without });
        Assert.Equal(Verdict.Fine, Shipped.Value["supply.potassium"].Verdict);
        Assert.Equal(Verdict.Act, sheet["supply.potassium"].Verdict);
        Assert.Equal(Verdict.Act, sheet["base.apart"].Verdict);
    }

    [Fact]
    public void Head_is_judged_where_a_pipe_is_measured()
    {
        PipeDescription Measured(PipeDescription pipe, double lift) => pipe with { LengthMetres = 8, BoreMetres = 0.033, LiftMetres = lift };
        Assert.Equal(Verdict.Fine, Of(First with { Pipes = First.Pipes.With("to-tank-1", p => Measured(p, 1.2)) })["head.to-tank-1"].Verdict);
        Assert.Equal(Verdict.Act, Of(First with { Pipes = First.Pipes.With("to-tank-1", p => Measured(p, 6)) })["head.to-tank-1"].Verdict);
        Assert.Equal(7, Shipped.Value["head.missing"].Value);
    }

    [Fact]
    public void Drain_back_beyond_the_freeboard_must_be_changed()
    {
        Sheet Sump(double litres) => Of(First with { Pipes = First.Pipes.With("to-tank-1", p => p with { DrainBackLitres = litres }) });
        Assert.Equal(Verdict.Fine, Sump(40)["drainBack.fish-sump"].Verdict);
        Assert.Equal(Verdict.Watch, Sump(370)["drainBack.fish-sump"].Verdict);
        Assert.Equal(Verdict.Act, Sump(410)["drainBack.fish-sump"].Verdict);
    }

    /// <summary>A film at rest fulfils its own balance, Y J (1 − x/x_max) = b x, so its flux lies below that of a full film.</summary>
    [Fact]
    public void Films_at_rest_carry_less_than_full_ones_and_more_at_more_ammonia()
    {
        NitrificationParameters parameters = NitrificationParameters.From(ShippedLibrary.Library.Set("processes", "nitrification"));
        var conditions = new FilmConditions(27, 7.2, 6, 0, 60);
        var films = new FilmLoad(parameters, conditions);
        double full = FilmFlux.FluxGramsPerSquareMetreDay(parameters, NitrifierPopulation.AmmoniaOxidizers,
            FilmFlux.CapacityGramsPerSquareMetreDay(parameters, NitrifierPopulation.AmmoniaOxidizers,
                parameters.AmmoniaOxidizers.MaximumBiomassGramsCodPerSquareMetre, conditions), 1);
        double one = films.FluxGramsPerSquareMetreDay(NitrifierPopulation.AmmoniaOxidizers, 1);
        Assert.InRange(one, 0.05 * full, full);
        Assert.True(films.FluxGramsPerSquareMetreDay(NitrifierPopulation.AmmoniaOxidizers, 2) > one);
        Assert.Equal(1, films.ConcentrationFor(NitrifierPopulation.AmmoniaOxidizers, one, 20), 6);
    }
}
