namespace FarmTwin.Farm.Seasons;

/// <summary>Highest and lowest hourly mean of a quantity, and when.</summary>
/// <param name="Highest">Highest hourly mean.</param>
/// <param name="HighestSeconds">End of its hour.</param>
/// <param name="Lowest">Lowest hourly mean.</param>
/// <param name="LowestSeconds">End of its hour.</param>
public readonly record struct Peak(double Highest, long HighestSeconds, double Lowest, long LowestSeconds)
{
    /// <summary>Nothing seen yet.</summary>
    public static Peak None { get; } = new(double.NaN, 0, double.NaN, 0);

    /// <summary>With another hour.</summary>
    public Peak With(double value, long seconds)
    {
        if (double.IsNaN(value))
        {
            return this;
        }

        bool first = double.IsNaN(Highest);
        return new Peak(
            first || value > Highest ? value : Highest,
            first || value > Highest ? seconds : HighestSeconds,
            first || value < Lowest ? value : Lowest,
            first || value < Lowest ? seconds : LowestSeconds);
    }
}
