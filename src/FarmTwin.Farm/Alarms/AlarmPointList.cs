using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Alarms;

/// <summary>Makes the single alarms out of the descriptions: limits as stated, or the library's defaults where none is.</summary>
internal static class AlarmPointList
{
    public static IEnumerable<AlarmPoint> Of(FarmDescription farm, string[] probeNames, AlarmParameters parameters)
    {
        foreach ((string name, AlarmDescription alarm) in farm.Alarms)
        {
            ProbeQuantity quantity = farm.Probes.TryGetValue(alarm.Probe, out ProbeDescription? probe)
                ? probe.Quantity
                : throw new DescriptionException($"alarms.{name}: there is no probe '{alarm.Probe}'. There are: {string.Join(", ", probeNames)}.");
            if (!alarm.Suits(quantity))
            {
                throw new DescriptionException(
                    $"alarms.{name}: probe '{alarm.Probe}' reads {ProbeQuantities.Words(quantity)}, which this kind of alarm does not watch.");
            }

            foreach (AlarmPoint point in PointsOf(name, alarm, Array.IndexOf(probeNames, alarm.Probe), quantity, farm, parameters))
            {
                yield return point;
            }
        }

        // The box watches its probes themselves, once each, whatever it watches by them; a relay on the mains has nothing to watch.
        for (int p = 0; p < probeNames.Length; p++)
        {
            AlarmDescription[] watching = [.. farm.Alarms.Values.Where(a => a.Probe == probeNames[p])];
            if (watching.Length > 0 && farm.Probes[probeNames[p]].Quantity != ProbeQuantity.Mains)
            {
                yield return new AlarmPoint
                {
                    Name = $"{probeNames[p]} {AlarmCards.Words(AlarmCondition.SensorFault)}",
                    Probe = p,
                    Condition = AlarmCondition.SensorFault,
                    OnDelaySeconds = (long)parameters.SensorFaultOnDelaySeconds,
                    OffDelaySeconds = (long)parameters.SensorFaultOnDelaySeconds,
                    Priority = AlarmPriority.Medium,
                    Decouples = watching.Any(a => a.Decouples),
                    Card = AlarmCards.Of(farm.Probes[probeNames[p]].Quantity, AlarmCondition.SensorFault),
                };
            }
        }
    }

    private static IEnumerable<AlarmPoint> PointsOf(
        string name, AlarmDescription alarm, int probe, ProbeQuantity quantity, FarmDescription farm, AlarmParameters parameters)
    {
        AlarmDefaults defaults = parameters.Defaults[quantity];
        StatedLimits stated = alarm.Limits;
        bool isStated = (stated.Above ?? stated.Below ?? stated.RisingPerHour ?? stated.FallingPerHour) is not null;
        AlarmPriority usual = quantity switch
        {
            ProbeQuantity.Conductivity => AlarmPriority.Low,
            ProbeQuantity.Level or ProbeQuantity.Mains => AlarmPriority.High,
            ProbeQuantity.Oxygen when isStated => AlarmPriority.High,
            _ => AlarmPriority.Medium,
        };
        var limits = isStated
            ? new List<(AlarmCondition Condition, double? Limit, bool Critical)>
            {
                (AlarmCondition.High, stated.Above, false), (AlarmCondition.Low, stated.Below, false),
                (AlarmCondition.Rising, stated.RisingPerHour, false), (AlarmCondition.Falling, stated.FallingPerHour, false),
            }
            : [
                (AlarmCondition.High, defaults.High, false), (AlarmCondition.Low, defaults.Low, false),
                (AlarmCondition.High, defaults.CriticalHigh, true), (AlarmCondition.Low, defaults.CriticalLow, true),
                (AlarmCondition.Rising, defaults.RatePerHour, false), (AlarmCondition.Falling, defaults.RatePerHour, false),
            ];
        foreach ((AlarmCondition condition, double? limit, bool critical) in limits)
        {
            if (limit is not { } at)
            {
                continue;
            }

            bool isRate = condition is AlarmCondition.Rising or AlarmCondition.Falling;
            yield return new AlarmPoint
            {
                Name = $"{name} {(critical ? "critically " : string.Empty)}{AlarmCards.Words(condition)}",
                Probe = probe,
                Condition = condition,
                Limit = at,
                Deadband = isRate ? 0 : stated.Deadband ?? defaults.Deadband,
                OnDelaySeconds = (long)Math.Round(alarm.OnDelaySeconds ?? defaults.OnDelaySeconds),
                OffDelaySeconds = (long)Math.Round(alarm.OffDelaySeconds ?? defaults.OffDelaySeconds),
                Priority = critical ? AlarmPriority.High : alarm.Priority ?? usual,
                Latching = alarm.Latching,
                WhileFish = alarm.WhileFish,
                Decouples = alarm.Decouples,
                FeedShare = FeedShare(farm.Probes[alarm.Probe], condition, critical, farm),
                Shelved = [.. alarm.Shelved.Values],
                Card = AlarmCards.Of(quantity, condition),
            };
        }
    }

    // Fish that lack oxygen, or will without power, or stand in water too hot or far too cold are not fed. Bad pH or cool water halves the
    // feed at most: the pH of water without fish feed only rises, because nothing makes acid in it.
    private static double FeedShare(ProbeDescription probe, AlarmCondition condition, bool critical, FarmDescription farm)
    {
        if (probe.Quantity == ProbeQuantity.Mains)
        {
            return 0;
        }

        if (probe.Basin is not { } basin || !farm.Basins.TryGetValue(basin, out BasinDescription? water) || !LoopUses.Fish.Contains(water.Use))
        {
            return 1;
        }

        return (probe.Quantity, condition) switch
        {
            (ProbeQuantity.Oxygen, AlarmCondition.Low) or (ProbeQuantity.WaterTemperature, AlarmCondition.High) => 0,
            (ProbeQuantity.WaterTemperature, AlarmCondition.Low) => critical ? 0 : 0.5,
            (ProbeQuantity.PH, AlarmCondition.High or AlarmCondition.Low) => 0.5,
            _ => 1,
        };
    }
}
