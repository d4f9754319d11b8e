using FarmTwin.Scenarios.Binding;
using FarmTwin.Scenarios.Units;

namespace FarmTwin.Scenarios.Schema;

/// <summary>Lists every input of a description with its meaning, unit, range and default.</summary>
public static class Explanation
{
    /// <summary>Every input, in declared order.</summary>
    /// <param name="root">The root record.</param>
    /// <exception cref="InvalidOperationException">The description is declared wrongly (a fault of the program).</exception>
    public static IReadOnlyList<ExplainedInput> Of(Type root)
    {
        var rows = new List<ExplainedInput>();
        AddInputs(RecordModel.Of(root), string.Empty, [], rows);
        return rows;
    }

    /// <summary>What a value with its initial setting looks like in a file; empty where it has none to show.</summary>
    internal static string Shown(object? value, ValueShape shape) => (value, shape) switch
    {
        (double number, QuantityShape quantity) => Quantity(ValueReader.Number(number), quantity),
        (int number, QuantityShape quantity) => Quantity(ValueReader.Number(number), quantity),
        (bool flag, _) => flag ? "true" : "false",
        (DateOnly date, _) => date.ToString("yyyy-MM-dd"),
        (TimeOnly time, _) => time.ToString("HH:mm"),
        (string { Length: > 0 } text, _) => text,
        (not null, WordShape words) => words.Words.Where(w => w.Value.Equals(value)).Select(w => w.Word).FirstOrDefault() ?? string.Empty,
        (IReadOnlyList<double> { Count: > 0 } list, ListShape { Item: QuantityShape item }) =>
            string.Join(", ", list.Select(n => Quantity(ValueReader.Number(n), item))),
        (IReadOnlyList<string> { Count: > 0 } list, _) => string.Join(", ", list),
        _ => string.Empty,
    };

    /// <summary>How a value is written, in words.</summary>
    internal static string Sort(ValueShape shape) => shape switch
    {
        QuantityShape { IsWhole: true, Target.IsPureNumber: true } => "a whole number",
        QuantityShape quantity => DimensionNames.NameOf(quantity.Target) ?? "a quantity",
        FlagShape => "true or false",
        TextShape => "a text",
        DateShape => "a date",
        TimeShape => "a time of day",
        WordShape words => "one of " + string.Join(", ", words.Words.Select(w => w.Word)),
        RecordShape => "an object",
        KindShape => "an object with a \"do\"",
        MapShape map => "named parts, each " + Sort(map.Item),
        ListShape list => "a list, each " + Sort(list.Item),
        _ => throw new InvalidOperationException($"No words for {shape}."),
    };

    /// <summary>The quantity in a shape or in the parts of it, or null.</summary>
    internal static QuantityShape? QuantityIn(ValueShape shape) => shape switch
    {
        QuantityShape quantity => quantity,
        MapShape map => QuantityIn(map.Item),
        ListShape list => QuantityIn(list.Item),
        _ => null,
    };

    private static void AddInputs(RecordModel model, string path, List<RecordModel> around, List<ExplainedInput> rows)
    {
        // A record that holds its own kind is explained once.
        if (around.Contains(model))
        {
            return;
        }

        List<RecordModel> inside = [.. around, model];
        foreach (InputModel input in model.Inputs)
        {
            string inputPath = path.Length == 0 ? input.Input.Key : $"{path}.{input.Input.Key}";
            QuantityShape? quantity = QuantityIn(input.Shape);
            bool bounded = double.IsFinite(input.Input.Low) || double.IsFinite(input.Input.High);
            rows.Add(new ExplainedInput(inputPath, input.Input.About, Sort(input.Shape), quantity?.Target.Spelling ?? string.Empty,
                quantity is not null && bounded ? ValueReader.Range(input.Input) : string.Empty,
                input.IsRequired ? string.Empty : Shown(input.InitialValue, input.Shape), input.IsRequired, input.Input.LibraryFolder ?? string.Empty));
            AddBelow(input.Shape, inputPath, inside, rows);
        }
    }

    private static void AddBelow(ValueShape shape, string path, List<RecordModel> around, List<ExplainedInput> rows)
    {
        switch (shape)
        {
            case RecordShape record:
                AddInputs(record.Model, path, around, rows);
                break;
            case KindShape kinds:
                foreach ((Farm.Description.KindAttribute kind, RecordModel model) in kinds.Kinds)
                {
                    rows.Add(new ExplainedInput($"{path}({kind.Name})", kind.About, "an object", string.Empty, string.Empty, string.Empty, false));
                    AddInputs(model, $"{path}({kind.Name})", around, rows);
                }

                break;
            case MapShape map:
                AddBelow(map.Item, path + ".*", around, rows);
                break;
            case ListShape list:
                AddBelow(list.Item, path + "[]", around, rows);
                break;
            default:
                break;
        }
    }

    private static string Quantity(string number, QuantityShape shape)
    {
        string unit = shape.Target.Spelling;
        return shape.Target.IsPureNumber && shape.Target.Noun.Length == 0 ? number
            : unit.StartsWith('/') || unit is "°" or "%" ? number + unit : $"{number} {unit}";
    }
}
