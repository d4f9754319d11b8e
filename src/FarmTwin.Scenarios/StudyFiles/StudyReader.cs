using System.Globalization;
using System.Text.RegularExpressions;
using FarmTwin.Farm.Library;
using FarmTwin.Scenarios.Json;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Scenarios.StudyFiles;

/// <summary>Reads study files strictly: all errors at once, each with its place.</summary>
public static partial class StudyReader
{
    private const int MostReplicates = 100000;
    private const int MostPoints = 100000;
    private const int UsualReplicates = 20;
    private const int UsualPoints = 20;
    private static readonly string[] Keys = ["$schema", "title", "question", "about", "base", "replicates", "seed", "design", "points", "lookAt", "vary"];
    private static readonly string[] Designs = ["all", "latin-hypercube", "morris"];

    /// <summary>Reads a study.</summary>
    /// <param name="path">The file.</param>
    /// <param name="figures">Keys of the figures that <c>lookAt</c> may name.</param>
    /// <exception cref="ScenarioException">Something is wrong with the study or its base; carries everything that is.</exception>
    public static Study Read(string path, IReadOnlyList<string> figures)
    {
        var errors = new List<ScenarioError>();
        byte[] bytes;
        try
        {
            bytes = File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new ScenarioException([new ScenarioError(path, 0, 0, string.Empty, $"the file \"{path}\" cannot be read ({e.Message.TrimEnd('.')})")]);
        }

        if (TreeReader.Read(path, bytes, errors) is not TreeObject root)
        {
            throw new ScenarioException(errors.Count > 0 ? errors : [new ScenarioError(path, 1, 1, string.Empty, "a study is an object", "{ … }")]);
        }

        KnownKeys(root, Keys, errors);
        string? basis = Text(root, "base", null, errors);
        string basePath = Path.Combine(Path.GetDirectoryName(path) ?? string.Empty, basis ?? string.Empty);
        ResolvedScenario? resolved = basis is null ? null : Extends.Resolve(basePath, errors);
        var factors = new List<StudyFactor>();
        if (root.TryGet("vary", out TreeMember? vary) && vary.Value is TreeObject { Members.Count: > 0 } parts)
        {
            foreach (TreeMember member in parts.Members)
            {
                if (Factor(member, errors) is { } factor)
                {
                    factors.Add(factor);
                }
            }
        }
        else
        {
            errors.Add(At((TreeNode?)vary?.Value ?? root, "nothing is varied", "\"vary\": { \"name\": { \"options\" | \"input\" | \"parameter\" … } }"));
        }

        string design = Text(root, "design", "all", errors) ?? "all";
        if (!Designs.Contains(design))
        {
            errors.Add(At(root.TryGet("design", out TreeMember? d) ? d.Value : root, $"there is no design \"{design}\"", string.Join(", ", Designs), NearestName.Of(design, Designs)));
        }

        string[] lookAt = LookAt(root, figures, errors);
        int replicates = Whole(root, "replicates", UsualReplicates, 1, MostReplicates, errors);
        int seed = Whole(root, "seed", 1, 0, int.MaxValue, errors);
        int points = Whole(root, "points", UsualPoints, 1, MostPoints, errors);
        if (errors.Count > 0 || resolved is null)
        {
            throw new ScenarioException(errors);
        }

        var study = new Study(resolved, factors)
        {
            Title = Text(root, "title", Path.GetFileNameWithoutExtension(path), errors)!,
            Question = Text(root, "question", string.Empty, errors)!,
            Base = basePath,
            Replicates = replicates,
            Seed = seed,
            Design = (StudyDesign)Array.IndexOf(Designs, design),
            Points = points,
            LookAt = lookAt,
        };
        CheckEachLevel(study);
        return study;
    }

    // Every level of every factor must make a farm, all others being at their first.
    private static void CheckEachLevel(Study study)
    {
        var errors = new List<ScenarioError>();
        for (int f = 0; f < study.Factors.Count; f++)
        {
            for (int level = 0; level < study.Factors[f].Labels.Count; level++)
            {
                try
                {
                    study.FarmOf([.. study.Factors.Select((_, i) => i == f ? level : 0)]);
                }
                catch (ScenarioException e)
                {
                    errors.AddRange(e.Errors.Where(x => !errors.Contains(x)));
                }
            }
        }

        if (errors.Count > 0)
        {
            throw new ScenarioException(errors);
        }
    }

