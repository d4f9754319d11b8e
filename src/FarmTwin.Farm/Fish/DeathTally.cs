namespace FarmTwin.Farm.Fish;

/// <summary>Deaths by cause: of the season, of today, and of the day on which most died. Causes as in <see cref="HazardsPerHour.Causes"/>.</summary>
public sealed class DeathTally
{
    private readonly double[] _today = new double[HazardsPerHour.Causes.Count];
    private double _most;

    /// <summary>Deaths of the season by cause.</summary>
    public double[] Season { get; } = new double[HazardsPerHour.Causes.Count];

    /// <summary>Deaths by cause on the day on which most died.</summary>
    public double[] WorstDay { get; } = new double[HazardsPerHour.Causes.Count];

    /// <summary>Adds the dead of a step.</summary>
    public void Add(double deaths, in HazardsPerHour hazards)
    {
        hazards.Share(deaths, Season);
        hazards.Share(deaths, _today);
    }

    /// <summary>Ends a day.</summary>
    public void EndDay()
    {
        double died = 0;
        foreach (double deaths in _today)
        {
            died += deaths;
        }

        if (died > _most)
        {
            _most = died;
            _today.CopyTo(WorstDay, 0);
        }

        Array.Clear(_today);
    }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(DeathTally other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.Season.CopyTo(Season, 0);
        other.WorstDay.CopyTo(WorstDay, 0);
        other._today.CopyTo(_today, 0);
        _most = other._most;
    }
}
