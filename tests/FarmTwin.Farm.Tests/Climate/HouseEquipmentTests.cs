using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Climate;

/// <summary>Pad, fans, airing against humidity, screen, carbon dioxide of the house.</summary>
public sealed class HouseEquipmentTests
{
    private static readonly HouseParameters Padded = ClimateLibrary.House() with { PadEffectiveness = 0.8, PadSetPointCelsius = 28 };

    private static FarmDescription Equipped => Farms.FirstSeason with
    {
        House = Farms.FirstSeason.House with
        {
            Fans = new FansDescription(),
            EvaporativePad = new EvaporativePadDescription(),
            HumidityPurge = new HumidityPurgeDescription { AboveShare = 0.88 },
            CarbonDioxideBalance = true,
        },
    };

    [Fact]
    public void A_pad_cools_a_dry_noon_and_evaporates_what_the_psychrometric_chart_says()
    {
        var balance = new HouseAirBalance(Padded);
        HouseConditions noon = Noon(36, 850, 0.3);
        HouseAir dry = new HouseAirBalance(ClimateLibrary.House()).Solve(noon);
        HouseAir wet = balance.Solve(noon);
        Assert.InRange(dry.AirCelsius - wet.AirCelsius, 6, 11);
        Assert.Equal(1, wet.PadWetShare);

        // The air leaves the pad on the line of constant wet bulb; the forms of that line differ by 2 or 3 % among themselves.
        double pressure = Padded.PressureKilopascal;
        double outside = 0.3 * Psychrometrics.SaturationPressureKilopascal(36);
        double wetBulb = Psychrometrics.WetBulb(36, outside, pressure);
        double leaving = EvaporativePad.LeavingCelsius(36, wetBulb, 0.8);
        double rise = Psychrometrics.HumidityRatio(Psychrometrics.VapourPressureFromWetBulb(leaving, wetBulb, pressure), pressure)
            - Psychrometrics.HumidityRatio(outside, pressure);
        double dryAir = wet.VentCubicMetresPerSecond * Psychrometrics.DryAirDensity(20, 0, pressure);
        Assert.Equal(dryAir * rise * 3600, wet.PadKilogramsPerHour, 0.05 * wet.PadKilogramsPerHour);
        AssertCloses(noon, wet);
    }

    [Fact]
    public void A_pad_does_little_in_humid_air_and_is_wetted_no_more_than_it_takes()
    {
        var balance = new HouseAirBalance(Padded);
        HouseConditions humid = Noon(33, 700, 0.8);
        double without = balance.Solve(humid with { PadShare = 0 }).AirCelsius;
        Assert.InRange(without - balance.Solve(humid).AirCelsius, 0.5, 3.5);
        HouseConditions mild = Noon(26, 600, 0.4);
        HouseAir part = balance.Solve(mild);
        Assert.InRange(part.PadWetShare, 0.01, 0.99);
        Assert.Equal(28, part.AirCelsius, 9);
        AssertCloses(mild, part);
        Assert.Equal(0, balance.Solve(Noon(15, 300, 0.5)).PadKilogramsPerHour);
    }

    [Fact]
    public void Airing_holds_the_humidity_of_a_cold_night_and_the_heater_pays_for_it()
    {
        HouseParameters house = ClimateLibrary.House() with { PurgeHumidityPercent = 85, PurgeCubicMetresPerSecond = 0.5 };
        HouseConditions night = Night(4) with { EvaporationKilogramsPerHour = 4 };
        HouseAir shut = new HouseAirBalance(ClimateLibrary.House()).Solve(night);
        HouseAir aired = new HouseAirBalance(house).Solve(night);
        Assert.True(shut.RelativeHumidityPercent > 88, $"{shut.RelativeHumidityPercent} %");
        Assert.Equal(85, aired.RelativeHumidityPercent, 0.1);
        Assert.InRange(aired.PurgeCubicMetresPerSecond, 0.001, 0.499);
        Assert.Equal(aired.HeaterWatts - shut.HeaterWatts, aired.PurgeHeaterWatts, 1e-6);
        Assert.True(aired.PurgeHeaterWatts > 100);
        Assert.Equal(0, aired.VentCubicMetresPerSecond);
        AssertCloses(night, aired);

        // Air as warm and wet as the house's own dries nothing: then it stays outside.
        HouseConditions fog = Night(9.9) with { EvaporationKilogramsPerHour = 12, OutsideVapourPressureKilopascal = Psychrometrics.SaturationPressureKilopascal(9.9) };
        HouseAir muggy = new HouseAirBalance(house).Solve(fog);
        Assert.True(muggy.RelativeHumidityPercent > 85);
        AssertCloses(fog, muggy);
    }

