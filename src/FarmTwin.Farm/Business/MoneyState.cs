using FarmTwin.Engine;

namespace FarmTwin.Farm.Business;

/// <summary>Money: the ledger by account, cash at hand, and how far each running cost has been paid. Copied whole for a snapshot.</summary>
/// <remarks>Cash is kept apart from the ledger's postings; the two must agree.</remarks>
public sealed class MoneyState
{
    /// <summary>Makes the state of a farm that has paid nothing.</summary>
    /// <param name="accounts">The accounts.</param>
    public MoneyState(Accounts accounts)
    {
        ArgumentNullException.ThrowIfNull(accounts);
        Ledger = new Ledger("money", [.. accounts.All.Select(a => a.Name)]) { OpeningStock = accounts.OpeningCash };
        Cash = accounts.OpeningCash;
        LowestCash = Cash;
        PaidTotal = new double[accounts.All.Count];
    }

    /// <summary>Income and costs by account, from opening to closing cash.</summary>
    public Ledger Ledger { get; }

    /// <summary>Cash at hand.</summary>
    public double Cash { get; private set; }

    /// <summary>The lowest cash of any day's end.</summary>
    public double LowestCash { get; private set; }

    /// <summary>Day of the lowest cash.</summary>
    public double LowestCashDay { get; private set; }

    /// <summary>The total of each running cost that is paid, in its own unit.</summary>
    public double[] PaidTotal { get; }

    /// <summary>Days that were closed.</summary>
    public double DaysClosed { get; set; }

    /// <summary>Hours that were paid for.</summary>
    public double PaidHours { get; set; }

    /// <summary>Hours worked when the week began.</summary>
    public double HoursAtWeekStart { get; set; }

    /// <summary>Hours paid for when the week began.</summary>
    public double PaidHoursAtWeekStart { get; set; }

    /// <summary>Takes money in.</summary>
    public void Receive(int account, double amount)
    {
        Ledger.In(account, amount);
        Cash += amount;
    }

    /// <summary>Pays.</summary>
    public void Pay(int account, double amount)
    {
        Ledger.Out(account, amount);
        Cash -= amount;
    }

    /// <summary>Notes the cash of a day's end.</summary>
    public void NoteCash(double day)
    {
        if (Cash < LowestCash)
        {
            LowestCash = Cash;
            LowestCashDay = day;
        }
    }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(MoneyState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Ledger.CopyFrom(other.Ledger);
        Cash = other.Cash;
        LowestCash = other.LowestCash;
        LowestCashDay = other.LowestCashDay;
        other.PaidTotal.CopyTo(PaidTotal, 0);
        DaysClosed = other.DaysClosed;
        PaidHours = other.PaidHours;
        HoursAtWeekStart = other.HoursAtWeekStart;
        PaidHoursAtWeekStart = other.PaidHoursAtWeekStart;
    }
}
