namespace FarmTwin.Farm.Climate;

/// <summary>Heat exchangers by effectiveness and number of transfer units.</summary>
/// <remarks>
/// Kays &amp; London, Compact Heat Exchangers; Incropera &amp; DeWitt, Fundamentals of Heat and Mass Transfer, ch. 11 (from memory of
/// the source). NTU = UA / Cmin; capacity ratio Cr = Cmin / Cmax, 0 to 1; effectiveness is duty over Cmin times the difference of inlets.
/// </remarks>
public static class HeatExchanger
{
    /// <summary>Specific heat of water, J/(kg K).</summary>
    public const double WaterSpecificHeat = 4186;

    /// <summary>Effectiveness of a counterflow exchanger, 0 to 1.</summary>
    /// <param name="transferUnits">NTU, 0 or more.</param>
    /// <param name="capacityRatio">Cr, 0 to 1.</param>
    public static double CounterflowEffectiveness(double transferUnits, double capacityRatio)
    {
        // Near Cr = 1 the general form is 0/0; its limit is NTU / (1 + NTU).
        if (1 - capacityRatio < 1e-9)
        {
            return transferUnits / (1 + transferUnits);
        }

        double decay = Math.Exp(-transferUnits * (1 - capacityRatio));
        return (1 - decay) / (1 - (capacityRatio * decay));
    }

    /// <summary>Effectiveness of a parallel-flow exchanger, 0 to 1.</summary>
    /// <param name="transferUnits">NTU, 0 or more.</param>
    /// <param name="capacityRatio">Cr, 0 to 1.</param>
    public static double ParallelEffectiveness(double transferUnits, double capacityRatio) =>
        (1 - Math.Exp(-transferUnits * (1 + capacityRatio))) / (1 + capacityRatio);

    /// <summary>Effectiveness where one side does not change its temperature (a coil in a well-mixed sump), 0 to 1.</summary>
    /// <param name="transferUnits">NTU, 0 or more.</param>
    public static double MixedSumpEffectiveness(double transferUnits) => 1 - Math.Exp(-transferUnits);

    /// <summary>NTU that a counterflow exchanger needs for an effectiveness.</summary>
    /// <param name="effectiveness">0 to below 1.</param>
    /// <param name="capacityRatio">Cr, 0 to 1.</param>
    public static double CounterflowTransferUnits(double effectiveness, double capacityRatio) =>
        1 - capacityRatio < 1e-9
            ? effectiveness / (1 - effectiveness)
            : Math.Log((effectiveness - 1) / ((effectiveness * capacityRatio) - 1)) / (capacityRatio - 1);

    /// <summary>Logarithmic mean of the temperature differences at both ends, K.</summary>
    /// <param name="firstKelvin">Difference at one end, K, above 0.</param>
    /// <param name="secondKelvin">Difference at the other end, K, above 0.</param>
    public static double LogMeanDifference(double firstKelvin, double secondKelvin) =>
        Math.Abs(firstKelvin - secondKelvin) < 1e-9 * firstKelvin
            ? firstKelvin
            : (firstKelvin - secondKelvin) / Math.Log(firstKelvin / secondKelvin);

    /// <summary>Heat from a hot-water coil to the well-mixed sump around it, W.</summary>
    /// <remarks>Negative where the coil's water is the colder: a pump that runs without fire cools the sump.</remarks>
    /// <param name="flowKilogramsPerSecond">Hot water through the coil, kg/s, 0 or more.</param>
    /// <param name="conductanceWattsPerKelvin">UA, W/K, 0 or more.</param>
    /// <param name="hotInletCelsius">Hot water at the coil's inlet, °C.</param>
    /// <param name="sumpCelsius">Sump, °C.</param>
    public static double ImmersedCoilPowerWatts(
        double flowKilogramsPerSecond, double conductanceWattsPerKelvin, double hotInletCelsius, double sumpCelsius) =>
        ImmersedCoilConductance(flowKilogramsPerSecond, conductanceWattsPerKelvin) * (hotInletCelsius - sumpCelsius);

    /// <summary>The coil's duty per kelvin between hot inlet and sump, W/K: for a heat solve that is linear in the sump.</summary>
    /// <param name="flowKilogramsPerSecond">Hot water through the coil, kg/s, 0 or more.</param>
    /// <param name="conductanceWattsPerKelvin">UA, W/K, 0 or more.</param>
    public static double ImmersedCoilConductance(double flowKilogramsPerSecond, double conductanceWattsPerKelvin)
    {
        if (flowKilogramsPerSecond <= 0)
        {
            return 0;
        }

        double capacity = flowKilogramsPerSecond * WaterSpecificHeat;
        return capacity * MixedSumpEffectiveness(conductanceWattsPerKelvin / capacity);
    }
}
