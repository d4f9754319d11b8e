using CsCheck;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Tests.Laws;

namespace FarmTwin.Farm.Tests.Equipment;

/// <summary>Pipes, pumps, levels and valves: volumes are exact and pumps never draw what is not there.</summary>
public class FlowNetworkTests
{
    private static readonly FarmDescription Shipped = Farms.FirstSeason;

    private static readonly FarmDescription WithoutFloats = Shipped with
    {
        Basins = Shipped.Basins.ToDictionary(b => b.Key, b => b.Value with { FloatValve = false }),
    };

    [Fact]
    public void Any_state_of_the_shipped_network_keeps_every_litre() => AssertExact(Shipped);

    [Fact]
    public void Without_float_valves_every_litre_is_kept_and_no_pump_runs_dry() => AssertExact(WithoutFloats);

    [Fact]
    public void The_shipped_network_stores_hardly_more_than_its_pipes()
    {
        var network = new FlowNetwork(Shipped);
        int pairs = Shipped.Pipes.Values.Select(p => (p.From, p.To)).Distinct().Count();
        Assert.InRange(network.Plan.SlotCount, Shipped.Basins.Count + pairs, Shipped.Basins.Count + pairs + 12);
    }

    [Fact]
    public void A_closed_valve_passes_nothing_and_an_open_one_its_flow_both_ways()
    {
        FarmDescription farm = BareFarm.TwoLoops(2000, 700, 7200, 1800, 5000);
        var network = new FlowNetwork(farm);
        double[] litres = [.. farm.Basins.Values.Select(b => b.VolumeLitres)];
        network.Solve(litres, new double[4], [0], 1);
        Assert.Equal(0, FlowOf(network, "tank-to-plants"));

        network.Solve(litres, new double[4], [400], 1);
        Assert.Equal(400, FlowOf(network, "tank-to-plants"), 1e-9);
        Assert.Equal(400, FlowOf(network, "lane-to-fish"), 1e-9);
        Assert.Equal(4600, FlowOf(network, "tank-out"), 1e-9);
        Assert.Equal(litres, network.LitresAfter);
    }

    [Fact]
    public void A_valve_diverts_no_more_than_there_is()
    {
        FarmDescription farm = BareFarm.TwoLoops(2000, 2000, 7200, 9000, 300);
        var network = new FlowNetwork(farm);
        network.Solve([2000, 2000, 7200, 9000], new double[4], [5000], 1);
        Assert.Equal(300, FlowOf(network, "tank-to-plants"), 1e-9);
        Assert.Equal(0, FlowOf(network, "tank-out"), 1e-9);
    }

    [Fact]
    public void A_valve_on_several_pipes_to_one_sump_shares_its_flow_among_them_by_what_they_carry()
    {
        var network = new FlowNetwork(Shipped);
        double[] litres = [.. Shipped.Basins.Values.Select(b => b.InitialVolumeLitres ?? b.VolumeLitres)];
        network.Solve(litres, new double[litres.Length], [900], 1);
        Assert.Equal(900, FlowOf(network, "filter-to-plants"), 1e-6);
        double back = FlowOf(network, "trough-to-fish") + FlowOf(network, "lane-1-to-fish") + FlowOf(network, "lane-2-to-fish")
            + FlowOf(network, "lane-3-to-fish");
        Assert.Equal(900, back, 1e-6);
        Assert.Equal(900 * 500.0 / 1800, FlowOf(network, "lane-2-to-fish"), 1e-6);
    }

