namespace FarmTwin.Farm.Climate;

/// <summary>Longwave radiation of the sky on a horizontal surface.</summary>
/// <remarks>
/// The emissivity of Clark and Allen with the cloud factor printed in the EnergyPlus weather file dictionary. For water and
/// covers outdoors; U-values of covers already hold the sky's share, so never add it to those.
/// </remarks>
public static class SkyLongwave
{
    private const double StefanBoltzmann = 5.6697e-8;

    /// <summary>Emissivity of the sky, about 0.7 to 1.</summary>
    /// <param name="dewPointCelsius">Dew point near the ground, °C.</param>
    /// <param name="cloudTenths">Opaque cloud, 0 to 10.</param>
    public static double Emissivity(double dewPointCelsius, double cloudTenths) =>
        (0.787 + (0.764 * Math.Log((dewPointCelsius + 273) / 273)))
            * (1 + (0.0224 * cloudTenths) - (0.0035 * cloudTenths * cloudTenths)
                + (0.00028 * cloudTenths * cloudTenths * cloudTenths));

    /// <summary>Longwave radiation from the sky, W/m2.</summary>
    /// <param name="airCelsius">Air temperature, °C (the dictionary's kelvin is °C + 273).</param>
    /// <param name="dewPointCelsius">Dew point, °C.</param>
    /// <param name="cloudTenths">Opaque cloud, 0 to 10.</param>
    public static double WattsPerSquareMetre(double airCelsius, double dewPointCelsius, double cloudTenths)
    {
        double kelvin = airCelsius + 273;
        return Emissivity(dewPointCelsius, cloudTenths) * StefanBoltzmann * kelvin * kelvin * kelvin * kelvin;
    }
}
