using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Climate;

/// <summary>The lamps of the nursery, tier by tier.</summary>
public sealed class NurseryLamps
{
    // Photons of a white lamp carry about this much energy: 4.6 µmol/J of light.
    private const double LampMicromolesPerJoule = 4.6;

    private readonly FarmContext _farm;
    private readonly double[] _watts;

    /// <summary>Makes them.</summary>
    public NurseryLamps(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _watts = new double[farm.Parts.Tiers.Count];
    }

    /// <summary>Power of all of them, mean of the step, W.</summary>
    public double Watts { get; private set; }

    /// <summary>Sets the light of every tier for a step (<see cref="FarmContext.TierLight"/>) and their power.</summary>
    /// <param name="day">Day of the season.</param>
    /// <param name="from">Clock hour at which the step begins.</param>
    /// <param name="to">Clock hour at which it ends, at most 24.</param>
    public void Begin(long day, double from, double to)
    {
        Watts = 0;
        NurseryTiers tiers = _farm.Parts.Tiers;
        for (int t = 0; t < tiers.Count; t++)
        {
            bool off = tiers.UseOf(t, day) == TierUse.Off;
            double hours = off ? 0 : tiers.LightHours(t);
            double on = _farm.Parts.Farm.Nursery!.LightsFromHour;

            // Hours past midnight belong to the early morning.
            double lit = Overlap(from, to, on, on + hours) + Overlap(from, to, 0, on + hours - UnitConstants.HoursPerDay);
            double share = off ? 0 : _farm.Running.LampShare(_farm.State.Equipment.NurseryLamps, Math.Min(1, lit / (to - from)));
            double photons = off ? 0 : tiers.Photons(t);
            _farm.TierLight[t] = new TierLight(
                share, photons, photons / LampMicromolesPerJoule * share * UnitConstants.SecondsPerHour / 1e6, hours);
            _watts[t] = tiers.Watts(t) * share;
            Watts += _watts[t];
        }
    }

    /// <summary>Books the step's power.</summary>
    public void Commit()
    {
        double kilowattHours = _farm.Step.Hours / UnitConstants.GramsPerKilogram;
        for (int t = 0; t < _watts.Length; t++)
        {
            _farm.State.Growing.Nursery.TierKilowattHours[t] += _watts[t] * kilowattHours;
        }

        _farm.State.Totals.NurseryKilowattHours += Watts * kilowattHours;
    }

    private static double Overlap(double from, double to, double start, double end) => Math.Max(0, Math.Min(to, end) - Math.Max(from, start));
}
