using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;

namespace FarmTwin.Studies.Coupling;

/// <summary>A way to go on from a day: open the valves in one of several ways, or stay apart.</summary>
/// <param name="Key">Its key in files.</param>
/// <param name="Words">What a reader sees.</param>
/// <param name="Opens">Whether it opens the valves for good.</param>
/// <param name="Apply">The farm that goes that way from a day on, days from day 0.</param>
public sealed record CouplingOption(string Key, string Words, bool Opens, Func<FarmDescription, double, FarmDescription> Apply)
{
    // A transfer by hand: a tenth of the fish loop's water, twice a week, over a working morning. Own choice, common practice without source.
    private const double TransferShare = 0.1;
    private const double TransferHours = 4;
    private static readonly double[] TransferDays = [0, 3];

    /// <summary>The ways, the gentlest first: it is taken where another is no better.</summary>
    public static IReadOnlyList<CouplingOption> All { get; } =
    [
        new("ramp", "by the ramp", true, (farm, day) => Opening(farm, day, CouplingWay.Ramp, farm.Coupling!.RampShares)),
        new("slow-ramp", "by a ramp of twice as many days", true, (farm, day) => Opening(farm, day, CouplingWay.Ramp, [.. farm.Coupling!.RampShares.SelectMany(s => new[] { s, s })])),
        new("at-once", "at once", true, (farm, day) => Opening(farm, day, CouplingWay.AtOnce, farm.Coupling!.RampShares)),
        new("transfer", "apart, with water carried across twice a week", false, Transfers),
        new("apart", "apart", false, (farm, _) => Apart(farm)),
    ];

    /// <summary>The farm that never opens its valves, whatever its plan says.</summary>
    public static FarmDescription Apart(FarmDescription farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        return farm with { Coupling = farm.Coupling! with { Way = CouplingWay.Never, OnDay = null } };
    }

    private static FarmDescription Opening(FarmDescription farm, double day, CouplingWay way, IReadOnlyList<double> ramp) =>
        farm with { Coupling = farm.Coupling! with { Way = way, OnDay = day, RampShares = ramp } };

    private static FarmDescription Transfers(FarmDescription farm, double day)
    {
        CouplingDescription coupling = farm.Coupling!;
        double litres = farm.Basins.Values.Where(b => LoopUses.Fish.Contains(b.Use)).Sum(b => b.VolumeLitres);
        var plan = new Dictionary<string, PlannedEvent>(farm.Plan, StringComparer.Ordinal);
        double first = Math.Ceiling(day);
        for (double week = first; week < farm.LengthDays; week += FarmTwin.Farm.UnitConstants.DaysPerWeek)
        {
            foreach (double weekday in TransferDays)
            {
                plan[$"transfer {week + weekday:0} begins"] = new SetValve { Day = week + weekday, Hour = 9, Valve = coupling.Valve, FlowLitresPerHour = TransferShare * litres / TransferHours };
                plan[$"transfer {week + weekday:0} ends"] = new SetValve { Day = week + weekday, Hour = 9 + TransferHours, Valve = coupling.Valve, FlowLitresPerHour = 0 };
            }
        }

        return Apart(farm) with { Plan = plan };
    }
}
