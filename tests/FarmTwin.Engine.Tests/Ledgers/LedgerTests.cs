using CsCheck;

namespace FarmTwin.Engine.Tests.Ledgers;

public class LedgerTests
{
    private static readonly string[] Doors = ["feed", "harvest", "gas"];

    [Fact]
    public void An_account_explains_its_closing_stock_door_by_door()
    {
        var ledger = new Ledger("nitrogen", Doors) { OpeningStock = 100 };
        ledger.In(0, 50);
        ledger.In(0, 25);
        ledger.Out(1, 40);
        ledger.Out(2, 5);
        Assert.Equal(75, ledger.TotalIn);
        Assert.Equal(45, ledger.TotalOut);
        Assert.Equal(75, ledger.TotalInBy(0));
        Assert.Equal(5, ledger.TotalOutBy(2));
        Assert.Equal(0, ledger.ClosureError(130));
        Assert.Equal(0.13, ledger.ClosureError(117), 1e-15);
        Assert.Equal(-13, ledger.Unexplained(143));
    }

    [Fact]
    public void Closure_is_measured_against_the_larger_of_throughput_and_opening_stock()
    {
        var ledger = new Ledger("water", Doors) { OpeningStock = 10 };
        ledger.In(0, 1000);
        Assert.Equal(0.01, ledger.ClosureError(1000), 1e-15);
        Assert.Equal(0, new Ledger("water", Doors).ClosureError(0));
        Assert.Equal(double.PositiveInfinity, new Ledger("water", Doors).ClosureError(1));
        Assert.True(double.IsNaN(ledger.ClosureError(double.NaN)));
    }

    [Theory]
    [InlineData(-1e-300)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_negative_or_boundless_amount_is_refused_with_its_door(double amount)
    {
        var ledger = new Ledger("nitrogen", Doors);
        string message = Assert.Throws<ArgumentOutOfRangeException>(() => ledger.Out(2, amount)).Message;
        Assert.Contains("nitrogen by gas", message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => ledger.In(0, amount));
        Assert.Equal(0, ledger.TotalIn + ledger.TotalOut);
    }

    [Fact]
    public void Ten_million_small_postings_beside_a_large_one_are_not_lost()
    {
        var ledger = new Ledger("carbon", Doors);
        ledger.In(0, 1e16);
        for (int i = 0; i < 10_000_000; i++)
        {
            ledger.In(0, 0.1);
        }

        // Plain addition to 1e16 would drop all of them. What is kept beside the sum is itself added plainly: 1e-10 of it is lost,
        // which is 1e-20 of the throughput.
        Assert.Equal(1e16 + 1e6, ledger.TotalIn);
        Assert.Equal(1e6, ledger.Unexplained(1e16), 1e-3);
    }

    [Fact]
    public void Random_postings_close_far_below_the_limit() =>
        Gen.Select(Gen.Int[0, 2], Gen.Bool, Gen.Double[0, 1e9]).Array[0, 500].Sample(
            postings =>
            {
                var ledger = new Ledger("x", Doors) { OpeningStock = 1234.5 };
                decimal exact = 1234.5m;
                foreach ((int door, bool inward, double amount) in postings)
                {
                    if (inward)
                    {
                        ledger.In(door, amount);
                    }
                    else
                    {
                        ledger.Out(door, amount);
                    }

                    exact += inward ? (decimal)amount : -(decimal)amount;
                }

                // decimal keeps 15 digits of each posting.
                Assert.InRange(ledger.ClosureError((double)exact), 0, 1e-13);
            },
            iter: 200, threads: 1);

    [Fact]
    public void A_book_keeps_a_ledger_for_each_substance_with_common_doors()
    {
        var book = new LedgerBook(["N", "P"], Doors);
        book[0].OpeningStock = 10;
        book.In(0, [3, 4]);
        book.Out(1, 1, 0.5);
        book.Out(2, [1, 0]);
        Assert.Equal(0, book.LargestClosureError([12, 3.5]));
        Assert.Equal(0.125, book.LargestClosureError([12, 3]));
        Assert.True(double.IsNaN(book.LargestClosureError([double.NaN, 3.5])));
        Assert.Throws<ArgumentException>(() => book.In(0, [1, 2, 3]));
        Assert.Throws<ArgumentException>(() => new LedgerBook(["N", "N"], Doors));

        var copy = new LedgerBook(["N", "P"], Doors);
        copy.CopyFrom(book);
        copy.In(0, 0, 5);
        Assert.Equal(8, copy[0].TotalIn);
        Assert.Equal(3, book[0].TotalIn);
        Assert.Throws<ArgumentException>(() => copy.CopyFrom(new LedgerBook(["P", "N"], Doors)));
    }

    [Fact]
    public void Posting_allocates_nothing()
    {
        var book = new LedgerBook(["N", "P"], Doors);
        double[] amounts = [1, 2];
        book.In(0, amounts);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 10_000; i++)
        {
            book.In(0, amounts);
            book.Out(1, 1, 0.5);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }
}
