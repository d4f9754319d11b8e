namespace FarmTwin.Farm.Solids;

/// <summary>What a mineralization tank does while it settles, and what it asks of its air while it works.</summary>
/// <remarks>Pure functions of the basin's solids and time. TSS in g dry matter per litre of the mixed tank.</remarks>
public static class MineralizationTank
{
    private const double MilligramsPerGram = 1000;

    private const double ReferenceCelsius = 20;

    /// <summary>Concentration of the blanket after a time of settling, g/L: linear between its three points, constant after the last.</summary>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="hours">Hours since the air stopped.</param>
    public static double BlanketGramsPerLitre(MineralizationParameters parameters, double hours)
    {
        if (hours <= parameters.EarlyHours)
        {
            return parameters.EarlyBlanketGramsPerLitre * Math.Max(0, hours) / parameters.EarlyHours;
        }

        return hours <= parameters.MiddleHours
            ? Between(hours, parameters.EarlyHours, parameters.MiddleHours, parameters.EarlyBlanketGramsPerLitre, parameters.MiddleBlanketGramsPerLitre)
            : Between(
                Math.Min(hours, parameters.LateHours), parameters.MiddleHours, parameters.LateHours, parameters.MiddleBlanketGramsPerLitre, parameters.LateBlanketGramsPerLitre);
    }

    /// <summary>Share of the volume that the blanket fills, 0–1; 1 while it is no denser than the mixed tank was.</summary>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="mixedGramsPerLitre">TSS of the mixed tank, g/L.</param>
    /// <param name="hours">Hours since the air stopped.</param>
    public static double BlanketShare(MineralizationParameters parameters, double mixedGramsPerLitre, double hours)
    {
        double blanket = BlanketGramsPerLitre(parameters, hours);
        return mixedGramsPerLitre >= blanket ? 1 : mixedGramsPerLitre / blanket;
    }

    /// <summary>Share of the volume above the blanket, 0–1.</summary>
    public static double ClearShare(MineralizationParameters parameters, double mixedGramsPerLitre, double hours) =>
        1 - BlanketShare(parameters, mixedGramsPerLitre, hours);

    /// <summary>Suspended solids left in the clear water, g/L.</summary>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="mixedGramsPerLitre">TSS of the mixed tank, g/L.</param>
    /// <param name="hours">Hours since the air stopped.</param>
    public static double ResidualGramsPerLitre(MineralizationParameters parameters, double mixedGramsPerLitre, double hours)
    {
        double rest = Math.Min(
            mixedGramsPerLitre, Math.Max(parameters.LowestResidualGramsPerLitre, parameters.NonSettlingShare * mixedGramsPerLitre));
        return rest + ((mixedGramsPerLitre - rest) * Math.Exp(-hours / parameters.ClearingHours));
    }

    /// <summary>Clear water that may be drawn, L: what stands above the blanket less the clearance.</summary>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="volumeLitres">Water in the tank, L.</param>
    /// <param name="floorAreaSquareMetres">Plan area of the tank, m².</param>
    /// <param name="mixedGramsPerLitre">TSS of the mixed tank, g/L.</param>
    /// <param name="hours">Hours since the air stopped.</param>
    public static double DecantableLitres(
        MineralizationParameters parameters, double volumeLitres, double floorAreaSquareMetres, double mixedGramsPerLitre, double hours) =>
        Math.Max(0, (volumeLitres * ClearShare(parameters, mixedGramsPerLitre, hours))
            - (floorAreaSquareMetres * parameters.DecantClearanceMetres * UnitConstants.LitresPerCubicMetre));

    /// <summary>Oxygen demand of hydrolysis, mg/(L h): what the blower must carry in.</summary>
    /// <param name="parameters">Solids parameters.</param>
    /// <param name="degradableGramsPerLitre">Degradable volatile solids, g/L.</param>
    /// <param name="temperatureCelsius">Water temperature, °C.</param>
    public static double OxygenDemandMilligramsPerLitreHour(SolidsParameters parameters, double degradableGramsPerLitre, double temperatureCelsius) =>
        degradableGramsPerLitre * MilligramsPerGram * parameters.OxygenPerVolatileSolids
            * Hydrolysis.RatePerHour(parameters, temperatureCelsius, parameters.FullHydrolysisOxygenMilligramsPerLitre);

    /// <summary>Minutes after the air stops until no oxygen is left, at a constant demand.</summary>
    public static double MinutesToAnoxia(double oxygenMilligramsPerLitre, double demandMilligramsPerLitreHour) =>
        demandMilligramsPerLitreHour <= 0 ? double.PositiveInfinity : oxygenMilligramsPerLitre / demandMilligramsPerLitreHour * 60;

