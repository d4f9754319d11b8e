using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Plants;

/// <summary>The water at the roots, as the plants see it at midnight.</summary>
/// <param name="TemperatureCelsius">Water temperature, °C.</param>
/// <param name="OxygenMilligramsPerLitre">Dissolved oxygen, mg/L.</param>
/// <param name="ConductivityMillisiemensPerCentimetre">EC at 25 °C, mS/cm.</param>
/// <param name="PH">pH; recorded with the rest, growth itself does not depend on it (iron's availability does).</param>
/// <param name="NitrateMilligramsNPerLitre">Nitrate, mg N/L.</param>
/// <param name="TanMilligramsNPerLitre">Ammonium and ammonia, mg N/L.</param>
/// <param name="PhosphorusMilligramsPerLitre">Phosphate, mg P/L.</param>
/// <param name="PotassiumMilligramsPerLitre">mg K/L.</param>
/// <param name="CalciumMilligramsPerLitre">mg Ca/L.</param>
/// <param name="MagnesiumMilligramsPerLitre">mg Mg/L.</param>
/// <param name="SulfurMilligramsPerLitre">Sulfate, mg S/L.</param>
/// <param name="AvailableIronMilligramsPerLitre">Iron of each holder times its available share (<see cref="Iron.AvailableShare"/>),
/// mg Fe/L.</param>
/// <param name="SodiumMilligramsPerLitre">mg Na/L.</param>
/// <param name="ChlorideMilligramsPerLitre">mg Cl/L.</param>
/// <param name="WaterFactor">Share of the roots that the water reaches, 0–1; 1 on a raft.</param>
/// <param name="CalciumStreamGramsPerDay">Most calcium that the transpired water can carry up in a day, g for the lot; without bound
/// where the transpiration of a single lot is not followed.</param>
public readonly record struct RootZone(
    double TemperatureCelsius,
    double OxygenMilligramsPerLitre,
    double ConductivityMillisiemensPerCentimetre,
    double PH,
    double NitrateMilligramsNPerLitre,
    double TanMilligramsNPerLitre,
    double PhosphorusMilligramsPerLitre,
    double PotassiumMilligramsPerLitre,
    double CalciumMilligramsPerLitre,
    double MagnesiumMilligramsPerLitre,
    double SulfurMilligramsPerLitre,
    double AvailableIronMilligramsPerLitre,
    double SodiumMilligramsPerLitre = 0,
    double ChlorideMilligramsPerLitre = 0,
    double WaterFactor = 1,
    double CalciumStreamGramsPerDay = double.PositiveInfinity)
{
    /// <summary>The water of a basin as roots meet it.</summary>
    public static RootZone Of(Basins basins, int basin, PlantParameters plants)
    {
        ArgumentNullException.ThrowIfNull(basins);
        Ions ions = basins.IonsOf(basin);
        CarbonateConstants constants = CarbonateConstants.At(basins.Celsius[basin]);
        double carbon = basins.Litres[basin] > 0
            ? basins.Grams[WaterStep.At(basin, Substance.InorganicCarbon)] / basins.Litres[basin] / UnitConstants.AtomicWeight.Carbon
            : 0;
        double conductivity = Conductivity.MicrosiemensPerCentimetreAt25(
            ions, carbon, basins.PH[basin], constants, IonicStrength.MolesPerLitre(ions));
        return new RootZone(
            basins.Celsius[basin],
            basins.MilligramsPerLitre(basin, Substance.Oxygen),
            conductivity / UnitConstants.GramsPerKilogram,
            basins.PH[basin],
            basins.MilligramsPerLitre(basin, Substance.Nitrate),
            basins.MilligramsPerLitre(basin, Substance.Tan),
            basins.MilligramsPerLitre(basin, Substance.Phosphorus),
            basins.MilligramsPerLitre(basin, Substance.Potassium),
            basins.MilligramsPerLitre(basin, Substance.Calcium),
            basins.MilligramsPerLitre(basin, Substance.Magnesium),
            basins.MilligramsPerLitre(basin, Substance.Sulfate),
            Iron.AvailableMilligramsPerLitre(basins, basin, plants),
            basins.MilligramsPerLitre(basin, Substance.Sodium),
            basins.MilligramsPerLitre(basin, Substance.Chloride));
    }
}
