using FarmTwin.Scenarios.Units;

namespace FarmTwin.Scenarios.Tests.Units;

public class QuantityTextTests
{
    [Fact]
    public void Units_follow_the_published_conversion_factors()
    {
        List<string> wrong = [];
        foreach (string[] row in PublishedRows.Read("units-nist-sp811"))
        {
            QuantityReading reading = QuantityText.Read(row[0], row[2]);
            double published = double.Parse(row[1]);
            double tolerance = published == 0 ? 1e-9 : 1e-6 * Math.Abs(published);
            if (!(Math.Abs(reading.Value - published) <= tolerance))
            {
                wrong.Add($"{row[0]} is {reading.Value} {row[2]}, published {published} {reading.Problem}");
            }
        }

        Assert.Empty(wrong);
    }

    [Theory]
    [InlineData("420 gal", "L", 420 * 3.785411784)]
    [InlineData("1.6 m3", "L", 1600)]
    [InlineData("1.6 m³", "L", 1600)]
    [InlineData("12 in", "cm", 30.48)]
    [InlineData("0.4 kg/day", "g/h", 400.0 / 24)]
    [InlineData("25 plants/m2", "plants/m2", 25)]
    [InlineData("25 /m2", "plants/m2", 25)]
    [InlineData("25 plants/m2", "1/m2", 25)]
    [InlineData("2.5 plants per ft2", "plants/m2", 2.5 / 0.09290304)]
    [InlineData("3 mg N/L", "mg N/L", 3)]
    [InlineData("3 mg/L as N", "mg N/L", 3)]
    [InlineData("3 g N/m3", "mg N/L", 3)]
    [InlineData("60 mg/L as CaCO3", "mg/L as CaCO3", 60)]
    [InlineData("60 ppm as CaCO3", "mg/L as CaCO3", 60)]
    [InlineData("1 meq/L", "mg/L as CaCO3", 50.04345)]
    [InlineData("1 dKH", "mg/L as CaCO3", 17.84799)]
    [InlineData("5 mg K/L", "mg K/L", 5)]
    [InlineData("350 ppm", "mg/L", 350)]
    [InlineData("16 h", "h", 16)]
    [InlineData("42 days", "d", 42)]
    [InlineData("6 weeks", "d", 42)]
    [InlineData("3 /week", "1/d", 3.0 / 7)]
    [InlineData("3/week", "1/d", 3.0 / 7)]
    [InlineData("3 times per week", "1/d", 3.0 / 7)]
    [InlineData("0.5 1/h", "1/h", 0.5)]
    [InlineData("0.5 ACH", "1/h", 0.5)]
    [InlineData("40 %", "1", 0.4)]
    [InlineData("40 %", "%", 40)]
    [InlineData("5 g/kg", "1", 0.005)]
    [InlineData("800 ppm CO2", "ppm", 800)]
    [InlineData("800 µmol/mol", "ppm", 800)]
    [InlineData("1.2 mS/cm", "µS/cm", 1200)]
    [InlineData("1.2 dS/m", "mS/cm", 1.2)]
    [InlineData("6 W/m2K", "W/m2K", 6)]
    [InlineData("6 W/(m²·K)", "W/m2K", 6)]
    [InlineData("6 W/m2/°C", "W/m2K", 6)]
    [InlineData("8.64 MJ/m2/d", "W/m2", 100)]
    [InlineData("17 mol/m2/d", "µmol/m2/s", 17e6 / 86400)]
    [InlineData("300 umol/m2/s", "µmol/m2/s", 300)]
    [InlineData("40.1°", "°", 40.1)]
    [InlineData("40.1 deg", "°", 40.1)]
    [InlineData("25 C", "°C", 25)]
    [InlineData("2 K", "K", 2)]
    [InlineData("1.8 F", "K", 1)]
    [InlineData("5e-3 m", "mm", 5)]
    [InlineData(".5 L", "L", 0.5)]
    [InlineData("-3 °C", "°C", -3)]
    [InlineData("250 g/m2", "kg/m2", 0.25)]
    [InlineData("1.5 kWh/kg", "kJ/g", 5.4)]
    [InlineData("0.45 g O2/g feed", "g O2/g feed", 0.45)]
    [InlineData("6 plants", "plants", 6)]
    [InlineData("1 acre", "ft2", 43560)] // of international feet: the survey foot is retired
    [InlineData("1 person", "people", 1)]
    public void What_users_write_is_read(string text, string unit, double expected)
    {
        QuantityReading reading = QuantityText.Read(text, unit);
        Assert.True(reading.IsRead, reading.Problem);
        Assert.Equal(expected, reading.Value, 1e-6 * Math.Abs(expected));
    }

