namespace FarmTwin.Farm.Plants;

/// <summary>What a grower sees of a deficiency, and what is done about it (common practice).</summary>
public static class DeficiencySymptoms
{
    /// <summary>What is seen.</summary>
    public static string Of(int element) => element switch
    {
        Element.Nitrogen => "old leaves pale to yellow, the whole plant small",
        Element.Phosphorus => "dull, dark or purplish leaves, slow growth",
        Element.Potassium => "edges of the old leaves scorched brown",
        Element.Calcium => "tip burn: brown edges of the youngest leaves, blossom-end rot of fruit",
        Element.Magnesium => "old leaves yellow between green veins",
        Element.Sulfur => "young leaves evenly pale",
        Element.Iron => "young leaves yellow with green veins",
        _ => throw new ArgumentOutOfRangeException(nameof(element)),
    };

    /// <summary>What is done.</summary>
    public static string Remedy(int element) => element switch
    {
        Element.Nitrogen => "more feed to these plants, fewer plants, or bridging nutrients",
        Element.Phosphorus => "monopotassium phosphate, and pH below 7.2",
        Element.Potassium => "potassium bicarbonate where alkalinity is wanted, else potassium sulfate",
        Element.Calcium => "calcium carbonate where alkalinity is wanted, else calcium nitrate or chloride; air over the leaves against tip burn",
        Element.Magnesium => "magnesium sulfate to 10-25 mg/L",
        Element.Sulfur => "magnesium or potassium sulfate",
        Element.Iron => "a chelate that holds at this pH (EDDHA above 7) to 2 mg/L every three weeks",
        _ => throw new ArgumentOutOfRangeException(nameof(element)),
    };
}
