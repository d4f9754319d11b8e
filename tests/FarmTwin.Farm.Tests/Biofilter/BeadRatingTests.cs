using FarmTwin.Farm.Biofilter;

namespace FarmTwin.Farm.Tests.Biofilter;

/// <summary>The bead filter as a whole. Its ratings calibrated the transfer velocity and the full-film capacity.</summary>
public sealed class BeadRatingTests
{
    private static NitrificationParameters Parameters => StartUpTank.Parameters;

    [Fact]
    public void The_flux_law_calibrated_gives_the_bead_filter_ratings()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-bead-ratings").Rows)
        {
            double law = 1150 * FilmFlux.FluxGramsPerSquareMetreDay(Parameters, NitrifierPopulation.AmmoniaOxidizers, 0.8, PublishedTable.Number(row, "tan"));
            Assert.Equal(PublishedTable.Number(row, "lawVtr"), law, 1.0);
            Assert.Equal(PublishedTable.Number(row, "vtr"), law, 0.25 * PublishedTable.Number(row, "vtr"));
        }
    }

    [Fact]
    public void A_mature_bead_bed_calibrated_settles_at_the_rated_ammonia_and_the_nitrite_ratio_holds()
    {
        var ratios = new List<double>();
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-bead-ratings").Rows)
        {
            double vtr = PublishedTable.Number(row, "vtr");
            StartUpCourse course = new StartUpTank(1150, 25, 7.5, 6, 0.5, 0.5) { LoadPerDay = _ => vtr }.Implicit(150, 1);
            Assert.Equal(PublishedTable.Number(row, "modelTan"), course.Tan[150], 0.05 * PublishedTable.Number(row, "modelTan"));
            Assert.Equal(PublishedTable.Number(row, "modelNitrite"), course.Nitrite[150], 0.05 * PublishedTable.Number(row, "modelNitrite"));
            ratios.Add(course.Nitrite[150] / course.Tan[150]);
        }

        StartUpCourse light = new StartUpTank(1150, 25, 7.5, 6, 0.5, 0.5) { LoadPerDay = _ => 70 }.Implicit(150, 1);
        ratios.Add(light.Nitrite[150] / light.Tan[150]);

        // Nijhof & Klapwijk 1995: the ratio stays constant with load, and all nitrite is oxidized.
        Assert.True(ratios.Max() / ratios.Min() < 1.25, string.Join(' ', ratios));
        Assert.Equal(70, light.Nitrate[150] - light.Nitrate[149], 0.1);
    }

    [Fact]
    public void A_mature_bed_at_half_load_still_copes_at_pH_6_with_twice_the_ammonia()
    {
        // Own calculation by another program: TAN 0.49 rises to 1.02.
        StartUpCourse course = new StartUpTank(1150, 25, 6.0, 6, 0.5, 0.5) { LoadPerDay = _ => 180 }.Implicit(150, 1);
        Assert.Equal(1.02, course.Tan[150], 0.05);
    }
}
