using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Binding;
using FarmTwin.Scenarios.Causes;
using FarmTwin.Scenarios.Json;
using FarmTwin.Scenarios.Library;
using FarmTwin.Scenarios.Units;

namespace FarmTwin.Scenarios.Schema;

/// <summary>Writes the JSON Schema (draft 2020-12) of a description, for completion and warnings in an editor.</summary>
/// <remarks>
/// Every record stands twice under <c>$defs</c>: whole, and as the change that a file with <c>extends</c> makes (nothing required, null
/// removes). The reader, not the schema, has the last word: it alone knows references, merged files and every spelling of a unit.
/// The text depends on nothing but the declarations and the names in the library.
/// </remarks>
public sealed class SchemaWriter
{
    private const string Change = ".change";

    private static readonly JsonSerializerOptions Options = new()
    {
        WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    private readonly SortedDictionary<string, JsonObject?> _definitions = new(StringComparer.Ordinal);
    private readonly Func<string, IReadOnlyList<string>> _libraryNames;

    private SchemaWriter(Func<string, IReadOnlyList<string>> libraryNames) => _libraryNames = libraryNames;

    /// <summary>The schema of a description, as text that ends with a line feed.</summary>
    /// <param name="root">The root record.</param>
    /// <param name="libraryNames">The names in a folder of the parameter library; left out, those of the shipped library.</param>
    /// <exception cref="InvalidOperationException">The description is declared wrongly (a fault of the program).</exception>
    public static string Write(Type root, Func<string, IReadOnlyList<string>>? libraryNames = null)
    {
        var writer = new SchemaWriter(libraryNames ?? ParameterLibrary.Names);
        RecordModel model = RecordModel.Of(root);
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Scenario",
            ["description"] = "A farm, its plan and its prices. Quantities are texts with a unit.",
            ["type"] = "object",
            ["if"] = new JsonObject { ["required"] = new JsonArray(Extends.Key) },
            ["then"] = writer.Reference(model, isChange: true),
            ["else"] = writer.Reference(model, isChange: false),
        };
        JsonObject cause = writer.Reference(RecordModel.Of(typeof(CauseCard)), isChange: false);
        ((JsonObject)writer._definitions[nameof(CauseRemedy)]!["properties"]!)["changes"] = new JsonObject
        {
            ["$ref"] = $"#/$defs/{model.Type.Name}{Change}", ["description"] = "What the remedy changes in the scenario.",
        };
        foreach (string suffix in new[] { string.Empty, Change })
        {
            var properties = (JsonObject)writer._definitions[model.Type.Name + suffix]!["properties"]!;
            properties[Extends.SchemaKey] = new JsonObject { ["type"] = "string", ["description"] = "The schema, for editors." };
            properties[Extends.Key] = new JsonObject
            {
                ["type"] = "string",
                ["description"] = "The scenario file that this one changes, relative to this file. Objects merge, values replace, null removes.",
            };
            properties[Extends.CauseKey] = cause.DeepClone();
            properties[Extends.CauseKey]!["description"] = "What this scenario teaches: a cause, its signs, its remedy. A run ignores it.";
        }

        var definitions = new JsonObject();
        foreach ((string name, JsonObject? definition) in writer._definitions)
        {
            definitions[name] = definition;
        }

        schema["$defs"] = definitions;
        return schema.ToJsonString(Options) + "\n";
    }

    private JsonObject Reference(RecordModel model, bool isChange, KindAttribute? kind = null)
    {
        string name = model.Type.Name + (isChange ? Change : string.Empty);
        if (!_definitions.ContainsKey(name))
        {
            // Reserved before it is filled: a record may hold its own kind.
            _definitions[name] = null;
            _definitions[name] = Record(model, isChange, kind);
        }

        return new JsonObject { ["$ref"] = $"#/$defs/{name}" };
    }

    private JsonObject Record(RecordModel model, bool isChange, KindAttribute? kind)
    {
        var properties = new JsonObject();
        var required = new JsonArray();
        if (kind is not null)
        {
            properties[Extends.KindKey] = new JsonObject { ["const"] = kind.Name, ["description"] = kind.About };
            required.Add(Extends.KindKey);
        }

        foreach (InputModel input in model.Inputs)
        {
            JsonObject value = Value(input.Shape, input, isChange);
            if (isChange)
            {
                value = new JsonObject { ["anyOf"] = new JsonArray(value, new JsonObject { ["type"] = "null" }) };
            }

            value["description"] = Description(input);
            properties[input.Input.Key] = value;
            if (input.IsRequired)
            {
                required.Add(input.Input.Key);
            }
        }

        var record = new JsonObject { ["type"] = "object", ["properties"] = properties, ["additionalProperties"] = false };
        if (kind is not null)
        {
            record["description"] = kind.About;
        }

        if (!isChange && required.Count > 0)
        {
            record["required"] = required;
        }

        return record;
    }

