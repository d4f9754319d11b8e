using FarmTwin.Farm.Equipment;

namespace FarmTwin.Farm.Water;

/// <summary>The balance of one step: what every process contributes to the water, and the concentrations that satisfy it all at once.</summary>
/// <remarks>
/// Processes never integrate on their own. Each adds sources (g/h) and first-order losses (L/h) per basin and substance; the
/// linear systems are solved; then each books coefficient × solved concentration. Workspace of one run, not thread-safe.
/// </remarks>
public sealed class WaterStep
{
    /// <summary>Makes a workspace.</summary>
    public WaterStep(int basins)
    {
        BasinCount = basins;
        Source = new double[basins * Substance.Columns];
        Loss = new double[basins * Substance.Columns];
        Concentration = new double[basins * Substance.Columns];
        VapourLitresPerHour = new double[basins];
        HeatWatts = new double[basins];
        HeatWattsPerKelvin = new double[basins];
    }

    /// <summary>Number of basins.</summary>
    public int BasinCount { get; }

    /// <summary>Start of the step, seconds of the season.</summary>
    public long FromSeconds { get; private set; }

    /// <summary>End of the step, seconds of the season.</summary>
    public long ToSeconds { get; private set; }

    /// <summary>Length of the step, h.</summary>
    public double Hours { get; private set; }

    /// <summary>Sources, g/h, [basin × columns + substance].</summary>
    public double[] Source { get; }

    /// <summary>First-order losses, L/h, [basin × columns + substance].</summary>
    public double[] Loss { get; }

    /// <summary>Solved concentrations at the end of the step, g/L.</summary>
    public double[] Concentration { get; }

    /// <summary>Evaporation and transpiration wanted from each basin, L/h.</summary>
    public double[] VapourLitresPerHour { get; }

    /// <summary>Heat gained by each basin whatever its temperature, W.</summary>
    public double[] HeatWatts { get; }

    /// <summary>Heat lost by each basin per kelvin of its temperature above 0 °C, W/K.</summary>
    public double[] HeatWattsPerKelvin { get; }

    /// <summary>Clears all contributions and opens a step.</summary>
    public void Open(long fromSeconds, long toSeconds)
    {
        FromSeconds = fromSeconds;
        ToSeconds = toSeconds;
        Hours = (toSeconds - fromSeconds) / UnitConstants.SecondsPerHour;
        Array.Clear(Source);
        Array.Clear(Loss);
        Array.Clear(VapourLitresPerHour);
        Array.Clear(HeatWatts);
        Array.Clear(HeatWattsPerKelvin);
    }

    /// <summary>The index of a basin's substance.</summary>
    public static int At(int basin, int substance) => (basin * Substance.Columns) + substance;

    /// <summary>Adds a source, g/h.</summary>
    public void Add(int basin, int substance, double gramsPerHour) => Source[At(basin, substance)] += gramsPerHour;

    /// <summary>Adds a first-order loss, L/h.</summary>
    public void Lose(int basin, int substance, double litresPerHour) => Loss[At(basin, substance)] += litresPerHour;

    /// <summary>What a first-order loss removes in this step, g.</summary>
    public double Lost(int basin, int substance, double litresPerHour) =>
        litresPerHour * Concentration[At(basin, substance)] * Hours;
}
