using FarmTwin.Engine;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Benchmarks;

/// <summary>What clock, calendar and guards, the record, and the ledgers cost of a season: each done alone, as often as the season does it.</summary>
/// <remarks>
/// A season cannot be run without them, so they are run without the season: the record on the season's own columns, the ledgers with one
/// posting a step to every door and ledger that the season ever posted to (at least as many as it does), the clock with as many routines and
/// steps on a model that does nothing.
/// </remarks>
public static class Overhead
{
    /// <summary>Milliseconds of processor time of each, best of <paramref name="runs"/>.</summary>
    public static (double Clock, double Record, double Ledgers) Milliseconds(FarmDescription farm, int runs)
    {
        ArgumentNullException.ThrowIfNull(farm);
        var season = new Season(farm, ShippedLibrary.Library, 1);
        season.AdvanceToEnd();
        var idle = new Season(farm, ShippedLibrary.Library, 1);
        int steps = (int)(farm.LengthDays * 24);
        (int Door, int Ledger)[] postings =
        [
            .. from door in Enumerable.Range(0, Door.Names.Length)
               from ledger in Enumerable.Range(0, FarmBooks.Count)
               where season.State.Books[ledger].TotalInBy(door) > 0 || season.State.Books[ledger].TotalOutBy(door) > 0
               select (door, ledger),
        ];
        return (
            Best(runs, () => RunClock(steps)),
            Best(runs, () => RunRecord(idle.Record, steps)),
            Best(runs, () => Post(new FarmBooks(), postings, steps)));
    }

    private static double Best(int runs, Action work)
    {
        double best = double.PositiveInfinity;
        for (int run = -3; run < runs; run++)
        {
            // Long enough for the processor's clock of the process, which ticks in milliseconds.
            const int times = 8;
            TimeSpan start = Environment.CpuUsage.UserTime;
            for (int i = 0; i < times; i++)
            {
                work();
            }

            double took = (Environment.CpuUsage.UserTime - start).TotalMilliseconds / times;
            best = run < 0 ? best : Math.Min(best, took);
        }

        return best;
    }

    private static void RunRecord(SeasonRecord record, int steps)
    {
        for (int step = 1; step <= steps; step++)
        {
            record.Step(3600);
            record.Instant(3600L * step);
            if (step % 24 == 0)
            {
                record.Day();
            }
        }
    }

    private static void Post(FarmBooks books, (int Door, int Ledger)[] postings, int steps)
    {
        for (int step = 0; step < steps; step++)
        {
            foreach ((int door, int ledger) in postings)
            {
                books.Post(door, ledger, step * 1e-3);
            }
        }
    }

    private static void RunClock(int steps)
    {
        // As many routines as a season has: midnight, rounds, meals, harvests, sowings.
        const int daily = 12;
        const int weekly = 12;
        const int kind = 1;
        var simulation = new Simulation(new Idle(), new SimulationOptions { GuardPhase = 1 });
        simulation.Guards.Add(new Guard("idle", 1, 0, GuardDirection.Rising, kind));
        for (int i = 0; i < daily; i++)
        {
            simulation.Routines.Add(new Routine(3600L * (6 + i), 86400, 0, kind));
        }

        for (int i = 0; i < weekly; i++)
        {
            simulation.Routines.Add(new Routine((3600L * 10) + (86400 * (i % 7)), 7 * 86400, 0, kind));
        }

        simulation.RunTo(3600L * steps);
    }

    private sealed class Idle : IHybridModel, IGuardedModel
    {
        public long LongestStepSeconds => 3600;

        public void Advance(long fromSeconds, long toSeconds)
        {
        }

        public void Fire(in CalendarEntry entry, Simulation simulation)
        {
        }

        public void Record(long timeSeconds)
        {
        }

        public double GuardValue(int guard) => 0;
    }
}
