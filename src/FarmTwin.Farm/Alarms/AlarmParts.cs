using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Alarms;

/// <summary>Probes, alarms and people of a farm by number. Immutable.</summary>
public sealed class AlarmParts
{
    /// <summary>Numbers them.</summary>
    /// <exception cref="DescriptionException">A probe hangs nowhere, an alarm does not suit its probe.</exception>
    public AlarmParts(FarmDescription farm, FarmLibrary library, Func<string, int> basinIndex)
    {
        ArgumentNullException.ThrowIfNull(farm);
        ArgumentNullException.ThrowIfNull(library);
        ArgumentNullException.ThrowIfNull(basinIndex);
        Parameters = AlarmParameters.From(library.Set("processes", "alarms"));
        ProbeNames = [.. farm.Probes.Keys];
        ProbeDescription[] probes = [.. farm.Probes.Values];
        Quantities = [.. probes.Select(p => p.Quantity)];
        ProbeBasin = [.. farm.Probes.Select(p => BasinOf(p.Key, p.Value, basinIndex))];
        Probes = [.. probes.Select(p => ModelOf(p, library))];
        Points = [.. AlarmPointList.Of(farm, ProbeNames, Parameters)];
        PointsOfProbe = [.. Enumerable.Range(0, ProbeNames.Length).Select(p =>
            Enumerable.Range(0, Points.Length).Where(i => Points[i].Probe == p).ToArray())];
        FaultPointOfProbe = [.. PointsOfProbe.Select(points => points.Where(i => Points[i].Condition == AlarmCondition.SensorFault).DefaultIfEmpty(-1).First())];
        Box = farm.AlarmBox;
        PeopleNames = [.. farm.People.Keys];
        People = [.. farm.People.Values];
        CallOrder = [.. Enumerable.Range(0, People.Length).Where(p => People[p].CallOrder is not null).OrderBy(p => People[p].CallOrder)];
        foreach (PlannedEvent planned in farm.Plan.Values)
        {
            if (planned is ProbeDrifts drifts)
            {
                drifts.PerDay(Quantities[ProbeIndex(drifts.Probe)]);
            }
        }
    }

    /// <summary>Limits, delays, phone tree.</summary>
    public AlarmParameters Parameters { get; }

    /// <summary>Names of the probes.</summary>
    public string[] ProbeNames { get; }

    /// <summary>How true each probe reads.</summary>
    public ProbeParameters[] Probes { get; }

    /// <summary>What each probe reads.</summary>
    public ProbeQuantity[] Quantities { get; }

    /// <summary>The basin of each probe; −1 for the air.</summary>
    public int[] ProbeBasin { get; }

    /// <summary>The alarms.</summary>
    public AlarmPoint[] Points { get; }

    /// <summary>The alarms of each probe.</summary>
    public int[][] PointsOfProbe { get; }

    /// <summary>The alarm that tells of each probe's own fault; −1 where no alarm watches it.</summary>
    public int[] FaultPointOfProbe { get; }

    /// <summary>The alarm box.</summary>
    public AlarmBoxDescription Box { get; }

    /// <summary>Names of the people.</summary>
    public string[] PeopleNames { get; }

    /// <summary>People.</summary>
    public PersonDescription[] People { get; }

    /// <summary>People of the phone tree, in the order in which they are called.</summary>
    public int[] CallOrder { get; }

    /// <summary>Number of a probe.</summary>
    /// <exception cref="DescriptionException">There is none of that name.</exception>
    public int ProbeIndex(string name) => Array.IndexOf(ProbeNames, name) is >= 0 and var index
        ? index
        : throw new DescriptionException($"There is no probe '{name}'. There are: {string.Join(", ", ProbeNames)}.");

    private static int BasinOf(string name, ProbeDescription probe, Func<string, int> basinIndex) => probe.Quantity is ProbeQuantity.AirTemperature or ProbeQuantity.Mains
        ? probe.Basin is null ? -1 : throw new DescriptionException($"probes.{name}: a probe of the house air or the mains hangs in no basin; leave 'basin' out.")
        : basinIndex(probe.Basin ?? throw new DescriptionException($"probes.{name}: say in which basin it hangs, under 'basin'."));

    private static ProbeParameters ModelOf(ProbeDescription probe, FarmLibrary library)
    {
        string model = probe.Model ?? ProbeQuantities.UsualModel(probe.Quantity);
        ProbeParameters parameters;
        try
        {
            parameters = ProbeParameters.From(library.Set("probes", model), probe.Quantity);
        }
        catch (ArgumentException e)
        {
            throw new DescriptionException($"probes: the model '{model}' is not one of a probe for {ProbeQuantities.Words(probe.Quantity)}: {e.Message}");
        }

        return parameters with
        {
            SampleSeconds = probe.SampleMinutes is { } minutes ? Math.Round(minutes * UnitConstants.SecondsPerMinute) : parameters.SampleSeconds,
            CalibrateEveryDays = probe.CalibrateEveryDays ?? parameters.CalibrateEveryDays,
        };
    }
}
