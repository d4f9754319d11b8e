using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Biofilter;

/// <summary>Surface that carries a film: walls, beads and roots of every basin. Roots grow and are harvested, so it is set anew each day.</summary>
public sealed class WettedSurfaces
{
    private readonly FarmContext _farm;
    private readonly GrowingPlaces _places;

    /// <summary>Makes it.</summary>
    public WettedSurfaces(FarmContext farm, GrowingPlaces places)
    {
        ArgumentNullException.ThrowIfNull(farm);
        ArgumentNullException.ThrowIfNull(places);
        _farm = farm;
        _places = places;
    }

    /// <summary>Sets every basin's film area from its walls, beads, media and roots; surface that is new carries no film yet.</summary>
    public void SetAreas()
    {
        FarmParts parts = _farm.Parts;
        Basins basins = _farm.State.Basins;
        for (int b = 0; b < basins.Count; b++)
        {
            double area = parts.Basins[b].WettedSquareMetres;
            for (int f = 0; f < parts.Filters.Length; f++)
            {
                if (parts.FilterBasin[f] == b)
                {
                    area += parts.FilterMedia[f].PackedAreaSquareMetres(parts.Filters[f].BeadsLitres);
                }
            }

            for (int bed = 0; bed < parts.Beds.Length; bed++)
            {
                if (parts.BedBasin[bed] == b)
                {
                    area += BedProcess.FilmSquareMetres(parts, bed, basins.Litres[b]);
                }
            }

            area += RootSquareMetres(b);
            double old = basins.FilmSquareMetres[b];
            if (old > 0 && area > old)
            {
                // New surface is bare; surface that is harvested takes its film along.
                basins.AmmoniaOxidizers[b] *= old / area;
                basins.NitriteOxidizers[b] *= old / area;
            }

            basins.FilmSquareMetres[b] = area;
        }
    }

    private double RootSquareMetres(int basin)
    {
        double roots = 0;
        for (int place = 1; place < _places.Count; place++)
        {
            if (_places.BasinOf(place) != basin)
            {
                continue;
            }

            for (int i = 0; i < _places.LotCount(place); i++)
            {
                PlantLot lot = _places.LotAt(place, i);
                if (lot.AreaSquareMetres > 0)
                {
                    double growth = lot.DryGrams / lot.AreaSquareMetres / _farm.Parts.Practice.FullRootDryGrams;
                    roots += _farm.Parts.RootSurface.FlatAreaSquareMetres(lot.AreaSquareMetres, growth);
                }
            }
        }

        return roots;
    }
}
