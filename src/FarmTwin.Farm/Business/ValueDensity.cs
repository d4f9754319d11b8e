namespace FarmTwin.Farm.Business;

/// <summary>What a square metre of crop earns.</summary>
public static class ValueDensity
{
    /// <summary>Income of a growing area, money/(m² week): price × density / weeks, as Bailey and Ferrarezi (2017) compare crops.</summary>
    /// <param name="income">Income, money.</param>
    /// <param name="squareMetres">Area, m².</param>
    /// <param name="days">Time over which it was earned, d.</param>
    /// <returns>Null where there is no area or no time has passed.</returns>
    public static double? PerSquareMetreWeek(double income, double squareMetres, double days) =>
        squareMetres > 0 && days > 0 ? income / squareMetres / (days / UnitConstants.DaysPerWeek) : null;
}
