using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

public sealed class MineralTests
{
    private static readonly CarbonateConstants Constants = CarbonateConstants.At(24);

    [Fact]
    public void Calcite_dissolves_below_saturation_only()
    {
        Assert.Equal(0, Minerals.CalciteDissolutionPerHour(0, WaterLibrary.Minerals));
        Assert.Equal(0, Minerals.CalciteDissolutionPerHour(0.5, WaterLibrary.Minerals));
        Assert.Equal(0.5 / 24, Minerals.CalciteDissolutionPerHour(double.NegativeInfinity, WaterLibrary.Minerals), 1e-12);
        Assert.Equal(0.9 * 0.5 / 24, Minerals.CalciteDissolutionPerHour(-1, WaterLibrary.Minerals), 1e-12);
    }

    [Fact]
    public void Calcium_phosphate_leaves_hard_alkaline_water_and_stays_in_a_nutrient_solution()
    {
        double hard = Index(200, 26, 7.6);
        double solution = Index(90, 31, 5.8);
        double fishWater = Index(40, 5, 7.2);
        Assert.True(hard > 0, $"hard {hard}");
        Assert.True(solution < 0, $"solution {solution}");
        Assert.True(fishWater < 0, $"fish water {fishWater}");
        Assert.True(Minerals.CalciumPhosphatePrecipitationPerHour(hard, WaterLibrary.Minerals) > 0);
        Assert.Equal(0, Minerals.CalciumPhosphatePrecipitationPerHour(solution, WaterLibrary.Minerals));
        Assert.Equal(0, Minerals.CalciumPhosphatePrecipitationPerHour(double.NegativeInfinity, WaterLibrary.Minerals));
    }

    [Fact]
    public void Calcium_phosphate_index_rises_with_pH_calcium_and_phosphate()
    {
        Assert.True(Index(100, 10, 7.5) > Index(100, 10, 7.0));
        Assert.True(Index(120, 10, 7.0) > Index(100, 10, 7.0));
        Assert.True(Index(100, 12, 7.0) > Index(100, 10, 7.0));
        Assert.Equal(double.NegativeInfinity, Index(0, 10, 7));
    }

    private static double Index(double calcium, double phosphorus, double pH) => Minerals.CalciumPhosphateSaturationIndex(
        calcium / 40078, phosphorus / 30974, pH, in Constants, 0.01, WaterLibrary.Minerals);
}
