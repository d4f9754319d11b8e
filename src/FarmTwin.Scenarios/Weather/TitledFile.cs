using System.Globalization;

namespace FarmTwin.Scenarios.Weather;

/// <summary>Reads tables whose columns are found by their titles: TMY3, and plain CSV.</summary>
/// <remarks>
/// TMY3 (NREL/TP-581-43156): a line on the station, a line of titles, 8,760 rows; times name the end of their hour, 01:00 to 24:00
/// of local standard time; -9900 is missing; longitude is east positive. Plain CSV: titles with their units, as docs/scenario-files.md
/// lists them; hourly means; an empty field is missing; lines that begin with # are comments.
/// </remarks>
internal static class TitledFile
{
    private const string TmyDate = "date (mm/dd/yyyy)";
    private const string TmyTime = "time (hh:mm)";
    private const double TmyMissing = -9900;
    private const double KelvinPerFahrenheit = 1 / 1.8;
    private const double MetresPerMile = 1609.344;

    private static readonly Dictionary<string, (int Quantity, bool IsHumidity, double Factor, double Offset)> Known = new(StringComparer.OrdinalIgnoreCase)
    {
        ["dry-bulb (c)"] = (RawYear.Temperature, false, 1, 0),
        ["dew-point (c)"] = (RawYear.Vapour, false, 1, 0),
        ["rhum (%)"] = (RawYear.Vapour, true, 1, 0),
        ["ghi (w/m^2)"] = (RawYear.Radiation, false, 1, 0),
        ["wspd (m/s)"] = (RawYear.Wind, false, 1, 0),
        ["temperature_C"] = (RawYear.Temperature, false, 1, 0),
        ["temperature_F"] = (RawYear.Temperature, false, KelvinPerFahrenheit, -32 * KelvinPerFahrenheit),
        ["dew_point_C"] = (RawYear.Vapour, false, 1, 0),
        ["dew_point_F"] = (RawYear.Vapour, false, KelvinPerFahrenheit, -32 * KelvinPerFahrenheit),
        ["relative_humidity_percent"] = (RawYear.Vapour, true, 1, 0),
        ["radiation_W_per_m2"] = (RawYear.Radiation, false, 1, 0),
        ["radiation_MJ_per_m2"] = (RawYear.Radiation, false, 1e6 / 3600, 0),
        ["wind_m_per_s"] = (RawYear.Wind, false, 1, 0),
        ["wind_km_per_h"] = (RawYear.Wind, false, 1000.0 / 3600, 0),
        ["wind_mph"] = (RawYear.Wind, false, MetresPerMile / 3600, 0),
    };

    /// <summary>Whether a file is TMY3: its second line has that format's title of the date.</summary>
    public static bool IsTmy3(IReadOnlyList<string> lines) =>
        lines.Count > 1 && lines[1].StartsWith(TmyDate, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a file is plain CSV: its first line that is no comment has a title of ours.</summary>
    public static bool IsPlain(IReadOnlyList<string> lines) =>
        TitleLine(lines) is >= 0 and var line && Titles(lines, line).All.Any(t => Known.ContainsKey(t));

    /// <summary>Reads a TMY3 file.</summary>
    public static RawYear ReadTmy3(IReadOnlyList<string> lines, WeatherErrors errors)
    {
        var year = new RawYear("TMY3") { StampedAtEnd = true, PlaceLine = 1 };
        var place = new TextFields(lines[0], 1);
        year.Station = string.Join(", ", new[] { place[1], place[2] }.Where(t => t.Length > 0));
        if (place.TryNumber(3, out double zone) && place.TryNumber(4, out double latitude) && place.TryNumber(5, out double longitude))
        {
            (year.TimeZoneHours, year.LatitudeDegrees, year.LongitudeDegrees) = (zone, latitude, longitude);
        }
        else
        {
            errors.Add(1, place.ColumnOf(3), "time zone, latitude and longitude are not numbers", "fields 4, 5 and 6 of the first line");
        }

        Read(lines, 1, year, errors, ',');
        return year;
    }

    /// <summary>Reads plain CSV.</summary>
    public static RawYear ReadPlain(IReadOnlyList<string> lines, WeatherErrors errors)
    {
        var year = new RawYear("CSV");
        int line = TitleLine(lines);
        Read(lines, line, year, errors, Separator(lines[line]));
        return year;
    }

    private static void Read(IReadOnlyList<string> lines, int titleLine, RawYear year, WeatherErrors errors, char separator)
    {
        var titles = new TextFields(lines[titleLine], titleLine + 1, separator);
        string[] names = [.. titles.All];
        var columns = new List<(int Field, int Quantity, bool IsHumidity, double Factor, double Offset)>();
        for (int i = 0; i < names.Length; i++)
        {
            if (Known.TryGetValue(names[i], out var known))
            {
                columns.Add((i, known.Quantity, known.IsHumidity, known.Factor, known.Offset));
            }
        }

        // Humidity needs its hour's temperature, and a dew point goes before it.
        columns = [.. columns.OrderBy(c => c.Quantity).ThenBy(c => c.IsHumidity)];
        for (int quantity = 0; quantity < RawYear.Quantities; quantity++)
        {
            if (!columns.Exists(c => c.Quantity == quantity))
            {
                string[] wanted = [.. Known.Where(k => k.Value.Quantity == quantity).Select(k => k.Key)];
                errors.Add(titleLine + 1, 1, $"no column gives the {RawYear.Names[quantity]}", "a column titled " + string.Join(" or ", wanted),
                    wanted.Select(w => NearestName.Of(w, names)).FirstOrDefault(n => n is not null));
            }
        }

        var clock = RowClock.Of(names);
        if (clock is null)
        {
            errors.Add(titleLine + 1, 1, "no columns give the hour", "columns titled month, day and hour; or date and hour; or date and time");
        }

        if (errors.Any || clock is null)
        {
            return;
        }

        var rows = new List<TextFields>();
        for (int i = titleLine + 1; i < lines.Count; i++)
        {
            if (lines[i].Length > 0 && lines[i][0] != '#')
            {
                rows.Add(new TextFields(lines[i], i + 1, separator));
            }
        }

        bool tmy = year.Format == "TMY3";
        bool namesEnd = tmy || rows.Exists(clock.IsMidnightAtEnd);
        var hours = new HourRows(year, errors);
        foreach (TextFields row in rows)
        {
            if (clock.Read(row, errors) is { } stamp
                && hours.Open(row, clock.HourField, stamp.Month, stamp.Day, namesEnd ? stamp.Hour : stamp.Hour + 1) is >= 0 and var hour)
            {
                foreach ((int field, int quantity, bool isHumidity, double factor, double offset) in columns)
                {
                    Take(hour, field, quantity, isHumidity, factor, offset, row, hours, errors, tmy);
                }
            }
        }
    }

    private static void Take(int hour, int field, int quantity, bool isHumidity, double factor, double offset, TextFields row, HourRows hours,
        WeatherErrors errors, bool tmy)
    {
        if (row[field].Length == 0)
        {
            return;
        }

        if (!row.TryNumber(field, out double value))
        {
            errors.Add(row.Line, row.ColumnOf(field), $"\"{row[field]}\" is no number", "a number with a decimal point; nothing where it is missing");
            return;
        }

        if (tmy && value <= TmyMissing)
        {
            return;
        }

        value = (value * factor) + offset;
        if (isHumidity)
        {
            hours.TakeHumidity(hour, value, row, field);
        }
        else if (quantity == RawYear.Vapour)
        {
            hours.TakeDewPoint(hour, value, row, field);
        }
        else
        {
            hours.Take(hour, quantity, value, row, field);
        }
    }

    private static int TitleLine(IReadOnlyList<string> lines)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            if (lines[i].Length > 0 && lines[i][0] != '#')
            {
                return i;
            }
        }

