namespace FarmTwin.Farm.Summaries;

/// <summary>Fuel and power by calendar month, from the daily record.</summary>
internal static class EnergyMonths
{
    private const string Prefix = "electricity_";
    private const string Suffix = "_kWh";

    public static Dictionary<string, EnergyMonth> Of(Seasons.Season season, RecordView record)
    {
        string[] columns = [.. season.Record.Days.Columns.ToArray().Select(c => c.Name)];
        string[] uses = [.. columns.Where(c => c.StartsWith(Prefix, StringComparison.Ordinal) && c != "electricity_kWh")];
        string? waterFuel = Array.Find(columns, c => c.StartsWith("water_fuel_", StringComparison.Ordinal));
        string? airFuel = Array.Find(columns, c => c.StartsWith("air_fuel_", StringComparison.Ordinal));
        var months = new Dictionary<string, EnergyMonth>(StringComparer.Ordinal);
        foreach (IGrouping<string, int> month in Enumerable.Range(0, record.DayCount)
            .GroupBy(d => record.Start.AddDays(d).ToString("yyyy-MM", System.Globalization.CultureInfo.InvariantCulture)))
        {
            int[] days = [.. month];
            double Sum(string? column) => column is null ? 0 : days.Sum(d => record.Days(column)[d]);
            months.Add(month.Key, new EnergyMonth(
                days.Length,
                uses.ToDictionary(u => u[Prefix.Length..^Suffix.Length], u => Sum(u), StringComparer.Ordinal),
                Sum(waterFuel), Sum(airFuel), Sum("water_heat_kWh"), Sum("air_heat_kWh")));
        }

        return months;
    }
}
