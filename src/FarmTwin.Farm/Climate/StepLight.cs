namespace FarmTwin.Farm.Climate;

/// <summary>Light and air of a step, as the plants meet them.</summary>
/// <param name="NaturalPhotons">Daylight at the crop, µmol/(m² s).</param>
/// <param name="InsideMegajoules">Sun inside the house, MJ/(m² h).</param>
/// <param name="NurseryCelsius">Air in the nursery, °C.</param>
/// <param name="AirCelsius">Air of the house, °C.</param>
/// <param name="VapourDeficitKilopascals">Vapour pressure deficit of the house air, kPa.</param>
public readonly record struct StepLight(
    double NaturalPhotons,
    double InsideMegajoules,
    double NurseryCelsius,
    double AirCelsius,
    double VapourDeficitKilopascals);