    [Fact]
    public void A_level_line_runs_until_both_sumps_stand_equally_high_and_spares_source_water()
    {
        var network = new FlowNetwork(Shipped);
        int plant = Index("plant-sump");
        int fish = Index("fish-sump");
        double[] litres = [.. Shipped.Basins.Values.Select(b => b.InitialVolumeLitres ?? b.VolumeLitres)];
        litres[plant] += 60;
        litres[fish] -= 40;
        network.Solve(litres, new double[litres.Length], [1500], 1);
        // 60 L more on 2.2 m2 and 40 L less on 1.0 m2: 20 L over both is 6.25 mm above the normal level in each.
        Assert.Equal(46.25, FlowOf(network, "level-line"), 1e-6);
        Assert.Equal(0, network.TopUp[fish], 1e-6);
        Assert.Equal(706.25, network.LitresAfter[fish], 1e-6);
        Assert.Equal(1813.75, network.LitresAfter[plant], 1e-6);

        network.Solve(litres, new double[litres.Length], [0], 1);
        Assert.Equal(0, FlowOf(network, "level-line"));
        Assert.Equal(40, network.TopUp[fish], 1e-6);
    }

    [Fact]
    public void A_float_valve_fills_to_the_normal_level_and_replaces_what_evaporates()
    {
        FarmDescription farm = BareFarm.Of(
            new Dictionary<string, BasinDescription> { ["pot"] = BareFarm.Closed(BasinUse.NurseryReservoir, 100) with { FloatValve = true } },
            new Dictionary<string, PipeDescription>());
        var network = new FlowNetwork(farm);
        network.Solve([80], [2], [], 0.5);
        Assert.Equal(100, network.LitresAfter[0], 1e-12);
        Assert.Equal(42, network.TopUp[0], 1e-12);
    }

    [Fact]
    public void Above_the_brim_a_sump_spills_out_of_the_farm()
    {
        FarmDescription farm = BareFarm.TwoLoops(2000, 700, 7200, 1800, 5000);
        var network = new FlowNetwork(farm);
        network.Solve([2000, 900, 7200, 1800], new double[4], [0], 0.5);
        Assert.Equal(770, network.LitresAfter[1], 1e-9);
        Assert.Equal(260, network.Spill[1], 1e-9);
    }

    [Fact]
    public void A_pump_that_draws_from_a_pump_stops_when_the_first_runs_short()
    {
        FarmDescription farm = BareFarm.Of(
            new Dictionary<string, BasinDescription>
            {
                ["first"] = BareFarm.Closed(BasinUse.FishSump, 1000),
                ["second"] = BareFarm.Closed(BasinUse.PlantSump, 1000),
                ["pot"] = BareFarm.Closed(BasinUse.FishTank, 5000),
            },
            new Dictionary<string, PipeDescription>
            {
                ["a"] = BareFarm.Pump("first", "second", 2000),
                ["b"] = BareFarm.Pump("second", "pot", 2000),
                ["c"] = BareFarm.Overflow("pot", "first"),
            });
        var network = new FlowNetwork(farm);
        network.Solve([30, 40, 100], [0, 0, 0], [], 1);
        AssertBalances(network, farm, [30, 40, 100], 1);
        Assert.InRange(network.LitresAfter[1], 19.999, 1000);
    }

    [Fact]
    public void A_pipe_back_to_its_own_basin_is_refused_with_its_name() =>
        Assert.Contains("pipes.a: the pipe leads from 'tank' back to itself", Refused(["tank"], new() { ["a"] = BareFarm.Pump("tank", "tank", 100) }).Message, StringComparison.Ordinal);

