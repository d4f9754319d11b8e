using System.Globalization;
using System.Text;
using System.Text.Json;

namespace FarmTwin.Scenarios.Json;

/// <summary>Reads JSON text (comments and trailing commas allowed) into a tree that knows its places.</summary>
internal static class TreeReader
{
    private static readonly JsonReaderOptions Options = new()
    {
        AllowTrailingCommas = true,
        CommentHandling = JsonCommentHandling.Skip,
        MaxDepth = 64,
    };

    /// <summary>Reads a file's content.</summary>
    /// <param name="file">Its name, for places.</param>
    /// <param name="utf8">Its bytes; a byte order mark is skipped.</param>
    /// <param name="errors">Receives a duplicate key or the one malformation that ends reading.</param>
    /// <returns>The tree, or null where the text is no JSON.</returns>
    public static TreeNode? Read(string file, ReadOnlySpan<byte> utf8, List<ScenarioError> errors)
    {
        if (utf8.StartsWith(Encoding.UTF8.Preamble))
        {
            utf8 = utf8[Encoding.UTF8.Preamble.Length..];
        }

        var lines = new LineIndex(file, utf8);
        var reader = new Utf8JsonReader(utf8, Options);
        try
        {
            reader.Read();
            TreeNode root = ReadValue(ref reader, utf8, lines, string.Empty, errors);
            reader.Read();
            return root;
        }
        catch (JsonException e)
        {
            Place place = lines.At(utf8, (int)(e.LineNumber ?? 0), (int)(e.BytePositionInLine ?? 0));
            errors.Add(new ScenarioError(file, place.Line, place.Column, string.Empty, "this is not JSON: " + Reason(e)));
        }
        catch (InvalidOperationException)
        {
            // The reader's answer to text that is not Unicode (a broken byte sequence, half of a surrogate pair).
            Place place = lines.At(utf8, reader.TokenStartIndex);
            errors.Add(new ScenarioError(file, place.Line, place.Column, string.Empty, "this text is not valid Unicode (UTF-8)"));
        }

        return null;
    }

    private static TreeNode ReadValue(
        ref Utf8JsonReader reader, ReadOnlySpan<byte> utf8, LineIndex lines, string path, List<ScenarioError> errors)
    {
        Place place = lines.At(utf8, reader.TokenStartIndex);
        return reader.TokenType switch
        {
            JsonTokenType.StartObject => ReadObject(ref reader, utf8, lines, place, path, errors),
            JsonTokenType.StartArray => ReadList(ref reader, utf8, lines, place, path, errors),
            JsonTokenType.String => new TreeText(place, path, reader.GetString()!),
            JsonTokenType.Number => Number(place, path, Encoding.UTF8.GetString(reader.ValueSpan)),
            JsonTokenType.True => new TreeFlag(place, path, true),
            JsonTokenType.False => new TreeFlag(place, path, false),
            _ => new TreeNull(place, path),
        };
    }

    private static TreeNumber Number(Place place, string path, string written) =>
        new(place, path, double.Parse(written, NumberStyles.Float, CultureInfo.InvariantCulture), written);

    private static TreeObject ReadObject(ref Utf8JsonReader reader, ReadOnlySpan<byte> utf8, LineIndex lines, Place place,
        string path, List<ScenarioError> errors)
    {
        var members = new List<TreeMember>();
        var seen = new Dictionary<string, Place>(StringComparer.Ordinal);
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            Place keyPlace = lines.At(utf8, reader.TokenStartIndex);
            string key = reader.GetString()!;
            string memberPath = TreeNode.Join(path, key);
            reader.Read();
            TreeNode value = ReadValue(ref reader, utf8, lines, memberPath, errors);
            if (seen.TryAdd(key, keyPlace))
            {
                members.Add(new TreeMember(key, keyPlace, value));
            }
            else
            {
                errors.Add(new ScenarioError(keyPlace.File, keyPlace.Line, keyPlace.Column, memberPath,
                    $"the key \"{key}\" is written twice, first in line {seen[key].Line}", "each key once"));
            }
        }

        return new TreeObject(place, path, members);
    }

    private static TreeList ReadList(ref Utf8JsonReader reader, ReadOnlySpan<byte> utf8, LineIndex lines, Place place,
        string path, List<ScenarioError> errors)
    {
        var items = new List<TreeNode>();
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            items.Add(ReadValue(ref reader, utf8, lines, $"{path}[{items.Count}]", errors));
        }

        return new TreeList(place, path, items);
    }

    private static string Reason(JsonException e)
    {
        int end = e.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        return (end < 0 ? e.Message : e.Message[..end]).TrimEnd('.', ' ');
    }
}
