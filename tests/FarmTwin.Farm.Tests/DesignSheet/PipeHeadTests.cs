using FarmTwin.Farm.Equipment;

namespace FarmTwin.Farm.Tests.DesignSheet;

public class PipeHeadTests
{
    /// <summary>Swamee and Jain (1976) state their factor within 1 % of Colebrook's (1939) over this range; here Colebrook is solved outright.</summary>
    [Theory]
    [InlineData(0.5, 0.02, 1.5e-6)]
    [InlineData(1, 0.025, 1.5e-6)]
    [InlineData(1.5, 0.05, 1e-5)]
    [InlineData(2, 0.1, 2e-4)]
    public void The_explicit_friction_factor_is_within_a_percent_of_colebrooks(double velocity, double bore, double roughness)
    {
        double reynolds = velocity * bore / 1.004e-6;
        double inverse = 8;
        for (int i = 0; i < 100; i++)
        {
            inverse = -2 * Math.Log10((roughness / (3.7 * bore)) + (2.51 * inverse / reynolds));
        }

        double colebrook = 1 / (inverse * inverse);
        Assert.InRange(PipeHead.FrictionFactor(velocity, bore, roughness) / colebrook, 0.985, 1.015);
    }

    /// <summary>Poiseuille: h = 32 ν L v / (g D²), an identity of laminar flow.</summary>
    [Fact]
    public void Laminar_flow_loses_what_poiseuille_says()
    {
        const double Bore = 0.02;
        const double Flow = 50;
        double velocity = PipeHead.MetresPerSecond(Flow, Bore);
        double poiseuille = 32 * 1.004e-6 * 10 * velocity / (9.80665 * Bore * Bore);
        Assert.Equal(poiseuille, PipeHead.FrictionMetres(Flow, 10, Bore, 1.5e-6), 9);
    }

    /// <summary>Half the bore at the same flow: about 2^4.8 times the loss where the flow is turbulent and the pipe smooth.</summary>
    [Fact]
    public void Half_the_bore_loses_some_twenty_eight_times_the_head()
    {
        double wide = PipeHead.FrictionMetres(1600, 10, 0.05, 1.5e-6);
        double narrow = PipeHead.FrictionMetres(1600, 10, 0.025, 1.5e-6);
        Assert.InRange(narrow / wide, 24, 31);
        Assert.Equal(0, PipeHead.FrictionMetres(0, 10, 0.05, 1.5e-6));
    }

    /// <summary>ρ g Q H = η P by hand: 60 W × 0.3 over 9.80665 m/s² and 1600/3600 kg/s is 4.13 m.</summary>
    [Fact]
    public void Sixty_watts_lift_sixteen_hundred_litres_an_hour_four_metres() =>
        Assert.Equal(4.13, PipeHead.MetresOfPower(60, 0.3, 1600), 2);
}
