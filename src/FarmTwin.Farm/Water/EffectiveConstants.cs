namespace FarmTwin.Farm.Water;

/// <summary>Constants corrected for activity: they join concentrations with the activity h = 10^-pH.</summary>
internal readonly struct EffectiveConstants
{
    public EffectiveConstants(in CarbonateConstants constants, double ionicStrength)
    {
        double gamma1 = DaviesActivity.Monovalent(ionicStrength, constants.DebyeHuckel);
        double inverse1 = 1 / gamma1;
        double ratio = inverse1 * inverse1 * inverse1; // γ1/γ2, for γ2 = γ1⁴
        InverseGamma1 = inverse1;
        K1 = constants.K1 * inverse1;
        K1K2 = K1 * constants.K2 * ratio;
        Water = constants.KWater * inverse1;
        Phosphate = constants.KPhosphate * ratio;
        Ammonium = constants.KAmmonium * gamma1;
    }

    public double InverseGamma1 { get; }

    public double K1 { get; }

    public double K1K2 { get; }

    public double Water { get; }

    public double Phosphate { get; }

    public double Ammonium { get; }
}