    /// <summary>
    /// Capacity of the tank's own nitrifiers, mg N/(L h): the developed rate × development × pH factor × oxygen factor. The
    /// first-order coefficient in L/h is capacity × volume / (K + TAN).
    /// </summary>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="nitrifierShare">Development, 0–1 (<see cref="MineralizationState.NitrifierShare"/>).</param>
    /// <param name="acidityFactor">From <c>FilmResponse.Acidity</c>.</param>
    /// <param name="oxygenFactor">From <c>FilmResponse.Oxygen</c>.</param>
    public static double NitrificationMilligramsPerLitreHour(
        MineralizationParameters parameters, double nitrifierShare, double acidityFactor, double oxygenFactor) =>
        parameters.NitrificationMilligramsPerLitreHour * nitrifierShare * acidityFactor * oxygenFactor;

    /// <summary>Danger of hydrogen sulphide.</summary>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="airOffHours">Hours since the air stopped; 0 while it runs.</param>
    /// <param name="nitrateGoneHours">Hours for which the blanket has been without nitrate.</param>
    /// <param name="temperatureCelsius">Water temperature, °C: warmth shortens the allowed time without nitrate as it speeds denitrification.</param>
    public static SulphideRisk SulphideRisk(
        MineralizationParameters parameters, double airOffHours, double nitrateGoneHours, double temperatureCelsius)
    {
        double allowed = parameters.NitrateGoneAllowedHours
            / Math.Pow(parameters.DenitrificationTemperatureBase, temperatureCelsius - ReferenceCelsius);
        double used = Math.Max(airOffHours / parameters.AirOffAllowedHours, nitrateGoneHours / allowed);
        return used switch
        {
            > 1 => Solids.SulphideRisk.Danger,
            > 0.5 => Solids.SulphideRisk.Watch,
            _ => Solids.SulphideRisk.None,
        };
    }

    /// <summary>Whether nitrogen gas may lift the settled sludge: warm, much nitrate, some hours without air.</summary>
    public static bool SludgeMayRise(
        MineralizationParameters parameters, double airOffHours, double nitrateAtAirOffMilligramsNPerLitre, double temperatureCelsius) =>
        airOffHours >= parameters.RisingSludgeHours
            && temperatureCelsius > parameters.RisingSludgeCelsius
            && nitrateAtAirOffMilligramsNPerLitre > parameters.RisingSludgeNitrateMilligramsNPerLitre;

    /// <summary>What stands against a decant now.</summary>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="airOffHours">Hours since the air stopped.</param>
    /// <param name="decantableLitres">From <see cref="DecantableLitres"/>.</param>
    /// <param name="residualGramsPerLitre">From <see cref="ResidualGramsPerLitre"/>.</param>
    /// <param name="mixedTanMilligramsNPerLitre">TAN in the plant sump after the decant, mg N/L.</param>
    /// <param name="mixedNitriteMilligramsNPerLitre">Nitrite in the plant sump after the decant, mg N/L.</param>
    /// <param name="sulphideRisk">From <see cref="SulphideRisk"/>.</param>
    public static DecantRefusals Refusals(
        MineralizationParameters parameters,
        double airOffHours,
        double decantableLitres,
        double residualGramsPerLitre,
        double mixedTanMilligramsNPerLitre,
        double mixedNitriteMilligramsNPerLitre,
        SulphideRisk sulphideRisk)
    {
        DecantRefusals refusals = DecantRefusals.None;
        refusals |= airOffHours < parameters.SettlingHours ? DecantRefusals.NotSettled : 0;
        refusals |= decantableLitres <= 0 ? DecantRefusals.NoClearWater : 0;
        refusals |= residualGramsPerLitre > parameters.DecantResidualGramsPerLitre ? DecantRefusals.Turbid : 0;
        refusals |= mixedTanMilligramsNPerLitre > parameters.PlantSumpTanMilligramsNPerLitre ? DecantRefusals.TooMuchTan : 0;
        refusals |= mixedNitriteMilligramsNPerLitre > parameters.PlantSumpNitriteMilligramsNPerLitre ? DecantRefusals.TooMuchNitrite : 0;
        refusals |= sulphideRisk == Solids.SulphideRisk.Danger ? DecantRefusals.Sulphide : 0;
        return refusals;
    }

    private static double Between(double at, double from, double to, double valueFrom, double valueTo) =>
        valueFrom + ((valueTo - valueFrom) * (at - from) / (to - from));
}