    [Fact]
    public void A_circle_of_overflows_is_refused_with_the_basin_and_the_cure()
    {
        DescriptionException refused = Refused(
            ["a", "b"], new() { ["1"] = BareFarm.Overflow("a", "b"), ["2"] = BareFarm.Overflow("b", "a") });
        Assert.Contains("circle", refused.Message, StringComparison.Ordinal);
        Assert.Contains("needs a pump", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_valve_on_a_pumped_pipe_is_refused() => Assert.Contains("pipes.1", Refused(
        ["a", "b"], new() { ["1"] = BareFarm.Pump("a", "b", 10) with { Valve = "v" }, ["2"] = BareFarm.Overflow("b", "a") }).Message, StringComparison.Ordinal);

    [Fact]
    public void A_valve_that_leaves_the_water_no_other_way_is_refused() => Assert.Contains("second overflow pipe", Refused(
        ["a", "b"], new() { ["1"] = BareFarm.Pump("a", "b", 10), ["2"] = BareFarm.Overflow("b", "a", "v") }).Message, StringComparison.Ordinal);

    [Fact]
    public void A_valved_basin_that_overflows_into_no_sump_is_refused() => Assert.Contains("must overflow into sumps", Refused(
        ["a", "b", "c"],
        new()
        {
            ["1"] = BareFarm.Pump("a", "b", 10),
            ["2"] = BareFarm.Overflow("b", "a", "v"),
            ["3"] = BareFarm.Overflow("b", "c"),
            ["4"] = BareFarm.Overflow("c", "a"),
        }).Message, StringComparison.Ordinal);

    [Fact]
    public void A_level_line_to_a_basin_without_a_pump_is_refused() => Assert.Contains("level line", Refused(
        ["a", "b"],
        new() { ["1"] = BareFarm.Pump("a", "b", 10), ["2"] = BareFarm.Overflow("b", "a"), ["3"] = BareFarm.Overflow("a", "b", "v") }).Message, StringComparison.Ordinal);

    private static void AssertExact(FarmDescription farm)
    {
        var network = new FlowNetwork(farm);
        double[] normal = [.. farm.Basins.Values.Select(b => b.VolumeLitres)];
        Gen.Select(
            Gen.Double[0, 1.1].Array[normal.Length], Gen.Double[0, 60].Array[normal.Length], Gen.Double[0, 6000], Gen.Double[0, 1].Array[network.PumpShare.Length],
            Gen.Int[0, 2].Select(i => i == 0 ? 1 : i == 1 ? 0.5 : 1.0 / 60)).Sample(
            (share, loss, valve, pump, hours) =>
            {
                double[] litres = [.. normal.Zip(share, (v, s) => s < 0.05 ? 0 : v * s)];
                pump.CopyTo(network.PumpShare, 0);
                network.Solve(litres, loss, [valve], hours);
                AssertBalances(network, farm, litres, hours);
            }, iter: 2000, threads: 1);
    }

    private static void AssertBalances(FlowNetwork network, FarmDescription farm, double[] litres, double hours)
    {
        string[] names = [.. farm.Basins.Keys];
        var change = new double[names.Length];
        double through = 0;
        for (int p = 0; p < network.PipeNames.Length; p++)
        {
            PipeDescription pipe = farm.Pipes[network.PipeNames[p]];
            Assert.True(network.EdgeFlow[p] >= 0, $"{network.PipeNames[p]} carries {network.EdgeFlow[p]} L/h");
            change[Array.IndexOf(names, pipe.From)] -= network.EdgeFlow[p];
            change[Array.IndexOf(names, pipe.To)] += network.EdgeFlow[p];
            through += network.EdgeFlow[p];
        }

        for (int b = 0; b < names.Length; b++)
        {
            Assert.True(network.TopUp[b] >= 0 && network.Spill[b] >= 0 && network.Loss[b] >= 0, names[b]);
            Assert.True(network.LitresAfter[b] >= 0, $"{names[b]} holds {network.LitresAfter[b]} L");
            double expected = litres[b] + (hours * (change[b] + network.TopUp[b] - network.Spill[b] - network.Loss[b]));
            Assert.True(
                Math.Abs(expected - network.LitresAfter[b]) < 1e-9 * (litres[b] + (hours * through) + 1),
                $"{names[b]}: {network.LitresAfter[b]:R} L after the step, by the flows {expected:R}");
        }
    }

    private static DescriptionException Refused(string[] basins, Dictionary<string, PipeDescription> pipes) =>
        Assert.Throws<DescriptionException>(() => new FlowNetwork(BareFarm.Of(
            basins.ToDictionary(b => b, _ => BareFarm.Closed(BasinUse.FishTank, 100)), pipes, "v")));

    private static double FlowOf(FlowNetwork network, string pipe) => network.EdgeFlow[Array.IndexOf(network.PipeNames, pipe)];

    private static int Index(string basin) => Shipped.Basins.Keys.ToList().IndexOf(basin);
}
