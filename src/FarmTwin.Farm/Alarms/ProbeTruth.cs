using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Alarms;

/// <summary>What is there for a probe to read.</summary>
internal static class ProbeTruth
{
    // A probe hangs a hand's breadth above the floor: below this share of the normal level it hangs dry.
    private const double DryShare = 0.02;

    /// <summary>The truth, in the probe's unit; what it was before where the probe hangs dry.</summary>
    public static double Of(FarmContext farm, int probe)
    {
        Basins basins = farm.State.Basins;
        int basin = farm.Parts.Alarms.ProbeBasin[probe];
        switch (farm.Parts.Alarms.Quantities[probe])
        {
            case ProbeQuantity.AirTemperature:
                return farm.State.House.AirCelsius;
            case ProbeQuantity.Mains:
                return farm.State.Equipment.MainsOn ? 1 : 0;
            case ProbeQuantity.Level:
                return basins.Litres[basin] / farm.Parts.Basins[basin].VolumeLitres;
            case var _ when HangsDry(farm, probe):
                return farm.State.Probes.Truth[probe];
            case ProbeQuantity.PH:
                return basins.PH[basin];
            case ProbeQuantity.WaterTemperature:
                return basins.Celsius[basin];
            case ProbeQuantity.Oxygen:
                return basins.MilligramsPerLitre(basin, Substance.Oxygen);
            default:
                return basins.MicrosiemensPerCentimetre(basin);
        }
    }

    /// <summary>Whether a probe hangs in air where water should be; a level probe tells that itself.</summary>
    public static bool HangsDry(FarmContext farm, int probe)
    {
        int basin = farm.Parts.Alarms.ProbeBasin[probe];
        return basin >= 0 && farm.Parts.Alarms.Quantities[probe] != ProbeQuantity.Level
            && farm.State.Basins.Litres[basin] < DryShare * farm.Parts.Basins[basin].VolumeLitres;
    }
}
