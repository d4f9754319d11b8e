using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Equipment;

/// <summary>Which basins circulate as one body of water: what a test, a dose or a gate speaks of.</summary>
/// <remarks>
/// Basins joined by pipes without a valve are one loop. A valve joins two loops into one once it exchanges as much as the smaller
/// of them holds in a day; before that they are two waters that leak into each other.
/// </remarks>
public sealed class Loops
{
    private readonly FarmContext _farm;
    private readonly int[] _loop;
    private readonly (int Valve, int First, int Second)[] _joints;
    private readonly int[] _root;

    /// <summary>Finds the loops of a farm.</summary>
    public Loops(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        FarmParts parts = farm.Parts;
        _loop = [.. Enumerable.Range(0, parts.Basins.Length)];
        foreach (PipeDescription pipe in parts.Farm.Pipes.Values.Where(p => p.Valve is null))
        {
            Merge(_loop, parts.BasinIndex(pipe.From), parts.BasinIndex(pipe.To));
        }

        _joints =
        [
            .. parts.Farm.Pipes.Values.Where(p => p.Valve is not null).Select(p => (
                Array.IndexOf(farm.Network.ValveNames, p.Valve),
                _loop[parts.BasinIndex(p.From)],
                _loop[parts.BasinIndex(p.To)])).Where(j => j.Item2 != j.Item3).Distinct(),
        ];
        _root = new int[_loop.Length];
    }

    /// <summary>Water of a basin's loop, L.</summary>
    public double Litres(int basin)
    {
        Join();
        double litres = 0;
        for (int b = 0; b < _root.Length; b++)
        {
            litres += _root[b] == _root[basin] ? _farm.State.Basins.Litres[b] : 0;
        }

        return litres;
    }

    /// <summary>Water of a basin's loop by its pipes alone, whatever the valves, L.</summary>
    public double LitresApart(int basin)
    {
        double litres = 0;
        for (int b = 0; b < _loop.Length; b++)
        {
            litres += _loop[b] == _loop[basin] ? _farm.State.Basins.Litres[b] : 0;
        }

        return litres;
    }

    /// <summary>Mean concentration of a substance over a basin's loop, mg/L.</summary>
    public double MilligramsPerLitre(int basin, int substance)
    {
        Join();
        double litres = 0;
        double grams = 0;
        for (int b = 0; b < _root.Length; b++)
        {
            if (_root[b] == _root[basin])
            {
                litres += _farm.State.Basins.Litres[b];
                grams += _farm.State.Basins.Grams[Water.WaterStep.At(b, substance)];
            }
        }

        return litres > 0 ? grams * UnitConstants.GramsPerKilogram / litres : 0;
    }

    /// <summary>Whether two basins circulate as one water now.</summary>
    public bool AreOne(int first, int second)
    {
        Join();
        return _root[first] == _root[second];
    }

    private void Join()
    {
        _loop.CopyTo(_root, 0);
        foreach ((int valve, int first, int second) in _joints)
        {
            double smaller = Math.Min(LitresApart(first), LitresApart(second));
            if (_farm.Running.ExchangeOf(valve) * UnitConstants.HoursPerDay >= smaller)
            {
                Merge(_root, first, second);
            }
        }
    }

    private static void Merge(int[] groups, int first, int second)
    {
        int keep = groups[first];
        int drop = groups[second];
        for (int b = 0; b < groups.Length; b++)
        {
            groups[b] = groups[b] == drop ? keep : groups[b];
        }
    }
}
