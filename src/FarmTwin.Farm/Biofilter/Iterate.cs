using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Biofilter;

/// <summary>One of the substances that <see cref="FilmProcess"/> solves in passes: its balance, its last solution and its iterate in every basin.</summary>
/// <remarks>Every array has the room of whole vectors. Workspace of one run, not thread-safe.</remarks>
internal sealed class Iterate
{
    // Beyond this the changes do not close in well enough to be extrapolated.
    private const double LargestRatio = 0.9;
    private const double MilligramsPerGram = UnitConstants.GramsPerKilogram;

    // Concentrations about this small count absolutely, mg/L.
    private const double Small = 0.1;

    private readonly int _substance;
    private readonly double _least;
    private readonly double[] _lastChange;
    private readonly double[] _wet;

    /// <summary>Makes it.</summary>
    /// <param name="basins">How many.</param>
    /// <param name="substance">A column of <see cref="Substance"/>.</param>
    /// <param name="leastMilligramsPerLitre">The iterate is never taken below.</param>
    public Iterate(int basins, int substance, double leastMilligramsPerLitre)
    {
        _substance = substance;
        _least = leastMilligramsPerLitre;
        _lastChange = Fours.Zeros(basins);
        _wet = Fours.Zeros(basins);
        MilligramsPerLitre = Fours.Zeros(basins);
        Array.Fill(MilligramsPerLitre, leastMilligramsPerLitre);
        BaseRight = Fours.Zeros(basins);
        BaseLoss = Fours.Zeros(basins);
        Loss = Fours.Zeros(basins);
        GramsPerLitre = Fours.Zeros(basins);
    }

    /// <summary>The iterate, mg/L.</summary>
    public double[] MilligramsPerLitre { get; }

    /// <summary>What the balance begins with, g/h.</summary>
    public double[] BaseRight { get; }

    /// <summary>Losses that the passes do not change, L/h.</summary>
    public double[] BaseLoss { get; }

    /// <summary>All losses of a pass, L/h.</summary>
    public double[] Loss { get; }

    /// <summary>What a pass has solved, g/L.</summary>
    public double[] GramsPerLitre { get; }

    /// <summary>Takes the water of the step's start and what all processes contributed.</summary>
    public void Begin(WaterBalance balance, Basins basins, WaterStep step, ReadOnlySpan<double> litresAfter)
    {
        balance.Gather(basins, step, _substance, BaseRight);
        for (int b = 0; b < basins.Count; b++)
        {
            BaseLoss[b] = step.Loss[WaterStep.At(b, _substance)];
            MilligramsPerLitre[b] = Math.Max(_least, basins.MilligramsPerLitre(b, _substance));
            _wet[b] = litresAfter[b] > 0 ? 1 : 0;
        }
    }

    /// <summary>Solves with the losses of this pass.</summary>
    public void Solve(WaterBalance balance) => balance.SolveOne(Loss, BaseRight, GramsPerLitre);

    /// <summary>Takes the solved values as the next iterate; returns the largest change, relative to what was there.</summary>
    /// <remarks>
    /// Plain iteration closes in geometrically; from the second pass on each value is extrapolated to the limit of its last two changes
    /// (Aitken's delta-squared process), which saves half the passes.
    /// </remarks>
    public double Take(int pass)
    {
        Vector256<double> one = Vector256<double>.One;
        Vector256<double> largest = Vector256<double>.Zero;
        for (int first = 0; first < GramsPerLitre.Length; first += Fours.Width)
        {
            Vector256<double> iterate = Vector256.Create(MilligramsPerLitre, first);
            Vector256<double> wet = Vector256.GreaterThan(Vector256.Create(_wet, first), Vector256<double>.Zero);
            Vector256<double> value = MilligramsPerGram * Vector256.Create(GramsPerLitre, first);
            Vector256<double> change = value - iterate;
            Vector256<double> next = value;
            Vector256<double> lastChange = change;
            if (pass > 0)
            {
                Vector256<double> before = Vector256.Create(_lastChange, first);
                Vector256<double> ratio = change / before;
                Vector256<double> limit = Vector256.Clamp(value + (change * ratio / (one - ratio)), 0.5 * value, 2 * value);
                next = Vector256.ConditionalSelect(Vector256.LessThan(Vector256.Abs(ratio), Vector256.Create(LargestRatio)), limit, value);

                // What was extrapolated is no longer a term of the series.
                lastChange = Vector256.ConditionalSelect(Vector256.Equals(before, Vector256<double>.Zero), change, Vector256<double>.Zero);
            }

            lastChange.CopyTo(_lastChange, first);
            Vector256.ConditionalSelect(wet, Vector256.Max(next, Vector256.Create(_least)), iterate).CopyTo(MilligramsPerLitre, first);
            largest = Vector256.Max(largest, wet & (Vector256.Abs(change) / (Vector256.Abs(iterate) + Vector256.Create(Small))));
        }

        return Math.Max(Math.Max(largest[0], largest[1]), Math.Max(largest[2], largest[3]));
    }

    /// <summary>Hands the solution to the step.</summary>
    public void Settle(WaterStep step)
    {
        for (int b = 0; b < step.BasinCount; b++)
        {
            step.Concentration[WaterStep.At(b, _substance)] = GramsPerLitre[b];
        }
    }
}
