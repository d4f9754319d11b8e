using FarmTwin.Farm.DesignSheet;

namespace FarmTwin.Farm.Tests.DesignSheet;

/// <summary>Worked by hand: own calculation from fish at 300 mg O2/kg/h, a usual figure after feeding.</summary>
public class OutageTests
{
    private static readonly OutageStretch[] Alone = [new(0, 0, 0)];

    [Theory]
    [InlineData(1200, 42, 2.0, 25.7)]
    [InlineData(1000, 40, 3.0, 17.5)]
    public void A_still_tank_falls_along_a_line(double litres, double kilograms, double level, double minutes)
    {
        var outage = new Outage(6.5, 8, 0.3 * kilograms, litres, 0);
        Assert.Equal(minutes, outage.MinutesTo(level, Alone), 1);
    }

    [Fact]
    public void Air_that_covers_the_demand_holds_it_for_ever_and_a_battery_for_its_hours()
    {
        // 12 g/h at 3.5 mg/L under saturation: 12,000/3.5 = 3,429 L/h hold 4.5 mg/L.
        var outage = new Outage(6.5, 8, 12, 1000, 0);
        Assert.Equal(double.PositiveInfinity, outage.MinutesTo(4.4, [new(0, 12000 / 3.5, 0)]));
        double three = outage.MinutesTo(3, [new(0, 12000 / 3.5, 0), new(5, 0, 0)]);

        // From 4.5 after five hours (the exponential has run out) down to 3.0 at 12 mg/L/h: 7.5 min.
        Assert.Equal(307.5, three, 1);
    }

    [Fact]
    public void Oxygen_from_a_cylinder_is_taken_off_the_demand()
    {
        var outage = new Outage(6.5, 8, 12, 1000, 0);
        Assert.Equal(35, outage.MinutesTo(3, [new(0, 0, 6)]), 6);
        Assert.Equal(double.PositiveInfinity, outage.MinutesTo(3, [new(0, 0, 12)]));
    }

    [Fact]
    public void A_generator_that_comes_after_the_harm_changes_nothing()
    {
        var outage = new Outage(6.5, 8, 12, 1000, 0);
        Assert.Equal(17.5, outage.MinutesTo(3, [new(0, 0, 0), new(0.5, 1e5, 0)]), 6);
        Assert.Equal(double.PositiveInfinity, outage.MinutesTo(3, [new(0, 0, 0), new(0.1, 1e5, 0)]));
    }
}
