namespace FarmTwin.Farm.Equipment;

/// <summary>One fault: what broke, when, when it was found and mended, and what it did.</summary>
/// <remarks>
/// What it did is all that happened from its beginning to a few hours after its end. Faults at one time share their harm, except that
/// while the mains are off, and shortly after, all harm is the cut's.
/// </remarks>
public sealed class Fault
{
    /// <summary>The oxygen levels whose times are kept, mg/L: uneasy, gasping, dying.</summary>
    public static readonly double[] OxygenLevels = [4, 3, 2];

    /// <summary>Makes a fault at its beginning.</summary>
    /// <param name="name">Its name in the plan.</param>
    /// <param name="kind">What broke.</param>
    /// <param name="part">The number of the part; −1 where there is only one.</param>
    /// <param name="where">The part's name.</param>
    /// <param name="beganSeconds">When, seconds of the season.</param>
    /// <param name="basins">Number of basins.</param>
    public Fault(string name, FaultKind kind, int part, string where, long beganSeconds, int basins)
    {
        Name = name;
        Kind = kind;
        Part = part;
        Where = where;
        BeganSeconds = beganSeconds;
        LowestOxygen = new double[basins];
        Array.Fill(LowestOxygen, double.NaN);
        HighestCarbonDioxide = new double[basins];
        HighestUnionizedAmmonia = new double[basins];
        LowestCelsius = new double[basins];
        Array.Fill(LowestCelsius, double.NaN);
        BiomassGrams = new double[basins];
        FishOxygenGramsPerHour = new double[basins];
        Died = new double[basins];
        DiedGrams = new double[basins];
        LastOxygen = new double[basins];
        MinutesTo = new double[basins * OxygenLevels.Length];
        Array.Fill(MinutesTo, double.NaN);
        AnoxicHours = new double[basins];
        StillHours = new double[basins];
        BadRootHours = new double[basins];
        LongestBadRootHours = new double[basins];
    }

    private Fault(Fault other)
    {
        Name = other.Name;
        Kind = other.Kind;
        Part = other.Part;
        Where = other.Where;
        BeganSeconds = other.BeganSeconds;
        FoundSeconds = other.FoundSeconds;
        FoundBy = other.FoundBy;
        MendsAtSeconds = other.MendsAtSeconds;
        MendedSeconds = other.MendedSeconds;
        LowestOxygen = (double[])other.LowestOxygen.Clone();
        HighestCarbonDioxide = (double[])other.HighestCarbonDioxide.Clone();
        HighestUnionizedAmmonia = (double[])other.HighestUnionizedAmmonia.Clone();
        LowestCelsius = (double[])other.LowestCelsius.Clone();
        BiomassGrams = (double[])other.BiomassGrams.Clone();
        FishOxygenGramsPerHour = (double[])other.FishOxygenGramsPerHour.Clone();
        Died = (double[])other.Died.Clone();
        DiedGrams = (double[])other.DiedGrams.Clone();
        LastOxygen = (double[])other.LastOxygen.Clone();
        MinutesTo = (double[])other.MinutesTo.Clone();
        AnoxicHours = (double[])other.AnoxicHours.Clone();
        StillHours = (double[])other.StillHours.Clone();
        BadRootHours = (double[])other.BadRootHours.Clone();
        LongestBadRootHours = (double[])other.LongestBadRootHours.Clone();
        SpilledLitres = other.SpilledLitres;
        LeakedLitres = other.LeakedLitres;
        PlantsAtRisk = other.PlantsAtRisk;
    }

    /// <summary>Its name in the plan.</summary>
    public string Name { get; }

    /// <summary>What broke.</summary>
    public FaultKind Kind { get; }

    /// <summary>The number of the part among its kind; −1 where there is only one.</summary>
    public int Part { get; }

    /// <summary>The part's name.</summary>
    public string Where { get; }

    /// <summary>When it began, seconds of the season.</summary>
    public long BeganSeconds { get; }

    /// <summary>When somebody saw it; −1 while nobody has.</summary>
    public long FoundSeconds { get; set; } = -1;

    /// <summary>Who or what saw it ("morning round"); empty while nobody has.</summary>
    public string FoundBy { get; set; } = string.Empty;

    /// <summary>When it is to be mended; −1 while nobody has begun.</summary>
    public long MendsAtSeconds { get; set; } = -1;

    /// <summary>When it was mended; −1 while it is open.</summary>
    public long MendedSeconds { get; set; } = -1;

    /// <summary>Whether it is not mended yet.</summary>
    public bool IsOpen => MendedSeconds < 0;

    /// <summary>Fish by basin when it began, g.</summary>
    public double[] BiomassGrams { get; }

    /// <summary>Oxygen that they then took, g/h.</summary>
    public double[] FishOxygenGramsPerHour { get; }

    /// <summary>Lowest oxygen by basin, mg/L; not a number where there was no water.</summary>
    public double[] LowestOxygen { get; }

    /// <summary>Highest carbon dioxide by basin, mg/L.</summary>
    public double[] HighestCarbonDioxide { get; }

    /// <summary>Highest un-ionized ammonia by basin, mg N/L.</summary>
    public double[] HighestUnionizedAmmonia { get; }

    /// <summary>Coldest water by basin, °C.</summary>
    public double[] LowestCelsius { get; }

    /// <summary>Minutes from its beginning until the oxygen first fell to each level, [basin × levels + level]; not a number where it did not.</summary>
    public double[] MinutesTo { get; }

    /// <summary>Oxygen at the last look, mg/L.</summary>
    public double[] LastOxygen { get; }

    /// <summary>Hours that a filter's water was without oxygen, by basin.</summary>
    public double[] AnoxicHours { get; }

    /// <summary>Hours that nothing flowed out of a basin.</summary>
    public double[] StillHours { get; }

    /// <summary>Hours on end, to the last look, that a basin was nearly dry or its water without oxygen for roots.</summary>
    public double[] BadRootHours { get; }

    /// <summary>The longest such stretch, h.</summary>
    public double[] LongestBadRootHours { get; }

    /// <summary>Fish that died for a cause that base mortality does not explain, by basin.</summary>
    public double[] Died { get; }

    /// <summary>Their weight, g.</summary>
    public double[] DiedGrams { get; }

    /// <summary>Water over a brim, L.</summary>
    public double SpilledLitres { get; set; }

    /// <summary>Water that its own leak let out, L.</summary>
    public double LeakedLitres { get; set; }

    /// <summary>Most plants that stood dry, drowned or in water without oxygen for longer than roots bear.</summary>
    public double PlantsAtRisk { get; set; }

    /// <summary>A copy that shares nothing with this one.</summary>
    public Fault Clone() => new(this);
}
