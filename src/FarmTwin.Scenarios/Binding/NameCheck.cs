using System.Reflection;
using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Json;

namespace FarmTwin.Scenarios.Binding;

/// <summary>Checks names: of another part of the scenario, or of an entry of the parameter library.</summary>
internal sealed class NameCheck(TreeObject root, RecordModel rootModel, Func<string, IReadOnlyList<string>> libraryNames, ErrorList errors)
{
    private readonly Dictionary<string, IReadOnlyList<string>> _library = new(StringComparer.Ordinal);
    private readonly Dictionary<string, IReadOnlyList<string>> _parts = new(StringComparer.Ordinal);

    /// <summary>Checks a name that a property holds.</summary>
    public void Check(string name, TreeNode node, InputModel input) =>
        Check(name, input, (problem, expected, nearest) => errors.Add(node, problem, expected, nearest));

    /// <summary>Checks a name that stands as a key.</summary>
    public void Check(TreeMember member, InputModel input) =>
        Check(member.Key, input, (problem, expected, nearest) => errors.Add(member, problem, expected, nearest));

    private void Check(string name, InputModel input, Action<string, string, string?> report)
    {
        if (input.Input.Of is string of)
        {
            IReadOnlyList<string> parts = Parts(of, input.Property);
            if (!parts.Contains(name, StringComparer.Ordinal))
            {
                string where = of.Replace(",", " or ", StringComparison.Ordinal);
                report($"there is no \"{name}\" under {where}",
                    parts.Count == 0 ? $"a name under {where}, where nothing stands" : "one of " + Listed(parts), NearestName.Of(name, parts));
            }
        }

        if (input.Input.LibraryFolder is string folder)
        {
            IReadOnlyList<string> names = Library(folder);
            if (!names.Contains(name, StringComparer.Ordinal))
            {
                report($"the library has no \"{name}\" under {folder}", names.Count == 0 ? "nothing: the library is empty there"
                    : "one of " + Listed(names), NearestName.Of(name, names));
            }
        }
    }

    /// <summary>Names for a message.</summary>
    public static string Listed(IReadOnlyList<string> names)
    {
        const int Most = 40;
        return string.Join(", ", names.Take(Most)) + (names.Count > Most ? $" and {names.Count - Most} more" : string.Empty);
    }

    private IReadOnlyList<string> Library(string folder)
    {
        if (!_library.TryGetValue(folder, out IReadOnlyList<string>? names))
        {
            _library[folder] = names = libraryNames(folder);
        }

        return names;
    }

    private IReadOnlyList<string> Parts(string of, PropertyInfo property)
    {
        if (!_parts.TryGetValue(of, out IReadOnlyList<string>? names))
        {
            _parts[of] = names = [.. of.Split(',', StringSplitOptions.TrimEntries).SelectMany(c => Keys(c, property))];
        }

        return names;
    }

    /// <summary>The keys of a collection, read from the tree: a part counts as present even where it has errors of its own.</summary>
    private IEnumerable<string> Keys(string collection, PropertyInfo property)
    {
        TreeNode node = root;
        RecordModel? model = rootModel;
        foreach (string key in collection.Split('.'))
        {
            InputModel? next = model?.Inputs.FirstOrDefault(i => i.Input.Key == key);
            if (next is null)
            {
                throw new InvalidOperationException(
                    $"{property.DeclaringType!.Name}.{property.Name} names a part of \"{collection}\", which the scenario does not have.");
            }

            model = (next.Shape as RecordShape)?.Model;
            if (node is not TreeObject parts || !parts.TryGet(key, out TreeMember? member))
            {
                return [];
            }

            node = member.Value;
        }

        return node is TreeObject collected ? collected.Members.Select(m => m.Key) : [];
    }
}
