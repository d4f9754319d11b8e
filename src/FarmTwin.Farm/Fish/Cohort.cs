namespace FarmTwin.Farm.Fish;

/// <summary>One group of fish of one age in one tank: all that changes about it.</summary>
/// <remarks>
/// <para>Numbers are expected values, hence real. The pools are grams of the WHOLE cohort, so that fish which die, are sold or
/// are moved take their share along and nothing is lost; they are not per fish.</para>
/// <para>Not thread safe; <see cref="Clone"/> and <see cref="CopyFrom"/> serve snapshots. All-male stock is meant: no spawning.</para>
/// </remarks>
public sealed class Cohort
{
    /// <summary>Makes a cohort at the moment of stocking.</summary>
    /// <param name="name">The user's name for it.</param>
    /// <param name="speciesIndex">Index of its species among the farm's fish parameters.</param>
    /// <param name="number">Fish, at least 0.</param>
    /// <param name="meanGrams">Mean live weight, g, above 0.</param>
    /// <param name="coefficientOfVariation">Standard deviation of weight over its mean, at least 0 (0.10–0.15 after grading).</param>
    /// <param name="stockedAtSecond">Simulated time of stocking, s.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number, weight or spread outside its range.</exception>
    public Cohort(string name, int speciesIndex, double number, double meanGrams, double coefficientOfVariation, long stockedAtSecond)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(number);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(meanGrams);
        ArgumentOutOfRangeException.ThrowIfNegative(coefficientOfVariation);
        Name = name;
        SpeciesIndex = speciesIndex;
        Number = number;
        MeanGrams = meanGrams;
        CoefficientOfVariation = coefficientOfVariation;
        StockedAtSecond = stockedAtSecond;
        StockedNumber = number;
        StockedGrams = number * meanGrams;
    }

    /// <summary>The user's name for it.</summary>
    public string Name { get; private set; }

    /// <summary>Index of its species among the farm's fish parameters.</summary>
    public int SpeciesIndex { get; private set; }

    /// <summary>Simulated time of stocking, s.</summary>
    public long StockedAtSecond { get; private set; }

    /// <summary>Living fish (expected, hence real).</summary>
    public double Number { get; set; }

    /// <summary>Which planned batch it belongs to, and is sold by; −1 for none.</summary>
    public int Batch { get; set; } = -1;

    /// <summary>Mean live weight, g a fish.</summary>
    public double MeanGrams { get; set; }

    /// <summary>Standard deviation of weight over its mean; weights are lognormal.</summary>
    public double CoefficientOfVariation { get; set; }

    /// <summary>Digested nitrogen not yet excreted, first stage, g N of the whole cohort.</summary>
    public double DissolvedNitrogenFirstStageGrams { get; set; }

    /// <summary>Digested nitrogen not yet excreted, second stage, g N of the whole cohort.</summary>
    public double DissolvedNitrogenSecondStageGrams { get; set; }

    /// <summary>Oxygen still to be breathed for meals eaten, first stage, g O2 of the whole cohort.</summary>
    public double FeedingOxygenFirstStageGrams { get; set; }

    /// <summary>Oxygen still to be breathed for meals eaten, second stage, g O2 of the whole cohort.</summary>
    public double FeedingOxygenSecondStageGrams { get; set; }

    /// <summary>Hours of raised mortality left after the last grading or move.</summary>
    public double HandlingHoursLeft { get; set; }

    /// <summary>Death rate of the last move's shock while those hours last, 1/h.</summary>
    public double ShockHazardPerHour { get; set; }

    /// <summary>Day on which it is due to leave quarantine; not a number where it is in none.</summary>
    public double LeavesQuarantineDay { get; set; } = double.NaN;

    /// <summary>Fish that died of something that neither base mortality nor handling explains.</summary>
    public double UnexplainedNumber { get; set; }

    /// <summary>The same when whoever watches the quarantine last looked.</summary>
    public double UnexplainedSeen { get; set; }

    /// <summary>Fish stocked.</summary>
    public double StockedNumber { get; set; }

    /// <summary>Live weight stocked, g.</summary>
    public double StockedGrams { get; set; }

    /// <summary>Feed offered so far, g as fed.</summary>
    public double FedGrams { get; set; }

    /// <summary>Feed eaten so far, g as fed.</summary>
    public double EatenGrams { get; set; }

    /// <summary>Live weight gained so far less what fasting took, g; that of fish since dead or sold included.</summary>
    public double GainedGrams { get; set; }

    /// <summary>Fish that died.</summary>
    public double DiedNumber { get; set; }

    /// <summary>Live weight that died, g.</summary>
    public double DiedGrams { get; set; }

    /// <summary>Fish harvested.</summary>
    public double HarvestedNumber { get; set; }

    /// <summary>Live weight harvested, g.</summary>
    public double HarvestedGrams { get; set; }

    /// <summary>Fish moved to another cohort by grading or splitting.</summary>
    public double MovedNumber { get; set; }

    /// <summary>Live weight moved to another cohort, g.</summary>
    public double MovedGrams { get; set; }

    /// <summary>The step that is being solved, between the process's contribution and its commitment; no state.</summary>
    internal MetabolicStep Underway { get; set; }

    /// <summary>Living weight of the whole cohort, g.</summary>
    public double BiomassGrams => Number * MeanGrams;

    /// <summary>Everything the living fish hold: tissue content times weight, and the nitrogen digested but not yet excreted.</summary>
    public ElementGrams Elements(FishParameters parameters)
    {
        ElementGrams tissue = parameters.TissueOf(BiomassGrams);
        return tissue.WithNitrogen(tissue.Nitrogen + DissolvedNitrogenFirstStageGrams + DissolvedNitrogenSecondStageGrams);
    }

    /// <summary>A copy that shares nothing with this one.</summary>
    public Cohort Clone() => (Cohort)MemberwiseClone();

    /// <summary>Takes over every value of another cohort.</summary>
    public void CopyFrom(Cohort other)
    {
        Name = other.Name;
        SpeciesIndex = other.SpeciesIndex;
        StockedAtSecond = other.StockedAtSecond;
        Number = other.Number;
        Batch = other.Batch;
        MeanGrams = other.MeanGrams;
        CoefficientOfVariation = other.CoefficientOfVariation;
        DissolvedNitrogenFirstStageGrams = other.DissolvedNitrogenFirstStageGrams;
        DissolvedNitrogenSecondStageGrams = other.DissolvedNitrogenSecondStageGrams;
        FeedingOxygenFirstStageGrams = other.FeedingOxygenFirstStageGrams;
        FeedingOxygenSecondStageGrams = other.FeedingOxygenSecondStageGrams;
        HandlingHoursLeft = other.HandlingHoursLeft;
        ShockHazardPerHour = other.ShockHazardPerHour;
        LeavesQuarantineDay = other.LeavesQuarantineDay;
        UnexplainedNumber = other.UnexplainedNumber;
        UnexplainedSeen = other.UnexplainedSeen;
        StockedNumber = other.StockedNumber;
        StockedGrams = other.StockedGrams;
        FedGrams = other.FedGrams;
        EatenGrams = other.EatenGrams;
        GainedGrams = other.GainedGrams;
        DiedNumber = other.DiedNumber;
        DiedGrams = other.DiedGrams;
        HarvestedNumber = other.HarvestedNumber;
        HarvestedGrams = other.HarvestedGrams;
        MovedNumber = other.MovedNumber;
        MovedGrams = other.MovedGrams;
    }

    /// <summary>
    /// Takes fish out of the cohort with their share, by weight, of the pools, and returns every element that leaves with them.
    /// </summary>
    /// <param name="parameters">The species.</param>
    /// <param name="number">Fish that leave, from 0 to <see cref="Number"/>.</param>
    /// <param name="grams">Their live weight, from 0 to <see cref="BiomassGrams"/>.</param>
    internal ElementGrams Remove(FishParameters parameters, double number, double grams)
    {
        double biomass = BiomassGrams;
        double share = biomass > 0 ? Math.Min(grams / biomass, 1) : 1;
        double poolNitrogen = (DissolvedNitrogenFirstStageGrams + DissolvedNitrogenSecondStageGrams) * share;
        ElementGrams tissue = parameters.TissueOf(grams);
        ScalePools(1 - share);
        double left = Number - number;
        if (left > 0)
        {
            MeanGrams = (biomass - grams) / left;
            Number = left;
        }
        else
        {
            Number = 0;
        }

        return tissue.WithNitrogen(tissue.Nitrogen + poolNitrogen);
    }

    /// <summary>Multiplies the four pools.</summary>
    internal void ScalePools(double factor)
    {
        DissolvedNitrogenFirstStageGrams *= factor;
        DissolvedNitrogenSecondStageGrams *= factor;
        FeedingOxygenFirstStageGrams *= factor;
        FeedingOxygenSecondStageGrams *= factor;
    }
}
