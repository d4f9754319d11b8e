namespace FarmTwin.Farm.Solids;

/// <summary>Where a mineralization tank stands in its cycle. A value; solids and water are in the basin.</summary>
/// <param name="Phase">What it is doing.</param>
/// <param name="HoursInPhase">Hours since the phase began.</param>
/// <param name="AirOffHours">Hours since the air stopped; 0 while it runs.</param>
/// <param name="NitrateGoneHours">Hours for which the blanket has been without nitrate; 0 while it has some or the air runs.</param>
/// <param name="BlanketNitrateMilligramsNPerLitre">Nitrate in the blanket's water, mg N/L; meaningful with the air off.</param>
/// <param name="NitrifierShare">How far the tank's own nitrifiers have developed, 0–1.</param>
public readonly record struct MineralizationState(
    MineralizationPhase Phase,
    double HoursInPhase,
    double AirOffHours,
    double NitrateGoneHours,
    double BlanketNitrateMilligramsNPerLitre,
    double NitrifierShare)
{
    /// <summary>Whether the air is off: settling, decanting, or failed.</summary>
    public bool IsStill => AirOffHours > 0 || Phase is MineralizationPhase.Settling or MineralizationPhase.Decanting;

    /// <summary>The state on entering a phase; stopping the air notes the nitrate that the blanket starts from.</summary>
    /// <param name="next">The phase.</param>
    /// <param name="tankNitrateMilligramsNPerLitre">Nitrate of the mixed tank, mg N/L.</param>
    public MineralizationState Enter(MineralizationPhase next, double tankNitrateMilligramsNPerLitre) =>
        next is MineralizationPhase.Settling or MineralizationPhase.Decanting
            ? this with
            {
                Phase = next,
                HoursInPhase = 0,
                BlanketNitrateMilligramsNPerLitre = AirOffHours > 0 ? BlanketNitrateMilligramsNPerLitre : tankNitrateMilligramsNPerLitre,
            }
            : this with { Phase = next, HoursInPhase = 0, AirOffHours = 0, NitrateGoneHours = 0, BlanketNitrateMilligramsNPerLitre = tankNitrateMilligramsNPerLitre };

    /// <summary>The state after a step.</summary>
    /// <param name="parameters">Mineralization parameters.</param>
    /// <param name="hours">Length of the step, h.</param>
    /// <param name="airIsOn">Whether air was blown, whatever the phase (a blower may have failed).</param>
    /// <param name="blanketNitrateMilligramsNPerLitre">Nitrate in the blanket at the end of the step, or in the tank while it is mixed, mg N/L.</param>
    public MineralizationState Advance(
        MineralizationParameters parameters, double hours, bool airIsOn, double blanketNitrateMilligramsNPerLitre)
    {
        bool gone = blanketNitrateMilligramsNPerLitre < parameters.NitrateGoneMilligramsNPerLitre;
        return this with
        {
            HoursInPhase = HoursInPhase + hours,
            AirOffHours = airIsOn ? 0 : AirOffHours + hours,
            NitrateGoneHours = airIsOn || !gone ? 0 : NitrateGoneHours + hours,
            BlanketNitrateMilligramsNPerLitre = blanketNitrateMilligramsNPerLitre,
            NitrifierShare = airIsOn
                ? Math.Min(1, NitrifierShare + (hours / UnitConstants.HoursPerDay / parameters.NitrificationRampDays))
                : NitrifierShare,
        };
    }
}
