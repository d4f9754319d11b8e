using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>Where plants stand: the nursery (place 0), the troughs, the lanes, the media beds, each in the order of the description.</summary>
public sealed class GrowingPlaces
{
    private readonly FarmContext _farm;
    private readonly int[] _basin;
    private readonly int[] _crop;
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
        _crop =
        [
            -1,
            .. parts.Farm.Troughs.Values.Select(_ => -1),
            .. parts.Farm.Lanes.Values.Select(l => Array.IndexOf(parts.CropNames, l.Crop)),
            .. parts.BedCrop,
        ];
        _firstLane = 1 + parts.Farm.Troughs.Count;
        _firstBed = _firstLane + parts.Farm.Lanes.Count;
    }

    /// <summary>How many places there are.</summary>
    public int Count => _basin.Length;

    /// <summary>The basin whose water a place has; -1 for a farm without a nursery at place 0.</summary>
    public int BasinOf(int place) => _basin[place];

    /// <summary>The one crop that a place grows; -1 where it may be any.</summary>
    public int CropOf(int place) => _crop[place];

    /// <summary>The media bed that a place is; -1 for another.</summary>
    public int BedOf(int place) => place - _firstBed >= 0 ? place - _firstBed : -1;

    /// <summary>Lots that stand at a place now.</summary>
    public int LotCount(int place)
    {
        GrowingState growing = _farm.State.Growing;
        return place == 0 ? growing.Trays.Count
            : place < _firstLane ? growing.Troughs[place - 1].Count
            : place < _firstBed ? growing.Lanes[place - _firstLane].Count
            : growing.Beds[place - _firstBed].Plants.IsEmpty ? 0 : 1;
    }

    /// <summary>A lot of a place, 0 to <see cref="LotCount"/> − 1.</summary>
    public PlantLot LotAt(int place, int index)
    {
        GrowingState growing = _farm.State.Growing;
        return place == 0 ? growing.Trays[index].Lot
            : place < _firstLane ? growing.Troughs[place - 1][index]
            : place < _firstBed ? growing.Lanes[place - _firstLane][index]
            : growing.Beds[place - _firstBed].Plants;
    }
}
