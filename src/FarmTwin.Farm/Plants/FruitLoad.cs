namespace FarmTwin.Farm.Plants;

/// <summary>Fruit of one day's setting on a lot.</summary>
/// <param name="SetSum">The lot's temperature sum when it set, °C d; tells how far it is.</param>
/// <param name="DryGrams">Dry mass, g for the lot.</param>
/// <param name="Elements">What it holds, g.</param>
public readonly record struct FruitCohort(double SetSum, double DryGrams, ElementGrams Elements)
{
    /// <summary>A share of the cohort.</summary>
    public FruitCohort Part(double share) => new(SetSum, DryGrams * share, Elements * share);
}

/// <summary>The fruit that hangs on a lot of plants, a cohort a day, oldest first.</summary>
/// <remarks>Mutable state of one season; not thread safe. It grows at midnight only and may allocate then.</remarks>
public sealed class FruitLoad
{
    private readonly List<FruitCohort> _cohorts = [];

    /// <summary>Number of cohorts.</summary>
    public int Count => _cohorts.Count;

    /// <summary>Dry mass of all fruit, g.</summary>
    public double DryGrams { get; private set; }

    /// <summary>What all fruit holds, g.</summary>
    public ElementGrams Elements { get; private set; }

    /// <summary>A cohort, 0 the oldest.</summary>
    public FruitCohort this[int index] => _cohorts[index];

    /// <summary>Adds the fruit of a day.</summary>
    /// <exception cref="ArgumentException">It is younger than what hangs already, in temperature sum.</exception>
    public void Add(in FruitCohort cohort)
    {
        if (cohort.DryGrams <= 0)
        {
            return;
        }

        if (_cohorts.Count > 0 && cohort.SetSum < _cohorts[^1].SetSum)
        {
            throw new ArgumentException("Fruit is added in the order of its setting.", nameof(cohort));
        }

        _cohorts.Add(cohort);
        Sum();
    }

    /// <summary>Dry mass of the fruit that set after a temperature sum, g: what is not ripe yet.</summary>
    public double GrowingGrams(double afterSum)
    {
        double grams = 0;
        for (int i = 0; i < _cohorts.Count; i++)
        {
            grams += _cohorts[i].SetSum > afterSum ? _cohorts[i].DryGrams : 0;
        }

        return grams;
    }

    /// <summary>Gives growth to the fruit that set after a temperature sum, by its mass.</summary>
    public void Feed(double afterSum, double dryGrams, in ElementGrams elements)
    {
        double all = GrowingGrams(afterSum);
        for (int i = 0; i < _cohorts.Count; i++)
        {
            FruitCohort cohort = _cohorts[i];
            if (cohort.SetSum > afterSum)
            {
                double share = cohort.DryGrams / all;
                _cohorts[i] = new FruitCohort(cohort.SetSum, cohort.DryGrams + (dryGrams * share), cohort.Elements + (elements * share));
            }
        }

        Sum();
    }

    /// <summary>Takes the oldest cohort off.</summary>
    public FruitCohort TakeOldest()
    {
        FruitCohort oldest = _cohorts[0];
        _cohorts.RemoveAt(0);
        Sum();
        return oldest;
    }

    /// <summary>Moves a share of every cohort to another load; what hung there is not mixed with it in age.</summary>
    public void MoveShare(FruitLoad other, double share)
    {
        ArgumentNullException.ThrowIfNull(other);
        for (int i = 0; i < _cohorts.Count; i++)
        {
            other._cohorts.Add(_cohorts[i].Part(share));
            _cohorts[i] = _cohorts[i].Part(1 - share);
        }

        if (share >= 1)
        {
            _cohorts.Clear();
        }

        other._cohorts.Sort(static (a, b) => a.SetSum.CompareTo(b.SetSum));
        Sum();
        other.Sum();
    }

    /// <summary>Takes all fruit off; what it held is gone: book it first.</summary>
    public void Clear()
    {
        _cohorts.Clear();
        Sum();
    }

    /// <summary>Makes this load equal to another.</summary>
    public void CopyFrom(FruitLoad other)
    {
        ArgumentNullException.ThrowIfNull(other);
        _cohorts.Clear();
        _cohorts.AddRange(other._cohorts);
        Sum();
    }

    // Summed anew each time: a running sum would drift from its parts.
    private void Sum()
    {
        DryGrams = 0;
        Elements = default;
        for (int i = 0; i < _cohorts.Count; i++)
        {
            DryGrams += _cohorts[i].DryGrams;
            Elements += _cohorts[i].Elements;
        }
    }
}
