namespace FarmTwin.Scenarios.Units;

/// <summary>The dimension of a quantity, as powers of base quantities: what may be added to what.</summary>
/// <remarks>Money and angles count as base quantities, so that a price is never read as a number and degrees never as a share.</remarks>
/// <param name="Length">Power of length.</param>
/// <param name="Mass">Power of mass.</param>
/// <param name="Time">Power of time.</param>
/// <param name="Temperature">Power of temperature.</param>
/// <param name="Amount">Power of amount of substance (also of photons).</param>
/// <param name="Current">Power of electric current.</param>
/// <param name="Light">Power of luminous intensity.</param>
/// <param name="Angle">Power of plane angle.</param>
/// <param name="Money">Power of money.</param>
internal readonly record struct Dimension(int Length = 0, int Mass = 0, int Time = 0, int Temperature = 0, int Amount = 0,
    int Current = 0, int Light = 0, int Angle = 0, int Money = 0)
{
    /// <summary>A pure number.</summary>
    public static Dimension None => default;

    /// <summary>The dimension of a product with a power of another.</summary>
    public Dimension Times(Dimension other, int power = 1) => new(
        Length + (power * other.Length), Mass + (power * other.Mass), Time + (power * other.Time),
        Temperature + (power * other.Temperature), Amount + (power * other.Amount), Current + (power * other.Current),
        Light + (power * other.Light), Angle + (power * other.Angle), Money + (power * other.Money));
}
