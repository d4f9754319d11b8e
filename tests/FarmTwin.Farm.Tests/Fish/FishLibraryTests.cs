using FarmTwin.Farm.Library;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Fish;

public class FishLibraryTests
{
    private static readonly ParameterSet[] Sets =
    [
        ParameterLibrary.Load("fish", "nile-tilapia"), ParameterLibrary.Load("fish", "red-tilapia"),
        ParameterLibrary.Load("fish", "blue-tilapia"), ParameterLibrary.Load("feeds", "tilapia-32"),
    ];

    [Fact]
    public void Every_value_stands_inside_its_range() =>
        Assert.All(Sets.SelectMany(s => s.All), p => Assert.InRange(p.Value, p.Low, p.High));

    [Fact]
    public void Every_species_has_the_same_parameters_and_its_own_strain()
    {
        Assert.Equal(Sets[0].All.Select(p => p.Name), Sets[1].All.Select(p => p.Name));
        Assert.Equal(Sets[0].All.Select(p => p.Name), Sets[2].All.Select(p => p.Name));
        Assert.Equal(0.0312, FishLibrary.Nile.GrowthCoefficient);
        Assert.Equal(0.0254, FishLibrary.Red.GrowthCoefficient);
        Assert.InRange(FishLibrary.Blue.GrowthCoefficient / FishLibrary.Nile.GrowthCoefficient, 0.8, 1.0);
        Assert.Equal(51.2, FishLibrary.Feed.GramsPerKilogram.Nitrogen, 12);
    }
}
