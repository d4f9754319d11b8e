namespace FarmTwin.Farm.Climate;

/// <summary>What a square metre of open water gives to the air above it.</summary>
/// <param name="EvaporationKilogramsPerSquareMetreHour">Evaporation, kg/(m2 h), never negative.</param>
/// <param name="LossWattsPerSquareMetre">Heat lost by evaporation, convection and radiation together, W/m2; negative where the
/// water is warmed.</param>
/// <param name="SlopeWattsPerSquareMetreKelvin">Derivative of the loss by the water's temperature, W/(m2 K), positive.</param>
/// <param name="LatentWattsPerSquareMetre">The part of the loss by evaporation: it leaves as vapour.</param>
/// <param name="ConvectiveWattsPerSquareMetre">The part by convection: it warms the air.</param>
/// <param name="RadiativeWattsPerSquareMetre">The part by radiation to the surfaces of the house.</param>
public readonly record struct SurfaceExchange(
    double EvaporationKilogramsPerSquareMetreHour,
    double LossWattsPerSquareMetre,
    double SlopeWattsPerSquareMetreKelvin,
    double LatentWattsPerSquareMetre,
    double ConvectiveWattsPerSquareMetre,
    double RadiativeWattsPerSquareMetre)
{
    /// <summary>The part that reaches the house as sensible heat, convection and radiation, W/m2.</summary>
    public double SensibleWattsPerSquareMetre => ConvectiveWattsPerSquareMetre + RadiativeWattsPerSquareMetre;
}
