namespace FarmTwin.Farm.Climate;

/// <summary>Light of a tier of the nursery in a step.</summary>
/// <param name="LitShare">Share of the step in which its lamps are on.</param>
/// <param name="Photons">Light at its trays while on, µmol/(m² s).</param>
/// <param name="Megajoules">Heat of that light on the trays, MJ/(m² h), mean of the step.</param>
/// <param name="HoursOfDay">Hours that its lamps are on each day; 0 while the tier is off.</param>
public readonly record struct TierLight(double LitShare, double Photons, double Megajoules, double HoursOfDay);
