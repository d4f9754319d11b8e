using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;
using Xunit.Abstractions;

namespace FarmTwin.Farm.Tests.Laws;

/// <summary>Two loops joined by valves through the whole season machinery, against the closed form of their exchange.</summary>
public class SteppedExchangeTests(ITestOutputHelper output)
{
    private const double FishLitres = 2700;
    private const double PlantLitres = 9000;
    private const double FlowLitresPerHour = 386;

    // Each loop is stirred well by its own pump, as the closed form takes for granted.
    private static readonly FarmDescription Farm = BareFarm.TwoLoops(2000, 700, 7200, 1800, 200_000, fishCelsius: 27, plantCelsius: 20);

    [Theory]
    [InlineData(60, 3.5)]
    [InlineData(30, 1.8)]
    [InlineData(6, 0.5)]
    public void Nitrate_and_heat_of_both_loops_follow_the_closed_form(int minutes, double within)
    {
        double error = LargestError(minutes);
        output.WriteLine($"{minutes} min: within {error:0.000} mg N/L or °C");
        Assert.InRange(error, 0, within);
    }

    [Fact]
    public void The_error_halves_with_the_step()
    {
        double[] errors = [LargestError(60), LargestError(30), LargestError(15)];
        output.WriteLine(string.Join(", ", errors));
        Assert.InRange(errors[0] / errors[1], 1.8, 2.2);
        Assert.InRange(errors[1] / errors[2], 1.8, 2.2);
    }

    [Fact]
    public void Two_identical_loops_coupled_change_nothing()
    {
        FarmDescription alike = BareFarm.TwoLoops(2000, 700, 2000, 700, 5000);
        Season apart = Farms.Start(alike, 3);
        Season coupled = Farms.Start(alike, 3);
        coupled.Apply(new SetValve { Day = 0, Valve = "coupling", FlowLitresPerHour = 1500 });
        apart.AdvanceToEnd();
        coupled.AdvanceToEnd();
        for (int i = 0; i < apart.State.Basins.Grams.Length; i++)
        {
            double expected = apart.State.Basins.Grams[i];
            Assert.Equal(expected, coupled.State.Basins.Grams[i], 1e-11 * Math.Max(1, expected));
        }

        Assert.All(coupled.State.Basins.Celsius.Zip(apart.State.Basins.Celsius), t => Assert.Equal(t.Second, t.First, 1e-10));
        Assert.All(coupled.State.Basins.PH.Zip(apart.State.Basins.PH), t => Assert.Equal(t.Second, t.First, 1e-8));
    }

    [Fact]
    public void A_farm_without_fish_tanks_shows_no_oxygen_of_tanks()
    {
        FarmDescription pond = BareFarm.Of(
            new Dictionary<string, BasinDescription> { ["pond"] = BareFarm.Closed(BasinUse.Lane, 1000) }, new Dictionary<string, PipeDescription>());
        Season season = Farms.Run(pond, 2);
        Assert.All(Farms.Days(season, "oxygen_tanks_mg_per_L"), v => Assert.True(double.IsNaN(v)));
        LedgerLawTests.AssertClosed(season);
    }

    private static double LargestError(double stepMinutes)
    {
        Season season = Farms.Start(Farm, 2, stepMinutes: stepMinutes);
        Basins basins = season.State.Basins;
        double source = season.Parts.SourceWater.GramsPerLitre[Substance.Nitrate] * 1000;
        double perKilogram = season.Parts.Supplements["potassium-nitrate"].NitrateGramsNPerKilogram;
        foreach ((string basin, double litres, double wanted) in new[]
            { ("tank", 2000, 150.0), ("fish-sump", 700, 150), ("lane", 7200, 20), ("plant-sump", 1800, 20) })
        {
            season.Apply(new Dose { Day = 0, Basin = basin, Supplement = "potassium-nitrate", Grams = (wanted - source) * litres / perKilogram });
        }

        season.Apply(new SetValve { Day = 0, Valve = "coupling", FlowLitresPerHour = FlowLitresPerHour });
        var nitrate = new LoopPair(150, 20);
        var heat = new LoopPair(27, 20);
        double error = 0;
        for (int hour = 1; hour <= 48; hour++)
        {
            season.Advance(hour * 3600L);
            LoopPair n = TwoLoopExchange.After(nitrate, FishLitres, PlantLitres, FlowLitresPerHour, hour);
            LoopPair t = TwoLoopExchange.After(heat, FishLitres, PlantLitres, FlowLitresPerHour, hour);
            error = Math.Max(error, Math.Abs(Loop(basins, 0, 1) - n.FishLoop));
            error = Math.Max(error, Math.Abs(Loop(basins, 2, 3) - n.PlantLoop));
            error = Math.Max(error, Math.Abs(basins.Celsius[0] - t.FishLoop));
            error = Math.Max(error, Math.Abs(basins.Celsius[2] - t.PlantLoop));
        }

        return error;
    }

    private static double Loop(Basins basins, int first, int second) => 1000
        * (basins.Grams[WaterStep.At(first, Substance.Nitrate)] + basins.Grams[WaterStep.At(second, Substance.Nitrate)])
        / (basins.Litres[first] + basins.Litres[second]);
}
