using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Seasons;

/// <summary>The nursery in a season: tiers, watering, microgreens, seed beds, books.</summary>
public sealed class NurserySeasonTests
{
    // All kinds from the first day, on two tiers.
    private static readonly FarmDescription Whole = FromTheFirstDay(Farms.Read("whole-farm"));

    [Theory]
    [InlineData("nursery-reservoir")]
    [InlineData("plant-sump")]
    public void Microgreens_are_cut_and_every_ledger_closes_whatever_water_feeds_them(string water)
    {
        SeasonSummary summary = Sum(Farms.Run(Whole with { Nursery = Whole.Nursery! with { Water = water } }, 40));
        Assert.All(summary.Nursery.Microgreens.Values, kind => Assert.True(kind.TraysCut > 2 && kind.HarvestedKg > 0));
        Assert.All(summary.Ledgers.Values, ledger => Assert.InRange(ledger.Closure, 0, 1e-9));
        Assert.True(summary.Ledgers["nitrogen"].Doors["seed"].In > 0);
    }

    [Fact]
    public void Fish_water_on_what_is_eaten_raw_is_a_finding_and_reservoir_water_is_not()
    {
        FarmDescription coupled = Whole with { Nursery = Whole.Nursery! with { Water = "fish-sump" } };
        // The fish come out of quarantine on day 37.
        SeasonSummary dirty = Sum(Farms.Run(coupled, 60));
        SeasonSummary clean = Sum(Farms.Run(Whole, 60));
        Assert.True(dirty.Nursery.MicrogreenDaysInFishWater > 10);
        Assert.Contains(dirty.Findings, f => f.Contains("water that fish live in", StringComparison.Ordinal));
        Assert.Equal(0, clean.Nursery.MicrogreenDaysInFishWater);
        Assert.DoesNotContain(clean.Findings, f => f.Contains("water that fish live in", StringComparison.Ordinal));
    }

    [Fact]
    public void Trays_that_are_watered_too_seldom_run_dry_and_yield_less()
    {
        FarmDescription meagre = Whole with { Nursery = Whole.Nursery! with { Watering = new WateringDescription { TimesADay = 1, Litres = 0.5 } } };
        SeasonSummary dry = Sum(Farms.Run(meagre, 40));
        SeasonSummary wet = Sum(Farms.Run(Whole, 40));
        Assert.True(dry.Nursery.DryDays > 20);
        Assert.Equal(0, wet.Nursery.DryDays);
        Assert.True(dry.Nursery.Microgreens["pea"].MeanTrayG < 0.98 * wet.Nursery.Microgreens["pea"].MeanTrayG);
        Assert.All(dry.Ledgers.Values, ledger => Assert.InRange(ledger.Closure, 0, 1e-9));
    }

    [Fact]
    public void A_tier_that_is_off_burns_nothing_and_takes_nothing_until_its_day()
    {
        var late = new TierDescription
        {
            Use = TierUse.Off,
            Changes = new Dictionary<string, TierChange> { ["spring"] = new() { FromDay = 21, Use = TierUse.Microgreens } },
        };
        var off = new TierDescription { Use = TierUse.Off };
        FarmDescription farm = Whole with
        {
            Nursery = Whole.Nursery! with { Tier = new Dictionary<string, TierDescription> { ["2"] = late, ["3"] = off } },
        };
        Season season = Farms.Start(farm, 40);
        season.Advance(20L * 86400);
        Assert.Equal(0, season.State.Growing.Nursery.TierKilowattHours[1]);
        Assert.Empty(season.State.Growing.Nursery.Microgreens);
        season.AdvanceToEnd();
        Assert.True(season.State.Growing.Nursery.TierKilowattHours[1] > 0);
        Assert.Equal(0, season.State.Growing.Nursery.TierKilowattHours[2]);
        Assert.NotEmpty(season.State.Growing.Nursery.Microgreens);
        Assert.All(season.State.Growing.Nursery.Microgreens, t => Assert.Equal(1, t.Tier));
    }

