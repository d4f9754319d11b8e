using System.Globalization;
using FarmTwin.Scenarios.Json;

namespace FarmTwin.Scenarios.StudyFiles;

/// <summary>Something that a study varies: named options, or a range of a number.</summary>
public sealed class StudyFactor
{
    private readonly IReadOnlyList<TreeObject> _changes;
    private readonly Func<double, TreeObject>? _range;
    private readonly double _low;
    private readonly double _high;

    internal StudyFactor(string name, IReadOnlyList<string> labels, IReadOnlyList<TreeObject> changes)
    {
        Name = name;
        Labels = labels;
        _changes = changes;
    }

    internal StudyFactor(string name, double low, double high, string unit, int steps, Func<double, TreeObject> range)
    {
        Name = name;
        Unit = unit;
        _low = low;
        _high = high;
        _range = range;
        double[] shares = [.. Enumerable.Range(0, steps).Select(i => steps == 1 ? 0.5 : (double)i / (steps - 1))];
        Labels = [.. shares.Select(LabelAt)];
        _changes = [.. shares.Select(s => range(ValueAt(s)))];
    }

    /// <summary>Its name in tables.</summary>
    public string Name { get; }

    /// <summary>Unit of a range; empty for options.</summary>
    public string Unit { get; } = string.Empty;

    /// <summary>What its levels are called: the options, the values, or the steps of the range.</summary>
    public IReadOnlyList<string> Labels { get; }

    /// <summary>Whether it is a range, of which any value may be taken.</summary>
    public bool IsRange => _range is not null;

    /// <summary>The level that a share of the way stands for.</summary>
    /// <param name="share">In [0, 1].</param>
    public int LevelAt(double share) => Math.Min(Labels.Count - 1, (int)(share * Labels.Count));

    /// <summary>The value at a share of the range.</summary>
    public double ValueAt(double share) => IsRange ? _low + ((_high - _low) * share) : LevelAt(share);

    /// <summary>What a share of the way is called.</summary>
    public string LabelAt(double share) => IsRange
        ? ValueAt(share).ToString(Math.Abs(_high) >= 100 ? "0" : Math.Abs(_high) >= 10 ? "0.#" : "0.####", CultureInfo.InvariantCulture) + (Unit.Length > 0 ? " " + Unit : string.Empty) : Labels[LevelAt(share)];

    /// <summary>The change that a level lays over the base scenario.</summary>
    internal TreeObject ChangeOf(int level) => _changes[level];

    /// <summary>The change at a share of the way.</summary>
    internal TreeObject ChangeAt(double share) => _range is null ? _changes[LevelAt(share)] : _range(ValueAt(share));
}
