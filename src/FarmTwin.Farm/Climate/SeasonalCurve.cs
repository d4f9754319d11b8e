namespace FarmTwin.Farm.Climate;

/// <summary>A smooth year through twelve monthly means: straight lines between month mid-points that keep every month's mean.</summary>
/// <remarks>
/// Lines drawn through the means themselves would cut the peaks (about 0.4 K at a turning point); the nodes are therefore shifted
/// until the mean of each month is the given one. Own method.
/// </remarks>
public sealed class SeasonalCurve
{
    private const int Months = 12;

    // The mean over a month of the lines between mid-points is 3/4 of its own node and 1/8 of each neighbour's.
    private const double OwnWeight = 0.75;
    private const double NeighbourWeight = 0.125;

    private readonly double[] _nodes = new double[Months];

    /// <summary>Fits the nodes.</summary>
    /// <param name="monthlyMeans">Twelve means, January first.</param>
    /// <exception cref="ArgumentException">There are not twelve finite values.</exception>
    public SeasonalCurve(IReadOnlyList<double> monthlyMeans)
    {
        ArgumentNullException.ThrowIfNull(monthlyMeans);
        if (monthlyMeans.Count != Months)
        {
            throw new ArgumentException($"Monthly values are twelve, January first; {monthlyMeans.Count} were given.", nameof(monthlyMeans));
        }

        for (int month = 0; month < Months; month++)
        {
            if (!double.IsFinite(monthlyMeans[month]))
            {
                throw new ArgumentException($"The value of month {month + 1} is not a number.", nameof(monthlyMeans));
            }

            _nodes[month] = monthlyMeans[month];
        }

        // Each pass at least halves the error, so sixty leave none.
        Span<double> shifted = stackalloc double[Months];
        for (int pass = 0; pass < 60; pass++)
        {
            for (int month = 0; month < Months; month++)
            {
                double mean = (OwnWeight * _nodes[month])
                    + (NeighbourWeight * (_nodes[(month + 11) % Months] + _nodes[(month + 1) % Months]));
                shifted[month] = _nodes[month] + monthlyMeans[month] - mean;
            }

            shifted.CopyTo(_nodes);
        }
    }

    /// <summary>The value on a date.</summary>
    /// <param name="date">Any date.</param>
    public double At(DateOnly date)
    {
        int month = date.Month - 1;
        double fromMiddle = ((date.Day - 0.5) / DateTime.DaysInMonth(date.Year, date.Month)) - 0.5;
        int neighbour = fromMiddle < 0 ? (month + 11) % Months : (month + 1) % Months;
        double weight = Math.Abs(fromMiddle);
        return ((1 - weight) * _nodes[month]) + (weight * _nodes[neighbour]);
    }
}
