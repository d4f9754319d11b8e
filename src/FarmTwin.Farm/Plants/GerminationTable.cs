namespace FarmTwin.Farm.Plants;

/// <summary>How many seeds come up and how long they take, by temperature of the seed bed, at 5, 10, … 35 °C.</summary>
/// <remarks>
/// Straight lines between the published temperatures; nothing comes up outside 5–35 °C. Where no seed comes up at a temperature
/// the table has no time for it, and the time of the nearest temperature at which some do is used for the line between.
/// Source: the table of germination against temperature in common circulation (see the crop's data).
/// </remarks>
public sealed class GerminationTable
{
    /// <summary>How many temperatures the table has.</summary>
    public const int Count = 7;

    /// <summary>Temperature at which the usual emergence time of a crop is stated, °C.</summary>
    public const double ReferenceCelsius = 20;

    private const double FirstCelsius = 5;
    private const double StepCelsius = 5;
    private readonly double[] _share = new double[Count];
    private readonly double[] _days = new double[Count];

    /// <summary>Makes a table.</summary>
    /// <param name="share">Share that comes up, 0–1, at each temperature.</param>
    /// <param name="days">Days to come up; ignored where the share is 0.</param>
    /// <exception cref="ArgumentException">A wrong count, a share outside 0–1, no seed at all, or days that are not positive.</exception>
    public GerminationTable(ReadOnlySpan<double> share, ReadOnlySpan<double> days)
    {
        if (share.Length != Count || days.Length != Count)
        {
            throw new ArgumentException($"A germination table has {Count} temperatures.", nameof(share));
        }

        int known = -1;
        for (int i = 0; i < Count; i++)
        {
            if (share[i] is < 0 or > 1 || (share[i] > 0 && days[i] <= 0))
            {
                throw new ArgumentException($"Germination at {FirstCelsius + (i * StepCelsius)} °C is impossible.", nameof(share));
            }

            _share[i] = share[i];
            _days[i] = share[i] > 0 ? days[i] : known < 0 ? 0 : _days[known];
            known = share[i] > 0 ? i : known;
        }

        if (known < 0)
        {
            throw new ArgumentException("No seed comes up at any temperature.", nameof(share));
        }

        for (int i = Count - 2; i >= 0; i--)
        {
            _days[i] = _days[i] > 0 ? _days[i] : _days[i + 1];
        }
    }

    /// <summary>Highest share of the table.</summary>
    public double BestShare => _share.Max();

    /// <summary>Share of the seeds that come up, 0–1.</summary>
    public double Share(double celsius) => At(_share, celsius, outside: 0);

    /// <summary>Days from sowing to coming up; infinite where nothing comes up.</summary>
    public double Days(double celsius) => Share(celsius) > 0 ? At(_days, celsius, double.PositiveInfinity) : double.PositiveInfinity;

    private static double At(double[] values, double celsius, double outside)
    {
        double place = (celsius - FirstCelsius) / StepCelsius;
        if (!(place >= 0 && place <= Count - 1))
        {
            return outside;
        }

        int i = Math.Min((int)place, Count - 2);
        return values[i] + ((values[i + 1] - values[i]) * (place - i));
    }
}
