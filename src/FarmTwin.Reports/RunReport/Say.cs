using System.Globalization;

namespace FarmTwin.Reports.RunReport;

/// <summary>Numbers and names as a client reads them: two or three figures, words instead of keys.</summary>
internal static class Say
{
    /// <summary>A number of about three figures, thousands set apart; a dash for none.</summary>
    public static string Number(double? value)
    {
        if (value is not { } number || !double.IsFinite(number))
        {
            return "–";
        }

        double size = Math.Abs(number);
        string format = size >= 10 ? "#,0" : size >= 1 ? "0.0" : size >= 0.1 ? "0.00" : size == 0 ? "0" : "0.000";
        string text = number.ToString(format, CultureInfo.InvariantCulture);
        return text.Trim('-', '0', '.').Length == 0 ? "0" : text.Replace("-", "−", StringComparison.Ordinal);
    }

    /// <summary>A count of days, weeks, fish: whole.</summary>
    public static string Count(double? value) => value is { } number && double.IsFinite(number) ? Number(Math.Round(number)) is var text && Math.Abs(number) < 10 ? $"{number:0}" : text : "–";

    /// <summary>A share in percent; "under 1 %" for a trace.</summary>
    public static string Share(double share) => share is > 0 and < 0.005 ? "under 1 %" : $"{share * 100:0} %";

    /// <summary>A key in words: "cropHarvest" is "crop harvest".</summary>
    public static string Words(string key) => string.Concat(key.Select(c => char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : c == '-' ? " " : $"{c}"));

    /// <summary>The same with a capital.</summary>
    public static string Capital(string key) => Words(key) is { Length: > 0 } words ? char.ToUpperInvariant(words[0]) + words[1..] : key;
}
