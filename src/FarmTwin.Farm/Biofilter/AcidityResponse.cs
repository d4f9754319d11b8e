namespace FarmTwin.Farm.Biofilter;

/// <summary>Which published curve relates nitrifier growth to pH. The sources disagree below pH 6.5.</summary>
public enum AcidityResponse
{
    /// <summary>Ekama: 2.35^(pH − 7.2) below 7.2, 1.13 (9.5 − pH)/(9.8 − pH) above; 0.36 at pH 6.0. The default.</summary>
    Ekama,

    /// <summary>The line 1 − 0.833 (7.2 − pH) of the US Environmental Protection Agency (1975); stops near pH 6.0.</summary>
    EnvironmentalProtectionAgencyLine,
}
