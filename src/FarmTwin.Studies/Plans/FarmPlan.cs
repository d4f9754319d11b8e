using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios;
using FarmTwin.Studies.Unknowns;

namespace FarmTwin.Studies.Plans;

/// <summary>A plan that a study plays: a farm under a name, again and again with other weather and other unknowns.</summary>
/// <remarks>Immutable: several threads may play replicates of one plan at once.</remarks>
public sealed class FarmPlan
{
    private readonly FarmLibrary _library;

    /// <summary>Makes a plan.</summary>
    /// <param name="name">What tables and plots call it; unique in a study.</param>
    /// <param name="farm">The farm.</param>
    /// <param name="hash">SHA-256 of what describes it, in hexadecimal digits: a stored result is used again only under the same one.</param>
    /// <param name="library">The parameter library.</param>
    public FarmPlan(string name, FarmDescription farm, string hash, FarmLibrary library)
        : this(name, farm, hash, library, FarmUnknowns.Of(farm, library))
    {
    }

    private FarmPlan(string name, FarmDescription farm, string hash, FarmLibrary library, IReadOnlyList<Unknown> unknowns)
    {
        Name = name;
        Farm = farm;
        Hash = hash;
        _library = library;
        Unknowns = unknowns;
    }

    /// <summary>The name.</summary>
    public string Name { get; }

    /// <summary>The farm as its scenario states it.</summary>
    public FarmDescription Farm { get; }

    /// <summary>Hash of what describes it.</summary>
    public string Hash { get; }

    /// <summary>What nobody knows of it beforehand.</summary>
    public IReadOnlyList<Unknown> Unknowns { get; }

    /// <summary>The plan of a scenario.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="library">The parameter library.</param>
    /// <param name="name">What it is called; by its file when left out.</param>
    public static FarmPlan Of(Scenario<FarmDescription> scenario, FarmLibrary library, string? name = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        string weather = scenario.Value.Site.WeatherFile?.Year?.Sha256 is { } sha ? $"+{sha}" : string.Empty;
        return new FarmPlan(name ?? Path.GetFileNameWithoutExtension(scenario.Files[0]), scenario.Value, scenario.Hash + weather, library);
    }

    /// <summary>A copy in which the farm differs; <paramref name="mark"/> says how, in its name and hash.</summary>
    public FarmPlan With(string mark, FarmDescription farm) => new($"{Name} {mark}", farm, $"{Hash}/{mark}", _library);

    /// <summary>The same plan as if all but the weather were known: every unknown at its middle.</summary>
    public FarmPlan WithWeatherAlone() => new($"{Name} (weather alone)", Farm, $"{Hash}/weather alone", _library, []);

    /// <summary>The same plan over another length, days, from 1.</summary>
    public FarmPlan Over(double days) => new(Name, Farm with { LengthDays = days }, $"{Hash}/{days:0} days", _library);

    /// <summary>A season of a replicate, at its first midnight.</summary>
    /// <param name="seed">Seed of all chance: plans under one seed and replicate meet the same weather and the same unknowns.</param>
    /// <param name="replicate">Which repetition, from 1; 0 is a single run with the library's own values.</param>
    /// <exception cref="DescriptionException">The parts do not make a farm that can be computed; the plan is named.</exception>
    public Season Begin(ulong seed, uint replicate)
    {
        try
        {
            return new Season(FarmUnknowns.With(Farm, Unknowns, FarmUnknowns.Draw(Unknowns, seed, replicate)), _library, seed, replicate);
        }
        catch (DescriptionException e)
        {
            throw new DescriptionException($"{Name}: {e.Message}");
        }
    }

    /// <summary>A season of a replicate, played to its end.</summary>
    /// <inheritdoc cref="Begin"/>
    public Season Play(ulong seed, uint replicate)
    {
        Season season = Begin(seed, replicate);
        season.AdvanceToEnd();
        return season;
    }
}
