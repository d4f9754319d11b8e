namespace FarmTwin.Engine.Tests.Recording;

public class RecorderTests
{
    private static readonly RecordedColumn[] Columns =
    [
        new("last", "degC", ColumnKind.Instant), new("mean", "mg/L", ColumnKind.Mean), new("low", "mg/L", ColumnKind.Minimum),
        new("high", "mg/L", ColumnKind.Maximum), new("total", "g", ColumnKind.Sum),
    ];

    [Fact]
    public void A_row_states_last_weighted_mean_lowest_highest_and_sum()
    {
        var recorder = new Recorder(Columns, 2);
        Give(recorder, 4, 3000);
        Give(recorder, 10, 600);
        recorder.CloseRow();
        Give(recorder, -1, 60);
        recorder.CloseRow();
        Assert.Equal([10, 5, 4, 10, 14], recorder.Row(0).ToArray());
        Assert.Equal([-1, -1, -1, -1, -1], recorder.Row(1).ToArray());
        Assert.Equal([5, -1], recorder.Column(recorder.ColumnIndex("mean")));
    }

    [Fact]
    public void What_was_given_nothing_is_not_a_number_and_a_sum_is_zero()
    {
        var recorder = new Recorder(Columns);
        Give(recorder, 3, 10);
        recorder.CloseRow();
        recorder.CloseRow();
        Assert.Equal([double.NaN, double.NaN, double.NaN, double.NaN, 0], recorder.Row(1).ToArray());
        recorder.Accumulate(1, 99, 0);
        recorder.CloseRow();
        Assert.Equal(double.NaN, recorder.Row(2)[1]);
    }

    [Fact]
    public void A_value_that_is_not_a_number_is_not_hidden_by_later_ones()
    {
        var recorder = new Recorder(Columns);
        Give(recorder, double.NaN, 10);
        Give(recorder, 3, 10);
        recorder.CloseRow();
        Assert.Equal([3, double.NaN, double.NaN, double.NaN, double.NaN], recorder.Row(0).ToArray());
    }

    [Fact]
    public void Rows_survive_growth_and_the_expected_rows_allocate_nothing()
    {
        var recorder = new Recorder(Columns, 500);
        Give(recorder, 0, 1);
        recorder.CloseRow();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 1; i < 500; i++)
        {
            Give(recorder, i, 1);
            recorder.CloseRow();
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        for (int i = 500; i < 2000; i++)
        {
            Give(recorder, i, 1);
            recorder.CloseRow();
        }

        Assert.Equal(Enumerable.Range(0, 2000).Select(i => (double)i), recorder.Column(3));
    }

    [Fact]
    public void A_copy_continues_as_the_original_and_shares_nothing()
    {
        var recorder = new Recorder(Columns);
        Give(recorder, 1, 10);
        recorder.CloseRow();
        Give(recorder, 2, 30);
        var copy = new Recorder(Columns);
        copy.CopyFrom(recorder);
        Give(copy, 6, 10);
        copy.CloseRow();
        recorder.CloseRow();
        Assert.Equal(3, copy.Row(1)[1]);
        Assert.Equal(2, recorder.Row(1)[1]);
        Assert.Equal(recorder.Row(0).ToArray(), copy.Row(0).ToArray());
    }

    [Fact]
    public void Unknown_twice_named_and_missing_columns_are_refused()
    {
        var recorder = new Recorder(Columns);
        Assert.Throws<ArgumentException>(() => recorder.ColumnIndex("nitrogen"));
        Assert.Throws<ArgumentException>(() => new Recorder([]));
        Assert.Throws<ArgumentException>(() => new Recorder([Columns[0], Columns[0]]));
        Assert.Throws<ArgumentOutOfRangeException>(() => recorder.Accumulate(0, 1, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => recorder.Row(0).Length);
        Assert.Throws<ArgumentException>(() => recorder.CopyFrom(new Recorder(Columns.AsSpan(1))));
    }

    private static void Give(Recorder recorder, double value, double durationSeconds)
    {
        for (int i = 0; i < Columns.Length; i++)
        {
            recorder.Accumulate(i, value, durationSeconds);
        }
    }
}
