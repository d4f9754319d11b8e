using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FarmTwin.Scenarios.Json;

/// <summary>Writes a tree as JSON text.</summary>
internal static class TreeWriter
{
    /// <summary>The tree as text: indented for a reader, or without any blank for a hash.</summary>
    /// <remarks>Keys keep their order, because keyed parts are used in the order in which they are written.</remarks>
    public static string Write(TreeNode node, bool indented)
    {
        using var stream = new MemoryStream();
        var options = new JsonWriterOptions
        {
            Indented = indented, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        };
        using (var writer = new Utf8JsonWriter(stream, options))
        {
            Write(node, writer);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + (indented ? "\n" : string.Empty);
    }

    private static void Write(TreeNode node, Utf8JsonWriter writer)
    {
        switch (node)
        {
            case TreeObject parts:
                writer.WriteStartObject();
                foreach (TreeMember member in parts.Members)
                {
                    writer.WritePropertyName(member.Key);
                    Write(member.Value, writer);
                }

                writer.WriteEndObject();
                break;
            case TreeList list:
                writer.WriteStartArray();
                foreach (TreeNode item in list.Items)
                {
                    Write(item, writer);
                }

                writer.WriteEndArray();
                break;
            case TreeText text:
                writer.WriteStringValue(text.Value);
                break;
            case TreeNumber { Value: double value } when double.IsFinite(value):
                writer.WriteNumberValue(value);
                break;
            case TreeNumber number:
                writer.WriteRawValue(number.Written);
                break;
            case TreeFlag flag:
                writer.WriteBooleanValue(flag.Value);
                break;
            default:
                writer.WriteNullValue();
                break;
        }
    }
}
