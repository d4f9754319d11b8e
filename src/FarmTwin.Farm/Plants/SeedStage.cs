namespace FarmTwin.Farm.Plants;

/// <summary>Sown seeds that have not come up: progress towards emergence at the temperature of each day.</summary>
/// <remarks>
/// A seed bed at constant temperature comes up after the crop's emergence time at 20 °C, times the table's days at that temperature
/// over its days at 20 °C; changing temperatures add their daily shares. The share that comes up is the mean of the table over the
/// days, weighted by time. Ungerminated seed is booked neither in nor out.
/// </remarks>
public record struct SeedStage
{
    // Six sixths of a day's progress add up to a hair under 1.
    private const double Up = 1 - 1e-9;

    /// <summary>Progress, 0 at sowing, 1 when they come up.</summary>
    public double Progress { get; private set; }

    /// <summary>Days since sowing.</summary>
    public double Days { get; private set; }

    /// <summary>Sum of germination share times days, d.</summary>
    public double ShareDays { get; private set; }

    /// <summary>Sum of temperature times days, °C d.</summary>
    public double CelsiusDays { get; private set; }

    /// <summary>Mean temperature of the seed bed so far, °C.</summary>
    public readonly double MeanCelsius => Days > 0 ? CelsiusDays / Days : double.NaN;

    /// <summary>Whether they have come up.</summary>
    public readonly bool IsUp => Progress >= Up;

    /// <summary>Share of the cells with a seedling, 0–1, with the seed lot's soundness.</summary>
    public readonly double Share(CropParameters crop) => Days > 0 ? crop.SeedLotShare * ShareDays / Days : 0;

    /// <summary>Days from sowing to emergence at a constant temperature; infinite where nothing comes up.</summary>
    public static double EmergenceDays(CropParameters crop, double celsius) => crop.EmergenceDaysAtTwentyCelsius
        * crop.Germination.Days(celsius) / crop.Germination.Days(GerminationTable.ReferenceCelsius);

    /// <summary>Adds a stretch of time at a temperature.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="celsius">Mean temperature of the seed bed, °C.</param>
    /// <param name="days">Length, d.</param>
    public void Advance(CropParameters crop, double celsius, double days = 1)
    {
        Days += days;
        CelsiusDays += celsius * days;
        ShareDays += crop.Germination.Share(celsius) * days;
        Progress += days / EmergenceDays(crop, celsius);
    }
}
