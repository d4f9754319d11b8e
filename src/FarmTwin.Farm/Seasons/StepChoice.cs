using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>How long a step may be: by the minute when fish may die or an alarm is near, else as long as the scenario allows.</summary>
internal sealed class StepChoice
{
    private const long FineStepSeconds = 60;
    private const long FineHoldSeconds = 1800;

    private readonly FarmContext _farm;
    private readonly ProbeProcess _probes;
    private readonly double[] _oxygenBefore;
    private readonly long _longest;

    public StepChoice(FarmContext farm, ProbeProcess probes)
    {
        _farm = farm;
        _probes = probes;
        _oxygenBefore = new double[farm.Parts.Basins.Length];
        _longest = (long)Math.Round(farm.Parts.Farm.StepMinutes * 60);
    }

    /// <summary>How long the next step may be, s.</summary>
    public long LongestSeconds(long now) => _farm.State.Operations.FineUntilSeconds > now || PowerAirOrFlowIsOff()
        ? Math.Min(FineStepSeconds, _longest)
        : Math.Min(_probes.LongestStepSeconds(), _longest);

    /// <summary>Before the basins take their new state: remembers their oxygen, for its slope.</summary>
    public void Begin()
    {
        for (int b = 0; b < _oxygenBefore.Length; b++)
        {
            _oxygenBefore[b] = _farm.State.Basins.MilligramsPerLitre(b, Substance.Oxygen);
        }
    }

    /// <summary>After a step: by the minute while a stocked basin is, or at this slope will be, short of oxygen.</summary>
    public void Follow(long now)
    {
        PracticeParameters practice = _farm.Parts.Practice;
        for (int b = 0; b < _oxygenBefore.Length; b++)
        {
            if (_farm.State.Cohorts[b].Count == 0)
            {
                continue;
            }

            double oxygen = _farm.State.Basins.MilligramsPerLitre(b, Substance.Oxygen);
            double predicted = oxygen + Math.Min(0, oxygen - _oxygenBefore[b]);
            bool fine = _farm.State.Operations.FineUntilSeconds > now;
            if (predicted < practice.FineStepOxygen || (fine && oxygen < practice.CoarseStepOxygen))
            {
                _farm.State.Operations.FineUntilSeconds = now + FineHoldSeconds;
            }
        }
    }

    // Without power, and where a stocked tank is without its air or its flow, by the minute from the moment that it fails.
    private bool PowerAirOrFlowIsOff()
    {
        if (!_farm.State.Equipment.MainsOn)
        {
            return true;
        }

        for (int b = 0; b < _oxygenBefore.Length; b++)
        {
            if (_farm.State.Cohorts[b].Count > 0
                && ((_farm.Parts.Basins[b].AirLitresPerMinute > 0 && _farm.State.Basins.AirShare[b] * _farm.Running.Air[b] <= 0)
                    || _farm.Running.FlowIsOff(b)))
            {
                return true;
            }
        }

        return false;
    }
}
