using System.Text.Json;

namespace FarmTwin.Reports;

/// <summary>The sources of the parameters, <c>docs/sources.json</c>, as they ship with the program.</summary>
public static class SourceList
{
    private const string Name = "FarmTwin.Reports.Sources.json";
    private static readonly Lazy<IReadOnlyDictionary<string, string>> Read = new(ReadAll);

    /// <summary>Citation, locator and how it was read, by key.</summary>
    public static IReadOnlyDictionary<string, string> Citations => Read.Value;

    private static Dictionary<string, string> ReadAll()
    {
        var all = new Dictionary<string, string>(StringComparer.Ordinal);
        using Stream stream = typeof(SourceList).Assembly.GetManifestResourceStream(Name)!;
        using JsonDocument document = JsonDocument.Parse(stream);
        foreach (JsonProperty source in document.RootElement.EnumerateObject())
        {
            string locator = Text(source.Value, "locator");
            all[source.Name] = Text(source.Value, "citation") + (locator is "" or "-" ? string.Empty : $" ({locator})") + $" - {Text(source.Value, "read")}";
        }

        return all;
    }

    private static string Text(JsonElement source, string name) =>
        source.TryGetProperty(name, out JsonElement value) ? value.GetString() ?? string.Empty : string.Empty;
}
