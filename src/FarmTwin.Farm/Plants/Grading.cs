using FarmTwin.Engine.Chance;

namespace FarmTwin.Farm.Plants;

/// <summary>Heads of a harvest by grade, and why heads are not first grade.</summary>
/// <param name="FirstHeads">First grade.</param>
/// <param name="FirstGrams">Their fresh weight, g.</param>
/// <param name="SecondHeads">Second grade.</param>
/// <param name="SecondGrams">Their fresh weight, g.</param>
/// <param name="UnsaleableHeads">Unsaleable.</param>
/// <param name="UnsaleableGrams">Their fresh weight, g.</param>
/// <param name="Light">Not first grade because too light.</param>
/// <param name="Heavy">Because too heavy for one head.</param>
/// <param name="TipBurn">Because of tip burn.</param>
/// <param name="Heat">Because scorched.</param>
/// <param name="Bolted">Because bolted.</param>
/// <param name="Cold">Because spoilt by cold.</param>
/// <param name="Other">For other reasons.</param>
public readonly record struct HeadGrades(
    double FirstHeads,
    double FirstGrams,
    double SecondHeads,
    double SecondGrams,
    double UnsaleableHeads,
    double UnsaleableGrams,
    double Light,
    double Heavy,
    double TipBurn,
    double Heat,
    double Bolted,
    double Cold,
    double Other)
{
    /// <summary>Share of the fresh weight that can be sold.</summary>
    public double SaleableShare => FirstGrams + SecondGrams + UnsaleableGrams is > 0 and var all ? (FirstGrams + SecondGrams) / all : 0;
}

/// <summary>Sorts the heads of a harvest.</summary>
/// <remarks>
/// Heads of one board scatter about their mean by the normal curve. A head is first grade from the low end of the saleable band up to the
/// heaviest that sells as one head, if it is sound; lighter (down to a least), heavier, tip-burnt and scorched heads are second grade;
/// bolted and cold-spoilt heads, the lightest, and a constant share for all else are unsaleable.
/// </remarks>
public static class Grading
{
    /// <summary>Sorts a harvest.</summary>
    /// <param name="harvest">The heads.</param>
    /// <param name="crop">Their crop.</param>
    /// <param name="grades">Its grades; none where it has no file.</param>
    /// <param name="heaviestFirst">A heaviest first-grade head other than the crop's, g.</param>
    /// <param name="bunched">Whether leaves are sold in bunches by weight, so that no plant is too light or too heavy.</param>
    public static HeadGrades Of(PlantLot harvest, CropParameters crop, CropGrades? grades, double? heaviestFirst = null, bool bunched = false)
    {
        ArgumentNullException.ThrowIfNull(harvest);
        ArgumentNullException.ThrowIfNull(crop);
        double heads = harvest.Plants;
        double mean = harvest.FreshShootGramsPerPlant(crop);
        double other = heads * crop.UnsaleableShare;
        if (grades is null || heads <= 0 || mean <= 0)
        {
            return new HeadGrades(heads - other, (heads - other) * mean, 0, 0, other, other * mean, 0, 0, 0, 0, 0, 0, other);
        }

        PlantDamage damage = harvest.Damage;
        double left = heads - other;
        double bolted = left * grades.BoltedShare(damage.BoltingDegreeDays);
        left -= bolted;
        double cold = left * damage.ChilledShare;
        left -= cold;

        double least = Math.Min(grades.LightestSecondGrams, crop.SaleableFreshGramsLow);
        double most = Math.Max(heaviestFirst ?? grades.HeaviestFirstGrams, crop.SaleableFreshGramsLow);
        (double tooLight, double tooLightMean) = Band(mean, grades.HeadSpread, 0, least);
        (double light, double lightMean) = Band(mean, grades.HeadSpread, least, crop.SaleableFreshGramsLow);
        (double fit, double fitMean) = Band(mean, grades.HeadSpread, crop.SaleableFreshGramsLow, most);
        if (bunched)
        {
            (tooLight, tooLightMean, light, lightMean, fit, fitMean) = (0, 0, 0, 0, 1, mean);
        }

        double heavy = Math.Max(0, 1 - tooLight - light - fit);
        double heavyMean = Math.Max(0, mean - tooLightMean - lightMean - fitMean);

        double burnt = left * fit * damage.TipBurnShare;
        double scorched = left * fit * (1 - damage.TipBurnShare) * damage.ScorchedShare;
        double sound = (1 - damage.TipBurnShare) * (1 - damage.ScorchedShare);
        return new HeadGrades(
            left * fit * sound,
            left * fitMean * sound,
            left * ((fit * (1 - sound)) + light + heavy),
            left * ((fitMean * (1 - sound)) + lightMean + heavyMean),
            other + bolted + cold + (left * tooLight),
            ((other + bolted + cold) * mean) + (left * tooLightMean),
            left * (light + tooLight),
            left * heavy,
            burnt,
            scorched,
            bolted,
            cold,
            other);
    }

    private static double Height(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);

    // Share of heads between two weights, and what they add to the mean weight, g.
    private static (double Share, double Grams) Band(double mean, double spread, double from, double to)
    {
        double deviation = spread * mean;
        double low = from > 0 ? (from - mean) / deviation : double.NegativeInfinity;
        double high = (to - mean) / deviation;
        double share = NormalDistribution.Below(high) - (from > 0 ? NormalDistribution.Below(low) : 0);
        double grams = (mean * share) - (deviation * (Height(high) - (from > 0 ? Height(low) : 0)));
        return (Math.Max(0, share), Math.Max(0, grams));
    }
}
