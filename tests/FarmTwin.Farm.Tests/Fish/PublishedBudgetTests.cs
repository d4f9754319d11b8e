using static FarmTwin.Farm.Tests.PublishedTable;

namespace FarmTwin.Farm.Tests.Fish;

/// <summary>Arithmetic between published figures that the model's parameters lean on: it shows that they agree among themselves.</summary>
public class PublishedBudgetTests
{
    private static readonly Dictionary<string, double> Budget =
        Read("fish-nutrient-budgets").Rows.ToDictionary(r => r["name"], r => Number(r, "value"), StringComparer.Ordinal);

    [Fact]
    public void Nitrogen_released_per_kilogram_of_fish_follows_from_conversion_and_retention()
    {
        double released = 1000 * Budget["feedConversion"] * Budget["proteinFraction"] * 0.16 * (1 - Budget["nitrogenRetainedShare"]);
        double published = Budget["nitrogenReleasedGramsPerKilogram"];
        Assert.Equal(published, released, published * 0.03);
    }

    [Fact]
    public void Phosphorus_fed_follows_from_what_was_released()
    {
        Assert.Equal(15.5, Budget["phosphorusReleasedLow"] / (1 - Budget["phosphorusRetainedShare"]), 15.5 * 0.01);
        Assert.Equal(17.0, Budget["phosphorusReleasedHigh"] / (1 - Budget["phosphorusRetainedShare"]), 17.0 * 0.01);
    }

    [Fact]
    public void The_hatchery_budget_does_not_close_and_says_so()
    {
        double sum = Budget["hatcheryRetainedPercent"] + Budget["hatcherySludgePercent"] + Budget["hatcheryEffluentPercent"];
        Assert.Equal(Budget["hatcheryRecoveredPercent"], sum, 0.2);
        Assert.True(sum < 81);
    }

    [Fact]
    public void Red_tilapia_from_20_to_200_grams_excrete_about_3_grams_of_nitrogen()
    {
        IReadOnlyList<IReadOnlyDictionary<string, string>> rows = Read("fish-red-ammonia-excretion").Rows;
        double[] weights = [.. rows.Select(r => Number(r, "grams"))];
        double[] rates = [.. rows.Select(r => Number(r, "rate"))];
        const int steps = 100_000;
        const double hours = 115 * 24;
        double total = 0;
        for (int i = 0; i < steps; i++)
        {
            double root = Math.Cbrt(20) + ((Math.Cbrt(200) - Math.Cbrt(20)) * (i + 0.5) / steps);
            double grams = root * root * root;
            total += Interpolate(weights, rates, grams) * grams / 1e6 * hours / steps;
        }

        Assert.Equal(3.27, total, 3.27 * 0.02);
        Assert.Equal(8.3, total / 0.394, 0.1);
    }

    [Fact]
    public void Two_published_ammonia_equilibria_agree_within_four_percent()
    {
        // Emerson et al. (1975) against the table; the water kernel is tested elsewhere.
        foreach (IReadOnlyDictionary<string, string> row in Read("fish-ammonia-fraction").Rows)
        {
            double pKa = 0.09018 + (2729.92 / (UnitConstants.ZeroCelsiusInKelvin + Number(row, "celsius")));
            double share = 1 / (1 + Math.Pow(10, pKa - Number(row, "ph")));
            Assert.Equal(Number(row, "share"), share, share * 0.04);
        }
    }

    private static double Interpolate(double[] x, double[] y, double at)
    {
        int i = Math.Clamp(Array.BinarySearch(x, at) is var found && found >= 0 ? found : ~found - 1, 0, x.Length - 2);
        return y[i] + ((y[i + 1] - y[i]) * (at - x[i]) / (x[i + 1] - x[i]));
    }
}
