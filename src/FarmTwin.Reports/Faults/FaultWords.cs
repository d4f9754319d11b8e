using FarmTwin.Farm;
using FarmTwin.Farm.Operations;
using FarmTwin.Studies.Faults;

namespace FarmTwin.Reports.Faults;

/// <summary>The faults of a farm in words: what the screen, the page and the files share.</summary>
internal static class FaultWords
{
    private const double SpillWorthAWord = 100;
    private const double MoneyWorthAWord = 50;
    private const double FewMinutes = 120;
    private const double HoursOfTwoDays = 48;

    /// <summary>What breaks, and when.</summary>
    public static string When(FaultStudyResult study, FaultRow row)
    {
        DateTime at = study.Start.ToDateTime(TimeOnly.MinValue).AddSeconds(row.Case.Hour.Seconds);
        return FormattableString.Invariant($"day {Math.Floor(FarmWork.DayOf(row.Case.Hour.Seconds)):0} ({at:d MMM, HH:mm})");
    }

    /// <summary>What it does, in a sentence.</summary>
    public static string Harm(FaultRow row)
    {
        FaultHarm harm = row.Harm;
        var parts = new List<string>();
        if (harm.MinutesTo4MgPerL is { } four)
        {
            string three = harm.MinutesTo3MgPerL is { } t ? $", at 3 after {Span(t)}" : string.Empty;
            string two = harm.MinutesTo2MgPerL is { } w ? $", at 2 after {Span(w)}" : string.Empty;
            parts.Add(four > 0
                ? $"the first tank is at 4 mg/L of oxygen after {Span(four)}{three}{two}"
                : $"the first tank stood at or below 4 mg/L of oxygen before{three.Replace(", at", ", and is at", StringComparison.Ordinal)}{two}");
        }

        if (double.IsFinite(harm.LowestOxygenMgPerL))
        {
            parts.Add(FormattableString.Invariant($"{(parts.Count > 0 ? "lowest" : "oxygen of the tanks at the lowest")} {harm.LowestOxygenMgPerL:0.0} mg/L"));
        }

        if (harm.MinutesToChill is { } chill)
        {
            parts.Add(FormattableString.Invariant($"fish water is too cold to eat after {Span(chill)}, {harm.ColdestFishWaterC:0.0} °C at the coldest"));
        }
        else if (row.Case.Fault is Farm.Description.HeaterFails or Farm.Description.ValveSticks && double.IsFinite(harm.ColdestFishWaterC))
        {
            parts.Add(FormattableString.Invariant($"fish water {harm.ColdestFishWaterC:0.0} °C at the coldest"));
        }

        if (harm.FishDied > 0)
        {
            parts.Add(FormattableString.Invariant($"{harm.FishDied:0} fish die{(harm.MinutesToFirstDeath is { } first ? $", the first after {Span(first)}" : string.Empty)}"));
        }

        if (harm.PlantsHarmed > 0)
        {
            parts.Add(FormattableString.Invariant($"{harm.PlantsHarmed:0} plants freeze, dry out or lose their roots"));
        }

        if (harm.SpilledL >= 1)
        {
            parts.Add(FormattableString.Invariant($"{harm.SpilledL:0} L run over a brim"));
        }

        return Sentence(parts.Count > 0 ? string.Join("; ", parts) : "nothing that fish or plants would feel");
    }

    /// <summary>Who is told, and who comes.</summary>
    public static string Answer(FaultStudyResult study, FaultRow row)
    {
        string found = row.Harm.MinutesToFound is { } minutes && row.Harm.FoundBy.Length > 0
            ? $"{(row.Harm.FoundBy == "morning round" ? "the morning round" : row.Harm.FoundBy)} sees it after {Span(minutes)}"
            : row.Case.Fault is Farm.Description.MainsCut ? $"the mains are back after {Span(row.Harm.MinutesToMended ?? 0)} before anybody has come"
            : "nobody sees it within a week";
        if (row.Alarm is not { } alarm)
        {
            string none = study.HasAlarms ? "no alarm tells of it" : "no alarm: nobody knows";
            return Sentence($"{none}; {found}");
        }

        string answered = alarm.MinutesToAnswered is { } a ? $", taken on by {alarm.By} after {Span(a)}" : ", and nobody takes it on";
        string arrived = alarm.MinutesToArrived is { } there ? $", somebody is there after {Span(there)}" : string.Empty;
        return Sentence($"alarm: '{alarm.Alarm}' sounds after {Span(alarm.MinutesToRaised)}{answered}{arrived}");
    }

    /// <summary>Which backups of the scenario carried it; empty where none ran.</summary>
    public static string Ran(FaultRow row) => row.Ran.Count == 0 ? string.Empty : Sentence("what is there already ran: "
        + string.Join(", ", row.Ran.Select(r => $"{r.Name} {Span(r.Hours * UnitConstants.SecondsPerMinute)}{(r.RanOut ? " and was empty" : string.Empty)}")));

    /// <summary>Whether it costs something worth a line though neither fish nor plants are harmed.</summary>
    public static bool Costs(FaultRow row) => !row.Harm.IsHarm && (row.Harm.SpilledL >= SpillWorthAWord || row.Loss.Money >= MoneyWorthAWord);

    /// <summary>What it costs until the season's end.</summary>
    public static string Loss(FaultStudyResult study, FaultRow row)
    {
        FaultLoss loss = row.Loss;
        string money = loss.Money is { } lost ? FormattableString.Invariant($", {Signed(-lost)} {study.Currency}") : string.Empty;
        return FormattableString.Invariant($"By the season's end: {Signed(loss.Fish)} dead fish, {Signed(-loss.FirstGradeHeads)} first-grade heads, {Signed(-loss.CropKg)} kg of crops{money}.");
    }

    /// <summary>The smallest backup that saves it, or that none does; empty where nothing is harmed.</summary>
    public static IReadOnlyList<string> Backups(FaultRow row) =>
        !row.Harm.IsHarm ? []
        : row.Backups.Count == 0 ? ["No backup is tried against it: somebody must be told, and mend it."]
        : [.. row.Backups.Select(b => Sentence(b.InWords))];

    /// <summary>Minutes as a person says them.</summary>
    public static string Span(double minutes) => minutes < FewMinutes ? FormattableString.Invariant($"{minutes:0} min")
        : minutes < HoursOfTwoDays * UnitConstants.SecondsPerMinute ? FormattableString.Invariant($"{minutes / UnitConstants.SecondsPerMinute:0.#} h")
        : FormattableString.Invariant($"{minutes / UnitConstants.SecondsPerMinute / UnitConstants.HoursPerDay:0.#} days");

    private static string Signed(double value) => Math.Round(value) == 0 ? "0" : FormattableString.Invariant($"{Math.Round(value):+0;-0}");

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..] + (text.EndsWith('.') ? string.Empty : ".");
}