    [Fact]
    public void A_screen_with_a_rule_stays_open_on_mild_nights()
    {
        var ruled = new HouseAirBalance(ClimateLibrary.House() with { ScreenBelowCelsius = 5 });
        var always = new HouseAirBalance(ClimateLibrary.House());
        Assert.Equal(always.Solve(Night(-3)).HeaterWatts, ruled.Solve(Night(-3)).HeaterWatts, 9);
        Assert.True(ruled.Solve(Night(6)).HeaterWatts > always.Solve(Night(6)).HeaterWatts + 500);
    }

    [Fact]
    public void A_season_with_pad_fans_and_airing_closes_goes_on_from_a_snapshot_and_tells_what_they_used()
    {
        FarmDescription summer = Equipped with { Start = new DateOnly(2027, 6, 20) };
        Season season = Farms.Run(summer, 30);
        Season plain = Farms.Run(Farms.FirstSeason with { Start = summer.Start }, 30);
        FarmTotals totals = season.State.Totals;
        Assert.True(totals.PadHours > 20 && totals.PadLitres > 500, $"{totals.PadHours} h, {totals.PadLitres} L");
        Assert.True(Farms.Days(season, "house_air_highest_C").Max() < Farms.Days(plain, "house_air_highest_C").Max() - 2);
        LedgerLawTests.AssertClosed(season);
        LedgerSummary water = LedgerSummary.Of(season)["water"];
        Assert.Equal(totals.PadLitres, water.Doors["evaporativePad"].Out, 1e-6 * totals.PadLitres);
        SeasonSummary summary = SeasonSummary.Of(season, ShippedLibrary.Library, "test");
        Assert.Equal(totals.PadLitres, summary.House.PadL);
        Assert.Equal(totals.FanKilowattHours + totals.PadKilowattHours, summary.Energy.KWhByUse["fans"]);

        // 45 air changes of 643 m3 at 28 m3/h for each watt: near a kilowatt when all fans run.
        Assert.InRange(summary.Energy.PeakElectricKW!.Value, SeasonSummary.Of(plain, ShippedLibrary.Library, "test").Energy.PeakElectricKW!.Value, 4);

        Season half = Farms.Start(summer, 30);
        half.Advance(13 * UnitConstants.SecondsPerDay);
        Season branch = Farms.Start(summer, 30);
        branch.Restore(half.Save());
        branch.AdvanceToEnd();
        Assert.Equal(Farms.Hours(season, "house_carbon_dioxide_ppm"), Farms.Hours(branch, "house_carbon_dioxide_ppm"));
        Assert.Equal(Farms.Days(season, "pH_fish_loop"), Farms.Days(branch, "pH_fish_loop"));
    }

    [Fact]
    public void Enrichment_comes_to_the_closed_form_of_a_leaky_box_and_stops_at_its_hold()
    {
        FarmDescription winter = Equipped with { Start = new DateOnly(2027, 1, 5) };
        EnrichmentDescription small = new() { HoldPpm = 1500, LargestKilogramsPerHour = 0.1 };
        Season season = Farms.Run(winter with { House = winter.House with { Enrichment = small, HumidityPurge = null } }, 3);

        // 0.1 kg/h into 643 m3 that leak 0.75 times an hour: 0.1 / (0.75 x 643 x 1.80 g a ppm and 1,000 m3) = 115 ppm in the end.
        double highest = Farms.Hours(season, "house_carbon_dioxide_ppm").Take(48).Max();
        Assert.InRange(highest, 420 + (0.93 * 115), 420 + (1.12 * 115));
        EnrichmentDescription large = small with { HoldPpm = 900, LargestKilogramsPerHour = 5 };
        Season held = Farms.Run(winter with { House = winter.House with { Enrichment = large, HumidityPurge = null } }, 3);
        Assert.Equal(900, Farms.Hours(held, "house_carbon_dioxide_ppm").Max(), 1e-6);
        Assert.True(held.State.Totals.EnrichedGrams > 3 * season.State.Totals.EnrichedGrams);
        LedgerLawTests.AssertClosed(held);
    }

