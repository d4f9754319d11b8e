using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;

namespace FarmTwin.Reports.Network;

/// <summary>When water runs through a pipe of the network.</summary>
public enum LinkKind
{
    /// <summary>Whenever the farm runs.</summary>
    Always,

    /// <summary>Once the loops are joined.</summary>
    WhenCoupled,

    /// <summary>When a filter is washed or a mineralization tank worked: sludge and clear water, by hand or timer.</summary>
    NowAndThen,

    /// <summary>Carried by hand.</summary>
    ByHand,
}

/// <summary>A body of water of the network, or the compost at its end.</summary>
/// <param name="Name">Its name in the scenario.</param>
/// <param name="Use">What it is for; null for the compost.</param>
/// <param name="Litres">Water at its normal level, L; 0 for the compost.</param>
/// <param name="Detail">What is in it or done with it, in a word or three.</param>
/// <param name="FloatValve">Number of its float valve, such as F1; null without one.</param>
public sealed record NetworkBasin(string Name, BasinUse? Use, double Litres, string Detail, string? FloatValve);

/// <summary>A pipe of the network with its pump and its valve.</summary>
/// <param name="Name">Its name in the scenario, or what is done through it.</param>
/// <param name="From">Basin that it leaves.</param>
/// <param name="To">Basin that it enters.</param>
/// <param name="Kind">When water runs through it.</param>
/// <param name="Pump">Number of its pump, such as P1; null without one.</param>
/// <param name="Valve">Number of its valve, such as V1; null without one.</param>
/// <param name="ApartLitresPerHour">Flow while the loops are apart, L/h.</param>
/// <param name="CoupledLitresPerHour">Flow when the loops are fully coupled, L/h.</param>
/// <param name="PowerWatts">Power of its pump, W.</param>
/// <param name="Label">What passes, in a word or two; empty where the flow says it.</param>
/// <param name="Does">What passes and when, in words; empty where the flow says it.</param>
public sealed record NetworkLink(
    string Name, string From, string To, LinkKind Kind, string? Pump, string? Valve, double ApartLitresPerHour, double CoupledLitresPerHour, double PowerWatts,
    string Label, string Does);

/// <summary>
/// The water network of a farm as it is handed over: every basin, pipe, pump and valve, numbered. Whoever prints a number takes it from
/// here, so that drawing, tables and cards agree.
/// </summary>
/// <param name="Basins">Bodies of water, in the scenario's order; the compost last, where sludge goes there.</param>
/// <param name="Links">Pipes, in the scenario's order; then what is washed, decanted and carried.</param>
public sealed record FarmNetwork(IReadOnlyList<NetworkBasin> Basins, IReadOnlyList<NetworkLink> Links)
{
    /// <summary>Name of the compost in <see cref="Basins"/>.</summary>
    public const string Compost = "compost";

    /// <summary>The network of a farm.</summary>
    /// <param name="farm">Its description.</param>
    /// <exception cref="DescriptionException">The pipes do not make a network.</exception>
    public static FarmNetwork Of(FarmDescription farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        List<NetworkLink> links = [.. Pipes(farm), .. OfSludge(farm), .. OfQuarantine(farm)];
        int pump = 0;
        int valve = 0;
        links = [.. links.Select(l => l with
        {
            Pump = l.Pump is null ? null : $"P{++pump}",
            Valve = l.Valve is null ? null : $"V{++valve}",
        })];
        int floats = 0;
        List<NetworkBasin> basins = [.. farm.Basins.Select(b => new NetworkBasin(
            b.Key, b.Value.Use, b.Value.VolumeLitres, Detail(farm, b.Key, b.Value), b.Value.FloatValve ? $"F{++floats}" : null))];
        if (links.Exists(l => l.To == Compost))
        {
            basins.Add(new NetworkBasin(Compost, null, 0, "out of the farm", null));
        }

        return new FarmNetwork(basins, links);
    }

    // The season's own network computes the flows, with full basins and nothing lost: once with all valves shut, once with all open.
    private static IEnumerable<NetworkLink> Pipes(FarmDescription farm)
    {
        double[] apart = Flows(farm, coupled: false);
        double[] coupled = Flows(farm, coupled: true);
        return farm.Pipes.Select((pipe, i) => new NetworkLink(
            pipe.Key, pipe.Value.From, pipe.Value.To, pipe.Value.Valve is null ? LinkKind.Always : LinkKind.WhenCoupled,
            pipe.Value.Drive == PipeDrive.Pump ? "P" : null, pipe.Value.Valve is null ? null : "V", apart[i], coupled[i], pipe.Value.PowerWatts, string.Empty, string.Empty));
    }

