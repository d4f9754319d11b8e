using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Summaries;
using FarmTwin.Studies.Plans;
using FarmTwin.Studies.Unknowns;

namespace FarmTwin.Studies.Coupling;

/// <summary>What came of going one way from one day on, in one replicate.</summary>
/// <param name="Refused">The gates that did not hold on the morning of the day.</param>
/// <param name="Gates">Every gate as it stood.</param>
/// <param name="Worst">The worst of each limit over the window, in the order of <see cref="CouplingLimit.All"/>.</param>
/// <param name="Limits">The limits, in the same order.</param>
/// <param name="Heads">First-grade heads in the window.</param>
/// <param name="CropKilograms">Crops fit for sale in the window, kg.</param>
/// <param name="HeatKilowattHours">Heat of the water heaters in the window, kWh.</param>
/// <param name="Valve">Flow through the valve by day of the window, L/h.</param>
/// <param name="WorstClosure">The largest closure error of any ledger.</param>
public sealed record CouplingRun(
    CouplingGates Refused, IReadOnlyList<GateReading> Gates, double[] Worst, double[] Limits, double Heads, double CropKilograms, double HeatKilowattHours,
    double[] Valve, double WorstClosure)
{
    /// <summary>Whether a limit held.</summary>
    public bool Holds(int limit) => !(CouplingLimit.All[limit].IsUpper ? Worst[limit] > Limits[limit] : Worst[limit] < Limits[limit]);

    /// <summary>Whether all limits held.</summary>
    public bool HoldsAll => Enumerable.Range(0, Worst.Length).All(Holds);
}

/// <summary>Plays one replicate apart, and from each candidate day on in every way: a branch each, from the same water.</summary>
public static class CouplingTrial
{
    /// <summary>Plays it.</summary>
    /// <param name="plan">The plan; its farm has a coupling.</param>
    /// <param name="library">The library.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="replicate">The replicate.</param>
    /// <param name="days">Candidate days, ascending.</param>
    /// <param name="window">Days looked at from each on.</param>
    /// <returns>[day][option of <see cref="CouplingOption.All"/>].</returns>
    public static CouplingRun[][] Play(FarmPlan plan, FarmLibrary library, ulong seed, uint replicate, IReadOnlyList<int> days, int window)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(days);
        FarmDescription farm = FarmUnknowns.With(plan.Farm, plan.Unknowns, FarmUnknowns.Draw(plan.Unknowns, seed, replicate)) with { LengthDays = days[^1] + window };
        SummaryBands bands = SummaryBands.From(library);
        var apart = new Season(CouplingOption.Apart(farm), library, seed, replicate);
        var results = new CouplingRun[days.Count][];
        for (int d = 0; d < days.Count; d++)
        {
            apart.Advance(FarmWork.At(days[d], 0));
            SeasonSnapshot moment = apart.Save();

            // The gates are those that the morning round of the day finds.
            apart.Advance(FarmWork.At(days[d], 7));
            CouplingGates refused = apart.State.Operations.Refused & ~CouplingGates.NotBefore;
            IReadOnlyList<GateReading> gates = [.. apart.CouplingGates().Where(g => g.Gate != CouplingGates.NotBefore)];
            results[d] = [.. CouplingOption.All.Select(o => Branch(o.Apply(farm, days[d]), library, seed, replicate, moment, days[d], window, refused, gates, bands))];
        }

        return results;
    }

    private static CouplingRun Branch(
        FarmDescription farm, FarmLibrary library, ulong seed, uint replicate, SeasonSnapshot moment, int day, int window, CouplingGates refused,
        IReadOnlyList<GateReading> gates, SummaryBands bands)
    {
        var season = new Season(farm, library, seed, replicate);
        season.TakeOver(moment);
        int held = season.State.Operations.RampAborts;
        double dead = WindowRecord.UnusualSoFar(season);
        season.Advance(FarmWork.At(day + window, 0));
        var record = new WindowRecord(season, day, window, held, dead);
        return new CouplingRun(
            refused, gates, [.. CouplingLimit.All.Select(l => l.Measure(record))], [.. CouplingLimit.All.Select(l => l.Limit(season, bands))],
            record.Heads, record.CropKilograms, record.HeatKilowattHours, record.ValveLitresPerHour(farm.Coupling!.Valve),
            LedgerSummary.Of(season).Values.Max(l => l.Closure));
    }
}
