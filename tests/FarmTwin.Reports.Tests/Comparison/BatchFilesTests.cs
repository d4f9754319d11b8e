using FarmTwin.Farm.Description;
using FarmTwin.Reports.Comparison;
using FarmTwin.Reports.Plots;
using FarmTwin.Reports.Tables;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;
using FarmTwin.Studies.Batch;
using FarmTwin.Studies.Plans;
using Parquet;
using Parquet.Schema;

namespace FarmTwin.Reports.Tests.Comparison;

public sealed class BatchFilesTests : IDisposable
{
    private static readonly FarmPlan[] Plans = [.. new[] { "first-season", "overstocked" }.Select(n =>
        FarmPlan.Of(ScenarioReader.Read<FarmDescription>(Path.Combine(Repository.Scenarios, n + ".json")), ShippedLibrary.Library).Over(60))];

    private readonly string _folder = Directory.CreateTempSubdirectory("farmtwin-batch").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_batch_in_one_go_and_one_that_was_stopped_and_grew_write_the_same_bytes()
    {
        string straight = Path.Combine(_folder, "straight");
        string resumed = Path.Combine(_folder, "resumed");
        Play(straight, 3, 1);
        Play(resumed, 1, 1);
        Play(resumed, 3, 2);
        string[] names = [.. Directory.EnumerateFiles(straight, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(straight, f))
            .Where(f => f != RunJournal.FileName).Order(StringComparer.Ordinal)];
        Assert.Contains("comparison.html", names);
        Assert.Contains(Path.Combine("plots", "fish-biomass.svg"), names);
        Assert.All(names, name => Assert.Equal(File.ReadAllBytes(Path.Combine(straight, name)), File.ReadAllBytes(Path.Combine(resumed, name))));
        PageRules.Check(File.ReadAllText(Path.Combine(straight, "comparison.html")));
    }

    [Fact]
    public async Task A_table_is_the_same_in_Parquet_and_in_CSV()
    {
        DataTable table = new DataTable().Add("plan", ["a", "b, with comma"]).Add("figure", [1.25, double.NaN]);
        Assert.Equal("plan,figure\na,1.25\n\"b, with comma\",\n", table.Csv());
        using var stream = new MemoryStream(table.Parquet());
        await using ParquetReader reader = await ParquetReader.CreateAsync(stream);
        DataField[] fields = reader.Schema.GetDataFields();
        Assert.Equal(["plan", "figure"], fields.Select(f => f.Name));
        using ParquetRowGroupReader group = reader.OpenRowGroupReader(0);
        Assert.Equal(2, group.RowCount);
        var figures = new double?[2];
        await group.ReadAsync<double>(fields[1], figures.AsMemory());
        Assert.Equal([1.25, null], figures);
    }

    [Fact]
    public void Columns_of_unlike_length_are_refused() =>
        Assert.Throws<ArgumentException>(() => new DataTable().Add("a", [1.0]).Add("b", [1.0, 2.0]));

    private static void Play(string folder, int replicates, int threads)
    {
        using var runner = new BatchRunner(ShippedLibrary.Library, "test");
        BatchFiles.Write(folder, runner.Run(new BatchPlan(Plans, [1], replicates), folder, threads), "test", plots: true);
    }
}
