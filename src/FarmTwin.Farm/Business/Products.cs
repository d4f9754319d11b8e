using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Business;

/// <summary>The goods of a farm by number: its fish, then its crops, then its microgreens.</summary>
/// <remarks>Immutable. A product without a price is given away: it sells without limit for nothing.</remarks>
public sealed class Products
{
    private const string Kilograms = "kg";

    private readonly string[] _units;

    /// <summary>Numbers them.</summary>
    /// <param name="fish">Names of the species.</param>
    /// <param name="crops">Names of the crops and, after them, of the microgreens, and what each is counted in where no price says: kg, heads or trays.</param>
    /// <param name="prices">Prices by name; null where the farm states none.</param>
    /// <param name="known">Names that a price may bear although this farm does not make the thing: those of the library.</param>
    /// <exception cref="DescriptionException">A price names no product, or does not fit what it names.</exception>
    public Products(IReadOnlyList<string> fish, IReadOnlyList<(string Name, string Unit)> crops, PricesDescription? prices, IReadOnlyList<string> known)
    {
        ArgumentNullException.ThrowIfNull(fish);
        ArgumentNullException.ThrowIfNull(crops);
        ArgumentNullException.ThrowIfNull(known);
        Names = [.. fish, .. crops.Select(c => c.Name)];
        _units = [.. fish.Select(_ => Kilograms), .. crops.Select(c => c.Unit)];
        FishCount = fish.Count;
        Prices = [.. Names.Select(n => prices?.Products.GetValueOrDefault(n))];
        foreach ((string name, ProductPrice price) in prices?.Products ?? new Dictionary<string, ProductPrice>())
        {
            int index = Array.IndexOf(Names, name);
            if (index < 0 && known.Contains(name))
            {
                continue;
            }

            if (index < 0)
            {
                throw new DescriptionException(
                    $"prices.products: this farm makes no '{name}'. It makes: {string.Join(", ", Names)}. Name the price after one of them.");
            }

            string unit = price switch
            {
                SoldByHead => "heads",
                SoldByTray => "trays",
                _ => Kilograms,
            };
            if (unit != Kilograms && unit != _units[index])
            {
                throw new DescriptionException($"prices.products.{name}: this is counted in {_units[index]} and cannot be sold by the {unit[..^1]}; "
                    + $"write \"do\": \"sell-by-weight\"{(_units[index] == Kilograms ? string.Empty : $" or \"sell-by-{_units[index][..^1]}\"")} and its price.");
            }

            _units[index] = unit;
        }
    }

    /// <summary>Names.</summary>
    public string[] Names { get; }

    /// <summary>Prices; null where none is stated.</summary>
    public ProductPrice?[] Prices { get; }

    /// <summary>How many products there are.</summary>
    public int Count => Names.Length;

    /// <summary>How many of them, the first, are fish.</summary>
    public int FishCount { get; }

    /// <summary>Whether a product is fish.</summary>
    public bool IsFish(int product) => product < FishCount;

    /// <summary>The product of a crop, or of a kind of microgreens by its place among all that grows.</summary>
    public int OfCrop(int crop) => FishCount + crop;

    /// <summary>The unit in which a product is sold: kg, heads or trays.</summary>
    public string UnitOf(int product) => _units[product];

    /// <summary>What a lot measures in the unit in which it is sold.</summary>
    /// <param name="product">The product.</param>
    /// <param name="pieces">Heads, trays or fish.</param>
    /// <param name="kilograms">Weight.</param>
    public double Measure(int product, double pieces, double kilograms) => UnitOf(product) == Kilograms ? kilograms : pieces;
}