    private JsonObject Value(ValueShape shape, InputModel input, bool isChange)
    {
        switch (shape)
        {
            case RecordShape record:
                return Reference(record.Model, isChange);
            case KindShape kinds:
                var kindsHere = new JsonArray();
                foreach ((KindAttribute kind, RecordModel model) in kinds.Kinds)
                {
                    kindsHere.Add(Reference(model, isChange, kind));
                }

                return new JsonObject { [isChange ? "anyOf" : "oneOf"] = kindsHere };
            case MapShape map:
                JsonObject part = Value(map.Item, input, isChange);
                var parts = new JsonObject
                {
                    ["type"] = "object",
                    ["additionalProperties"] = isChange
                        ? new JsonObject { ["anyOf"] = new JsonArray(part, new JsonObject { ["type"] = "null" }) } : part,
                };
                if (input.NamesAreKeys && input.Input.LibraryFolder is string folder && _libraryNames(folder) is { Count: > 0 } keys)
                {
                    parts["propertyNames"] = new JsonObject { ["enum"] = Texts(keys) };
                }

                return parts;
            case ListShape list:
                var items = new JsonObject { ["type"] = "array", ["items"] = Value(list.Item, input, isChange: false) };
                if (input.Input.Length > 0)
                {
                    items["minItems"] = input.Input.Length;
                    items["maxItems"] = input.Input.Length;
                }

                return items;
            default:
                return Single(shape, input);
        }
    }

    private JsonObject Single(ValueShape shape, InputModel input) => shape switch
    {
        QuantityShape quantity => Quantity(quantity, input.Input),
        FlagShape => new JsonObject { ["type"] = "boolean" },
        DateShape => new JsonObject { ["type"] = "string", ["pattern"] = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$" },
        TimeShape => new JsonObject { ["type"] = "string", ["pattern"] = "^[0-9]{1,2}:[0-9]{2}$" },
        WordShape words => new JsonObject { ["enum"] = Texts(words.Words.Select(w => w.Word)) },
        _ => input.Input.LibraryFolder is string folder && _libraryNames(folder) is { Count: > 0 } names
            ? new JsonObject { ["enum"] = Texts(names) }
            : new JsonObject { ["type"] = "string" },
    };

    private static JsonObject Quantity(QuantityShape shape, InputAttribute input)
    {
        var text = new JsonObject { ["type"] = "string", ["pattern"] = QuantityPattern.For(shape.Target) };
        if (!shape.Target.IsPureNumber)
        {
            return text;
        }

        var number = new JsonObject { ["type"] = shape.IsWhole ? "integer" : "number" };
        if (double.IsFinite(input.Low))
        {
            number["minimum"] = input.Low;
        }

        if (double.IsFinite(input.High))
        {
            number["maximum"] = input.High;
        }

        return shape.IsWhole && shape.Target.Noun.Length == 0 ? number : new JsonObject { ["anyOf"] = new JsonArray(number, text) };
    }

    private static string Description(InputModel input)
    {
        string text = input.Input.About.TrimEnd('.') + ".";
        QuantityShape? quantity = Explanation.QuantityIn(input.Shape);
        if (quantity is not null && (double.IsFinite(input.Input.Low) || double.IsFinite(input.Input.High)))
        {
            text += $" Range: {ValueReader.Range(input.Input)}.";
        }
        else if (quantity is not null && !quantity.Target.IsPureNumber)
        {
            text += $" Unit: {quantity.Target.Spelling} or another of the same dimension.";
        }

        if (input.Input.Of is string of)
        {
            text += $" A name under {of.Replace(",", " or ", StringComparison.Ordinal)}.";
        }

        string initial = Explanation.Shown(input.InitialValue, input.Shape);
        return input.IsRequired || initial.Length == 0 ? text : $"{text} Default: {initial}.";
    }

    private static JsonArray Texts(IEnumerable<string> texts) => [.. texts.Select(t => JsonValue.Create(t))];
}
