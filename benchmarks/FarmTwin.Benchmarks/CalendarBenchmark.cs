using System.Diagnostics;
using FarmTwin.Engine;
using FarmTwin.Engine.Chance;

namespace FarmTwin.Benchmarks;

/// <summary>An M/M/1 queue (arrival rate 0.8, service rate 1) on the event calendar: how many events a second it takes.</summary>
public static class CalendarBenchmark
{
    private const int Arrival = 0;
    private const int Departure = 1;
    private const double TicksPerUnit = 1e9;
    private const double ArrivalRate = 0.8;

    /// <summary>
    /// Takes events from the calendar until <paramref name="events"/> are done; each draws one exponential variate at most from a
    /// counter-based stream and schedules one event or two. Warms up first.
    /// </summary>
    /// <param name="events">How many events to time; some millions for a steady figure.</param>
    /// <returns>Events per second of real time on one thread.</returns>
    public static double MeasureEventsPerSecond(int events)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(events, 1);

        // Several short runs let the tiered compiler reach its optimised code before the clock starts.
        for (int i = 0; i < 5; i++)
        {
            RunQueue(200_000);
        }

        long start = Stopwatch.GetTimestamp();
        RunQueue(events);
        return events / Stopwatch.GetElapsedTime(start).TotalSeconds;
    }

    /// <summary>Runs the queue for a number of events.</summary>
    /// <returns>The time-average number in the system, which tends to 4: a check that work was done.</returns>
    internal static double RunQueue(int events)
    {
        var calendar = new Calendar(16);
        var streams = new RandomStreams(20260301, 0);
        uint arrivalStream = StableHash.Of("arrival");
        uint serviceStream = StableHash.Of("service");
        uint arrivals = 0;
        uint services = 0;
        int inSystem = 0;
        double area = 0;
        long last = 0;
        calendar.Schedule(0, 1, Arrival);
        for (int i = 0; i < events && calendar.TryPop(out CalendarEntry entry); i++)
        {
            long now = entry.TimeSeconds;
            area += inSystem * (double)(now - last);
            last = now;
            if (entry.Kind == Arrival)
            {
                calendar.Schedule(now + Exponential(streams, arrivalStream, arrivals++, 1 / ArrivalRate), 1, Arrival);
                if (++inSystem == 1)
                {
                    calendar.Schedule(now + Exponential(streams, serviceStream, services++, 1), 0, Departure);
                }
            }
            else if (--inSystem > 0)
            {
                calendar.Schedule(now + Exponential(streams, serviceStream, services++, 1), 0, Departure);
            }
        }

        return area / Math.Max(1, last);
    }

    private static long Exponential(RandomStreams streams, uint process, uint ordinal, double mean) =>
        (long)(-mean * TicksPerUnit * Math.Log(streams.Uniform(process, 0, ordinal)));
}
