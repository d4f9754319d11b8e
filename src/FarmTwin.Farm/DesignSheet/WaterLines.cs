using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Turnover of every basin, head of every pumped pipe, drain-back against the freeboard of sumps.</summary>
internal static class WaterLines
{
    private const string Group = "Water and pipes";
    private const double MetresPerMillimetre = 1e-3;

    public static IEnumerable<SheetLine> Of(DesignCase design) => Turnover(design).Concat(Heads(design)).Concat(DrainBack(design));

    private static IEnumerable<SheetLine> Turnover(DesignCase design)
    {
        DesignBands bands = design.Bands;
        for (int b = 0; b < design.Parts.Basins.Length; b++)
        {
            BasinDescription basin = design.Parts.Basins[b];
            bool tank = basin.Use == BasinUse.FishTank;
            if (!tank && basin.Use is not (BasinUse.Lane or BasinUse.Trough or BasinUse.MediaBed))
            {
                continue;
            }

            string name = design.Parts.BasinNames[b];
            string prefix = tank ? "tank" : "bed";
            double low = bands.Get(prefix + "TurnoverLow", "1/h");
            double high = bands.Get(prefix + "TurnoverHigh", "1/h");
            double turnover = design.Network.PipeNames.Select((n, p) => (Pipe: design.Farm.Pipes[n], Flow: design.Network.EdgeFlow[p]))
                .Where(e => e.Pipe.To == name).Sum(e => e.Flow) / basin.VolumeLitres;
            bool still = turnover <= 0 && basin.AirLitresPerMinute <= 0;
            yield return new SheetLine
            {
                Group = Group,
                Key = $"turnover.{name}",
                Name = $"turnover, {name}",
                Value = turnover,
                Unit = "1/h",
                Low = low,
                High = high,
                Source = bands.SourceOf(prefix + "TurnoverLow"),
                Verdict = still ? Verdict.Act : tank ? Judge.More(turnover, low, low) is Verdict.Act ? Verdict.Act : Judge.Within(turnover, low, high)
                    : Judge.Within(turnover, low, high),
                Advice = still ? "Nothing moves this water: give it a pump or air."
                    : turnover < low ? tank ? "Too little water reaches the fish: a larger pump."
                        : basin.AirLitresPerMinute > 0 ? "Slow, and made up for by its own air: check oxygen at the far end in summer."
                            : "Slow and without air: check oxygen at the far end in summer."
                    : turnover > high ? "Fast: a smaller pump would do." : string.Empty,
            };
        }
    }

    private static IEnumerable<SheetLine> Heads(DesignCase design)
    {
        DesignBands bands = design.Bands;
        double roughness = bands.Get("pipeRoughness", "mm") * MetresPerMillimetre;
        double efficiency = design.Parts.Climate.Machines.PumpEfficiency;
        int missing = 0;
        foreach ((string name, PipeDescription pipe) in design.Farm.Pipes.Where(p => p.Value.Drive == PipeDrive.Pump && p.Value.FlowLitresPerHour > 0))
        {
            if (pipe.LengthMetres is not { } length || pipe.BoreMetres is not { } bore || pipe.LiftMetres is not { } lift)
            {
                missing++;
                continue;
            }

            double head = lift + (PipeHead.FrictionMetres(pipe.FlowLitresPerHour, length, bore, roughness) * (1 + bands.Get("fittingsShare", "1")));
            double reach = PipeHead.MetresOfPower(pipe.PowerWatts, efficiency, pipe.FlowLitresPerHour);
            double velocity = PipeHead.MetresPerSecond(pipe.FlowLitresPerHour, bore);
            bool fast = velocity > bands.Get("pipeVelocityHigh", "m/s");
            Verdict byPower = pipe.PowerWatts > 0 ? Judge.Less(head, reach, reach) : Verdict.NoVerdict;
            yield return new SheetLine
            {
                Group = Group,
                Key = $"head.{name}",
                Name = $"head, {name}",
                Value = head,
                Unit = "m",
                High = pipe.PowerWatts > 0 ? reach : null,
                Source = bands.SourceOf("pipeRoughness"),
                Verdict = byPower == Verdict.Act ? Verdict.Act : fast ? Verdict.Watch : byPower,
                Advice = byPower == Verdict.Act
                    ? $"At {pipe.PowerWatts:0} W and {efficiency:0%} from wire to water the pump lifts this flow {reach:0.0} m: a stronger pump, or a wider pipe ({velocity:0.0} m/s now)."
                    : fast ? $"{velocity:0.0} m/s: a wider pipe." : string.Empty,
            };
        }

        if (missing > 0)
        {
            yield return new SheetLine
            {
                Group = Group,
                Key = "head.missing",
                Name = "pumped pipes without measures",
                Value = missing,
                Source = bands.SourceOf("pipeRoughness"),
                Verdict = Verdict.NoVerdict,
                Advice = "Their head cannot be reckoned: state length, bore and lift of these pipes.",
            };
        }
    }

    private static IEnumerable<SheetLine> DrainBack(DesignCase design)
    {
        double watch = design.Bands.Get("drainBackWatch", "1");
        foreach (string name in design.Farm.Pipes.Values.Where(p => p.Drive == PipeDrive.Pump).Select(p => p.From).Distinct())
        {
            PipeDescription[] pipes = [.. design.Farm.Pipes.Values.Where(p => p.Drive == PipeDrive.Pump && p.From == name)];
            int basin = design.Parts.BasinIndex(name);
            double freeboard = design.Network.BrimLitres[basin] - design.Network.NormalLitres[basin];
            double back = pipes.Where(p => !p.CheckValve).Sum(p => p.DrainBackLitres);
            bool stated = pipes.Any(p => p.DrainBackLitres > 0 || p.CheckValve);
            yield return new SheetLine
            {
                Group = Group,
                Key = $"drainBack.{name}",
                Name = stated ? $"drain-back, {name}" : $"freeboard, {name}",
                Value = stated ? back : freeboard,
                Unit = "L",
                High = stated ? freeboard : null,
                Source = design.Bands.SourceOf("drainBackWatch"),
                Verdict = stated ? Judge.Less(back, watch * freeboard, freeboard) : Verdict.NoVerdict,
                Advice = !stated ? "State drainBack of its pumped pipes, or a checkValve: then it is held against this freeboard."
                    : back > freeboard ? "When the pumps stop the sump floods: a check valve, a siphon break above the water, or a higher brim."
                    : design.Farm.Coupling is { Way: not CouplingWay.Never } ? "Freeboard above the normal level; joined, sumps stand higher: leave room for that." : string.Empty,
            };
        }
    }
}
