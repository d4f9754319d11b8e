using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

public sealed class OxygenSaturationTests
{
    [Fact]
    public void Oxygen_saturation_follows_Benson_and_Krause()
    {
        foreach (var row in PublishedTable.Read("water-oxygen-saturation").Rows)
        {
            double value = OxygenSaturation.MilligramsPerLitre(PublishedTable.Number(row, "celsius"), 1);
            Assert.Equal(PublishedTable.Number(row, "milligrams"), value, 0.0006);
        }
    }

    [Fact]
    public void Pressure_altitude_and_salinity_lower_it_as_published()
    {
        foreach (var row in PublishedTable.Read("water-oxygen-pressure").Rows)
        {
            double pressure = row["metres"].Length > 0
                ? OxygenSaturation.PressureAtmospheres(PublishedTable.Number(row, "metres"))
                : PublishedTable.Number(row, "millimetres_mercury") / 760;
            double value = OxygenSaturation.MilligramsPerLitre(
                PublishedTable.Number(row, "celsius"), pressure, PublishedTable.Number(row, "salinity"));
            Assert.Equal(PublishedTable.Number(row, "milligrams"), value, PublishedTable.Number(row, "tolerance"));
        }
    }

    [Fact]
    public void At_sea_level_the_pressure_is_one_atmosphere()
    {
        Assert.Equal(1, OxygenSaturation.PressureAtmospheres(0), 1e-12);
    }
}
