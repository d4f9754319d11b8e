using System.Text;
using Parquet;
using Parquet.Schema;

namespace FarmTwin.Reports.Tables;

/// <summary>A table of named columns, written as CSV or as Apache Parquet: the same rows in both.</summary>
/// <remarks>Numbers stand in CSV with six significant digits and in Parquet in full; what is not a number is empty in the one and null in the other.</remarks>
public sealed class DataTable
{
    private readonly List<(string Name, string[]? Words, double[]? Numbers)> _columns = [];

    /// <summary>Rows.</summary>
    public int RowCount { get; private set; } = -1;

    /// <summary>Adds a column of words.</summary>
    public DataTable Add(string name, IEnumerable<string> words)
    {
        string[] values = [.. words];
        Count(name, values.Length);
        _columns.Add((name, values, null));
        return this;
    }

    /// <summary>Adds a column of numbers.</summary>
    public DataTable Add(string name, IEnumerable<double> numbers)
    {
        double[] values = [.. numbers];
        Count(name, values.Length);
        _columns.Add((name, null, values));
        return this;
    }

    /// <summary>The table as CSV.</summary>
    public string Csv()
    {
        var csv = new CsvText();
        foreach ((string name, _, _) in _columns)
        {
            csv.Field(name);
        }

        csv.EndLine();
        for (int row = 0; row < RowCount; row++)
        {
            foreach ((_, string[]? words, double[]? numbers) in _columns)
            {
                _ = words is null ? csv.Field(numbers![row]) : csv.Field(words[row]);
            }

            csv.EndLine();
        }

        return csv.ToString();
    }

    /// <summary>The table as Parquet, one row group.</summary>
    public byte[] Parquet()
    {
        using var stream = new MemoryStream();
        WriteParquet(stream).GetAwaiter().GetResult();
        return stream.ToArray();
    }

    /// <summary>Writes both beside each other, <c>name.csv</c> and <c>name.parquet</c>, each whole or not at all.</summary>
    /// <returns>The two names.</returns>
    public IReadOnlyList<string> Write(string folder, string name)
    {
        WholeFile.Write(Path.Combine(folder, name + ".csv"), Encoding.UTF8.GetBytes(Csv()));
        WholeFile.Write(Path.Combine(folder, name + ".parquet"), Parquet());
        return [name + ".csv", name + ".parquet"];
    }

    private async Task WriteParquet(MemoryStream stream)
    {
        DataField[] fields = [.. _columns.Select(c => c.Words is null ? new DataField(c.Name, typeof(double), true) : new DataField(c.Name, typeof(string), true))];
        ParquetWriter writer = await ParquetWriter.CreateAsync(new ParquetSchema(fields), stream).ConfigureAwait(false);
        await using (writer.ConfigureAwait(false))
        {
            using ParquetRowGroupWriter group = writer.CreateRowGroup();
            for (int c = 0; c < fields.Length; c++)
            {
                if (_columns[c].Words is { } words)
                {
                    await group.WriteAsync(fields[c], words).ConfigureAwait(false);
                }
                else
                {
                    double?[] values = [.. _columns[c].Numbers!.Select(n => double.IsFinite(n) ? n : (double?)null)];
                    await group.WriteAsync<double>(fields[c], values.AsMemory()).ConfigureAwait(false);
                }
            }
        }
    }

    private void Count(string name, int rows)
    {
        if (RowCount >= 0 && rows != RowCount)
        {
            throw new ArgumentException($"The column '{name}' has {rows} rows, those before it {RowCount}.", nameof(name));
        }

        RowCount = rows;
    }
}
