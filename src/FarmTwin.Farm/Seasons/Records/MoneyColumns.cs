namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of work and, where the farm has prices, of money.</summary>
internal static class MoneyColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm)
    {
        FarmState state = farm.State;
        columns.Sum("work_h", "h", () => state.Labour.Hours);
        if (farm.Parts.Farm.Prices is not null)
        {
            columns.Sum("income", "money", () => state.Money.Ledger.TotalIn);
            columns.Sum("costs", "money", () => state.Money.Ledger.TotalOut);
            columns.Instant("cash", "money", () => state.Money.Cash);
        }
    }
}
