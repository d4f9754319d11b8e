namespace FarmTwin.Farm.Water;

/// <summary>Exchange of oxygen and carbon dioxide with air, as conductances (KLa times volume) in L/h.</summary>
/// <remarks>
/// A conductance G joins a linear solve as the flux G (C* - C): C* is <see cref="OxygenSaturation"/> times beta for oxygen, and
/// the
/// carbon dioxide of water in equilibrium with the room. The volume cancels out of a diffuser's conductance. Pure functions.
/// </remarks>
public static class Aeration
{
    /// <summary>Oxygen saturation at which diffusers are rated: 20 °C, 1 atm, mg/L.</summary>
    private const double RatingSaturationMilligramsPerLitre = 9.09;
    private const double RatingCelsius = 20;

    /// <summary>Mass share of oxygen in dry air (0.2314) times its density at 20 °C and 1 atm (1.204 kg/m³), in g/m³.</summary>
    private const double OxygenGramsPerCubicMetreAir = 0.2314 * 1204;

    /// <summary>Molar gas constant in L atm/(mol K): J/(mol K) over 101.325 J per L atm.</summary>
    private const double GasConstantLitreAtmosphere = UnitConstants.GasConstantJoulePerMoleKelvin / 101.325;

    /// <summary>Standard oxygen transfer rate of a diffuser (clean water, 20 °C, no oxygen in it, 1 atm), g/h.</summary>
    /// <param name="airFlowCubicMetresPerHour">Free air at 20 °C and 1 atm, m³/h.</param>
    /// <param name="depthMetres">Depth of the diffuser under water, m.</param>
    /// <param name="efficiencyPerMetre">Share of the oxygen dissolved per metre of depth, 1/m; never more than all of it is
    /// counted.</param>
    public static double StandardTransferGramsPerHour(double airFlowCubicMetresPerHour, double depthMetres, double efficiencyPerMetre) =>
        airFlowCubicMetresPerHour * OxygenGramsPerCubicMetreAir * Math.Min(1, depthMetres * efficiencyPerMetre);

    /// <summary>KLa of a diffuser in clean water at 20 °C, 1/h.</summary>
    /// <param name="standardTransferGramsPerHour">Standard transfer rate, g/h.</param>
    /// <param name="volumeLitres">Water volume, L, above zero.</param>
    public static double KLa20PerHour(double standardTransferGramsPerHour, double volumeLitres) =>
        StandardConductanceLitresPerHour(standardTransferGramsPerHour) / volumeLitres;

    /// <summary>Oxygen conductance of a diffuser in clean water at 20 °C, L/h.</summary>
    /// <param name="standardTransferGramsPerHour">Standard transfer rate, g/h.</param>
    public static double StandardConductanceLitresPerHour(double standardTransferGramsPerHour) =>
        standardTransferGramsPerHour * UnitConstants.GramsPerKilogram / RatingSaturationMilligramsPerLitre;

    /// <summary>Oxygen conductance of a diffuser in farm water at its temperature, L/h: α F θ^(t-20) times the rated
    /// one.</summary>
    /// <param name="standardTransferGramsPerHour">Standard transfer rate, g/h.</param>
    /// <param name="alpha">α of the water (<see cref="AerationParameters.AlphaClearWater"/> or <see
    /// cref="AerationParameters.AlphaSolidsWater"/>).</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    /// <param name="parameters">Parameters.</param>
    public static double OxygenConductanceLitresPerHour(
        double standardTransferGramsPerHour, double alpha, double temperatureCelsius, AerationParameters parameters) =>
        StandardConductanceLitresPerHour(standardTransferGramsPerHour) * alpha * parameters.FoulingFactor
            * Math.Pow(parameters.Theta, temperatureCelsius - RatingCelsius);

    /// <summary>Oxygen conductance of the open surface, L/h.</summary>
    /// <param name="surfaceSquareMetres">Open surface, m².</param>
    /// <param name="parameters">Parameters.</param>
    public static double SurfaceOxygenConductanceLitresPerHour(double surfaceSquareMetres, AerationParameters parameters) =>
        parameters.SurfaceVelocityMetresPerHour * surfaceSquareMetres * UnitConstants.LitresPerCubicMetre;

    /// <summary>Carbon dioxide conductance of a diffuser, L/h, capped by what its air can carry away.</summary>
    /// <remarks>
    /// G = Q H (1 - exp(-0.904 G_O2/(Q H))), H the volume ratio of air to water holding equal carbon dioxide: bubbles leave all
    /// but
    /// saturated with it, so a diffuser sized for oxygen strips carbon dioxide poorly. No air, no conductance.
    /// </remarks>
    /// <param name="oxygenConductanceLitresPerHour">The diffuser's oxygen conductance, L/h.</param>
    /// <param name="airFlowCubicMetresPerHour">Its air flow, m³/h.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    /// <param name="constants">Constants at that temperature.</param>
    /// <param name="parameters">Parameters.</param>
    public static double CarbonDioxideConductanceLitresPerHour(double oxygenConductanceLitresPerHour, double airFlowCubicMetresPerHour,
        double temperatureCelsius, in CarbonateConstants constants, AerationParameters parameters)
    {
        double capacity = airFlowCubicMetresPerHour * UnitConstants.LitresPerCubicMetre * GasToWaterRatio(temperatureCelsius, in constants);
        return capacity > 0
            ? capacity * (1 - Math.Exp(-parameters.CarbonDioxideRatio * oxygenConductanceLitresPerHour / capacity))
            : 0;
    }

    /// <summary>Carbon dioxide conductance of the open surface, L/h. The room above it is no cap.</summary>
    /// <param name="surfaceSquareMetres">Open surface, m².</param>
    /// <param name="parameters">Parameters.</param>
    public static double SurfaceCarbonDioxideConductanceLitresPerHour(double surfaceSquareMetres, AerationParameters parameters) =>
        parameters.CarbonDioxideRatio * SurfaceOxygenConductanceLitresPerHour(surfaceSquareMetres, parameters);

    /// <summary>Carbon dioxide per volume of air over that per volume of water in equilibrium, 1/(KH R T).</summary>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    /// <param name="constants">Constants at that temperature.</param>
    public static double GasToWaterRatio(double temperatureCelsius, in CarbonateConstants constants) =>
        1 / (constants.KHenry * GasConstantLitreAtmosphere * (temperatureCelsius + UnitConstants.ZeroCelsiusInKelvin));

    /// <summary>Oxygen that a diffuser delivers, g/h: negative where the water is above saturation.</summary>
    /// <param name="oxygenConductanceLitresPerHour">Conductance, L/h.</param>
    /// <param name="oxygenMilligramsPerLitre">Oxygen in the water, mg/L.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    /// <param name="pressureAtmospheres">Air pressure, atm.</param>
    /// <param name="parameters">Parameters.</param>
    public static double DeliveredOxygenGramsPerHour(double oxygenConductanceLitresPerHour, double oxygenMilligramsPerLitre,
        double temperatureCelsius, double pressureAtmospheres, AerationParameters parameters) =>
        oxygenConductanceLitresPerHour / UnitConstants.GramsPerKilogram
            * ((parameters.Beta * OxygenSaturation.MilligramsPerLitre(temperatureCelsius, pressureAtmospheres)) - oxygenMilligramsPerLitre);
}