    private static double[] Flows(FarmDescription farm, bool coupled)
    {
        var network = new FlowNetwork(farm);
        double[] valves = [.. farm.Valves.Keys.Select(v => !coupled ? 0
            : farm.Coupling is { } plan && plan.Valve == v ? plan.FullFlowLitresPerHour : double.PositiveInfinity)];
        network.Solve(network.NormalLitres, new double[farm.Basins.Count], valves, 1);
        return [.. network.EdgeFlow];
    }

    private static IEnumerable<NetworkLink> OfSludge(FarmDescription farm)
    {
        foreach ((string name, BeadFilterDescription filter) in farm.Filters)
        {
            string wash = $"wash of {name}, {filter.WashWaterLitres:0} L every {filter.WashEveryDays:0.#} days, sooner when the flow falls to {filter.WashAtFlowShare:0%}";
            yield return Now($"{name} wash", filter.Basin, filter.SludgeTo ?? Compost, "wash water", wash, hasValve: true);
            if (filter.MeanwhileTo is { } meanwhile)
            {
                yield return Now($"{name} wash, meanwhile", filter.Basin, meanwhile, "wash water, meanwhile", $"wash of {name} while {filter.SludgeTo} settles or is full", hasValve: true);
            }
        }

        foreach ((string name, MineralizerDescription tank) in farm.Mineralizers)
        {
            if (tank.Holding is { } holding)
            {
                yield return Now($"{name} refill", holding, tank.Basin, "wash water", $"what waited in {holding} goes back once {tank.Basin} has been decanted", hasValve: false);
            }

            yield return Now($"{name} decant", tank.Basin, tank.DecantTo, "clear water",
                $"clear water, after {tank.SettleHours:0} h without air, when TAN is below {tank.DecantBelowTanMilligramsNPerLitre:0.#} and nitrite below {tank.DecantBelowNitriteMilligramsNPerLitre:0.#} mg N/L", hasValve: true);
            yield return Now($"{name} thick sludge", tank.Basin, Compost, "thick sludge", $"thick sludge, when the settled tank holds more than {tank.ThickenAboveGramsPerLitre:0.#} g/L", hasValve: false);
        }
    }

    private static IEnumerable<NetworkLink> OfQuarantine(FarmDescription farm)
    {
        foreach ((string name, QuarantineDescription tank) in farm.Quarantines)
        {
            string share = $"{tank.ChangeShare:0%} of its water at a change";
            if (tank.WaterFrom is { } from)
            {
                yield return new NetworkLink($"{name} new water", from, tank.Basin, LinkKind.ByHand, null, null, 0, 0, 0, "new water", $"new water for {tank.Basin}, {share}");
            }

            if (tank.WaterTo is { } to)
            {
                yield return new NetworkLink($"{name} old water", tank.Basin, to, LinkKind.ByHand, null, null, 0, 0, 0, "old water", $"old water of {tank.Basin}, {share}; never after salt or a treatment");
            }
        }
    }

    private static NetworkLink Now(string name, string from, string to, string label, string does, bool hasValve) =>
        new(name, from, to, LinkKind.NowAndThen, null, hasValve ? "V" : null, 0, 0, 0, label, does);

    private static string Detail(FarmDescription farm, string name, BasinDescription basin)
    {
        if (farm.WaterHeaters.Values.FirstOrDefault(h => h.Basin == name) is { } heater)
        {
            return $"heated to {heater.HoldCelsius:0.#} °C";
        }

        return basin.Use switch
        {
            BasinUse.Filter => farm.Filters.Values.FirstOrDefault(f => f.Basin == name) is { } filter ? $"{filter.BeadsLitres:0} L of beads" : string.Empty,
            BasinUse.Lane => string.Join(", ", farm.Lanes.Values.Where(l => l.Basin == name).Select(l => l.Crop)),
            BasinUse.Trough => "transplants",
            BasinUse.MediaBed => string.Join(", ", farm.MediaBeds.Values.Where(l => l.Basin == name).Select(b => b.Crop)),
            BasinUse.NurseryReservoir => "water of its own",
            BasinUse.Quarantine => "new fish",
            _ => string.Empty,
        };
    }
}
