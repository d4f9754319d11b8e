namespace FarmTwin.Scenarios.Weather;

/// <summary>Reads the EPW format: eight head records, then rows whose columns are set by position.</summary>
/// <remarks>
/// Positions, units and marks of missing values after the format's published data dictionary (docs/model/climate-weather.md). Hours
/// run 1 to 24 of local standard time and name their end; radiation is that of the hour before the stamp, the rest that of the stamp.
/// The years of the months differ and are not looked at. Longitude is east positive.
/// </remarks>
internal static class EpwFile
{
    private const int HeadLines = 8;
    private const int FieldsNeeded = 22;
    private const int MonthField = 1;
    private const int DayField = 2;
    private const int HourField = 3;
    private const int DryBulbField = 6;
    private const int DewPointField = 7;
    private const int HumidityField = 8;
    private const int RadiationField = 13;
    private const int WindField = 21;
    private const double TemperatureMissing = 99.9;
    private const double HumidityMissing = 999;
    private const double RadiationMissing = 9999;
    private const double WindMissing = 999;

    private static readonly string[] Heads =
    [
        "LOCATION", "DESIGN CONDITIONS", "TYPICAL/EXTREME PERIODS", "GROUND TEMPERATURES", "HOLIDAYS/DAYLIGHT SAVINGS", "COMMENTS 1",
        "COMMENTS 2", "DATA PERIODS",
    ];

    /// <summary>Whether a file begins as this format does.</summary>
    public static bool Is(IReadOnlyList<string> lines) => lines.Count > 0 && lines[0].StartsWith("LOCATION,", StringComparison.OrdinalIgnoreCase);

    /// <summary>Reads the rows.</summary>
    public static RawYear Read(IReadOnlyList<string> lines, WeatherErrors errors)
    {
        var year = new RawYear("EPW") { StampedAtEnd = true };
        ReadHead(lines, year, errors);
        var rows = new HourRows(year, errors);
        for (int i = HeadLines; i < lines.Count; i++)
        {
            if (lines[i].Length == 0)
            {
                continue;
            }

            var row = new TextFields(lines[i], i + 1);
            if (row.Count < FieldsNeeded)
            {
                errors.Add(i + 1, 1, $"the row has {row.Count} fields", $"at least {FieldsNeeded}, up to the wind speed");
            }
            else if (!row.TryWhole(MonthField, out int month) || !row.TryWhole(DayField, out int day) || !row.TryWhole(HourField, out int hourEnding))
            {
                errors.Add(i + 1, row.ColumnOf(MonthField), "month, day and hour are not whole numbers", "fields 2, 3 and 4 as 1-12, 1-31, 1-24");
            }
            else if (rows.Open(row, HourField, month, day, hourEnding) is >= 0 and var hour)
            {
                Take(hour, row, rows, errors);
            }
        }

        return year;
    }

    private static void Take(int hour, TextFields row, HourRows rows, WeatherErrors errors)
    {
        if (Number(DryBulbField, out double celsius) && celsius < TemperatureMissing)
        {
            rows.Take(hour, RawYear.Temperature, celsius, row, DryBulbField);
        }

        if (Number(DewPointField, out double dew) && dew < TemperatureMissing)
        {
            rows.TakeDewPoint(hour, dew, row, DewPointField);
        }

        if (Number(HumidityField, out double humidity) && humidity < HumidityMissing)
        {
            rows.TakeHumidity(hour, humidity, row, HumidityField);
        }

        if (Number(RadiationField, out double radiation) && radiation < RadiationMissing)
        {
            rows.Take(hour, RawYear.Radiation, radiation, row, RadiationField);
        }

        if (Number(WindField, out double wind) && wind < WindMissing)
        {
            rows.Take(hour, RawYear.Wind, wind, row, WindField);
        }

        bool Number(int field, out double value)
        {
            bool read = row.TryNumber(field, out value);
            if (!read && row[field].Length > 0)
            {
                errors.Add(row.Line, row.ColumnOf(field), $"\"{row[field]}\" is no number", "a number with a decimal point");
            }

            return read;
        }
    }

    private static void ReadHead(IReadOnlyList<string> lines, RawYear year, WeatherErrors errors)
    {
        for (int i = 0; i < HeadLines; i++)
        {
            var head = new TextFields(i < lines.Count ? lines[i] : string.Empty, i + 1);
            bool known = i == 4 ? head[0].StartsWith("HOLIDAYS", StringComparison.OrdinalIgnoreCase)
                : head[0].Equals(Heads[i], StringComparison.OrdinalIgnoreCase);
            if (!known)
            {
                errors.Add(i + 1, 1, $"the head of this EPW file has \"{head[0]}\" in line {i + 1}", Heads[i]);
                return;
            }
        }

        var place = new TextFields(lines[0], 1);
        year.Station = string.Join(", ", new[] { place[1], place[2], place[3] }.Where(t => t.Length > 0 && t != "-"));
        if (place.TryNumber(6, out double latitude) && place.TryNumber(7, out double longitude) && place.TryNumber(8, out double zone))
        {
            (year.LatitudeDegrees, year.LongitudeDegrees, year.TimeZoneHours, year.PlaceLine) = (latitude, longitude, zone, 1);
        }
        else
        {
            errors.Add(1, place.ColumnOf(6), "latitude, longitude and time zone are not numbers", "fields 7, 8 and 9 of LOCATION");
        }

        var periods = new TextFields(lines[HeadLines - 1], HeadLines);
        if (periods.TryWhole(2, out int perHour) && perHour != 1)
        {
            errors.Add(HeadLines, periods.ColumnOf(2), $"the file has {perHour} rows an hour", "one row an hour; take hourly means first");
        }
    }
}
