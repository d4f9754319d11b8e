using FarmTwin.Reports.Tables;

namespace FarmTwin.Reports.Tests;

public sealed class TableTests(SeasonFixture fixture) : IClassFixture<SeasonFixture>
{
    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("a, b", "\"a, b\"")]
    [InlineData("say \"no\"", "\"say \"\"no\"\"\"")]
    [InlineData("two\nlines", "\"two\nlines\"")]
    [InlineData("", "")]
    public void Fields_are_quoted_as_rfc_4180_asks(string value, string expected) =>
        Assert.Equal(expected, new CsvText().Field(value).ToString());

    [Theory]
    [InlineData(0, "0")]
    [InlineData(1234567.891, "1234568")]
    [InlineData(0.0001234567, "0.000123457")]
    [InlineData(-12.5, "-12.5")]
    [InlineData(double.NaN, "")]
    [InlineData(double.PositiveInfinity, "")]
    public void Numbers_are_invariant_with_six_digits_and_no_exponent(double value, string expected) =>
        Assert.Equal(expected, CsvText.Number(value));

    [Fact]
    public void Days_have_a_row_a_day_and_as_many_fields_as_headings()
    {
        string[] lines = SeasonTables.Days(fixture.Season).TrimEnd('\n').Split('\n');
        Assert.Equal(SeasonFixture.Days + 1, lines.Length);
        Assert.StartsWith("date,day,fish_water_C,", lines[0]);
        Assert.StartsWith("2027-03-01,0,", lines[1]);
        Assert.All(lines, l => Assert.Equal(lines[0].Count(c => c == ','), l.Count(c => c == ',')));
        Assert.Contains(",nitrate_fish_loop_mgN_per_L,", lines[0]);
    }

    [Fact]
    public void Hours_have_a_row_an_hour()
    {
        string[] lines = SeasonTables.Hours(fixture.Season).TrimEnd('\n').Split('\n');
        Assert.Equal((SeasonFixture.Days * 24) + 1, lines.Length);
        Assert.StartsWith("2027-03-01T01:00,1,", lines[1]);
    }

    [Fact]
    public void Events_say_when_what_and_where()
    {
        string text = SeasonTables.Events(fixture.Season);
        Assert.StartsWith("date,time,day,what,where,amount,unit,note\n", text);
        Assert.Contains(",filter cycled,", text);
        Assert.Equal(fixture.Season.Log.Events.Count + 1, text.TrimEnd('\n').Split('\n').Length);
    }
}