    private static StudyFactor? Factor(TreeMember member, List<ScenarioError> errors)
    {
        if (member.Value is not TreeObject parts)
        {
            errors.Add(At(member.Value, $"\"{member.Key}\" is {member.Value.Sort}", "an object { \"options\" | \"input\" | \"parameter\" … }"));
            return null;
        }

        if (parts.TryGet("options", out TreeMember? options))
        {
            KnownKeys(parts, ["options"], errors);
            return Options(member.Key, options.Value, errors);
        }

        KnownKeys(parts, ["input", "parameter", "values", "from", "to", "steps"], errors);
        if (parts.TryGet("parameter", out TreeMember? parameter))
        {
            return OfParameter(member.Key, parts, parameter.Value, errors);
        }

        string[] inputs = Inputs(parts, errors);
        if (inputs.Length == 0)
        {
            return null;
        }

        if (parts.TryGet("values", out TreeMember? values))
        {
            if (values.Value is not TreeList { Items.Count: > 0 } list)
            {
                errors.Add(At(values.Value, $"\"values\" is {values.Value.Sort}", "a list of values"));
                return null;
            }

            return new StudyFactor(member.Key, [.. list.Items.Select(Label)], [.. list.Items.Select(v => Change(parts, inputs, v))]);
        }

        return Range(member.Key, parts, inputs, errors);
    }

    private static StudyFactor? Options(string name, TreeNode options, List<ScenarioError> errors)
    {
        if (options is not TreeObject { Members.Count: > 0 } named || named.Members.Any(m => m.Value is not TreeObject))
        {
            errors.Add(At(options, "\"options\" are not named changes", "{ \"name\": { what it changes in the base scenario }, … }"));
            return null;
        }

        return new StudyFactor(name, [.. named.Members.Select(m => m.Key)], [.. named.Members.Select(m => Rebased((TreeObject)m.Value))]);
    }

    private static StudyFactor? OfParameter(string name, TreeObject parts, TreeNode stated, List<ScenarioError> errors)
    {
        string path = (stated as TreeText)?.Value ?? string.Empty;
        string[] names = path.Split('/');
        Parameter? parameter = names.Length == 3 && ShippedLibrary.Library.Names(names[0]).Contains(names[1])
            ? ShippedLibrary.Library.Set(names[0], names[1]).All.FirstOrDefault(p => p.Name == names[2]) : null;
        if (parameter is null)
        {
            errors.Add(At(stated, $"there is no parameter \"{path}\"", "folder/set/parameter, such as processes/plants/siteFactor", NearestName.Of(path, AllParameters())));
            return null;
        }

        double low = Number(parts, "from", parameter.Low, errors);
        double high = Number(parts, "to", parameter.High, errors);
        int steps = Whole(parts, "steps", 2, 2, 100, errors);
        return new StudyFactor(name, low, high, parameter.Unit == "1" ? string.Empty : parameter.Unit, steps, value => new TreeObject(parts.Place, string.Empty,
            [Member("parameters", parts, new TreeObject(parts.Place, "parameters", [Member(path, parts, Bare(parts, value))]))]));
    }

    private static StudyFactor? Range(string name, TreeObject parts, string[] inputs, List<ScenarioError> errors)
    {
        (double Value, string Unit)? from = Quantity(parts, "from", errors);
        (double Value, string Unit)? to = Quantity(parts, "to", errors);
        int steps = Whole(parts, "steps", 2, 2, 100, errors);
        if (from is null || to is null)
        {
            return null;
        }

        if (from.Value.Unit != to.Value.Unit)
        {
            errors.Add(At(parts, $"\"from\" is in \"{from.Value.Unit}\" and \"to\" in \"{to.Value.Unit}\"", "one unit"));
            return null;
        }

        string unit = from.Value.Unit;
        bool whole = from.Value.Value == Math.Floor(from.Value.Value) && to.Value.Value == Math.Floor(to.Value.Value) && unit.Length == 0;
        return new StudyFactor(name, from.Value.Value, to.Value.Value, unit, steps, value =>
        {
            // A range between whole bare numbers counts things.
            double taken = whole ? Math.Round(value) : value;
            TreeNode node = unit.Length == 0 ? Bare(parts, taken) : new TreeText(parts.Place, parts.Path, string.Create(CultureInfo.InvariantCulture, $"{taken:R} {unit}"));
            return Change(parts, inputs, node);
        });
    }

    private static string[] Inputs(TreeObject parts, List<ScenarioError> errors)
    {
        if (parts.TryGet("input", out TreeMember? input))
        {
            string[] paths = input.Value switch
            {
                TreeText one => [one.Value],
                TreeList many when many.Items.All(i => i is TreeText) => [.. many.Items.Cast<TreeText>().Select(t => t.Value)],
                _ => [],
            };
            if (paths.Length > 0 && paths.All(p => p.Split('.').All(k => k.Length > 0)))
            {
                return paths;
            }
        }

        errors.Add(At(parts, "it says nothing that is varied", "\"options\", \"input\": \"stocking.first.number\" (or a list of such), or \"parameter\""));
        return [];
    }

    // One value at several inputs of the scenario.
    private static TreeObject Change(TreeObject at, string[] inputs, TreeNode value)
    {
        TreeObject change = new(at.Place, string.Empty, []);
        var errors = new List<ScenarioError>();
        foreach (string input in inputs)
        {
            TreeNode node = value;
            foreach (string key in input.Split('.').Reverse())
            {
                node = new TreeObject(at.Place, at.Path, [Member(key, at, node)]);
            }

            change = Extends.Merge(change, (TreeObject)node, errors);
        }

        return change;
    }

