using FarmTwin.Scenarios.Json;

namespace FarmTwin.Scenarios.Binding;

/// <summary>Collects errors at the places of tree nodes.</summary>
internal sealed class ErrorList
{
    private readonly List<ScenarioError> _errors;

    public ErrorList(List<ScenarioError> errors) => _errors = errors;

    /// <summary>Adds an error at a value.</summary>
    public void Add(TreeNode node, string problem, string? expected = null, string? suggestion = null) =>
        _errors.Add(new ScenarioError(node.Place.File, node.Place.Line, node.Place.Column, node.Path, problem, expected, suggestion));

    /// <summary>Adds an error at a key.</summary>
    public void Add(TreeMember member, string problem, string? expected = null, string? suggestion = null) =>
        _errors.Add(new ScenarioError(member.KeyPlace.File, member.KeyPlace.Line, member.KeyPlace.Column, member.Value.Path,
            problem, expected, suggestion));
}