    [Fact]
    public void A_value_in_the_wanted_unit_comes_through_to_the_last_digit()
    {
        foreach (string unit in new[] { "L", "m2", "L/h", "°C", "°F", "d", "kW", "W/m2K", "mg/L", "mg N/L", "plants/m2", "gal", "Btu/h" })
        {
            Assert.Equal(0.1 + 0.2, QuantityText.Read("0.30000000000000004 " + unit, unit).Value);
        }
    }

    [Theory]
    [InlineData("3.50 USD/gal", "money/L", 3.5 / 3.785411784, "USD")]
    [InlineData("$3.50/gal", "money/L", 3.5 / 3.785411784, "$")]
    [InlineData("€ 3.50 /kg", "money/kg", 3.5, "€")]
    [InlineData("18 EUR/h", "money/h", 18, "EUR")]
    [InlineData("120 USD", "money", 120, "USD")]
    [InlineData("2.5 USD/head", "money/head", 2.5, "USD")]
    public void A_price_keeps_its_currency(string text, string unit, double expected, string currency)
    {
        QuantityReading reading = QuantityText.Read(text, unit);
        Assert.True(reading.IsRead, reading.Problem);
        Assert.Equal(expected, reading.Value, 1e-12);
        Assert.Equal(currency, reading.Currency);
    }

    [Theory]
    [InlineData("5 gal", "m2", "a volume, not an area", null)]
    [InlineData("3 mg/L", "mg N/L", "not stated as N", null)]
    [InlineData("3 mg NO3/L", "mg N/L", "stated as NO3, not as N", null)]
    [InlineData("3 mg Ca/L", "mg/L", "stated as Ca", null)]
    [InlineData("25 heads/m2", "plants/m2", "another thing", null)]
    [InlineData("0.05 kg/fish", "kg", "another thing", null)]
    [InlineData("5 galons", "L", "no known unit", "5 gallons")]
    [InlineData("5 Gal", "L", "no known unit", "5 gal")]
    [InlineData("5 kg/dya", "kg/d", "no known unit", "5 kg/day")]
    [InlineData("1,000 gal", "L", "decimal point", "1000 gal")]
    [InlineData("1,5 m", "m", "decimal point", null)]
    [InlineData("5", "L", "no unit", "5 L")]
    [InlineData("0.4", "1", "in quotes", null)]
    [InlineData("gal", "L", "does not start with a number", null)]
    [InlineData("", "L", "does not start with a number", null)]
    [InlineData("1e999 L", "L", "beyond", null)]
    [InlineData("2e L", "L", "no known unit", "2 L")]
    [InlineData("40 %", "°", "a number, not an angle", null)]
    [InlineData("5 K", "kg", "a temperature difference, not a mass", null)]
    [InlineData("3 months", "d", "no known unit", null)]
    [InlineData("٣ L", "L", "does not start with a number", null)]
    [InlineData("5 L/", "L", "no known unit", "5 L")]
    [InlineData("5 EUR/kg", "kg", "a price, not a mass", null)]
    public void What_cannot_be_meant_is_refused_with_a_reason(string text, string unit, string problem, string? suggestion)
    {
        QuantityReading reading = QuantityText.Read(text, unit);
        Assert.False(reading.IsRead);
        Assert.Contains(problem, reading.Problem, StringComparison.Ordinal);
        Assert.Equal(suggestion, reading.Suggestion);
        Assert.NotNull(reading.Expected);
    }

    [Fact]
    public void A_misspelt_unit_of_a_property_is_a_fault_of_the_program() =>
        Assert.Throws<ArgumentException>(() => QuantityText.Read("5 L", "litters"));
}
