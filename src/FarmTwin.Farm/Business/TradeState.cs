namespace FarmTwin.Farm.Business;

/// <summary>What was offered, sold and left unsold of every product, and the goods in the cold store. Copied whole for a snapshot.</summary>
/// <remarks>Amounts are in the unit in which a product is sold (see <see cref="Products.UnitOf"/>).</remarks>
public sealed class TradeState
{
    /// <summary>Makes the state of a farm that has sold nothing.</summary>
    /// <param name="products">Number of products.</param>
    public TradeState(int products)
    {
        Store = new List<ProduceLot>[products];
        for (int p = 0; p < products; p++)
        {
            Store[p] = [];
        }

        Offered = new double[products];
        Sold = new double[products];
        SoldKilograms = new double[products];
        SoldThisWeek = new double[products];
        Unsold = new double[products];
        Income = new double[products];
        FirstSaleDay = new double[products];
        Array.Fill(FirstSaleDay, double.NaN);
    }

    /// <summary>Goods that wait, oldest first, by product.</summary>
    public List<ProduceLot>[] Store { get; }

    /// <summary>Harvested and offered for sale.</summary>
    public double[] Offered { get; }

    /// <summary>Sold.</summary>
    public double[] Sold { get; }

    /// <summary>Weight of what was sold, kg.</summary>
    public double[] SoldKilograms { get; }

    /// <summary>Sold since the week began.</summary>
    public double[] SoldThisWeek { get; }

    /// <summary>Kept as long as it would and gone to compost.</summary>
    public double[] Unsold { get; }

    /// <summary>Income.</summary>
    public double[] Income { get; }

    /// <summary>Day of the first sale; not a number before.</summary>
    public double[] FirstSaleDay { get; }

    /// <summary>Last day on which goods were packed and driven off; not a number before.</summary>
    public double LastTripDay { get; set; } = double.NaN;

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(TradeState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        for (int p = 0; p < Store.Length; p++)
        {
            Store[p].Clear();
            foreach (ProduceLot lot in other.Store[p])
            {
                Store[p].Add(lot.Clone());
            }
        }

        LastTripDay = other.LastTripDay;
        other.Offered.CopyTo(Offered, 0);
        other.Sold.CopyTo(Sold, 0);
        other.SoldKilograms.CopyTo(SoldKilograms, 0);
        other.SoldThisWeek.CopyTo(SoldThisWeek, 0);
        other.Unsold.CopyTo(Unsold, 0);
        other.Income.CopyTo(Income, 0);
        other.FirstSaleDay.CopyTo(FirstSaleDay, 0);
    }
}
