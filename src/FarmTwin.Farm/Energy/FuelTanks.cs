namespace FarmTwin.Farm.Energy;

/// <summary>The fuel tanks' contents, orders and deliveries.</summary>
/// <remarks>State of a season: copied for snapshots. A step never burns more than there is: heaters ask first.</remarks>
public sealed class FuelTanks
{
    private const double SmoothingDays = 7;
    private readonly FuelTank[] _tanks;
    private readonly double[] _today;

    /// <summary>Fills the tanks as described.</summary>
    public FuelTanks(FuelTank[] tanks)
    {
        ArgumentNullException.ThrowIfNull(tanks);
        _tanks = tanks;
        _today = new double[tanks.Length];
        Litres = [.. tanks.Select(t => t.Description.InitialFillShare * t.Description.CapacityLitres)];
        LowestLitres = (double[])Litres.Clone();
        LowestDay = new double[tanks.Length];
        UsualLitresPerDay = new double[tanks.Length];
        HighestLitresPerDay = new double[tanks.Length];
        BurntLitres = new double[tanks.Length];
        DeliveredLitres = new double[tanks.Length];
        Deliveries = new int[tanks.Length];
        MissedDeliveries = new int[tanks.Length];
        StayAway = new int[tanks.Length];
        IsOrdered = new bool[tanks.Length];
        IsEmpty = new bool[tanks.Length];
        HoursEmpty = new double[tanks.Length];
    }

    /// <summary>Fuel in each tank, L.</summary>
    public double[] Litres { get; }

    /// <summary>Lowest content seen, L.</summary>
    public double[] LowestLitres { get; }

    /// <summary>Day of it.</summary>
    public double[] LowestDay { get; }

    /// <summary>Use of a day, smoothed over a week, L/d.</summary>
    public double[] UsualLitresPerDay { get; }

    /// <summary>Highest use of a day, L.</summary>
    public double[] HighestLitresPerDay { get; }

    /// <summary>Burnt so far, L.</summary>
    public double[] BurntLitres { get; }

    /// <summary>Delivered so far, L.</summary>
    public double[] DeliveredLitres { get; }

    /// <summary>Deliveries that came.</summary>
    public int[] Deliveries { get; }

    /// <summary>Deliveries that did not come.</summary>
    public int[] MissedDeliveries { get; }

    /// <summary>Coming deliveries that will not come.</summary>
    public int[] StayAway { get; }

    /// <summary>Whether fuel is on order.</summary>
    public bool[] IsOrdered { get; }

    /// <summary>Whether the tank was found empty; set by the hourly look alone.</summary>
    public bool[] IsEmpty { get; }

    /// <summary>Hours found empty.</summary>
    public double[] HoursEmpty { get; }

    /// <summary>Heat of fuel that a tank can give in a step, MJ: what is in it, or what boils off.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="hours">Length of the step, h.</param>
    /// <param name="takenLitres">Already taken in this step, L.</param>
    public double AvailableMegajoules(int tank, double hours, double takenLitres)
    {
        FuelTank of = _tanks[tank];
        double boils = of.Description.LargestKilowatts is { } limit
            ? (limit * hours * UnitConstants.MegajoulesPerKilowattHour) - (takenLitres * of.MegajoulesPerLitre)
            : double.PositiveInfinity;
        return Math.Max(0, Math.Min((Litres[tank] - takenLitres) * of.MegajoulesPerLitre, boils));
    }

    /// <summary>Burns.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="litres">L, no more than was available but for rounding.</param>
    public void Burn(int tank, double litres)
    {
        Litres[tank] = Math.Max(0, Litres[tank] - litres);
        BurntLitres[tank] += litres;
        _today[tank] += litres;
    }

    /// <summary>Notes the lowest content.</summary>
    public void Note(int tank, double day)
    {
        if (Litres[tank] < LowestLitres[tank])
        {
            LowestLitres[tank] = Litres[tank];
            LowestDay[tank] = day;
        }
    }

    /// <summary>Ends a day: what a day uses.</summary>
    public void EndDay()
    {
        for (int t = 0; t < _tanks.Length; t++)
        {
            UsualLitresPerDay[t] += (_today[t] - UsualLitresPerDay[t]) / SmoothingDays;
            HighestLitresPerDay[t] = Math.Max(HighestLitresPerDay[t], _today[t]);
            _today[t] = 0;
        }
    }

    /// <summary>Days that the content lasts at the use of the last week; not a number where nothing is used.</summary>
    public double DaysLeft(int tank) => UsualLitresPerDay[tank] > 0 ? Litres[tank] / UsualLitresPerDay[tank] : double.NaN;

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(FuelTanks other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other._today.CopyTo(_today, 0);
        other.Litres.CopyTo(Litres, 0);
        other.LowestLitres.CopyTo(LowestLitres, 0);
        other.LowestDay.CopyTo(LowestDay, 0);
        other.UsualLitresPerDay.CopyTo(UsualLitresPerDay, 0);
        other.HighestLitresPerDay.CopyTo(HighestLitresPerDay, 0);
        other.BurntLitres.CopyTo(BurntLitres, 0);
        other.DeliveredLitres.CopyTo(DeliveredLitres, 0);
        other.Deliveries.CopyTo(Deliveries, 0);
        other.MissedDeliveries.CopyTo(MissedDeliveries, 0);
        other.StayAway.CopyTo(StayAway, 0);
        other.IsOrdered.CopyTo(IsOrdered, 0);
        other.IsEmpty.CopyTo(IsEmpty, 0);
        other.HoursEmpty.CopyTo(HoursEmpty, 0);
    }
}
