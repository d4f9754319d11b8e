using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Business;

/// <summary>Pays, at the end of every day, for what the day used.</summary>
public sealed class Bookkeeping
{
    private readonly FarmContext _farm;

    /// <summary>Makes it.</summary>
    public Bookkeeping(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
    }

    /// <summary>Pays for the day.</summary>
    public void EndDay()
    {
        FarmState state = _farm.State;
        MoneyState money = state.Money;
        double ownHours = _farm.Parts.Farm.Prices?.UnpaidHoursPerWeek ?? 0;
        money.DaysClosed++;
        money.PaidHours = money.PaidHoursAtWeekStart + Math.Max(0, state.Labour.Hours - money.HoursAtWeekStart - ownHours);
        IReadOnlyList<Account> accounts = _farm.Parts.Accounts.All;
        for (int a = 0; a < accounts.Count; a++)
        {
            if (accounts[a].Total is { } total && accounts[a].Price > 0)
            {
                double now = total(state);
                double used = Math.Max(0, now - money.PaidTotal[a]);
                money.Pay(a, used * accounts[a].Price);
                money.PaidTotal[a] = now;
            }
        }

        money.NoteCash(money.DaysClosed - 1);
    }

    /// <summary>A week begins: the owner's unpaid hours are counted anew.</summary>
    public void NewWeek()
    {
        MoneyState money = _farm.State.Money;
        money.HoursAtWeekStart = _farm.State.Labour.Hours;
        money.PaidHoursAtWeekStart = money.PaidHours;
    }
}
