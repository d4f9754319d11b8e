using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using FarmTwin.Farm.DesignSheet;
using FarmTwin.Farm.Summaries;
using FarmTwin.Reports.Plots;

namespace FarmTwin.Reports.Json;

/// <summary>Writes a summary and the list of figures as JSON: camel case, fixed order, line feeds, the same bytes every time.</summary>
/// <remarks>Figures have six significant digits; ledgers stand in full, so that their closure can be checked from the file.</remarks>
public static class SummaryJson
{
    private static readonly SummaryJsonContext Context = new(Options());

    /// <summary>How every file is written; a new object for every context.</summary>
    internal static JsonSerializerOptions Options() => new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new SignificantDigits(), new LedgerInFull(), new JsonStringEnumConverter<Verdict>(JsonNamingPolicy.CamelCase) },
    };

    /// <summary>The summary as text, ending with a line feed.</summary>
    public static string Write(SeasonSummary summary) => JsonSerializer.Serialize(summary, Context.SeasonSummary) + "\n";

    /// <summary>The list of figures as text, ending with a line feed.</summary>
    public static string Write(IReadOnlyList<FigureEntry> figures) => JsonSerializer.Serialize(figures, Context.IReadOnlyListFigureEntry) + "\n";

    /// <summary>The design sheet as text, ending with a line feed; what is never reached has no value.</summary>
    public static string Write(Sheet sheet) => JsonSerializer.Serialize(sheet, Context.Sheet) + "\n";

    private sealed class SignificantDigits : JsonConverter<double>
    {
        private const double InFullBelow = 1e-6;

        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Null ? double.NaN : reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
        {
            if (!double.IsFinite(value))
            {
                writer.WriteNullValue();
            }
            else if (Math.Abs(value) < InFullBelow)
            {
                writer.WriteNumberValue(value);
            }
            else
            {
                writer.WriteRawValue(Tables.CsvText.Number(value));
            }
        }
    }

    private sealed class LedgerInFull : JsonConverter<LedgerSummary>
    {
        public override LedgerSummary Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException("A summary is written, never read.");

        public override void Write(Utf8JsonWriter writer, LedgerSummary value, JsonSerializerOptions options)
        {
            writer.WriteStartObject();
            writer.WriteString("unit", value.Unit);
            writer.WriteNumber("opening", value.Opening);
            writer.WriteNumber("in", value.In);
            writer.WriteNumber("out", value.Out);
            writer.WriteNumber("closing", value.Closing);
            writer.WriteNumber("closure", value.Closure);
            writer.WriteStartObject("doors");
            foreach ((string door, DoorFlow flow) in value.Doors)
            {
                writer.WriteStartObject(door);
                writer.WriteNumber("in", flow.In);
                writer.WriteNumber("out", flow.Out);
                writer.WriteEndObject();
            }

            writer.WriteEndObject();
            writer.WriteEndObject();
        }
    }
}

/// <summary>The shapes that are written.</summary>
[JsonSerializable(typeof(SeasonSummary))]
[JsonSerializable(typeof(IReadOnlyList<FigureEntry>))]
[JsonSerializable(typeof(Sheet))]
internal sealed partial class SummaryJsonContext : JsonSerializerContext;
