namespace FarmTwin.Farm.Plants;

/// <summary>What was harvested so far by crop, grade and reason.</summary>
public sealed class HarvestTally
{
    /// <summary>Why heads are not first grade, as summaries call them.</summary>
    public static readonly string[] Reasons = ["light", "heavy", "tipBurn", "heat", "bolted", "cold", "other"];

    private readonly HeadGrades[] _sums;

    /// <summary>Makes an empty tally.</summary>
    /// <param name="crops">How many crops there are.</param>
    public HarvestTally(int crops) => _sums = new HeadGrades[crops];

    /// <summary>Sums of a crop.</summary>
    public HeadGrades this[int crop] => _sums[crop];

    /// <summary>Adds a harvest.</summary>
    public void Add(int crop, in HeadGrades more)
    {
        HeadGrades sum = _sums[crop];
        _sums[crop] = new HeadGrades(
            sum.FirstHeads + more.FirstHeads,
            sum.FirstGrams + more.FirstGrams,
            sum.SecondHeads + more.SecondHeads,
            sum.SecondGrams + more.SecondGrams,
            sum.UnsaleableHeads + more.UnsaleableHeads,
            sum.UnsaleableGrams + more.UnsaleableGrams,
            sum.Light + more.Light,
            sum.Heavy + more.Heavy,
            sum.TipBurn + more.TipBurn,
            sum.Heat + more.Heat,
            sum.Bolted + more.Bolted,
            sum.Cold + more.Cold,
            sum.Other + more.Other);
    }

    /// <summary>Heads of a crop that are not first grade, in the order of <see cref="Reasons"/>.</summary>
    public double[] NotFirst(int crop)
    {
        HeadGrades sum = _sums[crop];
        return [sum.Light, sum.Heavy, sum.TipBurn, sum.Heat, sum.Bolted, sum.Cold, sum.Other];
    }

    /// <summary>Takes over another's sums.</summary>
    public void CopyFrom(HarvestTally other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other._sums.CopyTo(_sums, 0);
    }
}
