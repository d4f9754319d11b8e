using FarmTwin.Farm.Fish;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Fish;

/// <summary>The shipped species and feed, and some waters.</summary>
internal static class FishLibrary
{
    public static readonly FishParameters Nile = FishParameters.From(ParameterLibrary.Load("fish", "nile-tilapia"));

    public static readonly FishParameters Red = FishParameters.From(ParameterLibrary.Load("fish", "red-tilapia"));

    public static readonly FishParameters Blue = FishParameters.From(ParameterLibrary.Load("fish", "blue-tilapia"));

    public static readonly FeedComposition Feed = FeedComposition.From(ParameterLibrary.Load("feeds", "tilapia-32"));

    /// <summary>Clean water with plenty of oxygen.</summary>
    public static FishWater Clean(double temperatureCelsius) => new(temperatureCelsius, 7, 0, 0, 0, 50);

    /// <summary>The nine amounts in a fixed order.</summary>
    public static double[] Values(ElementGrams amounts) =>
    [
        amounts.Nitrogen, amounts.Phosphorus, amounts.Potassium, amounts.Calcium, amounts.Magnesium,
        amounts.Sodium, amounts.Chloride, amounts.Sulfur, amounts.Iron,
    ];
}
