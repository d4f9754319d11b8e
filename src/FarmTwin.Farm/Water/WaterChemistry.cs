using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;

namespace FarmTwin.Farm.Water;

/// <summary>What several processes read of each basin's chemistry at the start of a step, worked out once.</summary>
/// <remarks>Only for the step that <see cref="Refresh"/> opened. Workspace of one run, not thread-safe.</remarks>
public sealed class WaterChemistry
{
    private readonly CarbonateConstants[] _constants;
    private readonly double[] _laid;
    private readonly EffectiveLanes[] _effective;
    private readonly double[] _acidity;
    private readonly double[] _strength;
    private readonly double[] _hydrogen;
    private readonly double[] _unionized;

    /// <summary>Makes a workspace.</summary>
    /// <param name="basins">Number of basins.</param>
    public WaterChemistry(int basins)
    {
        _constants = new CarbonateConstants[basins];
        _effective = new EffectiveLanes[Fours.Room(basins) / Fours.Width];
        _laid = new double[_effective.Length * ConstantLanes.Room];
        _acidity = Fours.Zeros(basins);
        _strength = Fours.Zeros(basins);
        _hydrogen = Fours.Zeros(basins);
        _unionized = Fours.Zeros(basins);

        // The places behind the last basin hold some water too.
        CarbonateConstants mild = CarbonateConstants.At(25);
        for (int lane = basins; lane < _hydrogen.Length; lane++)
        {
            ConstantLanes.Put(LaidOf(lane / Fours.Width), lane % Fours.Width, in mild);
        }
    }

    /// <summary>Constants at the basin's temperature.</summary>
    public ref readonly CarbonateConstants Constants(int basin) => ref _constants[basin];

    /// <summary>Activity of H, with the room of whole vectors.</summary>
    public double[] Hydrogen => _hydrogen;

    /// <summary>Share of TAN that is un-ionized, as <see cref="Ammonia.UnionizedFraction"/>, with the room of whole vectors.</summary>
    public double[] UnionizedShare => _unionized;

    /// <summary>Constants of four basins, the first of them at a multiple of four.</summary>
    internal ConstantLanes Constants4(int first) => new(LaidOf(first / Fours.Width));

    /// <summary>Constants of four basins corrected for the activities in their water.</summary>
    internal ref readonly EffectiveLanes Effective4(int first) => ref _effective[first / Fours.Width];

    /// <summary>Works them out.</summary>
    public void Refresh(Basins basins)
    {
        ArgumentNullException.ThrowIfNull(basins);
        for (int b = 0; b < _constants.Length; b++)
        {
            _constants[b] = CarbonateConstants.At(basins.Celsius[b]);
            ConstantLanes.Put(LaidOf(b / Fours.Width), b % Fours.Width, in _constants[b]);
            _acidity[b] = basins.PH[b];
            _strength[b] = basins.Litres[b] > 0
                ? IonSums.Of(basins.Grams.AsSpan(WaterStep.At(b, 0), Substance.Columns), 1 / basins.Litres[b]).IonicStrength
                : 0;
        }

        for (int first = 0; first < _hydrogen.Length; first += Fours.Width)
        {
            ConstantLanes constants = Constants4(first);
            Vector256<double> hydrogen = CarbonateSystem.HydrogenOf(Vector256.Create(_acidity, first));
            hydrogen.CopyTo(_hydrogen, first);

            // Emerson's constant stands in the same table: the share without a second exponential.
            (constants.KAmmonium / (constants.KAmmonium + hydrogen)).CopyTo(_unionized, first);
            _effective[first / Fours.Width] = new EffectiveLanes(in constants, Vector256.Create(_strength, first));
        }
    }

    private Span<double> LaidOf(int four) => _laid.AsSpan(four * ConstantLanes.Room, ConstantLanes.Room);
}
