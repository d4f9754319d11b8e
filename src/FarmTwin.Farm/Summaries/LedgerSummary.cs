using FarmTwin.Engine;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>A ledger from opening to closing stock.</summary>
/// <param name="Unit">Unit of the amounts.</param>
/// <param name="Opening">Opening stock.</param>
/// <param name="In">All that came in.</param>
/// <param name="Out">All that went out.</param>
/// <param name="Closing">Closing stock, measured.</param>
/// <param name="Closure">|opening + in − out − closing| / max(in, out, |opening|).</param>
/// <param name="Doors">By door; a door through which nothing went is left out.</param>
public sealed record LedgerSummary(
    string Unit, double Opening, double In, double Out, double Closing, double Closure, IReadOnlyDictionary<string, DoorFlow> Doors)
{
    /// <summary>Every ledger of a season, by name.</summary>
    public static IReadOnlyDictionary<string, LedgerSummary> Of(Season season)
    {
        ArgumentNullException.ThrowIfNull(season);
        double[] closing = season.ClosingStocks();
        var ledgers = new Dictionary<string, LedgerSummary>(StringComparer.Ordinal);
        for (int l = 0; l < FarmBooks.Count; l++)
        {
            ledgers.Add(FarmBooks.Names[l], Of(season.State.Books[l], FarmBooks.Units[l], closing[l]));
        }

        ledgers.Add("labour", Of(season.State.Labour.Ledger, "h", season.State.Labour.ClosingHours(season.Parts.ChoreTimes)));
        if (season.Parts.Farm.Prices is not null)
        {
            ledgers.Add("money", Of(season.State.Money.Ledger, season.Parts.Farm.Currency, season.State.Money.Cash));
        }

        return ledgers;
    }

    private static LedgerSummary Of(Ledger ledger, string unit, double closing)
    {
        var doors = new Dictionary<string, DoorFlow>(StringComparer.Ordinal);
        for (int door = 0; door < ledger.Doors.Length; door++)
        {
            var flow = new DoorFlow(ledger.TotalInBy(door), ledger.TotalOutBy(door));
            if (flow.In != 0 || flow.Out != 0)
            {
                doors.Add(DoorFlow.Key(ledger.Doors[door]), flow);
            }
        }

        return new LedgerSummary(unit, ledger.OpeningStock, ledger.TotalIn, ledger.TotalOut, closing, ledger.ClosureError(closing), doors);
    }
}

/// <summary>What went through a door.</summary>
/// <param name="In">In.</param>
/// <param name="Out">Out.</param>
public sealed record DoorFlow(double In, double Out)
{
    /// <summary>The door's name as a key: "source water" is sourceWater.</summary>
    /// <param name="name">The name.</param>
    public static string Key(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string[] words = name.Split(' ');
        return words[0] + string.Concat(words.Skip(1).Select(w => char.ToUpperInvariant(w[0]) + w[1..]));
    }
}
