using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Equipment;

/// <summary>What a test or a dose means by "the loop": the shipped farm's two waters, apart and joined.</summary>
public class LoopsTests
{
    private readonly FarmContext _farm;

    public LoopsTests()
    {
        var parts = new FarmParts(Farms.FirstSeason, ShippedLibrary.Library);
        var network = new FlowNetwork(Farms.FirstSeason);
        _farm = new FarmContext(parts, new FarmState(parts, network.ValveNames.Length), network);
        for (int b = 0; b < parts.Basins.Length; b++)
        {
            _farm.State.Basins.Litres[b] = parts.Basins[b].VolumeLitres;
        }
    }

    [Fact]
    public void With_valves_closed_the_fish_loop_and_the_plant_loop_are_two_waters()
    {
        Assert.True(_farm.Loops.AreOne(Basin("tank-1"), Basin("filter")));
        Assert.True(_farm.Loops.AreOne(Basin("plant-sump"), Basin("lane-3")));
        Assert.False(_farm.Loops.AreOne(Basin("tank-1"), Basin("plant-sump")));
        Assert.Equal(3 * 1600 + 250 + 700, _farm.Loops.Litres(Basin("fish-sump")), 1e-9);
    }

    [Fact]
    public void A_basin_without_pipes_is_a_water_of_its_own() =>
        Assert.Equal(_farm.State.Basins.Litres[Basin("mineralizer")], _farm.Loops.Litres(Basin("mineralizer")), 1e-9);

    [Fact]
    public void The_valve_joins_them_once_it_exchanges_the_smaller_loop_in_a_day()
    {
        double fishLoop = _farm.Loops.LitresApart(Basin("fish-sump"));
        _farm.State.ValveFlow[0] = 0.99 * fishLoop / 24;
        Assert.False(_farm.Loops.AreOne(Basin("fish-sump"), Basin("plant-sump")));
        _farm.State.ValveFlow[0] = 1.01 * fishLoop / 24;
        Assert.True(_farm.Loops.AreOne(Basin("fish-sump"), Basin("plant-sump")));
        Assert.Equal(
            fishLoop + _farm.Loops.LitresApart(Basin("plant-sump")), _farm.Loops.Litres(Basin("tank-2")), 1e-6);
    }

    private int Basin(string name) => _farm.Parts.BasinIndex(name);
}
