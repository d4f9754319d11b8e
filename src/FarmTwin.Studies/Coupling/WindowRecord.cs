using FarmTwin.Farm;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;

namespace FarmTwin.Studies.Coupling;

/// <summary>The record of a season over some days.</summary>
/// <param name="season">The season, played to the end of the window.</param>
/// <param name="fromDay">First day of the window.</param>
/// <param name="days">Its length, days.</param>
/// <param name="rampsHeldBefore">Ramps that were broken off before it.</param>
/// <param name="unusualBefore">Fish dead of other causes than the usual before it.</param>
public sealed class WindowRecord(Season season, int fromDay, int days, int rampsHeldBefore, double unusualBefore)
{
    private const int HoursOfDay = 24;
    private readonly RecordView _record = new(season);

    /// <summary>Hardest day of the water heaters over what they can give; 0 without one.</summary>
    public double HeaterShare
    {
        get
        {
            double most = season.Parts.Heaters.Sum(h => h.OutputKilowatts) * UnitConstants.HoursPerDay;
            return most > 0 ? Days("water_heat_kWh").DefaultIfEmpty(0).Max() / most : 0;
        }
    }

    /// <summary>Ramps broken off within the window.</summary>
    public double RampsHeld => season.State.Operations.RampAborts - rampsHeldBefore;

    /// <summary>Fish dead within the window of other causes than the usual and the handling.</summary>
    public double UnusualDeaths => UnusualSoFar(season) - unusualBefore;

    /// <summary>Leafy and fruit crops fit for sale in the window, kg.</summary>
    public double CropKilograms => season.Record.Days.Columns.ToArray().Where(c => c.Name.StartsWith("saleable_", StringComparison.Ordinal) && c.Name.EndsWith("_kg", StringComparison.Ordinal)).Sum(c => Days(c.Name).Sum());

    /// <summary>First-grade heads cut in the window.</summary>
    public double Heads => season.Record.Days.Columns.ToArray().Where(c => c.Name.StartsWith("first_grade_", StringComparison.Ordinal)).Sum(c => Days(c.Name).Sum());

    /// <summary>Heat of the water heaters, kWh.</summary>
    public double HeatKilowattHours => Days("water_heat_kWh").Sum();

    /// <summary>Fish dead so far of other causes than the usual and the handling of moves and sales.</summary>
    public static double UnusualSoFar(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        string[] causes = [.. Farm.Fish.HazardsPerHour.Causes];
        return causes.Select((c, i) => c is "usual" or "handling" ? 0 : season.State.Husbandry.Deaths.Season[i]).Sum();
    }

    /// <summary>Highest hourly mean.</summary>
    public double Highest(string column) => Hours(column).Where(double.IsFinite).DefaultIfEmpty(double.NaN).Max();

    /// <summary>Lowest hourly mean.</summary>
    public double Lowest(string column) => Hours(column).Where(double.IsFinite).DefaultIfEmpty(double.NaN).Min();

    /// <summary>Largest fall of an hourly mean below any of the so many hours before it.</summary>
    public double LargestFall(string column, int hours)
    {
        double[] values = [.. Hours(column)];
        double fall = 0;
        for (int h = 1; h < values.Length; h++)
        {
            // From the window's first hour on: the valves are opened on its first morning, and that day is the one that matters.
            int from = Math.Max(0, h - hours);
            fall = Math.Max(fall, values.AsSpan(from, h - from).ToArray().Max() - values[h]);
        }

        return fall;
    }

    /// <summary>Largest change of the daily mean from a day to the next, the day before the window among them.</summary>
    public double LargestStepOfDays(string column)
    {
        double[] values = [.. _record.Days(column).Skip(Math.Max(0, fromDay - 1)).Take(days + 1).Where(double.IsFinite)];
        return values.Zip(values.Skip(1), (a, b) => Math.Abs(b - a)).DefaultIfEmpty(0).Max();
    }

    /// <summary>Flow through the coupling valve on each day, L/h, as the event record has it; the last known value between its lines.</summary>
    public double[] ValveLitresPerHour(string valve)
    {
        var flow = new double[days];
        double now = 0;
        foreach (LoggedFlow line in season.Log.Events.Where(e => e.Where == valve && (e.What is "coupling step" or "couple at once" or "coupling ramp held" or "fully coupled")).Select(e => new LoggedFlow(e.Seconds, e.Amount)))
        {
            int day = (int)(line.Seconds / UnitConstants.SecondsPerDay) - fromDay;
            now = line.LitresPerHour;
            for (int d = Math.Max(0, day); d < days; d++)
            {
                flow[d] = now;
            }
        }

        return flow;
    }

    private IEnumerable<double> Hours(string column) => _record.Hours(column).Skip(fromDay * HoursOfDay).Take(days * HoursOfDay);

    private IEnumerable<double> Days(string column) => _record.Days(column).Skip(fromDay).Take(days);

    private readonly record struct LoggedFlow(long Seconds, double LitresPerHour);
}
