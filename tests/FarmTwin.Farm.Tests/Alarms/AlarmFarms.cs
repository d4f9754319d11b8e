using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;

namespace FarmTwin.Farm.Tests.Alarms;

/// <summary>Two closed loops of water that nothing changes but planned events: what an alarm does there, the test did.</summary>
internal static class AlarmFarms
{
    public static FarmDescription Of(
        IReadOnlyDictionary<string, ProbeDescription> probes,
        IReadOnlyDictionary<string, AlarmDescription> alarms,
        IReadOnlyDictionary<string, PlannedEvent>? plan = null) => BareFarm.TwoLoops(1600, 700, 3240, 1800, 1600, 24, 20) with
        {
            Probes = probes,
            Alarms = alarms,
            Plan = plan ?? new Dictionary<string, PlannedEvent>(),
        };

    /// <summary>A level probe in the fish sump, watched for low water.</summary>
    public static FarmDescription LowWater(double onDelaySeconds = 5, double offDelaySeconds = 300, bool latching = false) => Of(
        new Dictionary<string, ProbeDescription> { ["level"] = new() { Quantity = ProbeQuantity.Level, Basin = "fish-sump" } },
        new Dictionary<string, AlarmDescription>
        {
            ["low water"] = new WatchLevel { Probe = "level", Below = 0.8, Deadband = 0.05, OnDelaySeconds = onDelaySeconds, OffDelaySeconds = offDelaySeconds, Latching = latching },
        });

    public static ChangeWater Lose(double day, double hour, double litres) => new() { Day = day, Hour = hour, Basin = "fish-sump", Litres = litres };

    public static ChangeWater GiveBack(double day, double hour, double litres) => new() { Day = day, Hour = hour, Basin = "plant-sump", To = "fish-sump", Litres = litres };

    public static FarmDescription With(this FarmDescription farm, params PlannedEvent[] events) => farm with
    {
        Plan = events.Select((e, i) => (e, i)).ToDictionary(e => $"event-{e.i}", e => e.e, StringComparer.Ordinal),
    };

    public static long At(double day, double hour) => Operations.FarmWork.At(day, hour);

    public static AlarmIncident Only(Season season) => Assert.Single(season.State.Alarms.Incidents);
}
