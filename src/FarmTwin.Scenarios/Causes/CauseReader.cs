using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Binding;
using FarmTwin.Scenarios.Json;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Scenarios.Causes;

/// <summary>Reads a scenario that teaches: its card, and the farms with the cause, without it, and with the remedy.</summary>
public static class CauseReader
{
    private const string RemedyKey = "remedy";
    private const string ChangesKey = "changes";

    /// <summary>Reads it.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="ScenarioException">Something is wrong with the file, its parents, its card or its remedy; carries everything that is.</exception>
    public static CauseScenario Read(string path)
    {
        var errors = new List<ScenarioError>();
        ResolvedScenario with = Extends.Resolve(path, errors) ?? throw new ScenarioException(errors);
        if (with.Cause is null)
        {
            throw new ScenarioException([new ScenarioError(path, 0, 0, string.Empty, $"the file has no \"{Extends.CauseKey}\"", "a cause card")]);
        }

        if (with.Files.Count < 2)
        {
            throw new ScenarioException([with.ErrorAt(string.Empty, $"a cause is shown against the farm it {Extends.Key}; this file extends none")]);
        }

        TreeObject? changes = null;
        CauseCard card = BindCard(with.Cause, ref changes, errors);
        Scenario<FarmDescription> farm = ScenarioReader.Bind<FarmDescription>(with, errors);
        Scenario<FarmDescription> without = ScenarioReader.Read<FarmDescription>(with.Files[1]);
        Scenario<FarmDescription>? remedied = null;
        if (changes is not null)
        {
            var root = Extends.Merge(with.Root, changes, errors);
            remedied = ScenarioReader.Bind<FarmDescription>(new ResolvedScenario(root, with.Files), errors);
        }

        return errors.Count == 0 ? new CauseScenario(card, farm, without, remedied) : throw new ScenarioException(errors);
    }

    private static CauseCard BindCard(TreeObject tree, ref TreeObject? changes, List<ScenarioError> errors)
    {
        if (tree.TryGet(RemedyKey, out TreeMember? remedy) && remedy.Value is TreeObject parts && parts.TryGet(ChangesKey, out TreeMember? stated))
        {
            changes = stated.Value as TreeObject;
            if (changes is null)
            {
                errors.Add(At(stated.Value, $"{stated.Value.Sort} stands here", "an object of what the remedy changes in the scenario"));
            }

            var rest = new TreeObject(parts.Place, parts.Path, [.. parts.Members.Where(m => m.Key != ChangesKey)]);
            tree = new TreeObject(tree.Place, tree.Path, [.. tree.Members.Select(m => m.Key == RemedyKey ? m with { Value = rest } : m)]);
        }

        var card = (CauseCard)Binder.Bind(typeof(CauseCard), tree, ParameterLibrary.Names, errors, out _);
        if (errors.Count == 0)
        {
            Check(card, tree, changes, errors);
        }

        return card;
    }

    private static void Check(CauseCard card, TreeObject tree, TreeObject? changes, List<ScenarioError> errors)
    {
        if (!card.InReach && card.Limits.Length == 0)
        {
            errors.Add(At(tree, "a cause out of reach says why", "\"limits\""));
        }

        if (card.InReach && (card.Signs.Count == 0 || card.Remedy is null || changes is null))
        {
            errors.Add(At(tree, "a cause in reach has signs and a remedy with changes", "\"signs\" and \"remedy\": { \"about\", \"changes\" }"));
        }

        foreach ((string name, CauseSign sign) in card.Signs)
        {
            if (sign.Column is null == sign.Event is null)
            {
                errors.Add(At(tree, $"the sign \"{name}\" reads a column or counts an event", "one of \"column\" and \"event\""));
            }

            if (sign.Above is null == sign.Below is null)
            {
                errors.Add(At(tree, $"the sign \"{name}\" shows above or below a limit", "one of \"above\" and \"below\""));
            }

            if (sign.ToDay < sign.FromDay)
            {
                errors.Add(At(tree, $"the sign \"{name}\" ends before it begins", "\"to\" not before \"from\""));
            }
        }
    }

    private static ScenarioError At(TreeNode node, string problem, string expected) =>
        new(node.Place.File, node.Place.Line, node.Place.Column, node.Path, problem, expected);
}
