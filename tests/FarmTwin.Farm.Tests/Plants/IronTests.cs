using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

public sealed class IronTests
{
    [Fact]
    public void Light_breaks_chelates_and_darkness_keeps_them_as_Albano_and_Miller_saw()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("plants-iron-light").Rows)
        {
            IronHolder holder = Enum.Parse<IronHolder>(row["holder"]);
            double hours = PublishedTable.Number(row, "hours");
            double moles = PublishedTable.Number(row, "light") * 3600e-6 * hours;

            // A thin layer at pH 5.5, where nothing is let go.
            double left = Math.Exp(-(moles * Iron.LightLossSquareMetresPerMole(holder, 0.001, Crops.Common))
                - (hours * Iron.DarkLossPerHour(holder, 1, 5.5, 20, Crops.Common)));
            if (row["calibrated"] == "yes")
            {
                Assert.Equal(PublishedTable.Number(row, "left"), left, 0.02);
            }
            else if (moles > 0)
            {
                Assert.InRange(left, 0, PublishedTable.Number(row, "left"));
            }
            else
            {
                Assert.InRange(left, 2.0 / 3 * 0.9, 1);
            }
        }
    }

    [Fact]
    public void Half_of_the_chelate_of_a_covered_lane_is_gone_in_about_ten_days()
    {
        // Common practice. A lane of 0.3 m under rafts that leave a twentieth open, 15 mol/m² a day, 22 °C, pH 7.2.
        double perDay = (24 * Iron.DarkLossPerHour(IronHolder.Eddha, 1, 7.2, 22, Crops.Common))
            + (15 * 0.05 * Iron.LightLossSquareMetresPerMole(IronHolder.Eddha, 0.3, Crops.Common));
        Assert.InRange(Math.Log(2) / perDay, 8, 15);
    }

    [Fact]
    public void An_open_trough_loses_its_chelate_in_days()
    {
        double perDay = (24 * Iron.DarkLossPerHour(IronHolder.Dtpa, 1, 6.0, 22, Crops.Common))
            + (15 * Iron.LightLossSquareMetresPerMole(IronHolder.Dtpa, 0.3, Crops.Common));
        Assert.InRange(Math.Log(2) / perDay, 1, 4);
    }

    [Fact]
    public void The_wrong_chelate_for_the_pH_is_lost_as_well_as_useless()
    {
        double Half(IronHolder holder, double pH) => Math.Log(2) / (24 * Iron.DarkLossPerHour(holder, 1, pH, 20, Crops.Common));
        Assert.True(Half(IronHolder.Edta, 7.5) < 0.3 * Half(IronHolder.Eddha, 7.5));
        Assert.Equal(Half(IronHolder.Edta, 5.8), Half(IronHolder.Eddha, 5.8), 9);
    }

    [Fact]
    public void Without_a_chelate_water_holds_little_iron_and_the_less_the_higher_its_pH()
    {
        double Held(double pH) => 10 * Iron.AvailableShare(IronHolder.Unchelated, 10, pH, Crops.Common);
        Assert.True(Held(5.5) > 0.5);
        Assert.InRange(Held(7.5), 0.01, 0.1);
        Assert.True(Held(6.2) > Held(6.8));

        // What is held stays; what is beyond falls out within days.
        Assert.Equal(0, Iron.DarkLossPerHour(IronHolder.Unchelated, 0.9 * Held(7.5), 7.5, 20, Crops.Common));
        Assert.InRange(Math.Log(2) / (24 * Iron.DarkLossPerHour(IronHolder.Unchelated, 2, 7.5, 20, Crops.Common)), 0.5, 3);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(0.05)]
    public void Deeper_water_loses_less_to_light(double depth) => Assert.True(
        Iron.LightLossSquareMetresPerMole(IronHolder.Eddha, depth, Crops.Common) < Crops.Common.EddhaPhotolysisSquareMetresPerMole
        && Iron.LightLossSquareMetresPerMole(IronHolder.Eddha, depth, Crops.Common) > Iron.LightLossSquareMetresPerMole(IronHolder.Eddha, depth * 2, Crops.Common));
}
