namespace FarmTwin.Farm.Plants;

/// <summary>An amount for each channel of uptake: grams a day wanted, or grams taken in a step, or a factor of 0–1.</summary>
/// <param name="Ammonium">Ammonium, as N.</param>
/// <param name="Nitrate">Nitrate, as N.</param>
/// <param name="Phosphorus">As P.</param>
/// <param name="Potassium">As K.</param>
/// <param name="Calcium">As Ca.</param>
/// <param name="Magnesium">As Mg.</param>
/// <param name="Sulfur">As S.</param>
/// <param name="Iron">As Fe.</param>
public record struct UptakeAmounts(
    double Ammonium,
    double Nitrate,
    double Phosphorus,
    double Potassium,
    double Calcium,
    double Magnesium,
    double Sulfur,
    double Iron)
{
    /// <summary>How many channels there are.</summary>
    public const int Count = 8;

    /// <summary>Nitrogen of both forms.</summary>
    public readonly double Nitrogen => Ammonium + Nitrate;

    /// <summary>The amount of one channel.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the channels.</exception>
    public readonly double this[UptakeChannel channel] => channel switch
    {
        UptakeChannel.Ammonium => Ammonium,
        UptakeChannel.Nitrate => Nitrate,
        UptakeChannel.Phosphorus => Phosphorus,
        UptakeChannel.Potassium => Potassium,
        UptakeChannel.Calcium => Calcium,
        UptakeChannel.Magnesium => Magnesium,
        UptakeChannel.Sulfur => Sulfur,
        UptakeChannel.Iron => Iron,
        _ => throw new ArgumentOutOfRangeException(nameof(channel)),
    };

    /// <summary>The sum, channel by channel.</summary>
    public static UptakeAmounts operator +(in UptakeAmounts a, in UptakeAmounts b) => new(
        a.Ammonium + b.Ammonium, a.Nitrate + b.Nitrate, a.Phosphorus + b.Phosphorus, a.Potassium + b.Potassium,
        a.Calcium + b.Calcium, a.Magnesium + b.Magnesium, a.Sulfur + b.Sulfur, a.Iron + b.Iron);

    /// <summary>Every channel times a factor.</summary>
    public static UptakeAmounts operator *(in UptakeAmounts a, double factor) => new(
        a.Ammonium * factor, a.Nitrate * factor, a.Phosphorus * factor, a.Potassium * factor,
        a.Calcium * factor, a.Magnesium * factor, a.Sulfur * factor, a.Iron * factor);

    /// <summary>The product, channel by channel: what was wanted times the share that the water could give.</summary>
    public static UptakeAmounts operator *(in UptakeAmounts a, in UptakeAmounts b) => new(
        a.Ammonium * b.Ammonium, a.Nitrate * b.Nitrate, a.Phosphorus * b.Phosphorus, a.Potassium * b.Potassium,
        a.Calcium * b.Calcium, a.Magnesium * b.Magnesium, a.Sulfur * b.Sulfur, a.Iron * b.Iron);
}
