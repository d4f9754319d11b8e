using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>Where plants stand: the nursery (place 0), the troughs, the lanes, in the order of the description.</summary>
public sealed class GrowingPlaces
{
    private readonly FarmContext _farm;
    private readonly int[] _basin;

    /// <summary>Finds the places of a farm.</summary>
    public GrowingPlaces(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        FarmParts parts = farm.Parts;
        _basin =
        [
            parts.Farm.Nursery is { } nursery ? parts.BasinIndex(nursery.Water) : -1,
            .. parts.Farm.Troughs.Values.Select(t => parts.BasinIndex(t.Basin)),
            .. parts.Farm.Lanes.Values.Select(l => parts.BasinIndex(l.Basin)),
        ];
    }

    /// <summary>How many places there are.</summary>
    public int Count => _basin.Length;

    /// <summary>The basin whose water a place has; -1 for a farm without a nursery at place 0.</summary>
    public int BasinOf(int place) => _basin[place];

    /// <summary>Lots that stand at a place now.</summary>
    public int LotCount(int place)
    {
        GrowingState growing = _farm.State.Growing;
        return place == 0 ? growing.Trays.Count
            : place <= growing.Troughs.Length ? growing.Troughs[place - 1].Count
            : growing.Lanes[place - 1 - growing.Troughs.Length].Count;
    }

    /// <summary>A lot of a place, 0 to <see cref="LotCount"/> − 1.</summary>
    public PlantLot LotAt(int place, int index)
    {
        GrowingState growing = _farm.State.Growing;
        return place == 0 ? growing.Trays[index].Lot
            : place <= growing.Troughs.Length ? growing.Troughs[place - 1][index]
            : growing.Lanes[place - 1 - growing.Troughs.Length][index];
    }
}
