namespace FarmTwin.Farm.Climate;

/// <summary>From radiation to photons that drive growth: PAR, PPFD and DLI.</summary>
/// <remarks>
/// Sunlight carries 4.57 µmol of photons per joule of PAR (Thimijan &amp; Heins 1983, HortScience 18:818-822; from memory of the
/// source, not re-read). The PAR share of global radiation is data, because sources differ by a tenth (0.45 to 0.50).
/// </remarks>
public static class Par
{
    /// <summary>Micromoles of photons per joule of PAR in sunlight.</summary>
    public const double MicromolesPerJoule = 4.57;

    private const double MolesPerMicromoleHour = UnitConstants.SecondsPerHour / 1e6;

    /// <summary>PPFD of a global radiation, µmol/(m2 s).</summary>
    /// <param name="radiationWattsPerSquareMetre">Global radiation, W/m2.</param>
    /// <param name="parShare">PAR share of global radiation, 0.45 to 0.50.</param>
    public static double PpfdFromRadiation(double radiationWattsPerSquareMetre, double parShare) =>
        parShare * MicromolesPerJoule * radiationWattsPerSquareMetre;

    /// <summary>Global radiation of a PPFD, W/m2.</summary>
    /// <param name="ppfd">µmol/(m2 s).</param>
    /// <param name="parShare">PAR share of global radiation, above 0.</param>
    public static double RadiationFromPpfd(double ppfd, double parShare) => ppfd / (parShare * MicromolesPerJoule);

    /// <summary>Photons of a constant PPFD held for some hours, mol/m2.</summary>
    /// <param name="ppfd">µmol/(m2 s).</param>
    /// <param name="hours">h.</param>
    public static double LightIntegral(double ppfd, double hours) => ppfd * hours * MolesPerMicromoleHour;

    /// <summary>PPFD at the crop under a cover, µmol/(m2 s).</summary>
    /// <param name="outsidePpfd">µmol/(m2 s).</param>
    /// <param name="structureTransmission">PAR transmission of the whole structure at crop height, 0 to 1.</param>
    /// <param name="shadeShare">Share taken by shade cloth or whitewash, 0 to 1.</param>
    public static double Inside(double outsidePpfd, double structureTransmission, double shadeShare) =>
        structureTransmission * (1 - shadeShare) * outsidePpfd;
}
