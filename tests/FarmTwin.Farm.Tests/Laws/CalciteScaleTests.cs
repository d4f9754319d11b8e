using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;
using Xunit.Abstractions;

namespace FarmTwin.Farm.Tests.Laws;

/// <summary>Scale grows in hard, aerated water down to saturation and not beyond, and dissolves again in acid.</summary>
public class CalciteScaleTests(ITestOutputHelper output)
{
    private static readonly FarmDescription Pond = BareFarm.Of(
        new Dictionary<string, BasinDescription>
        {
            ["pond"] = BareFarm.Closed(BasinUse.FishSump, 1000) with { AirLitresPerMinute = 20, DiffuserDepthMetres = 0.5, WettedSquareMetres = 6 },
        },
        new Dictionary<string, PipeDescription>()) with
    {
        SourceWater = new SourceWaterDescription
        {
            AlkalinityMilligramsPerLitre = 250, PH = 7.4, CalciumMilligramsPerLitre = 100, MagnesiumMilligramsPerLitre = 10,
        },
    };

    [Fact]
    public void Hard_aerated_water_comes_to_rest_at_saturation_whatever_the_step()
    {
        double[] calcium = [.. new[] { 60.0, 15, 5 }.Select(minutes =>
        {
            Season season = Farms.Start(Pond, 60, stepMinutes: minutes);
            double lowest = double.PositiveInfinity;
            for (int hour = 24; hour <= 60 * 24; hour++)
            {
                season.Advance(hour * 3600L);
                lowest = Math.Min(lowest, Index(season));
            }

            LedgerLawTests.AssertClosed(season);
            double left = season.State.Basins.MilligramsPerLitre(0, Substance.Calcium);
            output.WriteLine($"{minutes} min: calcium {left:0.00} mg/L, scale {season.State.Basins.CalciteScaleGrams[0]:0} g, SI {Index(season):0.000}, lowest {lowest:0.000}");
            Assert.InRange(lowest, -0.005, 1);
            Assert.InRange(Index(season), 0, 0.1);

            // What the water lost stands on the walls.
            Assert.Equal((100 - left) * 1000 / 1000 / 40.078 * 100.086, season.State.Basins.CalciteScaleGrams[0], 1);
            Assert.InRange(left, 10, 70);
            return left;
        })];
        Assert.InRange(calcium.Max() / calcium.Min(), 1, 1.02);
    }

    [Fact]
    public void Phosphate_keeps_scale_from_growing()
    {
        // For two days: then most of the phosphate has fallen out with calcium, as Plant and House (2002) saw too.
        Season plain = Farms.Run(Pond, 2);
        Season season = Farms.Start(Pond, 2);
        season.Apply(new Dose { Day = 0, Basin = "pond", Supplement = "monopotassium-phosphate", Grams = 22 });
        season.AdvanceToEnd();
        LedgerLawTests.AssertClosed(season);
        Assert.True(season.State.Basins.CalciteScaleGrams[0] < 0.2 * plain.State.Basins.CalciteScaleGrams[0]);
    }

    [Fact]
    public void Scale_dissolves_in_acid_water()
    {
        Season season = Farms.Start(Pond, 60);
        season.Advance(20 * 86_400L);
        double before = season.State.Basins.CalciteScaleGrams[0];
        season.Apply(new Dose { Day = 20, Basin = "pond", Supplement = "nitric-acid", Grams = 400 });
        season.AdvanceToEnd();
        LedgerLawTests.AssertClosed(season);
        output.WriteLine($"{before:0} g before, {season.State.Basins.CalciteScaleGrams[0]:0} g after the acid");
        Assert.True(before > 20);
        Assert.True(season.State.Basins.CalciteScaleGrams[0] < 0.5 * before);
    }

    private static double Index(Season season)
    {
        Basins basins = season.State.Basins;
        Ions ions = basins.IonsOf(0);
        double carbon = basins.Grams[WaterStep.At(0, Substance.InorganicCarbon)] / basins.Litres[0] / UnitConstants.AtomicWeight.Carbon;
        return CarbonateSystem.CalciteSaturationIndex(
            ions.Ca, carbon, basins.PH[0], CarbonateConstants.At(basins.Celsius[0]), IonicStrength.MolesPerLitre(ions));
    }
}
