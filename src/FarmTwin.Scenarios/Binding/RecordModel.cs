using System.Collections.Concurrent;
using System.Reflection;
using System.Runtime.CompilerServices;
using FarmTwin.Farm.Description;

namespace FarmTwin.Scenarios.Binding;

/// <summary>A description record: its inputs, and how an instance with its initial values is made.</summary>
/// <remarks>Models are made once a type and kept. A fault in a declaration throws <see cref="InvalidOperationException"/>.</remarks>
internal sealed class RecordModel
{
    private static readonly ConcurrentDictionary<Type, RecordModel> Models = new();

    private readonly ConstructorInfo? _constructor;
    private readonly ConstructorInfo? _positional;
    private readonly Lazy<IReadOnlyList<InputModel>> _inputs;

    private RecordModel(Type type)
    {
        Type = type;
        const BindingFlags Instance = BindingFlags.Instance | BindingFlags.Public;
        _constructor = type.GetConstructor(Instance, []);
        _positional = _constructor is null
            ? type.GetConstructors(Instance).OrderByDescending(c => c.GetParameters().Length).FirstOrDefault()
            : null;

        // Inputs of a record that holds records of its own type would never end if they were made at once.
        _inputs = new Lazy<IReadOnlyList<InputModel>>(ReadInputs);
    }

    /// <summary>The type.</summary>
    public Type Type { get; }

    /// <summary>The inputs: those of base records first, each in declared order.</summary>
    public IReadOnlyList<InputModel> Inputs => _inputs.Value;

    /// <summary>The model of a type.</summary>
    public static RecordModel Of(Type type) => Models.GetOrAdd(type, static t => new RecordModel(t));

    /// <summary>A new instance with initial values; required properties are not set yet.</summary>
    public object Create()
    {
        if (_constructor is not null)
        {
            return _constructor.Invoke(null);
        }

        object instance = RuntimeHelpers.GetUninitializedObject(Type);
        foreach (ParameterInfo parameter in _positional?.GetParameters() ?? [])
        {
            if (parameter.HasDefaultValue)
            {
                Type.GetProperty(parameter.Name!)?.SetValue(instance, parameter.DefaultValue);
            }
        }

        return instance;
    }

    private List<InputModel> ReadInputs()
    {
        object initial = Create();
        var needed = (_positional?.GetParameters() ?? []).Where(p => !p.HasDefaultValue).Select(p => p.Name).ToHashSet();
        var found = new List<InputModel>();
        foreach (PropertyInfo property in Type.GetProperties(BindingFlags.Instance | BindingFlags.Public)
            .OrderBy(p => Depth(p.DeclaringType!)).ThenBy(p => p.MetadataToken))
        {
            if (property.GetCustomAttribute<InputAttribute>() is InputAttribute input)
            {
                bool required = InputModel.IsMarkedRequired(property) || needed.Contains(property.Name);
                found.Add(new InputModel(property, input, required, property.GetValue(initial)));
            }
        }

        string? twice = found.GroupBy(i => i.Input.Key).Where(g => g.Count() > 1).Select(g => g.Key).FirstOrDefault();
        return twice is null ? found : throw new InvalidOperationException($"{Type.Name} declares the key \"{twice}\" twice.");
    }

    private static int Depth(Type type)
    {
        int depth = 0;
        for (Type? t = type; t is not null; t = t.BaseType)
        {
            depth++;
        }

        return depth;
    }
}
