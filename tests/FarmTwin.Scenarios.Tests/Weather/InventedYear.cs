using System.Globalization;
using System.Text;

namespace FarmTwin.Scenarios.Tests.Weather;

/// <summary>An invented year, written in each of the formats that are read. Nothing of it was measured.</summary>
/// <remarks>EPW and TMY3 stamp the end of an hour; the CSV states means over the hour.</remarks>
internal static class InventedYear
{
    public const int Hours = 8760;
    public const string CsvTitles = "month,day,hour,temperature_C,relative_humidity_percent,radiation_W_per_m2,wind_m_per_s";

    /// <summary>Temperature at an instant, °C: a year and a day of sine.</summary>
    public static double CelsiusAt(double hour) =>
        10 - (12 * Math.Cos(2 * Math.PI * hour / Hours)) - (5 * Math.Cos(2 * Math.PI * ((hour % 24) - 3) / 24));

    /// <summary>Global radiation of an hour, W/m2.</summary>
    public static double RadiationOf(int hour) => Math.Max(0, Math.Round(500 * Math.Sin(Math.PI * ((hour % 24) - 5.5) / 12.5)));

    public const double DewPointBelow = 4;

    public static double WindAt(double hour) => 3 + Math.Cos(2 * Math.PI * ((hour % 24) - 14) / 24);

    public static (int Month, int Day, int HourEnding) Stamp(int hour)
    {
        DateOnly date = new DateOnly(2025, 1, 1).AddDays(hour / 24);
        return (date.Month, date.Day, (hour % 24) + 1);
    }

    /// <summary>EPW. Years differ by month, as in a typical year.</summary>
    public static List<string> Epw(double zone = -5, double longitude = -76.3)
    {
        List<string> lines =
        [
            string.Create(CultureInfo.InvariantCulture, $"LOCATION,Invented Meadow,XX,XXX,Invented,000000,40.20,{longitude:0.00},{zone:0.0},110.0"),
            "DESIGN CONDITIONS,0",
            "TYPICAL/EXTREME PERIODS,0",
            "GROUND TEMPERATURES,1,.5,,,,1,1,3,6,10,14,17,18,16,12,8,4",
            "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
            "COMMENTS 1,invented",
            "COMMENTS 2,invented",
            "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
        ];
        for (int hour = 0; hour < Hours; hour++)
        {
            (int month, int day, int ending) = Stamp(hour);
            double celsius = CelsiusAt(hour + 1);
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"{1980 + month},{month},{day},{ending},60,A7A7A7A7*0,{celsius:0.000},{celsius - DewPointBelow:0.000},75,100000,0,0,300,"
                + $"{RadiationOf(hour):0},0,0,0,0,0,0,180,{WindAt(hour + 1):0.000},5,5,20,77777,9,999999999,100,0.1,0,88,0.2,0,0"));
        }

        return lines;
    }

    /// <summary>TMY3, with its columns in another order than usual: they are found by title.</summary>
    public static List<string> Tmy3()
    {
        List<string> lines =
        [
            "000000,\"INVENTED MEADOW, XX\",XX,-5.0,40.200,-76.300,110",
            "Date (MM/DD/YYYY),Time (HH:MM),Wspd (m/s),ETR (W/m^2),GHI (W/m^2),Dry-bulb (C),Dew-point (C),RHum (%),Pressure (mbar)",
        ];
        for (int hour = 0; hour < Hours; hour++)
        {
            (int month, int day, int ending) = Stamp(hour);
            double celsius = CelsiusAt(hour + 1);
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"{month:00}/{day:00}/{1980 + month},{ending:00}:00,{WindAt(hour + 1):0.000},0,{RadiationOf(hour):0},{celsius:0.000},{celsius - DewPointBelow:0.000},75,1000"));
        }

        return lines;
    }

    /// <summary>Plain CSV: hours 0 to 23 that name their beginning.</summary>
    public static List<string> Csv()
    {
        List<string> lines = ["# invented", CsvTitles];
        for (int hour = 0; hour < Hours; hour++)
        {
            (int month, int day, int ending) = Stamp(hour);
            double celsius = 0.5 * (CelsiusAt(hour) + CelsiusAt(hour + 1));
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"{month},{day},{ending - 1},{celsius:0.000},76,{RadiationOf(hour):0},{0.5 * (WindAt(hour) + WindAt(hour + 1)):0.000}"));
        }

        return lines;
    }

    /// <summary>A row of the CSV, by hour of the year.</summary>
    public static int CsvRow(int hour) => hour + 2;

    public static string Text(IEnumerable<string> lines)
    {
        var text = new StringBuilder();
        foreach (string line in lines)
        {
            text.Append(line).Append("\r\n");
        }

        return text.ToString();
    }
}
