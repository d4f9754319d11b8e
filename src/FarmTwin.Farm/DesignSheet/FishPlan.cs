using FarmTwin.Farm.Description;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Fish of one batch in a tank on a day.</summary>
/// <param name="Batch">Index of the planned batch.</param>
/// <param name="Tank">Index of its basin.</param>
/// <param name="Number">Fish.</param>
/// <param name="Grams">Mean weight, g.</param>
public readonly record struct StandingFish(int Batch, int Tank, double Number, double Grams)
{
    /// <summary>Their weight, kg.</summary>
    public double Kilograms => Number * Grams / UnitConstants.GramsPerKilogram;
}

/// <summary>One delivery of a batch, from its tank to the last sale.</summary>
/// <param name="Batch">Index of the planned batch.</param>
/// <param name="DeliveredDay">Day on which it comes into its tank, after quarantine.</param>
/// <param name="FirstSaleDay">Day of the first sale; null where it lies beyond the season.</param>
/// <param name="EmptyDay">Day on which the last were sold; null where it lies beyond the season.</param>
public readonly record struct BatchCourse(int Batch, double DeliveredDay, double? FirstSaleDay, double? EmptyDay);

/// <summary>The plan of the fish carried out in fair water, day by day: appetite, gain and sale as planned, no deaths, no chance.</summary>
/// <remarks>
/// Growth, spread and sale of the largest are the season's own (<see cref="Feeding"/>, <see cref="Metabolism"/>, <see cref="SizeSpread"/>),
/// a day at a time and a sale every seventh day of a batch.
/// </remarks>
public sealed class FishPlan
{
    private readonly List<StandingFish>[] _days;
    private readonly double[] _feedGrams;

    /// <summary>Carries it out.</summary>
    /// <param name="parts">The farm.</param>
    /// <param name="water">The fair water.</param>
    /// <param name="cycledDay">Day on which the filter is taken to be ready.</param>
    public FishPlan(FarmParts parts, in FishWater water, double cycledDay)
    {
        ArgumentNullException.ThrowIfNull(parts);
        FishWater fair = water;
        int days = (int)Math.Ceiling(parts.Farm.LengthDays);
        _days = [.. Enumerable.Range(0, days).Select(_ => new List<StandingFish>())];
        _feedGrams = new double[days];
        Courses = [.. Enumerable.Range(0, parts.Stocking.Length).SelectMany(CoursesOf)];
        Capped = parts.Farm.Feeding.MostKilogramsPerDay is { } most && _feedGrams.Any(f => f > most * UnitConstants.GramsPerKilogram);
        IEnumerable<BatchCourse> CoursesOf(int batch)
        {
            StockingDescription plan = parts.Stocking[batch];
            double? round = Math.Ceiling(plan.AfterDays + (plan.WaitForCycle ? cycledDay : 0));
            while (round < days)
            {
                // Each delivery is a cohort of its own; the tank is restocked when the last of them is sold.
                var courses = new List<BatchCourse>();
                for (int delivery = 0; delivery < plan.Deliveries; delivery++)
                {
                    double inTank = round.Value + (delivery * plan.DeliveriesEveryDays) + (plan.Quarantine?.Days ?? 0);
                    if (inTank < days)
                    {
                        courses.Add(Grow(parts, batch, (int)inTank, (double)plan.Number / plan.Deliveries, fair));
                        yield return courses[^1];
                    }
                }

                round = courses.Count == plan.Deliveries && courses.TrueForAll(c => c.EmptyDay is not null)
                    ? courses.Max(c => c.EmptyDay) + plan.RestockAfterDays
                    : null;
            }
        }
    }

    /// <summary>Every delivery of every batch.</summary>
    public IReadOnlyList<BatchCourse> Courses { get; }

    /// <summary>Whether the plan would feed more than its own limit on some day; the sheet is reckoned without the limit.</summary>
    public bool Capped { get; }

    /// <summary>Days of the plan.</summary>
    public int Days => _days.Length;

    /// <summary>The fish of a day.</summary>
    public IReadOnlyList<StandingFish> At(int day) => _days[day];

    /// <summary>Feed given on a day, g.</summary>
    public double FeedGrams(int day) => _feedGrams[day];

    /// <summary>Fish of a tank on a day, kg.</summary>
    public double Kilograms(int tank, int day) => _days[day].Where(f => f.Tank == tank).Sum(f => f.Kilograms);

    /// <summary>The day on which a tank is fullest.</summary>
    public int FullestDay(int tank) => Enumerable.Range(0, Days).MaxBy(d => Kilograms(tank, d));

    /// <summary>The day on which most is fed.</summary>
    public int BusiestDay => Enumerable.Range(0, Days).MaxBy(FeedGrams);

    // One round, day by day; what stands in the morning of each day is written down.
    private BatchCourse Grow(FarmParts parts, int batch, int delivered, double number, in FishWater water)
    {
        StockingDescription plan = parts.Stocking[batch];
        FishParameters species = parts.Species[parts.SpeciesOfStocking[batch]];
        FeedingDescription feeding = parts.Farm.Feeding;
        int tank = parts.BasinIndex(plan.Tank);
        var cohort = new Cohort(parts.StockingNames[batch], 0, number, plan.MeanGrams, plan.CoefficientOfVariation, 0);
        double? firstSale = null;
        for (int day = delivered; day < Days; day++)
        {
            int age = day - delivered;
            double settled = feeding.SettleInDays > 0 ? Math.Min(1, age / feeding.SettleInDays) : 1;
            double ration = feeding.RationShare * (feeding.FirstRationShare + ((1 - feeding.FirstRationShare) * settled));
            double offered = ration * Feeding.SatiationGramsPerDay(cohort, species, feeding.UneatenShare, water);
            _days[day].Add(new StandingFish(batch, tank, cohort.Number, cohort.MeanGrams));
            _feedGrams[day] += offered;
            Feeding.Meal(cohort, species, parts.FeedOfStocking[batch], offered, 1, feeding.UneatenShare, water);
            Metabolism.Step(cohort, species, UnitConstants.HoursPerDay, water);
            if ((age + 1) % (int)UnitConstants.DaysPerWeek != 0)
            {
                continue;
            }

            double ready = cohort.Number * SizeSpread.ShareAbove(cohort.MeanGrams, cohort.CoefficientOfVariation, plan.SellFromGrams);
            double lot = Math.Floor(Math.Min(plan.LotPerWeek, ready));
            if (lot >= 1)
            {
                firstSale ??= day + 1;
                SizeSpread.TopHarvestNumber(cohort, species, lot);
            }

            if (cohort.Number <= plan.ClearBelow && cohort.MeanGrams >= plan.SellFromGrams / 2)
            {
                return new BatchCourse(batch, delivered, firstSale ?? (day + 1), day + 1);
            }
        }

        return new BatchCourse(batch, delivered, firstSale, null);
    }
}
