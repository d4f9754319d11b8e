using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;

namespace FarmTwin.Farm.Water;

/// <summary>Alkalinity and ionic strength straight from a basin's dissolved columns, as weighted sums: <see cref="Alkalinity"/> and
/// <see cref="IonicStrength"/> without the way over <see cref="Ions"/>.</summary>
internal static class IonSums
{
    private const int Dissolved = Substance.LastDissolved + 1;

    private static readonly double[] Equivalents = EquivalentsPerGram();

    // z² / atomic weight.
    private static readonly double[] Strength = [.. Equivalents.Select((e, substance) => Math.Abs(e) * Charge(substance))];

    /// <summary>Alkalinity that a gram of each column carries, eq/g, [<see cref="Substance.Columns"/>].</summary>
    public static ReadOnlySpan<double> AlkalinityPerGram => Equivalents;

    /// <summary>Alkalinity, eq/L, and ionic strength, mol/L.</summary>
    /// <param name="dissolved">The dissolved columns, g or g/L.</param>
    /// <param name="perLitre">1/L for grams, 1 for g/L.</param>
    public static (double Alkalinity, double IonicStrength) Of(ReadOnlySpan<double> dissolved, double perLitre)
    {
        Vector256<double> alkalinity = Vector256<double>.Zero;
        Vector256<double> strength = Vector256<double>.Zero;
        for (int i = 0; i < Dissolved; i += Fours.Width)
        {
            Vector256<double> grams = Vector256.Create(dissolved[i..]);
            alkalinity += grams * Vector256.Create(Equivalents, i);
            strength += grams * Vector256.Create(Strength, i);
        }

        double equivalents = FourFunctions.Sum(alkalinity) * perLitre;
        return (equivalents, 0.5 * ((FourFunctions.Sum(strength) * perLitre) + Math.Abs(equivalents)));
    }

    private static double Charge(int substance) => substance is Substance.Calcium or Substance.Magnesium or Substance.Sulfate ? 2 : 1;

    // Alkalinity in the explicit conservative form (Wolf-Gladrow et al. 2007): the signs and charges of Alkalinity.
    private static double[] EquivalentsPerGram()
    {
        var charge = new double[Substance.Columns];
        charge[Substance.Sodium] = 1 / UnitConstants.AtomicWeight.Sodium;
        charge[Substance.Potassium] = 1 / UnitConstants.AtomicWeight.Potassium;
        charge[Substance.Calcium] = 2 / UnitConstants.AtomicWeight.Calcium;
        charge[Substance.Magnesium] = 2 / UnitConstants.AtomicWeight.Magnesium;
        charge[Substance.Tan] = 1 / UnitConstants.AtomicWeight.Nitrogen;
        charge[Substance.Chloride] = -1 / UnitConstants.AtomicWeight.Chlorine;
        charge[Substance.Nitrate] = -1 / UnitConstants.AtomicWeight.Nitrogen;
        charge[Substance.Nitrite] = -1 / UnitConstants.AtomicWeight.Nitrogen;
        charge[Substance.Sulfate] = -2 / UnitConstants.AtomicWeight.Sulfur;
        charge[Substance.Phosphorus] = -1 / UnitConstants.AtomicWeight.Phosphorus;
        return charge;
    }
}
