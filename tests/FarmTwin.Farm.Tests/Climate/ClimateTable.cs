namespace FarmTwin.Farm.Tests.Climate;

/// <summary>Compares computed quantities with a table of columns quantity, expected, tolerance.</summary>
internal static class ClimateTable
{
    public static void Check(string name, Dictionary<string, double> computed)
    {
        PublishedTable table = PublishedTable.Read(name);
        var failures = new List<string>();
        foreach (IReadOnlyDictionary<string, string> row in table.Rows)
        {
            string quantity = row["quantity"];
            Assert.True(computed.ContainsKey(quantity), $"{name}: '{quantity}' is not computed.");
            double expected = PublishedTable.Number(row, "expected");
            double tolerance = PublishedTable.Number(row, "tolerance");
            if (!(Math.Abs(computed[quantity] - expected) <= tolerance * (1 + 1e-9)))
            {
                failures.Add($"{quantity}: {computed[quantity]} instead of {expected} +- {tolerance}");
            }
        }

        Assert.True(failures.Count == 0, string.Join(Environment.NewLine, failures));
        Assert.Equal(table.Rows.Count, computed.Count);
    }
}
