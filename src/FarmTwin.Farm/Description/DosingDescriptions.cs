namespace FarmTwin.Farm.Description;

/// <summary>A standing rule: test a basin, and dose supplements in turn until a quantity is kept over its whole loop.</summary>
public abstract record DosingDescription
{
    /// <summary>The basin tested and dosed.</summary>
    [Input("basin", "The basin that is tested and dosed", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Supplements used in turn, dose by dose.</summary>
    [Input("with", "Supplements, used in turn", LibraryFolder = "supplements")]
    public required IReadOnlyList<string> With { get; init; }

    /// <summary>Days between tests.</summary>
    [Input("every", "Time between tests", Unit = "d", Low = 0.25, High = 365)]
    public double EveryDays { get; init; } = 1;

    /// <summary>First day.</summary>
    [Input("from", "First day", Unit = "d", Low = 0, High = 3660)]
    public double FromDay { get; init; }

    /// <summary>Last day; to the end when left out.</summary>
    [Input("until", "Last day; to the end when left out", Unit = "d", Low = 0, High = 3660)]
    public double? UntilDay { get; init; }

    /// <summary>Whether it ends when the coupling valve is first opened.</summary>
    [Input("endsWhenOpened", "Whether it ends when the coupling valve is first opened")]
    public bool EndsWhenOpened { get; init; }

    /// <summary>Whether it ends when the loops are fully coupled.</summary>
    [Input("endsWhenCoupled", "Whether it ends when the loops are fully coupled")]
    public bool EndsWhenCoupled { get; init; }

    /// <summary>Whether it begins only when the loops are fully coupled.</summary>
    [Input("beginsWhenCoupled", "Whether it begins only when the loops are fully coupled")]
    public bool BeginsWhenCoupled { get; init; }
}

/// <summary>How the next supplement of a rule is chosen.</summary>
public enum ChosenBy
{
    /// <summary>In turn.</summary>
    Turn,

    /// <summary>The one whose potassium, calcium or magnesium the water is shortest of.</summary>
    Need,
}

/// <summary>Keeps alkalinity above a floor with bases.</summary>
[Kind("keep-alkalinity", "Doses bases when alkalinity is below a floor")]
public sealed record KeepAlkalinity : DosingDescription
{
    /// <summary>The floor, mg/L as CaCO3.</summary>
    [Input("at", "Dosed when a test shows less than this", Unit = "mg/L as CaCO3", Low = 0, High = 500)]
    public required double AtMilligramsPerLitre { get; init; }

    /// <summary>Dosed up to this, mg/L as CaCO3.</summary>
    [Input("upTo", "Dosed up to this", Unit = "mg/L as CaCO3", Low = 0, High = 500)]
    public required double UpToMilligramsPerLitre { get; init; }

    /// <summary>Largest rise of one dose, mg/L as CaCO3.</summary>
    [Input("mostPerDose", "Largest rise by one dose", Unit = "mg/L as CaCO3", Low = 0.1, High = 200)]
    public double MostPerDose { get; init; } = 20;

    /// <summary>How the next base is chosen.</summary>
    [Input("chosenBy", "How the next base is chosen: in turn, or by the potassium, calcium or magnesium that the water is shortest of")]
    public ChosenBy ChosenBy { get; init; }
}

/// <summary>Keeps nitrate above a floor.</summary>
[Kind("keep-nitrate", "Doses nutrients when nitrate is below a floor")]
public sealed record KeepNitrate : DosingDescription
{
    /// <summary>The floor, mg N/L.</summary>
    [Input("at", "Dosed when a test shows less than this", Unit = "mg N/L", Low = 0, High = 500)]
    public required double AtMilligramsNPerLitre { get; init; }

    /// <summary>Dosed up to this, mg N/L.</summary>
    [Input("upTo", "Dosed up to this", Unit = "mg N/L", Low = 0, High = 500)]
    public required double UpToMilligramsNPerLitre { get; init; }
}

/// <summary>Elements that a rule can keep in solution.</summary>
public enum KeptElement
{
    /// <summary>Phosphorus.</summary>
    Phosphorus,

    /// <summary>Potassium.</summary>
    Potassium,

    /// <summary>Calcium.</summary>
    Calcium,

    /// <summary>Magnesium.</summary>
    Magnesium,

    /// <summary>Sulfur, as sulfate.</summary>
    Sulfur,

    /// <summary>Chelated iron.</summary>
    Iron,

    /// <summary>Chloride.</summary>
    Chloride,
}

/// <summary>Keeps an element above a floor.</summary>
[Kind("keep-element", "Doses a supplement when an element is below a floor")]
public sealed record KeepElement : DosingDescription
{
    /// <summary>The element.</summary>
    [Input("element", "The element")]
    public required KeptElement Element { get; init; }

    /// <summary>The floor, mg/L of the element.</summary>
    [Input("at", "Dosed when a test shows less than this, as the element", Unit = "mg/L", Low = 0, High = 1000)]
    public required double AtMilligramsPerLitre { get; init; }

    /// <summary>Dosed up to this, mg/L of the element.</summary>
    [Input("upTo", "Dosed up to this, as the element", Unit = "mg/L", Low = 0, High = 1000)]
    public required double UpToMilligramsPerLitre { get; init; }
}

/// <summary>Keeps chloride in proportion to nitrite.</summary>
[Kind("protect-from-nitrite", "Doses chloride so that it stands in proportion to nitrite: gills take up chloride in nitrite's place")]
public sealed record ProtectFromNitrite : DosingDescription
{
    /// <summary>Chloride over nitrite nitrogen, g/g.</summary>
    [Input("ratio", "Chloride kept over nitrite as nitrogen, by weight", Unit = "1", Low = 1, High = 100)]
    public double Ratio { get; init; } = 10;

    /// <summary>Nitrite from which it is looked at, mg N/L.</summary>
    [Input("aboveNitrite", "Only when a test shows more nitrite than this", Unit = "mg N/L", Low = 0, High = 10)]
    public double AboveNitrite { get; init; } = 0.3;
}

/// <summary>Keeps pH below a ceiling with acid.</summary>
[Kind("hold-pH", "Doses acid when pH is above a ceiling")]
public sealed record HoldPH : DosingDescription
{
    /// <summary>The ceiling.</summary>
    [Input("above", "Dosed when a test shows more than this", Unit = "1", Low = 5, High = 9)]
    public required double AbovePH { get; init; }

    /// <summary>Dosed down to this.</summary>
    [Input("downTo", "Dosed down to this", Unit = "1", Low = 5, High = 9)]
    public required double DownToPH { get; init; }

    /// <summary>The pH probe that a doser goes by; a hand test when left out.</summary>
    [Input("byProbe", "The pH probe that an automatic doser goes by; a hand test when left out", Of = "probes")]
    public string? ByProbe { get; init; }

    /// <summary>Largest fall of alkalinity by one dose, mg/L as CaCO3.</summary>
    [Input("mostPerDose", "Largest fall of alkalinity by one dose", Unit = "mg/L as CaCO3", Low = 0.1, High = 200)]
    public double MostPerDose { get; init; } = 20;
}
