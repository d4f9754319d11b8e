using System.Reflection;
using FarmTwin.Scenarios.Json;

namespace FarmTwin.Scenarios.Binding;

/// <summary>Turns a tree into the description record that its <c>Input</c> attributes declare, collecting every error.</summary>
internal sealed class Binder
{
    private readonly ErrorList _errors;
    private readonly NameCheck _names;
    private readonly ValueReader _values;

    private Binder(TreeObject root, RecordModel rootModel, Func<string, IReadOnlyList<string>> libraryNames, List<ScenarioError> errors)
    {
        _errors = new ErrorList(errors);
        _names = new NameCheck(root, rootModel, libraryNames, _errors);
        _values = new ValueReader(_errors);
    }

    /// <summary>Binds a whole scenario.</summary>
    /// <param name="type">The root record.</param>
    /// <param name="root">The merged tree.</param>
    /// <param name="libraryNames">The names in a folder of the parameter library.</param>
    /// <param name="errors">Receives every error; where it stays empty, the record is complete.</param>
    /// <param name="currency">The currency of the prices, or null.</param>
    public static object Bind(Type type, TreeObject root, Func<string, IReadOnlyList<string>> libraryNames,
        List<ScenarioError> errors, out string? currency)
    {
        RecordModel model = RecordModel.Of(type);
        var binder = new Binder(root, model, libraryNames, errors);
        object value = binder.BindRecord(root, model, hasKind: false);
        currency = binder._values.Currency;
        return value;
    }

    private object BindRecord(TreeObject node, RecordModel model, bool hasKind)
    {
        object instance = model.Create();
        var suggested = new HashSet<string>(StringComparer.Ordinal);
        List<string> free = [.. model.Inputs.Select(i => i.Input.Key).Where(k => !node.TryGet(k, out _))];
        foreach (TreeMember member in node.Members.Where(m => !(hasKind && m.Key == Extends.KindKey)))
        {
            InputModel? input = model.Inputs.FirstOrDefault(i => i.Input.Key == member.Key);
            if (input is null)
            {
                RefuseKey(member, model, free, suggested);
            }
            else if (IsStated(member) && BindValue(member.Value, input.Shape, input) is object value)
            {
                Set(instance, input, value, member.Value);
            }
        }

        foreach (InputModel input in model.Inputs.Where(i => i.IsRequired && !node.TryGet(i.Input.Key, out _)))
        {
            // A key that is only misspelt is not missing as well.
            if (!suggested.Contains(input.Input.Key))
            {
                _errors.Add(node, $"\"{input.Input.Key}\" is missing", $"\"{input.Input.Key}\": {input.Input.About.TrimEnd('.')}");
            }
        }

        return instance;
    }

    private void RefuseKey(TreeMember member, RecordModel model, List<string> free, HashSet<string> suggested)
    {
        string[] keys = [.. model.Inputs.Select(i => i.Input.Key)];
        string? nearest = NearestName.Of(member.Key, free) ?? NearestName.Of(member.Key, keys);
        if (nearest is not null && free.Remove(nearest))
        {
            suggested.Add(nearest);
        }

        string expected = keys.Length == 0 ? "no key here" : "one of " + NameCheck.Listed([.. keys.Order(StringComparer.Ordinal)]);
        _errors.Add(member, $"\"{member.Key}\" is not a known key", expected, nearest);
    }

    private void Set(object instance, InputModel input, object value, TreeNode node)
    {
        try
        {
            input.Property.SetValue(instance, value);
        }
        catch (TargetInvocationException e) when (e.InnerException is ArgumentException refused)
        {
            // A record may refuse a value by itself; its words are the problem.
            _errors.Add(node, refused.Message.TrimEnd('.'));
        }
    }

    private object? BindValue(TreeNode node, ValueShape shape, InputModel input)
    {
        switch (shape)
        {
            case RecordShape record:
                return node is TreeObject part ? BindRecord(part, record.Model, hasKind: false) : Refuse(node, "an object { … }");
            case KindShape kinds:
                return node is TreeObject item ? BindKind(item, kinds) : Refuse(node, "an object { \"do\": … }");
            case MapShape map:
                return node is TreeObject parts ? BindMap(parts, map, input) : Refuse(node, "an object of named parts { … }");
            case ListShape list:
                return node is TreeList items ? BindList(items, list, input) : Refuse(node, "a list [ … ]");
            default:
                object? value = _values.Read(node, shape, input.Input);
                if (value is string name && shape is TextShape && (input.Input.Of ?? input.Input.LibraryFolder) is not null)
                {
                    _names.Check(name, node, input);
                }

                return value;
        }
    }

    /// <summary>Whether a member has a value: a null that is still there has been reported by the merge.</summary>
    private static bool IsStated(TreeMember member) => member.Value is not TreeNull;

    private object? Refuse(TreeNode node, string expected)
    {
        _errors.Add(node, $"{node.Sort} stands here", expected);
        return null;
    }

    private object? BindKind(TreeObject node, KindShape shape)
    {
        string[] words = [.. shape.Kinds.Select(k => k.Kind.Name)];
        if (!node.TryGet(Extends.KindKey, out TreeMember? member) || !IsStated(member))
        {
            _errors.Add(node, $"\"{Extends.KindKey}\" is missing", $"\"{Extends.KindKey}\" with one of {NameCheck.Listed(words)}");
            return null;
        }

        string? word = (member.Value as TreeText)?.Value;
        RecordModel? model = shape.Kinds.Where(k => k.Kind.Name == word).Select(k => k.Model).FirstOrDefault();
        if (model is null)
        {
            _errors.Add(member.Value, word is null ? $"{member.Value.Sort} stands here" : $"\"{word}\" is not a known kind",
                "one of " + NameCheck.Listed(words), word is null ? null : NearestName.Of(word, words));
            return null;
        }

        return BindRecord(node, model, hasKind: true);
    }

    private object BindMap(TreeObject node, MapShape shape, InputModel input)
    {
        var parts = (System.Collections.IDictionary)Activator.CreateInstance(
            typeof(OrderedDictionary<,>).MakeGenericType(typeof(string), shape.ItemType), StringComparer.Ordinal)!;
        foreach (TreeMember member in node.Members)
        {
            if (string.IsNullOrWhiteSpace(member.Key))
            {
                _errors.Add(member, "a part has an empty name", "a name");
            }

            if (input.NamesAreKeys && ReferenceEquals(shape, input.Shape))
            {
                _names.Check(member, input);
            }

            if (IsStated(member) && BindValue(member.Value, shape.Item, input) is object value)
            {
                parts[member.Key] = value;
            }
        }

        return parts;
    }

    private Array? BindList(TreeList node, ListShape shape, InputModel input)
    {
        if (input.Input.Length > 0 && node.Items.Count != input.Input.Length)
        {
            _errors.Add(node, $"the list has {node.Items.Count} entries", $"{input.Input.Length} entries");
            return null;
        }

        var items = Array.CreateInstance(shape.ItemType, node.Items.Count);
        for (int i = 0; i < node.Items.Count; i++)
        {
            if (BindValue(node.Items[i], shape.Item, input) is object value)
            {
                items.SetValue(value, i);
            }
        }

        return items;
    }
}
