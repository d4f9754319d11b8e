using FarmTwin.Farm.Alarms;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>Alarms that came too late, too often or for nothing, and chores that nobody was there to do.</summary>
internal static class AlarmFindings
{
    private const double MinutesPerHour = 60;

    public static void Add(FindingList list)
    {
        if (list.Summary.Alarms is not { } alarms)
        {
            return;
        }

        Late(list, alarms);
        TooMany(list, alarms);
        Standing(list, alarms);
        Valve(list, alarms);
        Missed(list, alarms);
        Probes(list);
    }

    private static void Late(FindingList list, AlarmSummary alarms)
    {
        AlarmRow? late = alarms.List.Where(a => !a.IsFalse && a.Priority != "low").MaxBy(a => a.MinutesToAnswer ?? double.PositiveInfinity);
        if (late is null || late.MinutesToAnswer <= MinutesPerHour)
        {
            return;
        }

        string why = late.MissedCalls > 0 ? $"{late.MissedCalls} calls went unanswered" : "nobody was on site and nobody is called";
        list.Add(late.Priority == "high" ? 88 : 72, late.MinutesToAnswer is { } minutes
            ? $"The {late.Alarm} alarm of {list.Day(late.Day)} {late.Raised[^5..]} was answered after {Span(minutes)} because {why}: "
                + "somebody who answers at that hour belongs in the phone tree."
            : $"The {late.Alarm} alarm of {list.Day(late.Day)} {late.Raised[^5..]} was never answered: {why}.");
    }

    private static void TooMany(FindingList list, AlarmSummary alarms)
    {
        AlarmParameters parameters = list.Season.Parts.Alarms.Parameters;
        double weeks = list.Summary.Days / 7;
        string often = alarms.List.GroupBy(a => a.Alarm).OrderByDescending(g => g.Count()).Select(g => $"{g.Key} ({g.Count()} times)").FirstOrDefault(string.Empty);
        if (alarms.Raised > 1 && alarms.Raised / weeks > parameters.MostPerWeek)
        {
            list.Add(61, $"{alarms.Raised} alarms were raised, {alarms.Raised / weeks:0.0} a week, most often {often}: nobody listens to so many; set that limit, deadband or delay anew.");
        }
        else if (alarms.False > 1 && alarms.False > parameters.MostFalseShare * alarms.Raised)
        {
            list.Add(56, $"{alarms.False} of {alarms.Raised} alarms were false, raised by noise or drift of a probe: calibrate more often, or lengthen the on-delay; most often {often}.");
        }
    }

    private static void Standing(FindingList list, AlarmSummary alarms)
    {
        if (alarms.Standing.Count > 0)
        {
            list.Add(60, $"Still standing at the end: {string.Join(", ", alarms.Standing)}. An alarm that stands for good is no alarm: mend the cause or set the limit anew.");
        }
    }

    private static void Valve(FindingList list, AlarmSummary alarms)
    {
        if (alarms.ValveClosings > 0)
        {
            (double first, _, _) = list.Span("decouple");
            list.Add(52, $"The alarm box closed the coupling valve {alarms.ValveClosings} {(alarms.ValveClosings == 1 ? "time" : "times")}, first on {list.Day(first)}; "
                + "it opened again by the ramp when all had been quiet.");
        }
    }

    private static void Missed(FindingList list, AlarmSummary alarms)
    {
        if (alarms.MissedChores.Count > 0)
        {
            (double first, _, _) = list.Span("chore missed");
            list.Add(64, $"Nobody was on site for {string.Join(", ", alarms.MissedChores.OrderByDescending(c => c.Value).Take(4).Select(c => $"{c.Value} x {c.Key}"))}, "
                + $"first on {list.Day(first)}: a second trained person, or a feeder.");
        }
    }

    // What a day's mean of a probe was wrong by, where a hand meter would have shown it.
    private static void Probes(FindingList list)
    {
        AlarmParts parts = list.Season.Parts.Alarms;
        for (int p = 0; p < parts.ProbeNames.Length; p++)
        {
            double noticed = parts.Quantities[p] switch
            {
                ProbeQuantity.PH => parts.Parameters.NoticedErrorPH,
                ProbeQuantity.WaterTemperature => parts.Parameters.NoticedErrorKelvin,
                _ => double.PositiveInfinity,
            };
            string ending = $"{parts.ProbeNames[p]}_{ProbeQuantities.ColumnEnding(parts.Quantities[p])}";
            double[] read = list.Record.Days($"probe_{ending}");
            double[] truth = list.Record.Days($"true_{ending}");
            int worst = 0;
            for (int day = 1; day < read.Length; day++)
            {
                worst = Math.Abs(read[day] - truth[day]) > Math.Abs(read[worst] - truth[worst]) ? day : worst;
            }

            double off = read.Length > 0 ? read[worst] - truth[worst] : 0;
            if (Math.Abs(off) > noticed)
            {
                string name = parts.ProbeNames[p];
                bool controls = list.Season.Parts.Heaters.Any(h => h.Thermostat == name);
                list.Add(controls ? 73 : 54, $"Probe {name} read {off:+0.0;-0.0} off on {list.Day(worst)}"
                    + (controls ? ", and the heater that goes by it chased the error: test it by hand every week." : ": test it by hand every week."));
            }
        }
    }

    private static string Span(double minutes) => minutes < MinutesPerHour
        ? $"{minutes:0} min"
        : $"{Math.Floor(minutes / MinutesPerHour):0} h {minutes % MinutesPerHour:00} min";
}
