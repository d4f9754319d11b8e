using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;
using Xunit.Abstractions;

namespace FarmTwin.Farm.Tests.Laws;

/// <summary>Powdered calcium carbonate dissolves towards saturation and not beyond, at any step and any dose.</summary>
public class CarbonateStoreTests(ITestOutputHelper output)
{
    private static readonly FarmDescription Pond = BareFarm.Of(
        new Dictionary<string, BasinDescription>
        {
            ["pond"] = BareFarm.Closed(BasinUse.FishSump, 1000) with { AirLitresPerMinute = 5, DiffuserDepthMetres = 0.5 },
        },
        new Dictionary<string, PipeDescription>()) with
    {
        SourceWater = new SourceWaterDescription
        {
            AlkalinityMilligramsPerLitre = 20, PH = 7, CalciumMilligramsPerLitre = 8, MagnesiumMilligramsPerLitre = 2,
        },
    };

    [Theory]
    [InlineData(40)]
    [InlineData(1000)]
    [InlineData(20_000)]
    public void It_dissolves_up_to_saturation_and_not_beyond(double grams)
    {
        double[] calcium = [.. new[] { 60.0, 15, 5 }.Select(minutes =>
        {
            Season season = Farms.Start(Pond, 4, stepMinutes: minutes);
            season.Apply(new Dose { Day = 0, Basin = "pond", Supplement = "calcium-carbonate", Grams = grams });
            double highest = double.NegativeInfinity;
            for (int hour = 1; hour <= 96; hour++)
            {
                season.Advance(hour * 3600L);
                highest = Math.Max(highest, SaturationIndex(season));
            }

            LedgerLawTests.AssertClosed(season);
            output.WriteLine($"{grams} g at {minutes} min: highest saturation index {highest:0.000}, calcium {season.State.Basins.MilligramsPerLitre(0, Substance.Calcium):0.00} mg/L, left {season.State.Basins.UndissolvedCarbonateGrams[0]:0} g");
            Assert.InRange(highest, -10, 0.1);
            return season.State.Basins.MilligramsPerLitre(0, Substance.Calcium);
        })];
        Assert.InRange(calcium.Max() / calcium.Min(), 1, 1.02);
    }

    private static double SaturationIndex(Season season)
    {
        Basins basins = season.State.Basins;
        Ions ions = basins.IonsOf(0);
        double carbon = basins.Grams[WaterStep.At(0, Substance.InorganicCarbon)] / basins.Litres[0] / UnitConstants.AtomicWeight.Carbon;
        return CarbonateSystem.CalciteSaturationIndex(
            ions.Ca, carbon, basins.PH[0], CarbonateConstants.At(basins.Celsius[0]), IonicStrength.MolesPerLitre(ions));
    }
}
