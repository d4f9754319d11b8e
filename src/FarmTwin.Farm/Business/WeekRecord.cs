using FarmTwin.Engine;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Business;

/// <summary>A row a week: hours by chore; of every product what was sold, what waits and what was not sold; income, costs and cash.</summary>
/// <remarks>Weeks are counted from day 0; a broken last week has no row. Money has columns only where prices are stated.</remarks>
public sealed class WeekRecord
{
    private readonly List<RecordedColumn> _columns = [];
    private readonly List<Func<double>> _values = [];
    private readonly double[] _marks;

    /// <summary>Prepares the record of a season.</summary>
    public WeekRecord(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        FarmState state = farm.State;
        FarmParts parts = farm.Parts;
        foreach (ChoreKind kind in ChoreTimes.Kinds)
        {
            Sum(ChoreColumn(kind), "h", () => state.Labour.HoursOf(kind.Chore));
        }

        Sum("hours_h", "h", () => state.Labour.Hours);
        for (int p = 0; p < parts.Products.Count; p++)
        {
            int product = p;
            string name = parts.Products.Names[p];
            string unit = parts.Products.UnitOf(p);
            Sum(SoldColumn(parts.Products, p), unit, () => state.Trade.Sold[product]);
            Sum(UnsoldColumn(parts.Products, p), unit, () => state.Trade.Unsold[product]);
            Instant($"waiting_{name}_{unit}", unit, () => Waiting(farm, product));
        }

        if (parts.Farm.Prices is not null)
        {
            AddMoney(state, parts);
        }

        Weeks = new Recorder([.. _columns], (int)(parts.Farm.LengthDays / UnitConstants.DaysPerWeek) + 1);
        _marks = new double[_columns.Count];
    }

    /// <summary>The table.</summary>
    public Recorder Weeks { get; }

    /// <summary>A copy of a column by its name.</summary>
    /// <exception cref="ArgumentException">There is no such column.</exception>
    public double[] Column(string name) => Weeks.Column(Weeks.ColumnIndex(name));

    /// <summary>The column of a chore's hours.</summary>
    public static string ChoreColumn(ChoreKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return $"{kind.Key}_h";
    }

    /// <summary>The column of what was sold of a product.</summary>
    public static string SoldColumn(Products products, int product)
    {
        ArgumentNullException.ThrowIfNull(products);
        return $"sold_{products.Names[product]}_{products.UnitOf(product)}";
    }

    /// <summary>The column of what went to compost unsold of a product.</summary>
    public static string UnsoldColumn(Products products, int product)
    {
        ArgumentNullException.ThrowIfNull(products);
        return $"unsold_{products.Names[product]}_{products.UnitOf(product)}";
    }

    /// <summary>The column of what was paid from an account.</summary>
    public static string CostColumn(Account account)
    {
        ArgumentNullException.ThrowIfNull(account);
        return $"cost_{account.Name.Replace(' ', '_')}";
    }

    /// <summary>Ends a week.</summary>
    public void Close()
    {
        for (int i = 0; i < _columns.Count; i++)
        {
            double now = _values[i]();
            bool sum = _columns[i].Kind == ColumnKind.Sum;
            Weeks.Accumulate(i, sum ? now - _marks[i] : now, 0);
            _marks[i] = now;
        }

        Weeks.CloseRow();
    }

    /// <summary>Takes over another record.</summary>
    public void CopyFrom(WeekRecord other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Weeks.CopyFrom(other.Weeks);
        other._marks.CopyTo(_marks, 0);
    }

    private void AddMoney(FarmState state, FarmParts parts)
    {
        for (int a = 0; a < parts.Accounts.All.Count; a++)
        {
            int door = a;
            Account account = parts.Accounts.All[a];
            if (account.Centre == CostCentre.Sales)
            {
                Sum($"income_{account.Name["sales ".Length..]}", "money", () => state.Money.Ledger.TotalInBy(door));
            }
            else if (account.Price > 0)
            {
                Sum(CostColumn(account), "money", () => state.Money.Ledger.TotalOutBy(door));
            }
        }

        Sum("income", "money", () => state.Money.Ledger.TotalIn);
        Sum("costs", "money", () => state.Money.Ledger.TotalOut);
        Instant("cash", "money", () => state.Money.Cash);
    }

    private static double Waiting(FarmContext farm, int product)
    {
        double amount = 0;
        foreach (ProduceLot lot in farm.State.Trade.Store[product])
        {
            amount += farm.Parts.Products.Measure(product, lot.Pieces, lot.Kilograms);
        }

        return amount;
    }

    private void Sum(string name, string unit, Func<double> value) => Add(name, unit, ColumnKind.Sum, value);

    private void Instant(string name, string unit, Func<double> value) => Add(name, unit, ColumnKind.Instant, value);

    private void Add(string name, string unit, ColumnKind kind, Func<double> value)
    {
        _columns.Add(new RecordedColumn(name, unit, kind));
        _values.Add(value);
    }
}
