using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Climate;

/// <summary>The lamps over the crops in the water, group by group.</summary>
/// <remarks>Groups may overlap: their light adds up over a basin, and its lit hours reach from the first lamp to the last.</remarks>
public sealed class CropLamps
{
    private readonly FarmContext _farm;
    private readonly LampGroup[] _lamps;
    private readonly LampSchedule[] _schedule;

    /// <summary>Makes them.</summary>
    public CropLamps(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _lamps = [.. farm.Parts.Farm.Lamps.Values.Select(l => LampGroup.Of(l, farm.Parts))];
        _schedule = new LampSchedule[farm.Parts.Basins.Length];
    }

    /// <summary>Power of all of them, mean of the step, W.</summary>
    public double Watts { get; private set; }

    /// <summary>
    /// Sets the light of the lamps, the lit share of the step and the lit hours of the day over every basin
    /// (<see cref="FarmContext.LampPhotons"/>, <see cref="FarmContext.LitShare"/>, <see cref="FarmContext.LitHoursOfDay"/>), and their power.
    /// </summary>
    /// <param name="from">Clock hour at which the step begins.</param>
    /// <param name="to">Clock hour at which it ends, at most 24.</param>
    /// <param name="today">Sunrise and sunset.</param>
    public void Begin(double from, double to, in DailyWeather today)
    {
        WaterStep step = _farm.Step;
        double sun = Math.Max(0, Math.Min(to, today.SunsetHours) - Math.Max(from, today.SunriseHours)) / step.Hours;
        Watts = 0;
        Array.Clear(_farm.LampPhotons);
        Array.Clear(_schedule);
        Array.Fill(_farm.LitShare, sun);
        for (int l = 0; l < _lamps.Length; l++)
        {
            LampCondition condition = _farm.State.Equipment.Lamps[l];
            double lit = _farm.Running.LampShare(condition, _lamps[l].Schedule.LitHours(from, to, today.SunriseHours, today.SunsetHours) / step.Hours);
            bool dark = !_farm.Running.LampsPowered || condition == LampCondition.Dark;
            LampSchedule hours = condition == LampCondition.BurnsOn ? LampSchedule.Always : _lamps[l].Schedule;
            Watts += _lamps[l].Watts * lit;
            foreach (int basin in _lamps[l].Basins)
            {
                _farm.LampPhotons[basin] += _lamps[l].Photons * lit;
                _farm.LitShare[basin] = Math.Max(_farm.LitShare[basin], Math.Min(1, sun + lit));
                _schedule[basin] = dark ? _schedule[basin] : _schedule[basin].Together(hours);
            }

            _farm.State.House.LampMolesToday += Par.LightIntegral(_lamps[l].Photons * lit, step.Hours) * _lamps[l].CropShare;
        }

        for (int b = 0; b < _schedule.Length; b++)
        {
            _farm.LitHoursOfDay[b] = _schedule[b].PhotoperiodHours(today.SunriseHours, today.SunsetHours);
        }
    }

    /// <summary>Books the step's power.</summary>
    public void Commit() => _farm.State.Totals.LampKilowattHours += Watts * (_farm.Step.Hours / UnitConstants.GramsPerKilogram);

    /// <summary>Lamps that travel together: their light spread over the crop they pass.</summary>
    private readonly record struct LampGroup(LampSchedule Schedule, int[] Basins, double Photons, double Watts, double CropShare)
    {
        public static LampGroup Of(LampDescription lamp, FarmParts parts)
        {
            int[] basins = [.. lamp.Over.Select(parts.BasinIndex)];
            double area = CropArea.SquareMetres(parts, b => lamp.Over.Contains(b));
            double lit = CropArea.SquareMetres(parts, b => parts.Farm.Lamps.Values.Any(l => l.Over.Contains(b)));
            double watts = lamp.Count * lamp.PowerWatts;
            return new LampGroup(
                new LampSchedule(lamp.BeforeSunriseHours, lamp.AfterSunsetHours),
                basins,
                area > 0 ? watts * lamp.EfficacyMicromolesPerJoule * lamp.UtilisationShare / area : 0,
                watts,
                lit > 0 ? area / lit : 0);
        }
    }
}