    [Fact]
    public void Fish_lift_the_carbon_dioxide_of_a_shut_house_at_night_and_plants_draw_it_down_by_day()
    {
        Season season = Farms.Run(Equipped, 110);
        double[] ppm = Farms.Hours(season, "house_carbon_dioxide_ppm");
        double[] light = Farms.Hours(season, "daylight_umol_per_m2_s");
        double night = Enumerable.Range(100 * 24, 240).Where(h => light[h] <= 0).Average(h => ppm[h]);
        double day = Enumerable.Range(100 * 24, 240).Where(h => light[h] > 100).Average(h => ppm[h]);
        Assert.InRange(night, 425, 700);
        Assert.InRange(day, 350, 425);
    }

    [Fact]
    public void What_does_not_make_a_house_is_refused()
    {
        HouseDescription house = Farms.FirstSeason.House;
        Refused(house with { EvaporativePad = new EvaporativePadDescription() }, "fans");
        Refused(house with { Fans = new FansDescription(), EvaporativePad = new EvaporativePadDescription { WetAtCelsius = 20 } }, "ventAt");
        Refused(house with { Enrichment = new EnrichmentDescription { HoldPpm = 800, LargestKilogramsPerHour = 1 } }, "carbonDioxideBalance");
    }

    [Fact]
    public void Solving_an_equipped_house_allocates_nothing()
    {
        var balance = new HouseAirBalance(Padded with { PurgeHumidityPercent = 85, PurgeCubicMetresPerSecond = 0.5 });
        HouseConditions noon = Noon(36, 850, 0.3);
        HouseConditions night = Night(4) with { EvaporationKilogramsPerHour = 12 };
        double sum = balance.Solve(noon).AirCelsius + balance.Solve(night).AirCelsius;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 500; i++)
        {
            sum += balance.Solve(noon).AirCelsius + balance.Solve(night).AirCelsius;
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    private static void Refused(HouseDescription house, string word) => Assert.Contains(
        word, Assert.Throws<DescriptionException>(() => Farms.Start(Farms.FirstSeason with { House = house }, 1)).Message, StringComparison.Ordinal);

    private static void AssertCloses(in HouseConditions conditions, in HouseAir air)
    {
        double gains = air.SolarWatts - air.FloorSolarWatts + conditions.LampWatts + conditions.MotorWatts + air.HeaterWatts + air.WaterHeatWatts + air.FloorHeatWatts;
        double losses = air.LatentWatts + air.CoverLossWatts + air.InfiltrationLossWatts + air.PerimeterLossWatts + air.VentLossWatts;
        Assert.Equal(gains, losses, 1e-6 * Math.Max(1, Math.Abs(gains)));
        double vapour = conditions.TranspirationKilogramsPerHour + conditions.EvaporationKilogramsPerHour + air.PadKilogramsPerHour;
        Assert.Equal(vapour, air.VapourCarriedOutKilogramsPerHour + air.CondensationKilogramsPerHour, 1e-6);
        Assert.InRange(air.RelativeHumidityPercent, 0, 100 + 1e-9);
    }

    private static HouseConditions Noon(double outside, double sun, double humidity) => new(outside, sun,
        humidity * Psychrometrics.SaturationPressureKilopascal(outside), 2, 0, 300, 300, 26, 15, 3, 28, 1, false);

    private static HouseConditions Night(double outside) => new(outside, 0,
        0.8 * Psychrometrics.SaturationPressureKilopascal(outside), 2, 0, 300, 0, 0, 0, 0, 10, 1, true);
}