    // A change is read as from the root of a scenario, with its places in the study.
    private static TreeObject Rebased(TreeObject change) => new(change.Place, string.Empty, change.Members);

    private static TreeMember Member(string key, TreeNode at, TreeNode value) => new(key, at.Place, value);

    private static TreeNumber Bare(TreeNode at, double value) => new(at.Place, at.Path, value, value.ToString("R", CultureInfo.InvariantCulture));

    private static string Label(TreeNode value) => value switch
    {
        TreeText text => text.Value,
        TreeNumber number => number.Written,
        TreeFlag flag => flag.Value ? "yes" : "no",
        _ => TreeWriter.Write(value, indented: false),
    };

    private static (double Value, string Unit)? Quantity(TreeObject parts, string key, List<ScenarioError> errors)
    {
        if (!parts.TryGet(key, out TreeMember? member))
        {
            errors.Add(At(parts, $"\"{key}\" is missing", "\"values\": [ … ], or \"from\" and \"to\""));
            return null;
        }

        switch (member.Value)
        {
            case TreeNumber number:
                return (number.Value, string.Empty);
            case TreeText text when NumberAndUnit().Match(text.Value) is { Success: true } match:
                return (double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture), match.Groups[2].Value.Trim());
            default:
                errors.Add(At(member.Value, $"\"{key}\" is no number", "a number, with its unit where the scenario has one: \"27 °C\""));
                return null;
        }
    }

    private static string[] LookAt(TreeObject root, IReadOnlyList<string> figures, List<ScenarioError> errors)
    {
        if (!root.TryGet("lookAt", out TreeMember? member))
        {
            return [];
        }

        if (member.Value is not TreeList list)
        {
            errors.Add(At(member.Value, $"\"lookAt\" is {member.Value.Sort}", "a list of figures"));
            return [];
        }

        foreach (TreeNode item in list.Items.Where(i => i is not TreeText text || !figures.Contains(text.Value)))
        {
            string name = Label(item);
            errors.Add(At(item, $"there is no figure \"{name}\"", string.Join(", ", figures), NearestName.Of(name, figures)));
        }

        return [.. list.Items.OfType<TreeText>().Select(t => t.Value)];
    }

    private static void KnownKeys(TreeObject parts, string[] known, List<ScenarioError> errors)
    {
        foreach (TreeMember member in parts.Members.Where(m => !known.Contains(m.Key)))
        {
            errors.Add(new ScenarioError(member.KeyPlace.File, member.KeyPlace.Line, member.KeyPlace.Column, member.Value.Path,
                $"there is no \"{member.Key}\" here", string.Join(", ", known), NearestName.Of(member.Key, known)));
        }
    }

    private static string? Text(TreeObject parts, string key, string? otherwise, List<ScenarioError> errors)
    {
        if (!parts.TryGet(key, out TreeMember? member))
        {
            if (otherwise is null)
            {
                errors.Add(At(parts, $"\"{key}\" is missing", "a text"));
            }

            return otherwise;
        }

        if (member.Value is TreeText text)
        {
            return text.Value;
        }

        errors.Add(At(member.Value, $"\"{key}\" is {member.Value.Sort}", "a text"));
        return otherwise;
    }

    private static double Number(TreeObject parts, string key, double otherwise, List<ScenarioError> errors)
    {
        if (!parts.TryGet(key, out TreeMember? member))
        {
            return otherwise;
        }

        if (member.Value is TreeNumber number)
        {
            return number.Value;
        }

        errors.Add(At(member.Value, $"\"{key}\" is {member.Value.Sort}", "a bare number in the parameter's published unit"));
        return otherwise;
    }

    private static int Whole(TreeObject parts, string key, int otherwise, int low, int high, List<ScenarioError> errors)
    {
        if (!parts.TryGet(key, out TreeMember? member))
        {
            return otherwise;
        }

        if (member.Value is TreeNumber number && number.Value == Math.Floor(number.Value) && number.Value >= low && number.Value <= high)
        {
            return (int)number.Value;
        }

        errors.Add(At(member.Value, $"\"{key}\" is {(member.Value is TreeNumber n ? n.Written : member.Value.Sort)}", $"a whole number from {low} to {high}"));
        return otherwise;
    }

    private static IEnumerable<string> AllParameters() => ShippedLibrary.Library.All.SelectMany(s => s.Set.All.Select(p => $"{s.Folder}/{s.Set.Name}/{p.Name}"));

    private static ScenarioError At(TreeNode node, string problem, string? expected = null, string? nearest = null) =>
        new(node.Place.File, node.Place.Line, node.Place.Column, node.Path, problem, expected, nearest);

    [GeneratedRegex("^\\s*([-+]?[0-9]+(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]+)?)\\s+(\\S.*)$")]
    private static partial Regex NumberAndUnit();
}
