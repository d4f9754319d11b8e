using CsCheck;
using FarmTwin.Farm.Climate;

namespace FarmTwin.Farm.Tests.Climate;

public sealed class LightTests
{
    [Fact]
    public void Photons_follow_the_published_conversions()
    {
        ClimateTable.Check("climate-light", Conversions());
        Assert.Equal(500, Par.RadiationFromPpfd(Par.PpfdFromRadiation(500, 0.45), 0.45), 10);
    }

    internal static Dictionary<string, double> Conversions() =>
        new()
        {
            ["500 W/m2 at 0.5 and 4.6 to PPFD"] = Par.PpfdFromRadiation(500, 0.5) * 4.6 / Par.MicromolesPerJoule,
            ["500 W/m2 at default to PPFD"] = Par.PpfdFromRadiation(500, ClimateLibrary.Parameters.ParShare),
            ["PPFD 100 for 16 h mol/m2"] = Par.LightIntegral(100, 16),
            ["PPFD 600 for 16 h mol/m2"] = Par.LightIntegral(600, 16),
            ["PPFD 1000 for 16 h mol/m2"] = Par.LightIntegral(1000, 16),
            ["PPFD 200 for 12 h mol/m2"] = Par.LightIntegral(200, 12),
        };

    [Fact]
    public void A_travelling_lamp_gives_the_worked_figures()
    {
        // Own calculation: 300 W at 2.7 µmol/J, utilisation 0.85, footprint 1.2 x 1.2 m, travel 4.9 m, 5 h.
        var lamp = new TravellingLamp(300, 2.7, 0.85, 1.2, 1.2, 4.9);
        Assert.Equal(688.5, lamp.PhotonFluxOnCrop, 688.5 * 0.002);
        Assert.Equal(478, lamp.StaticPpfd, 478 * 0.002);
        Assert.Equal(94.1, lamp.SweptMeanPpfd, 94.1 * 0.002);
        Assert.Equal(117.1, lamp.InteriorPpfd, 117.1 * 0.002);
        Assert.Equal(1.69, lamp.MeanLightIntegral(5), 1.69 * 0.003);
        Assert.Equal(1.5, lamp.EnergyKilowattHours(5), 10);
    }

    [Fact]
    public void A_rail_spreads_photons_and_makes_none()
    {
        Gen.Select(Gen.Double[0.2, 3], Gen.Double[0.2, 2], Gen.Double[0, 12]).Sample((length, width, travel) =>
        {
            var lamp = new TravellingLamp(400, 2.5, 0.85, length, width, travel);
            const int Places = 4000;
            double sum = 0;
            for (int i = 0; i < Places; i++)
            {
                sum += lamp.PpfdAt((i + 0.5) / Places * lamp.StripLengthMetres);
            }

            Assert.Equal(lamp.SweptMeanPpfd, sum / Places, lamp.SweptMeanPpfd * 1e-3);
            double moles = lamp.MeanLightIntegral(6) * lamp.StripAreaSquareMetres;
            Assert.Equal(
                lamp.EnergyKilowattHours(6), moles / (3.6 * lamp.EfficacyMicromolesPerJoule * lamp.Utilisation), 9);
        });
    }

    [Fact]
    public void Lamp_hours_lie_around_the_sun_and_reach_over_midnight()
    {
        var schedule = new LampSchedule(2, 3);
        Assert.Equal(0.5, schedule.LitHours(4, 5, 6.5, 17), 12);
        Assert.Equal(0.5, schedule.LitHours(6, 7, 6.5, 17), 12);
        Assert.Equal(0, schedule.LitHours(10, 11, 6.5, 17), 12);
        Assert.Equal(5, schedule.LitHours(0, 24, 6.5, 17), 12);
        var late = new LampSchedule(0, 4);
        Assert.Equal(1, late.LitHours(0, 2, 5, 21), 12);
        Assert.Equal(4, late.LitHours(0, 24, 5, 21), 12);
        var always = new LampSchedule(12, 12);
        Assert.Equal(8, always.LitHours(0, 24, 5, 21), 12);
    }
}
