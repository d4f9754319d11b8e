using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Tests.Seasons;

namespace FarmTwin.Farm.Tests.Validation;

/// <summary>Farms as a whole.</summary>
internal static class WholeFarmCases
{
    public static CaseList All()
    {
        var list = new CaseList("Whole farms");
        var shares = new Lazy<FirstSeasonTests.NitrogenShares>(FirstSeasonTests.Shares);
        list.Span("seasons-whole-farm", "name", "whole_system_fish_share", "First season: fish, share of the feed's nitrogen", "Quilleré et al. 1995; Goddek et al. 2016", "second hand; other farms", "-", () => shares.Value.FishOfFeed);
        (double low, double high) = WholeFarmCaseTests.Published("whole_system_plant_share");
        list.BandGap("First season: plants, share of all nitrogen", "Quilleré et al. 1995; Yang & Kim 2020", "second hand; abstract; other farms", low, high, "-", () => shares.Value.PlantsOfAll,
            "Those farms threw their solids away or lost nitrogen in pockets; here the solids are mineralized and returned, and lanes move at the pace of the crop. Not shown by any measured farm of this kind.");
        list.Span("seasons-whole-farm", "name", "whole_system_gas_share", "First season: gas, share of all nitrogen", "Goddek et al. 2016; Ru et al. 2017; Yang & Kim 2020", "second hand; read off a figure; abstract; other farms", "-", () => shares.Value.GasOfAll);
        list.Span("seasons-whole-farm", "name", "unseeded_start_up_days", "Filter cycled without mature media, 27 °C", "Somerville et al. 2014, FAO TP 589", "from memory", "d",
            () => FirstSeasonTests.StartUp(0).State.Operations.CycledDay);
        list.Near("Plants' nitrogen at twice the feed, feed being ample: they saturate", "Graber & Junge 2009", "second hand", 1, 0.1, "-", WholeFarmCaseTests.UptakeAtTwiceTheFeed);
        list.Near("Rise of dissolved nitrogen, 0.3 kg/d of 40 % feed in 2.7 m3 (55 % dissolved; the twin reckons its own share, 45-65 %)", "mass balance", "own calculation", 3.91, 0.72, "mg/(L d)",
            () => WholeFarmCaseTests.SmallLoop().Rise);
        list.Band("Feed nitrogen in fish and plants, 7 boards of lettuce a week over 2 (29.3 to 39.1 % from few plants to many): more", "Paudel 2020", "abstract; koi and water celery: order only",
            1, double.PositiveInfinity, "-", () => WholeFarmCaseTests.NitrogenUse(7) / WholeFarmCaseTests.NitrogenUse(2));
        list.Gap("Lettuce, share of the feed's nitrogen at 100 g of feed/(m2 d)", "Licamele 2009 (heads of 4.36 g dry, 3.38-5.22 % N)", "second hand", 0.025, 0.005, "-", () => WholeFarmCaseTests.PlantShareOfFeed,
            "The twin's heads stand longer and weigh twice his. The finding is the same: plants take a few per cent, nitrate climbs.");
        list.Near("Without air, 40 kg of fish in 2 m3 use up 3 mg/L of oxygen", "common practice", "common practice, no source", 30, 0.5, "min", () => PowerOutage.MinutesToOxygen(2000, 40, 300, 6, 3));
        return list;
    }
}
