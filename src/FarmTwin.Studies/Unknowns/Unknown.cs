using FarmTwin.Farm.Description;

namespace FarmTwin.Studies.Unknowns;

/// <summary>A number that nobody knows before the season, with the range in which it is believed to lie.</summary>
/// <param name="Name">What it is called in tables: the parameter's path ("processes/plants/siteFactor") or the input's ("house/infiltration").</param>
/// <param name="About">What it is, in a sentence.</param>
/// <param name="Unit">Its published unit.</param>
/// <param name="Low">Lowest believable value.</param>
/// <param name="Middle">The value that a single run uses: half of the draws lie below it, half above.</param>
/// <param name="High">Highest believable value.</param>
/// <param name="Put">Gives a copy of a farm that has the value.</param>
public sealed record Unknown(
    string Name, string About, string Unit, double Low, double Middle, double High, Func<FarmDescription, double, FarmDescription> Put)
{
    // Where the range spans more than this, its ends are orders of size and not amounts: such an unknown is drawn by its logarithm.
    private const double OrdersOfSize = 20;

    /// <summary>The value below which a share of the draws lie.</summary>
    /// <remarks>
    /// Two triangles that meet at the middle: the density falls in a straight line from the middle to nothing at either end, and each side
    /// holds half of the draws, so that the median is what a single run uses. Own choice: the libraries give a range and no shape.
    /// </remarks>
    /// <param name="share">In (0, 1).</param>
    /// <returns>A value in [<see cref="Low"/>, <see cref="High"/>].</returns>
    public double Quantile(double share)
    {
        bool byOrders = Low > 0 && High > OrdersOfSize * Low;
        double middle = byOrders ? Math.Log(Middle) : Middle;
        double end = share < 0.5 ? Low : High;
        double way = 1 - Math.Sqrt(1 - Math.Abs((2 * share) - 1));
        double value = middle + (((byOrders ? Math.Log(end) : end) - middle) * way);
        return byOrders ? Math.Exp(value) : value;
    }
}
