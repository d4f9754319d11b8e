using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>Whether a basin holds water that fish live in, or that the decants of their sludge reach.</summary>
public sealed class FishWater
{
    private readonly FarmContext _farm;
    private readonly int[] _decantedInto;

    /// <summary>Makes it.</summary>
    public FishWater(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _decantedInto = [.. farm.Parts.Mineralizers.Select(m => farm.Parts.BasinIndex(m.DecantTo))];
    }

    /// <summary>Whether such water feeds what hangs on a basin now.</summary>
    public bool Feeds(int basin)
    {
        for (int b = 0; b < _farm.Parts.Basins.Length; b++)
        {
            if (_farm.State.Cohorts[b].Count > 0 && _farm.Loops.AreOne(basin, b))
            {
                return true;
            }
        }

        foreach (int decanted in _decantedInto)
        {
            if (_farm.State.Totals.Decants > 0 && _farm.Loops.AreOne(basin, decanted))
            {
                return true;
            }
        }

        return false;
    }
}
