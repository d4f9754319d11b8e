using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Supplements on their way into a basin: given evenly over some hours, as a drip into a sump through which the loop flows.</summary>
/// <remarks>
/// A day's acid or base at once would burn the one basin it is poured into; given over several turnovers of the sump it meets the
/// whole loop. Stock solutions stand outside the farm's books until they drip in. See docs/model/water-dosing.md.
/// </remarks>
public sealed class DoseProcess
{
    private readonly FarmContext _farm;
    private readonly double[] _given;
    private readonly bool[] _isLast;

    /// <summary>Makes the process.</summary>
    public DoseProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _isLast = new bool[farm.Parts.Basins.Length];
        _given = new double[farm.Parts.Basins.Length * DoseState.Columns];
    }

    /// <summary>Adds what drips in during the step.</summary>
    public void Contribute()
    {
        WaterStep step = _farm.Step;
        DoseState state = _farm.State.Doses;
        for (int b = 0; b < step.BasinCount; b++)
        {
            if (!state.IsDripping[b])
            {
                continue;
            }

            double left = state.SecondsLeft(b, step.FromSeconds);
            double share = left > 0 ? Math.Min(1, (step.ToSeconds - step.FromSeconds) / left) : 1;
            _isLast[b] = share >= 1;
            bool wet = _farm.Network.LitresAfter[b] > 0;
            for (int s = 0; s < DoseState.Columns; s++)
            {
                int i = (b * DoseState.Columns) + s;
                _given[i] = wet ? state.Grams[i] * share : 0;
                if (_given[i] > 0)
                {
                    step.Add(b, s, _given[i] / step.Hours);
                }
            }
        }
    }

    /// <summary>Books it.</summary>
    public void Commit()
    {
        DoseState state = _farm.State.Doses;
        for (int b = 0; b < _isLast.Length; b++)
        {
            if (!state.IsDripping[b])
            {
                continue;
            }

            double rest = 0;
            for (int s = 0; s < DoseState.Columns; s++)
            {
                int i = (b * DoseState.Columns) + s;
                if (_given[i] > 0)
                {
                    state.Grams[i] -= _given[i];
                    _farm.State.Books.PostWaterFromOutside(Door.Dosing, s, _given[i]);
                }

                rest += state.Grams[i];
            }

            // A basin that is dry gets nothing: what is left waits for water.
            state.IsDripping[b] = !_isLast[b] || rest > 0;
        }
    }
}
