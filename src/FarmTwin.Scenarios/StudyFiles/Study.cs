using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Json;

namespace FarmTwin.Scenarios.StudyFiles;

/// <summary>A study file that was read without an error: a base scenario and what is varied.</summary>
public sealed class Study
{
    private readonly ResolvedScenario _basis;

    internal Study(ResolvedScenario basis, IReadOnlyList<StudyFactor> factors)
    {
        _basis = basis;
        Factors = factors;
    }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>The question that it answers; may be empty.</summary>
    public required string Question { get; init; }

    /// <summary>The base scenario's file.</summary>
    public required string Base { get; init; }

    /// <summary>Replicates of each point.</summary>
    public required int Replicates { get; init; }

    /// <summary>Seed of all chance.</summary>
    public required int Seed { get; init; }

    /// <summary>Which combinations are played.</summary>
    public required StudyDesign Design { get; init; }

    /// <summary>Points of a Latin hypercube, trajectories of a screening.</summary>
    public required int Points { get; init; }

    /// <summary>Keys of the headline figures that count; empty for the usual ones.</summary>
    public required IReadOnlyList<string> LookAt { get; init; }

    /// <summary>What is varied.</summary>
    public IReadOnlyList<StudyFactor> Factors { get; }

    /// <summary>The farm of a point given by a level for each factor.</summary>
    /// <exception cref="ScenarioException">The combination makes no scenario; the places are those of the study file and the base.</exception>
    public Scenario<FarmDescription> FarmOf(IReadOnlyList<int> levels) => Bind(Factors.Select((f, i) => f.ChangeOf(levels[i])));

    /// <summary>The farm of a point given by a share of the way for each factor.</summary>
    /// <inheritdoc cref="FarmOf"/>
    public Scenario<FarmDescription> FarmAt(IReadOnlyList<double> shares) => Bind(Factors.Select((f, i) => f.ChangeAt(shares[i])));

    private Scenario<FarmDescription> Bind(IEnumerable<TreeObject> changes)
    {
        var errors = new List<ScenarioError>();
        TreeObject root = _basis.Root;
        foreach (TreeObject change in changes)
        {
            root = Extends.Merge(root, change, errors);
        }

        return ScenarioReader.Bind<FarmDescription>(new ResolvedScenario(root, _basis.Files), errors);
    }
}
