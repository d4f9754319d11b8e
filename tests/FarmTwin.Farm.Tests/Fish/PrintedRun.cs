using FarmTwin.Farm.Fish;

namespace FarmTwin.Farm.Tests.Fish;

/// <summary>
/// The coarse hourly discretisation with which the Nile cohort was calibrated: in the hour of a meal the whole hour's maintenance
/// is taken at the weight before it, both stages of the lag are emptied one after the other by 1 - exp(-k), and the pools of fish
/// that die vanish. It stands here to show that the equations are the calibrated ones; the product solves them exactly.
/// </summary>
internal static class PrintedRun
{
    public sealed record Result(double Grams, double KilogramsPerCubicMetre, double FeedConversion, double TanPerKilogram, double OxygenPerGram);

    public static Result Run(
        FishParameters parameters, double grams, int days, FishWater water, double survival, double number, IReadOnlyList<int> meals,
        List<double>? tanByHour = null)
    {
        double weight = grams;
        double opening = number * weight;
        double hazard = -Math.Log(survival) / days / 24;
        double release = 1 - Math.Exp(-parameters.StageConstantPerHour);
        double warmth = Feeding.MetabolicTemperatureFactor(parameters, water.TemperatureCelsius);
        double nitrogen = FishLibrary.Feed.GramsPerKilogram.Nitrogen / 1000;
        double uneaten = FishLibrary.Feed.UneatenFraction;
        double a1 = 0, a2 = 0, h1 = 0, h2 = 0, feed = 0, tan = 0, oxygen = 0;
        for (int hour = 0; hour < days * 24; hour++)
        {
            double maintenance = Feeding.MaintenanceGramsPerDay(parameters, weight, water.TemperatureCelsius);
            double resting = parameters.RestingOxygenGramsPerDay * Math.Pow(weight / 1000, 0.8) * warmth / 24;
            double eaten = meals.Contains(hour % 24)
                ? Feeding.AppetiteGramsPerFishDay(parameters, weight, water) / meals.Count
                : 0;
            feed += number * eaten / (1 - uneaten);
            double gain = parameters.ConversionGramsPerGram * (eaten - (maintenance / 24));
            weight += gain;
            a1 += (eaten * nitrogen * parameters.ProteinDigestibility) - parameters.TissueOf(gain).Nitrogen;
            double moved = a1 * release;
            a1 -= moved;
            a2 += moved;
            double excreted = a2 * release;
            a2 -= excreted;
            tan += number * excreted;
            tanByHour?.Add(number * excreted);
            h1 += parameters.FeedingOxygenGramsPerGram * eaten;
            moved = h1 * release;
            h1 -= moved;
            h2 += moved;
            double breathed = h2 * release;
            h2 -= breathed;
            oxygen += number * (resting + breathed);
            number *= Math.Exp(-hazard);
        }

        return new Result(weight, number * weight / 1000, feed / ((number * weight) - opening), 1000 * tan / feed, oxygen / feed);
    }
}
