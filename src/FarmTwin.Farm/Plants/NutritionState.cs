namespace FarmTwin.Farm.Plants;

/// <summary>How well the crops are fed: deficiency by crop and element of the day that ended, and sums of what was wanted and taken.</summary>
/// <remarks>
/// Deficiency is the share of growth that an element alone would cost, mean over the plants of a crop, seedlings too: 0 well fed, 1 growth
/// stands still. Arrays by crop and element: [crop × <see cref="Element.Count"/> + element].
/// </remarks>
public sealed class NutritionState
{
    private readonly double[] _plants;
    private readonly double[] _lost;

    /// <summary>Makes the state of so many crops.</summary>
    public NutritionState(int crops)
    {
        _plants = new double[crops];
        _lost = new double[crops * Element.Count];
        Deficiency = new double[crops * Element.Count];
        IsDeficient = new bool[crops * Element.Count];
    }

    /// <summary>Share of growth that an element alone cost on the day that ended, 0–1.</summary>
    public double[] Deficiency { get; }

    /// <summary>Whether symptoms show.</summary>
    public bool[] IsDeficient { get; }

    /// <summary>What the growth of a full solution would have needed since day 0, g by element.</summary>
    public double[] NeededGrams { get; } = new double[Element.Count];

    /// <summary>What was taken up since day 0, g by element.</summary>
    public double[] TakenGrams { get; } = new double[Element.Count];

    /// <summary>Days on which some crop showed symptoms, by element.</summary>
    public int[] DaysShort { get; } = new int[Element.Count];

    /// <summary>Largest share of a crop's growth that an element alone cost on a day with symptoms, 0–1, by element.</summary>
    public double[] WorstDeficiency { get; } = new double[Element.Count];

    /// <summary>Begins the sum of a day.</summary>
    public void BeginDay()
    {
        Array.Clear(_plants);
        Array.Clear(_lost);
    }

    /// <summary>Adds a lot as it stands before its growth.</summary>
    public void Add(PlantLot lot, CropParameters crop, PlantParameters plants)
    {
        ArgumentNullException.ThrowIfNull(lot);
        // A seedling that came up this very day has had no hour to take anything up.
        bool isNew = lot.LastGainGrams == 0 && lot.LastStress == GrowthStress.None;
        if (lot.PotentialGainGrams <= 0 || isNew)
        {
            return;
        }

        _plants[lot.Crop] += lot.Plants;
        foreach (int element in Stress.Nutritive)
        {
            _lost[(lot.Crop * Element.Count) + element] += lot.Plants * (1 - Stress.NutrientFactor(element, lot, crop, plants));
        }
    }

    /// <summary>Adds what a lot needs for the growth that tomorrow would bring in a full solution.</summary>
    public void AddNeed(PlantLot lot, CropParameters crop)
    {
        ArgumentNullException.ThrowIfNull(lot);
        ArgumentNullException.ThrowIfNull(crop);
        foreach (int element in Stress.Nutritive)
        {
            NeededGrams[element] += Uptake.Need(element, lot, crop);
        }
    }

    /// <summary>Ends the sum of a day.</summary>
    public void EndDay()
    {
        for (int crop = 0; crop < _plants.Length; crop++)
        {
            for (int element = 0; element < Element.Count; element++)
            {
                int i = (crop * Element.Count) + element;
                Deficiency[i] = _plants[crop] > 0 ? _lost[i] / _plants[crop] : 0;
            }
        }
    }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(NutritionState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.Deficiency.CopyTo(Deficiency, 0);
        other.IsDeficient.CopyTo(IsDeficient, 0);
        other.NeededGrams.CopyTo(NeededGrams, 0);
        other.TakenGrams.CopyTo(TakenGrams, 0);
        other.DaysShort.CopyTo(DaysShort, 0);
        other.WorstDeficiency.CopyTo(WorstDeficiency, 0);
    }
}
