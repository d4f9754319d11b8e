using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>Where plants stand: the nursery (place 0), the troughs, the lanes, the media beds, each in the order of the description.</summary>
public sealed class GrowingPlaces
{
    private readonly FarmContext _farm;
    private readonly int[] _basin;
    private readonly int _crops;
    private readonly bool[] _grows;
    private readonly int _firstLane;
    private readonly int _firstBed;

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
            .. parts.BedBasin,
        ];
        _crops = parts.CropNames.Length;
        _firstLane = 1 + parts.Farm.Troughs.Count;
        _firstBed = _firstLane + parts.Farm.Lanes.Count;
        _grows = [.. Enumerable.Range(0, Count * _crops).Select(i => EverGrows(i / _crops, i % _crops))];
    }

    /// <summary>How many places there are.</summary>
    public int Count => _basin.Length;

    /// <summary>The basin whose water a place has; -1 for a farm without a nursery at place 0.</summary>
    public int BasinOf(int place) => _basin[place];

    /// <summary>Whether a crop ever stands at a trough, lane or bed.</summary>
    public bool Grows(int place, int crop) => _grows[(place * _crops) + crop];

    /// <summary>The media bed that a place is; -1 for another.</summary>
    public int BedOf(int place) => place - _firstBed >= 0 ? place - _firstBed : -1;

    /// <summary>Lots that stand at a place now.</summary>
    public int LotCount(int place)
    {
        GrowingState growing = _farm.State.Growing;
        return place == 0 ? growing.Trays.Count + growing.Nursery.Microgreens.Count
            : place < _firstLane ? growing.Troughs[place - 1].Count
            : place < _firstBed ? growing.Lanes[place - _firstLane].Count
            : growing.Beds[place - _firstBed].Plants.IsEmpty ? 0 : 1;
    }

    /// <summary>A lot of a place, 0 to <see cref="LotCount"/> − 1.</summary>
    public PlantLot LotAt(int place, int index)
    {
        GrowingState growing = _farm.State.Growing;
        return place == 0 && index < growing.Trays.Count ? growing.Trays[index].Lot
            : place == 0 ? growing.Nursery.Microgreens[index - growing.Trays.Count].Lot
            : place < _firstLane ? growing.Troughs[place - 1][index]
            : place < _firstBed ? growing.Lanes[place - _firstLane][index]
            : growing.Beds[place - _firstBed].Plants;
    }

    private bool EverGrows(int place, int crop)
    {
        FarmParts parts = _farm.Parts;
        return place < _firstLane
            || (place < _firstBed ? parts.LaneEverGrows(place - _firstLane, crop) : parts.BedCrop[place - _firstBed] == crop);
    }
}
