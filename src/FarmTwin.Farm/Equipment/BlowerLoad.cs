using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Equipment;

/// <summary>What of a blower's power falls to a basin.</summary>
public static class BlowerLoad
{
    /// <summary>Power for a basin's normal air, W: the blower's, shared by the air that its basins take; 0 where no blower is named.</summary>
    /// <param name="farm">The farm.</param>
    /// <param name="basin">The basin's name.</param>
    public static double WattsOf(FarmDescription farm, string basin)
    {
        ArgumentNullException.ThrowIfNull(farm);
        BasinDescription one = farm.Basins[basin];
        if (one.Blower is not { } name || one.AirLitresPerMinute <= 0)
        {
            return 0;
        }

        double all = farm.Basins.Values.Where(o => o.Blower == name).Sum(o => o.AirLitresPerMinute);
        return farm.Blowers[name].PowerWatts * one.AirLitresPerMinute / all;
    }
}
