namespace FarmTwin.Studies.Compare;

/// <summary>A line of the daily sheet: what a person reads, counts or sees on every day.</summary>
/// <param name="Key">Its name in files; stable.</param>
/// <param name="Sheet">Where it stands ("test kit", "feeding", "water meter").</param>
/// <param name="Title">What it is.</param>
/// <param name="Unit">Its unit; empty for counts and pH.</param>
/// <param name="Format">How its number is written.</param>
/// <param name="Read">The day's values from a season's record; not a number where there is nothing to read.</param>
/// <param name="Shown">What the person reads of a value: the nearest colour of a card, the nearest half degree.</param>
/// <param name="Differs">Whether two values, the reference first, differ so that a person notices.</param>
public sealed record DailySheetLine(
    string Key, string Sheet, string Title, string Unit, string Format,
    Func<SheetSource, double[]> Read, Func<double, double> Shown, Func<double, double, bool> Differs)
{
    /// <summary>Lowest value that nobody worries about.</summary>
    public double Low { get; init; } = double.NegativeInfinity;

    /// <summary>Highest value that nobody worries about.</summary>
    public double High { get; init; } = double.PositiveInfinity;

    /// <summary>Days on end for which it must differ; more than one where a reading is tested again before it is believed.</summary>
    public int Confirm { get; init; } = 1;

    /// <summary>Whether a value is outside what nobody worries about.</summary>
    public bool Worries(double value) => value < Low || value > High;

    /// <summary>The value as it stands on the sheet, with its unit.</summary>
    public string Words(double value) => double.IsFinite(value)
        ? Shown(value).ToString(Format, System.Globalization.CultureInfo.InvariantCulture) + (Unit.Length > 0 ? $" {Unit}" : string.Empty)
        : "nothing";
}
