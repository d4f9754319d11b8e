using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Water;

/// <summary>What a litre of source water carries, charges balanced to its alkalinity.</summary>
/// <remarks>
/// Measured ions rarely balance. Chloride that is not given is set so that they do; where it would be negative, sodium is raised
/// instead: a measured alkalinity is the better figure. Immutable.
/// </remarks>
public sealed class SourceWaterComposition
{
    private SourceWaterComposition(double[] gramsPerLitre, double celsius)
    {
        GramsPerLitre = gramsPerLitre;
        Celsius = celsius;
    }

    /// <summary>Grams a litre of each substance, [<see cref="Substance.Columns"/>].</summary>
    public double[] GramsPerLitre { get; }

    /// <summary>Temperature, °C.</summary>
    public double Celsius { get; }

    /// <summary>Works out a source water.</summary>
    public static SourceWaterComposition Of(SourceWaterDescription water)
    {
        ArgumentNullException.ThrowIfNull(water);
        var grams = new double[Substance.Columns];
        const double perGram = UnitConstants.GramsPerKilogram;
        grams[Substance.Calcium] = water.CalciumMilligramsPerLitre / perGram;
        grams[Substance.Magnesium] = water.MagnesiumMilligramsPerLitre / perGram;
        grams[Substance.Potassium] = water.PotassiumMilligramsPerLitre / perGram;
        grams[Substance.Sodium] = water.SodiumMilligramsPerLitre / perGram;
        grams[Substance.Sulfate] = water.SulfateMilligramsSulfurPerLitre / perGram;
        grams[Substance.Nitrate] = water.NitrateMilligramsNPerLitre / perGram;
        grams[Substance.Chloride] = (water.ChlorideMilligramsPerLitre ?? 0) / perGram;
        double wanted = Alkalinity.EquivalentsFromCalciumCarbonate(water.AlkalinityMilligramsPerLitre);
        double excess = Alkalinity.EquivalentsPerLitre(Basins.IonsOf(grams, 1)) - wanted;
        if (excess > 0 && water.ChlorideMilligramsPerLitre is null)
        {
            grams[Substance.Chloride] += excess * UnitConstants.AtomicWeight.Chlorine;
        }
        else if (excess > 0)
        {
            grams[Substance.Sulfate] += excess / 2 * UnitConstants.AtomicWeight.Sulfur;
        }
        else
        {
            grams[Substance.Sodium] -= excess * UnitConstants.AtomicWeight.Sodium;
        }

        Ions ions = Basins.IonsOf(grams, 1);
        CarbonateConstants constants = CarbonateConstants.At(water.TemperatureCelsius);
        grams[Substance.InorganicCarbon] = UnitConstants.AtomicWeight.Carbon * CarbonateSystem.InorganicCarbonForPH(
            wanted, water.PH, ions.P, ions.TAN, constants, IonicStrength.MolesPerLitre(ions));
        grams[Substance.Oxygen] = OxygenSaturation.MilligramsPerLitre(water.TemperatureCelsius, 1) / perGram;
        return new SourceWaterComposition(grams, water.TemperatureCelsius);
    }
}
