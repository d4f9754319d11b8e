using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>What holds a tank from some time on: air and oxygen, until the next change.</summary>
/// <param name="FromHours">Since the cut, h.</param>
/// <param name="ConductanceLitresPerHour">Oxygen conductance of the air that still comes, L/h.</param>
/// <param name="OxygenGramsPerHour">Oxygen dissolved from cylinders, g/h.</param>
public readonly record struct OutageStretch(double FromHours, double ConductanceLitresPerHour, double OxygenGramsPerHour);

/// <summary>Oxygen of a tank after its flow and its blower have stopped, stretch by stretch of its backups, each in closed form.</summary>
/// <param name="StartMilligramsPerLitre">Oxygen at the cut, mg/L.</param>
/// <param name="SaturationMilligramsPerLitre">Saturation, mg/L.</param>
/// <param name="DemandGramsPerHour">What fish and water take, g/h.</param>
/// <param name="Litres">Water, L.</param>
/// <param name="SurfaceLitresPerHour">Conductance of its open surface, L/h.</param>
public readonly record struct Outage(
    double StartMilligramsPerLitre, double SaturationMilligramsPerLitre, double DemandGramsPerHour, double Litres, double SurfaceLitresPerHour)
{
    /// <summary>Minutes until the oxygen has fallen to a level; infinity where it is held above.</summary>
    /// <param name="milligramsPerLitre">The level, mg/L.</param>
    /// <param name="stretches">In the order of time, the first from 0; the last holds for ever.</param>
    public double MinutesTo(double milligramsPerLitre, IReadOnlyList<OutageStretch> stretches)
    {
        ArgumentNullException.ThrowIfNull(stretches);
        double level = StartMilligramsPerLitre;
        for (int i = 0; i < stretches.Count; i++)
        {
            OutageStretch stretch = stretches[i];
            double rate = (SurfaceLitresPerHour + stretch.ConductanceLitresPerHour) / Litres;
            double demand = (DemandGramsPerHour - stretch.OxygenGramsPerHour) * UnitConstants.GramsPerKilogram / Litres;
            double length = i + 1 < stretches.Count ? stretches[i + 1].FromHours - stretch.FromHours : double.PositiveInfinity;
            double hours = OxygenDepletion.HoursTo(level, milligramsPerLitre, SaturationMilligramsPerLitre, demand, rate);
            if (hours <= length)
            {
                return (stretch.FromHours + hours) * UnitConstants.SecondsPerMinute;
            }

            level = Math.Min(SaturationMilligramsPerLitre,
                OxygenDepletion.MilligramsPerLitreAfter(level, SaturationMilligramsPerLitre, demand, rate, length));
        }

        return double.PositiveInfinity;
    }
}
