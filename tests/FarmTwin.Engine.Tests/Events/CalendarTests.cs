namespace FarmTwin.Engine.Tests.Events;

public class CalendarTests
{
    [Fact]
    public void Events_come_by_time_then_phase_then_first_in_first_out()
    {
        var calendar = new Calendar();
        calendar.Schedule(20, 0, 1);
        calendar.Schedule(10, 2, 2);
        calendar.Schedule(10, 1, 3);
        calendar.Schedule(10, 2, 4);
        calendar.Schedule(10, 1, 5);
        calendar.Schedule(-5, 9, 6);
        Assert.Equal([6, 3, 5, 2, 4, 1], Drain(calendar).Select(e => e.Kind));
    }

    [Fact]
    public void An_entry_carries_all_that_was_scheduled()
    {
        var calendar = new Calendar();
        calendar.Schedule(7, 3, 11, 21, 31, 0.5);
        Assert.True(calendar.TryPeek(out CalendarEntry seen));
        Assert.True(calendar.TryPop(out CalendarEntry taken));
        Assert.Equal(new CalendarEntry(7, 3, 1, 11, 21, 31, 0.5), taken);
        Assert.Equal(seen, taken);
        Assert.False(calendar.TryPop(out _));
    }

    [Fact]
    public void A_cancelled_event_does_not_come_up_and_cannot_be_cancelled_twice()
    {
        var calendar = new Calendar();
        EventHandle first = calendar.Schedule(1, 0, 1);
        EventHandle second = calendar.Schedule(2, 0, 2);
        Assert.True(calendar.Cancel(first));
        Assert.False(calendar.Cancel(first));
        Assert.Equal(1, calendar.Count);
        Assert.True(calendar.TryPeek(out CalendarEntry next));
        Assert.Equal(2, next.Kind);
        Assert.False(calendar.Cancel(first));
        Assert.True(calendar.TryPop(out _));
        Assert.False(calendar.Cancel(second));
        Assert.False(calendar.Cancel(default));
        Assert.Equal(0, calendar.Count);
    }

    [Fact]
    public void The_handle_of_a_past_event_does_not_cancel_the_one_that_took_its_place()
    {
        var calendar = new Calendar(1);
        EventHandle old = calendar.Schedule(1, 0, 1);
        calendar.TryPop(out _);
        calendar.Schedule(2, 0, 2);
        Assert.False(calendar.Cancel(old));
        Assert.Equal(1, calendar.Count);
    }

    [Fact]
    public void A_timer_that_is_put_off_again_and_again_takes_no_more_room()
    {
        var calendar = new Calendar();
        EventHandle timer = calendar.Schedule(1_000_000, 0, 1);
        for (int i = 0; i < 1000; i++)
        {
            calendar.Cancel(timer);
            timer = calendar.Schedule(1_000_000 + i, 0, 1);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 100_000; i++)
        {
            calendar.Cancel(timer);
            timer = calendar.Schedule(2_000_000 + i, 0, 1);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.Equal(1, calendar.Count);
        Assert.Equal(2_099_999, Assert.Single(Drain(calendar)).TimeSeconds);
    }

    [Fact]
    public void The_past_and_an_earlier_phase_of_the_present_are_refused_by_name()
    {
        var calendar = new Calendar();
        calendar.Schedule(10, 3, 1);
        calendar.TryPop(out _);
        string past = Assert.Throws<InvalidOperationException>(() => calendar.Schedule(9, 5, 42)).Message;
        Assert.Contains("kind 42", past, StringComparison.Ordinal);
        Assert.Contains("9 s, phase 5", past, StringComparison.Ordinal);
        string early = Assert.Throws<InvalidOperationException>(() => calendar.Schedule(10, 2, 43)).Message;
        Assert.Contains("kind 43", early, StringComparison.Ordinal);
        Assert.Contains("10 s into phase 2", early, StringComparison.Ordinal);
        calendar.Schedule(10, 3, 2);
        calendar.Schedule(10, 4, 3);
        Assert.Equal([2, 3], Drain(calendar).Select(e => e.Kind));
    }

    [Fact]
    public void A_copy_shares_nothing_and_understands_the_same_handles()
    {
        var calendar = new Calendar();
        EventHandle a = calendar.Schedule(5, 0, 1);
        calendar.Schedule(5, 0, 2);
        EventHandle c = calendar.Schedule(5, 0, 3);
        calendar.Cancel(c);
        Calendar copy = calendar.Clone();
        Assert.True(copy.Cancel(a));
        Assert.False(copy.Cancel(c));
        copy.Schedule(5, 0, 4);
        Assert.Equal([2, 4], Drain(copy).Select(e => e.Kind));
        Assert.Equal([1, 2], Drain(calendar).Select(e => e.Kind));
    }

    private static List<CalendarEntry> Drain(Calendar calendar)
    {
        var entries = new List<CalendarEntry>();
        while (calendar.TryPop(out CalendarEntry entry))
        {
            entries.Add(entry);
        }

        return entries;
    }
}
