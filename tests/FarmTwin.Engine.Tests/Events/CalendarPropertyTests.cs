using CsCheck;

namespace FarmTwin.Engine.Tests.Events;

public class CalendarPropertyTests
{
    // Few distinct times and phases, so that most events tie with many others while the heap grows through its sizes.
    [Fact]
    public void Growth_from_16_to_10000_entries_with_ties_and_cancels_keeps_the_order_of_a_stable_sort() =>
        Gen.Select(Gen.Int[0, 20], Gen.Int[0, 3], Gen.Int[0, 9]).Array[16, 10_000].Sample(
            items =>
            {
                var calendar = new Calendar(16);
                var handles = new EventHandle[items.Length];
                for (int i = 0; i < items.Length; i++)
                {
                    handles[i] = calendar.Schedule(items[i].Item1, items[i].Item2, kind: i);
                }

                // One in ten is cancelled.
                for (int i = 0; i < items.Length; i++)
                {
                    Assert.True(items[i].Item3 != 0 || calendar.Cancel(handles[i]));
                }

                // LINQ's OrderBy is documented to be stable.
                int[] expected = [.. Enumerable.Range(0, items.Length).Where(i => items[i].Item3 != 0)
                    .OrderBy(i => items[i].Item1).ThenBy(i => items[i].Item2)];
                Assert.Equal(expected.Length, calendar.Count);
                int[] actual = new int[expected.Length];
                for (int i = 0; i < actual.Length; i++)
                {
                    Assert.True(calendar.TryPop(out CalendarEntry entry));
                    actual[i] = entry.Kind;
                }

                Assert.Equal(expected, actual);
                Assert.False(calendar.TryPop(out _));
            },
            iter: 60, threads: 1);

    [Fact]
    public void Scheduling_taking_and_cancelling_in_any_order_agree_with_a_stably_sorted_list() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 4], Gen.Int[0, 3]).Array[1, 2000].Sample(
            operations =>
            {
                var calendar = new Calendar(1);
                var handles = new List<EventHandle>();
                var pending = new List<(long Time, int Phase, int Kind)>();
                long now = 0;
                int phaseNow = 0;
                foreach ((int action, int delay, int phase) in operations)
                {
                    if (action <= 4)
                    {
                        long time = now + delay;
                        int at = delay == 0 ? Math.Max(phase, phaseNow) : phase;
                        int kind = handles.Count;
                        handles.Add(calendar.Schedule(time, at, kind));
                        int place = pending.FindLastIndex(p => p.Time < time || (p.Time == time && p.Phase <= at)) + 1;
                        pending.Insert(place, (time, at, kind));
                    }
                    else if (action <= 7)
                    {
                        Assert.Equal(pending.Count > 0, calendar.TryPop(out CalendarEntry entry));
                        if (pending.Count > 0)
                        {
                            Assert.Equal(pending[0], (entry.TimeSeconds, entry.Phase, entry.Kind));
                            (now, phaseNow) = (entry.TimeSeconds, entry.Phase);
                            pending.RemoveAt(0);
                        }
                    }
                    else if (handles.Count > 0)
                    {
                        int kind = ((delay * 131) + (phase * 17) + pending.Count) % handles.Count;
                        Assert.Equal(pending.RemoveAll(p => p.Kind == kind) == 1, calendar.Cancel(handles[kind]));
                    }

                    Assert.Equal(pending.Count, calendar.Count);
                }
            },
            iter: 300, threads: 1);
}
