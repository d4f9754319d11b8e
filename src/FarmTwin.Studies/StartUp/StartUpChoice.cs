using FarmTwin.Farm.Description;

namespace FarmTwin.Studies.StartUp;

/// <summary>A way to bring the filter to life.</summary>
/// <param name="Words">What a reader sees.</param>
/// <param name="HasFish">Whether fish are in the water meanwhile.</param>
/// <param name="Apply">The farm that starts so.</param>
public sealed record StartUpChoice(string Words, bool HasFish, Func<FarmDescription, FarmDescription> Apply)
{
    // Steps that a designer can choose; own choice. A fifth of the first batch is the usual limit for a start with fish in it.
    private static readonly double[] Shares = [0, 0.02, 0.05, 0.1, 0.2];
    private const double FishShare = 0.2;
    private const double Cooler = 5;
    private const double Warmer = 2;

    /// <summary>The choices; the first is the plan as it stands.</summary>
    public static IReadOnlyList<StartUpChoice> All { get; } =
    [
        new("as planned", false, farm => farm),
        .. Shares.Select(share => new StartUpChoice(share == 0 ? "fishless, no mature media" : $"fishless, {share:0%} mature media", false, farm => WithMedia(farm, share))),
        new($"as planned, water {Cooler:0} °C cooler", false, farm => WithHeat(farm, -Cooler)),
        new($"as planned, water {Warmer:0} °C warmer", false, farm => WithHeat(farm, Warmer)),
        new("with the first batch from day 2, no mature media", true, farm => WithFish(WithMedia(farm, 0), 1)),
        new("with a fifth of it from day 2, no mature media", true, farm => WithFish(WithMedia(farm, 0), FishShare)),
        new($"with the first batch from day 2, {Shares[3]:0%} mature media", true, farm => WithFish(WithMedia(farm, Shares[3]), 1)),
    ];

    private static FarmDescription WithMedia(FarmDescription farm, double share) =>
        farm with { Filters = farm.Filters.ToDictionary(f => f.Key, f => f.Value with { MatureMediaShare = share }, StringComparer.Ordinal) };

    private static FarmDescription WithHeat(FarmDescription farm, double kelvin) =>
        farm with { WaterHeaters = farm.WaterHeaters.ToDictionary(h => h.Key, h => h.Value with { HoldCelsius = h.Value.HoldCelsius + kelvin }, StringComparer.Ordinal) };

    // Only the first batch, few of it, and no ammonium: their feed is what the filter lives on.
    private static FarmDescription WithFish(FarmDescription farm, double share)
    {
        (string name, StockingDescription first) = farm.Stocking.MinBy(s => s.Value.AfterDays);
        return farm with
        {
            FishlessStart = null,
            Stocking = new Dictionary<string, StockingDescription>(StringComparer.Ordinal)
            {
                [name] = first with { AfterDays = 2, WaitForCycle = false, Number = Math.Max(1, (int)Math.Round(first.Number * share)), Quarantine = null },
            },
        };
    }
}