    [Fact]
    public void A_full_tier_refuses_a_tray_and_seedlings_keep_to_their_own_tier()
    {
        FarmDescription crowded = Whole with
        {
            Microgreens = Whole.Microgreens.ToDictionary(m => m.Key, m => m.Value with { TraysPerSowing = 5 }, StringComparer.Ordinal),
        };
        Season season = Farms.Run(crowded, 30);
        SeasonSummary summary = Sum(season);
        Assert.Equal(10, summary.Nursery.MicrogreenPlaces!.Value);
        Assert.True(summary.Nursery.Microgreens.Values.Sum(m => m.TraysRefused) > 0);
        Assert.Contains(season.Log.Events, e => e.What == "nursery full");
        Assert.All(season.State.Growing.Trays, t => Assert.Equal(0, t.Tier));
    }

    [Fact]
    public void A_season_with_microgreens_goes_on_bit_for_bit_from_a_saved_state()
    {
        Season season = Farms.Start(Whole, 30);
        season.Advance(13L * 86400);
        SeasonSnapshot saved = season.Save();
        season.AdvanceToEnd();
        double[] first = [.. season.State.Growing.Nursery.CutGrams, .. season.State.Basins.Grams];
        season.Restore(saved);
        season.AdvanceToEnd();
        double[] again = [.. season.State.Growing.Nursery.CutGrams, .. season.State.Basins.Grams];
        Assert.Equal(first, again);
    }

    [Fact]
    public void Lettuce_seed_in_a_hot_nursery_comes_up_badly_unless_it_germinates_in_a_cool_place()
    {
        FarmDescription hot = Farms.FirstSeason with
        {
            Nursery = Farms.FirstSeason.Nursery! with { AtLeastCelsius = 30 },
            Stocking = new Dictionary<string, StockingDescription>(),
        };
        SeasonSummary warm = Sum(Farms.Run(hot, 25));
        SeasonSummary cool = Sum(Farms.Run(hot with { Nursery = hot.Nursery! with { GerminateAtCelsius = 20 } }, 25));
        Assert.True(warm.Nursery.PoorSowings >= 3);
        Assert.Contains(warm.Findings, f => f.Contains("germinateAt", StringComparison.Ordinal));
        Assert.Equal(0, cool.Nursery.PoorSowings);
        Assert.True(cool.Crops["lettuce"].StandingPlants > 3 * warm.Crops["lettuce"].StandingPlants);
    }

    [Fact]
    public void Tiers_and_microgreens_that_do_not_fit_are_refused_with_their_place()
    {
        var wrong = new Dictionary<string, TierDescription> { ["4"] = new() };
        DescriptionException tier = Assert.Throws<DescriptionException>(() => Farms.Start(Whole with { Nursery = Whole.Nursery! with { Tier = wrong } }, 3));
        Assert.Contains("nursery.tier.4", tier.Message, StringComparison.Ordinal);
        DescriptionException none = Assert.Throws<DescriptionException>(() => Farms.Start(
            Whole with { Nursery = Whole.Nursery! with { Tier = new Dictionary<string, TierDescription>() } }, 3));
        Assert.Contains("microgreens.radish", none.Message, StringComparison.Ordinal);
    }

    private static FarmDescription FromTheFirstDay(FarmDescription farm) => farm with
    {
        Microgreens = farm.Microgreens.ToDictionary(m => m.Key, m => m.Value with { FirstSowingDay = 0 }, StringComparer.Ordinal),
        Nursery = farm.Nursery! with
        {
            Tier = farm.Nursery.Tier.With("2", t => t with { Use = TierUse.Microgreens, Changes = new Dictionary<string, TierChange>() }),
        },
    };

    private static SeasonSummary Sum(Season season) => SeasonSummary.Of(season, ShippedLibrary.Library, "test");
}