        return -1;
    }

    private static TextFields Titles(IReadOnlyList<string> lines, int line) => new(lines[line], line + 1, Separator(lines[line]));

    private static char Separator(string titles) => titles.Contains(';', StringComparison.Ordinal) ? ';' : titles.Contains('\t', StringComparison.Ordinal) ? '\t' : ',';

    /// <summary>The columns that say when a row is.</summary>
    private sealed class RowClock
    {
        private static readonly string[] DateFormats = ["MM/dd/yyyy", "M/d/yyyy", "yyyy-MM-dd"];

        private int _month = -1;
        private int _day = -1;
        private int _date = -1;
        private bool _isTime;

        public int HourField { get; private set; }

        public static RowClock? Of(string[] titles)
        {
            var clock = new RowClock { _month = Find("month"), _day = Find("day"), _date = Find("date", TmyDate), HourField = Find("hour") };
            if (clock.HourField < 0)
            {
                clock.HourField = Find("time", TmyTime);
                clock._isTime = true;
            }

            return clock.HourField >= 0 && (clock._date >= 0 || (clock._month >= 0 && clock._day >= 0)) ? clock : null;

            int Find(params string[] names) => Array.FindIndex(titles, t => names.Contains(t, StringComparer.OrdinalIgnoreCase));
        }

        /// <summary>Whether a row's hour is written 24, so that hours name their end.</summary>
        public bool IsMidnightAtEnd(TextFields row) => row[HourField] is "24" or "24:00";

        public (int Month, int Day, int Hour)? Read(TextFields row, WeatherErrors errors)
        {
            int month;
            int day;
            if (_date >= 0)
            {
                if (!DateOnly.TryParseExact(row[_date], DateFormats, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date))
                {
                    errors.Add(row.Line, row.ColumnOf(_date), $"\"{row[_date]}\" is no date", "year-month-day, or MM/DD/YYYY as TMY3 writes it");
                    return null;
                }

                (month, day) = (date.Month, date.Day);
            }
            else if (!row.TryWhole(_month, out month) || !row.TryWhole(_day, out day))
            {
                errors.Add(row.Line, row.ColumnOf(_month), "month and day are not whole numbers");
                return null;
            }

            string text = row[HourField];
            string hours = _isTime && text.EndsWith(":00", StringComparison.Ordinal) ? text[..^3] : text;
            if (!int.TryParse(hours, NumberStyles.None, CultureInfo.InvariantCulture, out int hour))
            {
                errors.Add(row.Line, row.ColumnOf(HourField), $"\"{text}\" is no full hour", _isTime ? "HH:00; one row an hour" : "0 to 23, or 1 to 24");
                return null;
            }

            return (month, day, hour);
        }
    }
}
