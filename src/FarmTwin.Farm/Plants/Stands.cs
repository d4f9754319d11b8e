using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>Sums over the lots of each basin, made anew when plants were moved: canopy, leaf, uptake planned for the day.</summary>
/// <remarks>Workspace of one run; nothing is allocated after construction.</remarks>
public sealed class Stands
{
    private readonly FarmContext _farm;
    private readonly GrowingPlaces _places;
    private readonly NurseryStand _nursery;

    /// <summary>Makes empty sums.</summary>
    public Stands(FarmContext farm, GrowingPlaces places, NurseryStand nursery)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _places = places;
        _nursery = nursery;
        int basins = farm.Parts.Basins.Length;
        Planned = new double[basins * UptakeAmounts.Count];
        OpenCanopySquareMetres = new double[basins];
        OpenLeafSquareMetres = new double[basins];
        LeafSquareMetres = new double[basins];
    }

    /// <summary>Uptake planned for the day, g, [basin × channels + channel].</summary>
    public double[] Planned { get; }

    /// <summary>Area outside the nursery times the share of the light it intercepts, m² by basin.</summary>
    public double[] OpenCanopySquareMetres { get; }

    /// <summary>Leaf area outside the nursery, m² by basin.</summary>
    public double[] OpenLeafSquareMetres { get; }

    /// <summary>Leaf area, the nursery's included, m² by basin.</summary>
    public double[] LeafSquareMetres { get; }

    /// <summary>Makes the sums anew if plants were moved.</summary>
    public void Refresh()
    {
        GrowingState growing = _farm.State.Growing;
        if (!growing.Changed)
        {
            return;
        }

        growing.Changed = false;
        Array.Clear(Planned);
        Array.Clear(OpenCanopySquareMetres);
        Array.Clear(OpenLeafSquareMetres);
        _nursery.Clear();
        Array.Clear(LeafSquareMetres);
        for (int place = 0; place < _places.Count; place++)
        {
            int basin = _places.BasinOf(place);
            if (basin < 0)
            {
                continue;
            }

            for (int i = 0; i < _places.LotCount(place); i++)
            {
                PlantLot lot = _places.LotAt(place, i);
                if (!lot.IsEmpty)
                {
                    Add(lot, basin, place == 0 ? i : -1);
                }
            }
        }
    }

    private void Add(PlantLot lot, int basin, int inNursery)
    {
        double leaf = lot.LeafAreaIndex(_farm.Parts.Crops[lot.Crop]);
        double canopy = lot.AreaSquareMetres * Transpiration.Intercepted(leaf, _farm.Parts.Plants);
        LeafSquareMetres[basin] += leaf * lot.AreaSquareMetres;
        if (inNursery >= 0)
        {
            _nursery.Add(inNursery, canopy, leaf * lot.AreaSquareMetres);
        }
        else
        {
            OpenCanopySquareMetres[basin] += canopy;
            OpenLeafSquareMetres[basin] += leaf * lot.AreaSquareMetres;
        }

        UptakeAmounts planned = lot.Planned;
        int start = basin * UptakeAmounts.Count;
        Planned[start] += planned.Ammonium;
        Planned[start + 1] += planned.Nitrate;
        Planned[start + 2] += planned.Phosphorus;
        Planned[start + 3] += planned.Potassium;
        Planned[start + 4] += planned.Calcium;
        Planned[start + 5] += planned.Magnesium;
        Planned[start + 6] += planned.Sulfur;
        Planned[start + 7] += planned.Iron;
    }
}
