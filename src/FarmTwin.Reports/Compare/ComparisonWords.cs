using FarmTwin.Studies.Compare;

namespace FarmTwin.Reports.Compare;

/// <summary>A comparison in words: what the screen and the page share.</summary>
internal static class ComparisonWords
{
    private const double NotablyMore = 0.05;

    /// <summary>A day with its date.</summary>
    public static string Day(SideBySide comparison, int day) => FormattableString.Invariant($"day {day} ({comparison.Start.AddDays(day):d MMM})");

    /// <summary>The first sign, with its day.</summary>
    public static string Sign(SideBySide comparison, ComparedPair pair) => pair.Sign is not { } sign
        ? "No line of the daily sheet tells the two apart."
        : $"{Capital(Day(comparison, sign.Day))}, {sign.Words}.";

    /// <summary>What acting saved.</summary>
    public static string Saved(SideBySide comparison, Act act)
    {
        string[] parts =
        [
            Math.Round(act.FishSaved) == 0 && Math.Round(act.FishKgSaved) == 0 ? string.Empty : $"{Signed(act.FishSaved)} fish ({Signed(act.FishKgSaved)} kg)",
            Math.Round(act.HeadsSaved) == 0 ? string.Empty : $"{Signed(act.HeadsSaved)} first-grade heads",
            Math.Round(act.CropKgSaved) == 0 ? string.Empty : $"{Signed(act.CropKgSaved)} kg of crops",
            !double.IsFinite(act.MoneySaved) || Math.Round(act.MoneySaved) == 0 ? string.Empty : $"{Signed(act.MoneySaved)} {comparison.Currency}",
        ];
        string text = string.Join(", ", parts.Where(p => p.Length > 0));
        return text.Length > 0 ? text : "nothing";
    }

    /// <summary>What a farm came to.</summary>
    public static string Outcome(SideBySide comparison, ComparedFarm farm) => FormattableString.Invariant(
        $"{farm.Dead:0} fish dead, {farm.Outcome["fish_sold_kg"]:0} kg sold, {farm.Outcome["fish_standing_kg"]:0} kg standing, {farm.Outcome["first_grade_heads"]:0} first-grade heads, {farm.Outcome["crops_kg"]:0} kg of crops{(double.IsFinite(farm.Outcome["margin"]) ? FormattableString.Invariant($", margin {farm.Outcome["margin"]:0} {comparison.Currency}") : string.Empty)}");

    /// <summary>What the best way saves that evening against three days later, in a sentence; empty where nothing was tried.</summary>
    public static string Lesson(SideBySide comparison, ComparedPair pair)
    {
        WayOfActing? best = Best(pair);
        if (best is null || best.Acts.Count == 0)
        {
            return string.Empty;
        }

        Act first = best.Acts[0];
        Act last = best.Acts[^1];
        string way = best.Key switch { "asReference" => "Going on as the reference", "remedy" => "The file's remedy", "care" => "Emergency care", _ => "Both together" };
        return ReferenceEquals(first, last)
            ? $"{way} {first.When} saves {Saved(comparison, first)}."
            : $"{way} {first.When} saves {Saved(comparison, first)}; {last.When}, {Saved(comparison, last)}.";
    }

    /// <summary>The way to tell of: going on as the reference, unless another saves notably more fish.</summary>
    public static WayOfActing? Best(ComparedPair pair)
    {
        WayOfActing? best = null;
        foreach (WayOfActing way in pair.Ways.Where(w => w.Acts.Count > 0))
        {
            best = best is null || way.Acts[0].FishSaved > best.Acts[0].FishSaved + Math.Max(1, NotablyMore * Math.Abs(best.Acts[0].FishSaved)) ? way : best;
        }

        return best;
    }

    /// <summary>A number with its sign; 0 without one.</summary>
    public static string Signed(double value) => Math.Round(value) == 0 ? "0" : FormattableString.Invariant($"{Math.Round(value):+0;-0}");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
