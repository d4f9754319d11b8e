namespace FarmTwin.Farm.Plants;

/// <summary>Dense rafts where seedlings stand before final spacing; each crop has its own places.</summary>
/// <remarks>
/// Places are reserved per crop because a trough shared by two blocks: the slow crop fills it (our own finding in trial runs).
/// Within a crop strictly first in, first out. Mutable state of one season. Allocates when a lot enters, never in a step.
/// </remarks>
public sealed class TransplantTrough
{
    private readonly double[] _places;
    private readonly List<PlantLot> _lots = [];

    /// <summary>Makes an empty trough.</summary>
    /// <param name="areaPerPlaceSquareMetres">Growing area of one place, m².</param>
    /// <param name="placesPerCrop">Places reserved for each crop, by the crop's index.</param>
    public TransplantTrough(double areaPerPlaceSquareMetres, params ReadOnlySpan<double> placesPerCrop)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(areaPerPlaceSquareMetres);
        AreaPerPlaceSquareMetres = areaPerPlaceSquareMetres;
        _places = placesPerCrop.ToArray();
    }

    /// <summary>Growing area of one place, m².</summary>
    public double AreaPerPlaceSquareMetres { get; }

    /// <summary>Number of lots that stand in the trough.</summary>
    public int Count => _lots.Count;

    /// <summary>A lot, in the order of arrival.</summary>
    public PlantLot this[int index] => _lots[index];

    /// <summary>Places reserved for a crop; 0 for one that the trough does not know.</summary>
    public double Places(int crop) => crop >= 0 && crop < _places.Length ? _places[crop] : 0;

    /// <summary>Plants of a crop that stand here.</summary>
    public double Standing(int crop)
    {
        double sum = 0;
        for (int i = 0; i < _lots.Count; i++)
        {
            sum += _lots[i].Crop == crop ? _lots[i].Plants : 0;
        }

        return sum;
    }

    /// <summary>Free places of a crop.</summary>
    public double FreePlaces(int crop) => Math.Max(0, Places(crop) - Standing(crop));

    /// <summary>Plants of a crop that are at least so old.</summary>
    public double Available(int crop, double day, double minimumAgeDays)
    {
        double sum = 0;
        for (int i = 0; i < _lots.Count; i++)
        {
            sum += _lots[i].Crop == crop && _lots[i].AgeDays(day) >= minimumAgeDays ? _lots[i].Plants : 0;
        }

        return sum;
    }

    /// <summary>Sets plants into the free places of their crop; those for which there is none stay in the lot.</summary>
    /// <param name="lot">The seedlings; what is left in it was refused.</param>
    /// <returns>Plants that found a place.</returns>
    public double Enter(PlantLot lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        double free = FreePlaces(lot.Crop);
        if (lot.IsEmpty || free <= PlantLot.NegligiblePlants)
        {
            return 0;
        }

        var placed = new PlantLot();
        double moved = lot.MoveInto(placed, Math.Min(free, lot.Plants));
        placed.AreaSquareMetres = moved * AreaPerPlaceSquareMetres;
        _lots.Add(placed);
        return moved;
    }

    /// <summary>Takes the oldest plants of a crop for a board, joined into one lot.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="plants">How many are wanted.</param>
    /// <param name="day">Today.</param>
    /// <param name="minimumAgeDays">How old they must be, days from sowing.</param>
    /// <param name="board">Where they go; its area grows by their places' and is for the lane to set.</param>
    /// <returns>How many were taken; fewer where fewer are old enough.</returns>
    public double TakeForBoard(int crop, double plants, double day, double minimumAgeDays, PlantLot board)
    {
        ArgumentNullException.ThrowIfNull(board);
        double taken = 0;
        for (int i = 0; i < _lots.Count && plants - taken > PlantLot.NegligiblePlants;)
        {
            PlantLot lot = _lots[i];
            if (lot.Crop == crop && lot.AgeDays(day) >= minimumAgeDays)
            {
                taken += lot.MoveInto(board, plants - taken);
            }

            if (lot.IsEmpty)
            {
                _lots.RemoveAt(i);
            }
            else
            {
                i++;
            }
        }

        return taken;
    }

    /// <summary>Removes plants (losses) from one lot with all they hold; their places become free.</summary>
    /// <param name="index">Which lot.</param>
    /// <param name="plants">How many.</param>
    /// <param name="waste">Where they go.</param>
    /// <returns>How many were removed.</returns>
    public double Lose(int index, double plants, PlantLot waste)
    {
        double moved = _lots[index].MoveInto(waste, plants);
        if (_lots[index].IsEmpty)
        {
            _lots.RemoveAt(index);
        }

        return moved;
    }

    /// <summary>Makes this trough equal to another with the same places.</summary>
    /// <exception cref="ArgumentException">The places differ.</exception>
    public void CopyFrom(TransplantTrough other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (!_places.AsSpan().SequenceEqual(other._places) || !AreaPerPlaceSquareMetres.Equals(other.AreaPerPlaceSquareMetres))
        {
            throw new ArgumentException("The two troughs have different places.", nameof(other));
        }

        while (_lots.Count > other._lots.Count)
        {
            _lots.RemoveAt(_lots.Count - 1);
        }

        while (_lots.Count < other._lots.Count)
        {
            _lots.Add(new PlantLot());
        }

        for (int i = 0; i < _lots.Count; i++)
        {
            _lots[i].CopyFrom(other._lots[i]);
        }
    }

    /// <summary>An equal trough that shares nothing with this one.</summary>
    public TransplantTrough Clone()
    {
        var copy = new TransplantTrough(AreaPerPlaceSquareMetres, _places);
        copy.CopyFrom(this);
        return copy;
    }
}
