using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;
using Xunit.Abstractions;

namespace FarmTwin.Farm.Tests.Laws;

/// <summary>What holds in every season, whatever the plan: every ledger closes, nothing is negative.</summary>
public class LedgerLawTests(ITestOutputHelper output)
{
    private const double Closure = 1e-9;
    private const int Days = 120;

    public static TheoryData<string> Scenarios => [.. Farms.Shipped];

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Every_ledger_closes_and_nothing_is_negative_at_any_midnight(string scenario)
    {
        Season season = Farms.Start(Farms.Read(scenario), Math.Min(Days, Farms.Read(scenario).LengthDays));
        long day = UnitConstants.SecondsPerDay;
        for (long midnight = day; midnight <= season.LengthSeconds; midnight += day)
        {
            season.Advance(midnight);
            AssertSane(season, midnight / day);
            if (midnight / day % 30 == 0)
            {
                AssertClosed(season);
            }
        }

        AssertClosed(season);
        double[] stocks = season.ClosingStocks();
        for (int ledger = 0; ledger < FarmBooks.Count; ledger++)
        {
            output.WriteLine($"{FarmBooks.Names[ledger]}: closure {season.State.Books[ledger].ClosureError(stocks[ledger]):0.0e0}");
        }
    }

    internal static void AssertClosed(Season season)
    {
        double[] stocks = season.ClosingStocks();
        for (int ledger = 0; ledger < FarmBooks.Count; ledger++)
        {
            double error = season.State.Books[ledger].ClosureError(stocks[ledger]);
            Assert.True(error < Closure, $"day {season.NowSeconds / UnitConstants.SecondsPerDay}: the ledger of {FarmBooks.Names[ledger]} is off by {error:R} of its throughput");
        }
    }

    internal static void AssertSane(Season season, long day)
    {
        Basins basins = season.State.Basins;
        for (int b = 0; b < basins.Count; b++)
        {
            string basin = season.Parts.BasinNames[b];
            Assert.True(basins.Litres[b] >= 0 && double.IsFinite(basins.Litres[b]), $"day {day}: {basin} holds {basins.Litres[b]} L");
            Assert.True(basins.Celsius[b] is > -1 and < 60, $"day {day}: {basin} is at {basins.Celsius[b]} °C");
            Assert.True(basins.PH[b] is > 3 and < 12, $"day {day}: {basin} is at pH {basins.PH[b]}");
            for (int substance = 0; substance < Substance.Columns; substance++)
            {
                double grams = basins.Grams[WaterStep.At(b, substance)];
                Assert.True(grams >= 0 && double.IsFinite(grams), $"day {day}: {basin} holds {grams} g of substance {substance}");
            }
        }

        foreach (var bed in season.State.Beds)
        {
            Assert.True(bed.DryGrams >= 0 && bed.DegradableGrams >= 0, $"day {day}: a bed holds {bed.DryGrams} g, {bed.DegradableGrams} g degradable");
            Assert.All(bed.ElementGrams, g => Assert.True(g >= 0, $"day {day}: a bed holds {g} g of an element"));
        }
    }
}
