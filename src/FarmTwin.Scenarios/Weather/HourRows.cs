using FarmTwin.Farm.Climate;

namespace FarmTwin.Scenarios.Weather;

/// <summary>Puts the values of a file's rows into their hours, and says at which line and column one cannot be right.</summary>
internal sealed class HourRows(RawYear year, WeatherErrors errors)
{
    private static readonly (double Low, double High, string Unit)[] Ranges =
    [
        (-90, 65, "°C"), (0, 110, "%"), (0, 1500, "W/m2"), (0, 100, "m/s"),
    ];

    /// <summary>The hour of a row, by month, day and the hour at whose end it stands (1 to 24); -1 where there is none.</summary>
    /// <param name="row">The row.</param>
    /// <param name="at">The field that gives the hour, for the message.</param>
    /// <param name="month">Month, 1 to 12.</param>
    /// <param name="day">Day of the month.</param>
    /// <param name="hourEnding">1 to 24.</param>
    public int Open(TextFields row, int at, int month, int day, int hourEnding)
    {
        if (month is < 1 or > 12 || day < 1 || day > DateTime.DaysInMonth(2024, month) || hourEnding is < 1 or > 24)
        {
            errors.Add(row.Line, row.ColumnOf(at), $"month {month}, day {day}, hour ending {hourEnding} is no hour of a year");
            return -1;
        }

        if (month == 2 && day == 29)
        {
            return -1;
        }

        int hour = (WeatherYear.DayOf(month, day) * 24) + hourEnding - 1;
        if (year.Lines[hour] != 0)
        {
            errors.Add(row.Line, row.ColumnOf(at), $"{RawYear.HourInWords(hour)} stands in line {year.Lines[hour]} already",
                "one year, each hour once; of several years, cut out one");
            return -1;
        }

        year.Lines[hour] = row.Line;
        return hour;
    }

    /// <summary>Takes a value in the unit of its quantity (humidity as <see cref="TakeDewPoint"/> or <see cref="TakeHumidity"/>).</summary>
    public void Take(int hour, int quantity, double value, TextFields row, int field)
    {
        (double low, double high, string unit) = Ranges[quantity];
        if (value < low || value > high)
        {
            errors.Add(row.Line, row.ColumnOf(field), $"{RawYear.Names[quantity]} {row[field]} is out of range",
                FormattableString.Invariant($"{low} to {high} {unit}, or the format's mark for a missing value"));
            return;
        }

        year.Values[quantity][hour] = value;
    }

    /// <summary>Takes the dew point, °C.</summary>
    public void TakeDewPoint(int hour, double celsius, TextFields row, int field)
    {
        if (celsius < Ranges[RawYear.Temperature].Low || celsius > Ranges[RawYear.Temperature].High)
        {
            errors.Add(row.Line, row.ColumnOf(field), $"dew point {row[field]} is out of range", "°C below 65");
            return;
        }

        year.Values[RawYear.Vapour][hour] = Psychrometrics.SaturationPressureKilopascal(celsius);
    }

    /// <summary>Takes relative humidity, %, where the hour's temperature is known and no dew point was given.</summary>
    public void TakeHumidity(int hour, double percent, TextFields row, int field)
    {
        if (percent < 0 || percent > Ranges[RawYear.Vapour].High)
        {
            errors.Add(row.Line, row.ColumnOf(field), $"relative humidity {row[field]} is out of range", "0 to 100 %");
            return;
        }

        double celsius = year.Values[RawYear.Temperature][hour];
        if (double.IsNaN(year.Values[RawYear.Vapour][hour]) && !double.IsNaN(celsius))
        {
            year.Values[RawYear.Vapour][hour] = Math.Min(1, percent / 100) * Psychrometrics.SaturationPressureKilopascal(celsius);
        }
    }
}
