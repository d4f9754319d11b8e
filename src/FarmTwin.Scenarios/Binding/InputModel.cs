using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;
using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Units;

namespace FarmTwin.Scenarios.Binding;

/// <summary>A property that a scenario file may state.</summary>
internal sealed class InputModel
{
    public InputModel(PropertyInfo property, InputAttribute input, bool isRequired, object? initialValue)
    {
        Property = property;
        Input = input;
        IsRequired = isRequired;
        InitialValue = initialValue;
        Shape = ShapeOf(property.PropertyType);
        if (property.SetMethod is null)
        {
            throw new InvalidOperationException($"{property.DeclaringType!.Name}.{property.Name} is an input but cannot be set.");
        }
    }

    /// <summary>The property.</summary>
    public PropertyInfo Property { get; }

    /// <summary>What it declares.</summary>
    public InputAttribute Input { get; }

    /// <summary>Whether it must be given.</summary>
    public bool IsRequired { get; }

    /// <summary>What it holds when left out.</summary>
    public object? InitialValue { get; }

    /// <summary>How it is written.</summary>
    public ValueShape Shape { get; }

    /// <summary>Whether <c>Of</c> and <c>LibraryFolder</c> speak of the keys: so in keyed values that are no texts themselves.</summary>
    public bool NamesAreKeys => Shape is MapShape { Item: not (TextShape or ListShape { Item: TextShape }) };

    /// <summary>The word in kebab case for a name in Pascal case ("NileTilapia": "nile-tilapia").</summary>
    public static string Kebab(string name)
    {
        var word = new StringBuilder();
        for (int i = 0; i < name.Length; i++)
        {
            bool starts = char.IsUpper(name[i]) && i > 0
                && (!char.IsUpper(name[i - 1]) || (i + 1 < name.Length && char.IsLower(name[i + 1])));
            word.Append(starts ? "-" : string.Empty).Append(char.ToLowerInvariant(name[i]));
        }

        return word.ToString();
    }

    private ValueShape ShapeOf(Type type)
    {
        type = Nullable.GetUnderlyingType(type) ?? type;
        if (type == typeof(double) || type == typeof(int))
        {
            return new QuantityShape(Target(), type == typeof(int));
        }

        if (type.IsEnum)
        {
            return new WordShape([.. Enum.GetNames(type).Select(n => (Kebab(n), Enum.Parse(type, n)))]);
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyDictionary<,>)
            && type.GetGenericArguments() is [Type keyType, Type partType] && keyType == typeof(string))
        {
            return new MapShape(ShapeOf(partType), partType);
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>))
        {
            return new ListShape(ShapeOf(type.GetGenericArguments()[0]), type.GetGenericArguments()[0]);
        }

        return type switch
        {
            _ when type == typeof(bool) => new FlagShape(),
            _ when type == typeof(string) => new TextShape(),
            _ when type == typeof(DateOnly) => new DateShape(),
            _ when type == typeof(TimeOnly) => new TimeShape(),
            { IsClass: true, IsAbstract: true } => KindsOf(type),
            { IsClass: true, IsGenericType: false, IsArray: false } => new RecordShape(RecordModel.Of(type)),
            _ => throw new InvalidOperationException(
                $"{Property.DeclaringType!.Name}.{Property.Name} has the type {type.Name}, which no scenario file can state."),
        };
    }

    private MeasureUnit Target()
    {
        try
        {
            return QuantityText.Target(Input.Unit ?? "1");
        }
        catch (ArgumentException e)
        {
            throw new InvalidOperationException($"{Property.DeclaringType!.Name}.{Property.Name}: {e.Message}", e);
        }
    }

    private static KindShape KindsOf(Type type)
    {
        var kinds = type.Assembly.GetTypes().Where(t => t.IsSubclassOf(type) && !t.IsAbstract)
            .Select(t => (Kind: t.GetCustomAttribute<KindAttribute>(inherit: false), Type: t))
            .Where(k => k.Kind is not null).Select(k => (k.Kind!, RecordModel.Of(k.Type)))
            .OrderBy(k => k.Item1.Name, StringComparer.Ordinal).ToList();
        string? twice = kinds.GroupBy(k => k.Item1.Name).Where(g => g.Count() > 1).Select(g => g.Key).FirstOrDefault();
        return twice is null && kinds.Count > 0
            ? new KindShape(type.Name, kinds)
            : throw new InvalidOperationException(twice is null
                ? $"{type.Name} is abstract and has no kinds." : $"Two kinds of {type.Name} are called \"{twice}\".");
    }

    /// <summary>Whether the compiler demands the property.</summary>
    public static bool IsMarkedRequired(PropertyInfo property) => property.IsDefined(typeof(RequiredMemberAttribute), inherit: true);
}
