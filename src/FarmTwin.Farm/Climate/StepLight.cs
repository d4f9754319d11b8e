namespace FarmTwin.Farm.Climate;

/// <summary>Light and air of a step, as the plants meet them.</summary>
/// <param name="NaturalPhotons">Daylight at the crop, µmol/(m² s).</param>
/// <param name="InsideMegajoules">Sun inside the house, MJ/(m² h).</param>
/// <param name="NurseryPhotons">Light at the trays while on, µmol/(m² s).</param>
/// <param name="NurseryLitShare">Share of the step in which the trays are lit.</param>
/// <param name="NurseryMegajoules">Heat of that light on the trays, MJ/(m² h), mean of the step.</param>
/// <param name="NurseryCelsius">Air in the nursery, °C.</param>
/// <param name="AirCelsius">Air of the house, °C.</param>
/// <param name="VapourDeficitKilopascals">Vapour pressure deficit of the house air, kPa.</param>
public readonly record struct StepLight(
    double NaturalPhotons,
    double InsideMegajoules,
    double NurseryPhotons,
    double NurseryLitShare,
    double NurseryMegajoules,
    double NurseryCelsius,
    double AirCelsius,
    double VapourDeficitKilopascals);
