using FarmTwin.Engine;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Ledgers;

/// <summary>The farm's ledgers: every element, inorganic carbon, oxygen, charge, water and heat, from opening stock to closing stock.</summary>
/// <remarks>
/// The elements' boundary is the farm: water, solids, beads, fish and plants are inside. Inorganic carbon, oxygen, charge and heat
/// are followed in the water alone: organic carbon has no closed path in these equations and is not faked. Amounts are signed here:
/// positive enters. Not thread-safe: one a run.
/// </remarks>
public sealed class FarmBooks
{
    /// <summary>Ledger of inorganic carbon in the water, g C.</summary>
    public const int InorganicCarbon = Element.Count;

    /// <summary>Ledger of oxygen in the water, g.</summary>
    public const int Oxygen = Element.Count + 1;

    /// <summary>Ledger of charge in the water: equivalents of alkalinity.</summary>
    public const int Charge = Element.Count + 2;

    /// <summary>Ledger of water, L, plants included.</summary>
    public const int Water = Element.Count + 3;

    /// <summary>Ledger of heat in the water, MJ above 0 °C.</summary>
    public const int Heat = Element.Count + 4;

    /// <summary>Number of ledgers.</summary>
    public const int Count = Element.Count + 5;

    /// <summary>Names of the ledgers, in their order.</summary>
    public static readonly string[] Names =
        [.. Element.Names, "inorganicCarbon", "oxygen", "charge", "water", "heat"];

    /// <summary>Units of the ledgers, in their order.</summary>
    public static readonly string[] Units = ["g", "g", "g", "g", "g", "g", "g", "g", "g", "g", "g", "eq", "L", "MJ"];

    private static readonly double[] ChargePerGram = IonSums.AlkalinityPerGram.ToArray();

    private readonly LedgerBook _book = new(Names, Door.Names);

    /// <summary>A ledger.</summary>
    public Ledger this[int ledger] => _book[ledger];

    /// <summary>Books what crosses the farm's boundary; positive enters.</summary>
    public void Post(int door, int ledger, double amount)
    {
        if (amount >= 0)
        {
            _book.In(door, ledger, amount);
        }
        else
        {
            _book.Out(door, ledger, -amount);
        }
    }

    /// <summary>Books all elements of what enters the farm (sign +1) or leaves it (−1).</summary>
    public void PostElements(int door, in ElementGrams elements, int sign)
    {
        for (int e = 0; e < Element.Count; e++)
        {
            Post(door, e, sign * elements[e]);
        }
    }

    /// <summary>Books what comes into the water (positive) as a dissolved substance: its charge, and carbon or oxygen where it is that.</summary>
    public void PostWater(int door, int substance, double grams)
    {
        if (ChargePerGram[substance] != 0)
        {
            Post(door, Charge, grams * ChargePerGram[substance]);
        }
        else if (substance == Substance.Oxygen)
        {
            Post(door, Oxygen, grams);
        }
        else if (substance == Substance.InorganicCarbon)
        {
            Post(door, InorganicCarbon, grams);
        }
    }

    /// <summary>Books a dissolved substance that comes into the water from outside the farm (positive) or leaves it.</summary>
    public void PostWaterFromOutside(int door, int substance, double grams)
    {
        PostWater(door, substance, grams);
        int element = ElementOf(substance);
        if (element >= 0)
        {
            Post(door, element, grams);
        }
    }

    /// <summary>The element that a substance counts as; -1 for oxygen, carbon and dry matter.</summary>
    public static int ElementOf(int substance) => substance switch
    {
        Substance.Tan or Substance.Nitrite or Substance.Nitrate => Element.Nitrogen,
        Substance.Phosphorus => Element.Phosphorus,
        Substance.Potassium => Element.Potassium,
        Substance.Calcium => Element.Calcium,
        Substance.Magnesium => Element.Magnesium,
        Substance.Sodium => Element.Sodium,
        Substance.Chloride => Element.Chloride,
        Substance.Sulfate => Element.Sulfur,
        >= Substance.Iron and <= Substance.LastDissolved => Element.Iron,
        >= Substance.FirstSolidsElement and < Substance.FirstSolidsElement + Element.Count => substance - Substance.FirstSolidsElement,
        _ => -1,
    };

    /// <summary>The water's part of every stock, added to <paramref name="stocks"/>.</summary>
    public static void AddWaterStocks(Basins basins, Span<double> stocks)
    {
        ArgumentNullException.ThrowIfNull(basins);
        for (int b = 0; b < basins.Count; b++)
        {
            for (int substance = 0; substance < Substance.Columns; substance++)
            {
                double grams = basins.Grams[WaterStep.At(b, substance)];
                int element = ElementOf(substance);
                if (element >= 0)
                {
                    stocks[element] += grams;
                }

                stocks[Charge] += grams * ChargePerGram[substance];
            }

            stocks[InorganicCarbon] += basins.Grams[WaterStep.At(b, Substance.InorganicCarbon)];
            stocks[Oxygen] += basins.Grams[WaterStep.At(b, Substance.Oxygen)];
            stocks[Water] += basins.Litres[b];
            stocks[Heat] += MegajoulesOf(basins.Litres[b], basins.Celsius[b]);
        }
    }

    /// <summary>Heat of water above 0 °C, MJ.</summary>
    public static double MegajoulesOf(double litres, double celsius) => litres * celsius * HeatBalance.JoulesPerLitreKelvin * 1e-6;

    /// <summary>Sets the opening stocks.</summary>
    public void Open(ReadOnlySpan<double> stocks)
    {
        for (int ledger = 0; ledger < Count; ledger++)
        {
            _book[ledger].OpeningStock = stocks[ledger];
        }
    }

    /// <summary>Takes over the state of another set of books.</summary>
    public void CopyFrom(FarmBooks other)
    {
        ArgumentNullException.ThrowIfNull(other);
        _book.CopyFrom(other._book);
    }
}
