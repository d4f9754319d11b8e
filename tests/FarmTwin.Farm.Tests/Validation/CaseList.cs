namespace FarmTwin.Farm.Tests.Validation;

/// <summary>The cases of one subject, as they are written down.</summary>
internal sealed class CaseList(string subject)
{
    private readonly List<ValidationCase> _cases = [];

    public IReadOnlyList<ValidationCase> Cases => _cases;

    /// <summary>A printed figure and how far off one may be, by its rounding or by what the source leaves open.</summary>
    public void Near(
        string claim, string source, string basis, double expected, double tolerance, string unit, Func<double> value, Standing standing = Standing.Test) =>
        Add(claim, source, basis, expected, expected - tolerance, expected + tolerance, unit, standing, value, string.Empty);

    /// <summary>A published span.</summary>
    public void Band(
        string claim, string source, string basis, double low, double high, string unit, Func<double> value, Standing standing = Standing.Test) =>
        Add(claim, source, basis, null, low, high, unit, standing, value, string.Empty);

    /// <summary>A published figure that the twin misses, and why.</summary>
    public void Gap(string claim, string source, string basis, double expected, double tolerance, string unit, Func<double> value, string why) =>
        Add(claim, source, basis, expected, expected - tolerance, expected + tolerance, unit, Standing.Gap, value, why);

    /// <summary>A published span or order that the twin misses, and why.</summary>
    public void BandGap(string claim, string source, string basis, double low, double high, string unit, Func<double> value, string why) =>
        Add(claim, source, basis, null, low, high, unit, Standing.Gap, value, why);

    /// <summary>Every row of a table with a column of figures: claim, figure, tolerance and the twin's value are read off the row.</summary>
    public void Rows(
        string table, string source, string basis, string unit, Func<IReadOnlyDictionary<string, string>, string> claim, string expected,
        Func<IReadOnlyDictionary<string, string>, double> tolerance, Func<IReadOnlyDictionary<string, string>, double> value,
        Standing standing = Standing.Test)
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read(table).Rows)
        {
            Near(claim(row), source, basis, PublishedTable.Number(row, expected), tolerance(row), unit, () => value(row), standing);
        }
    }

    /// <summary>A table of quantity, expected and tolerance, whose unit ends the quantity's name.</summary>
    /// <param name="table">The table.</param>
    /// <param name="source">Who published it.</param>
    /// <param name="basis">How it was read.</param>
    /// <param name="computed">The twin's figures by quantity.</param>
    /// <param name="own">Quantities whose expected value is our own arithmetic on published inputs.</param>
    public void Quantities(string table, string source, string basis, Dictionary<string, double> computed, params string[] own)
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read(table).Rows)
        {
            string quantity = row["quantity"];
            Near(quantity, source, basis, PublishedTable.Number(row, "expected"), PublishedTable.Number(row, "tolerance"), string.Empty,
                () => computed[quantity], own.Contains(quantity) ? Standing.Arithmetic : Standing.Test);
        }
    }

    /// <summary>A long table as one line: the row that departs most, as a share of its value.</summary>
    public void Worst(
        string table, string claim, string source, string basis, string column, double mostPercent, Func<IReadOnlyDictionary<string, string>, double> value)
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = PublishedTable.Read(table).Rows;
        Near($"{claim}: largest departure of {rows.Count} rows", source, basis, 0, mostPercent, "%",
            () => rows.Max(r => 100 * Math.Abs((value(r) / PublishedTable.Number(r, column)) - 1)));
    }

    /// <summary>A row with its span in the columns low and high.</summary>
    public void Span(string table, string key, string name, string claim, string source, string basis, string unit, Func<double> value, Standing standing = Standing.Test)
    {
        IReadOnlyDictionary<string, string> row = PublishedTable.Read(table).Rows.Single(r => r[key] == name);
        Band(claim, source, basis, PublishedTable.Number(row, "low"), PublishedTable.Number(row, "high"), unit, value, standing);
    }

    private void Add(
        string claim, string source, string basis, double? expected, double low, double high, string unit, Standing standing, Func<double> value, string why) =>
        _cases.Add(new ValidationCase(subject, claim, source, basis, expected, low, high, unit, StandingOf(standing, basis), new Lazy<double>(value)) { Why = why });

    // What rests on our own calculation is no evidence, whatever else is said of it.
    private static Standing StandingOf(Standing said, string basis) =>
        said == Standing.Test && (basis.StartsWith("own calculation", StringComparison.Ordinal) || basis.StartsWith("common practice", StringComparison.Ordinal)) ? Standing.Arithmetic : said;
}
