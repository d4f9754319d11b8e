namespace FarmTwin.Farm.Water;

/// <summary>What several processes read of each basin's chemistry at the start of a step, worked out once.</summary>
/// <remarks>Only for the step that <see cref="Refresh"/> opened. Workspace of one run, not thread-safe.</remarks>
public sealed class WaterChemistry
{
    private readonly CarbonateConstants[] _constants;
    private readonly EffectiveConstants[] _effective;
    private readonly double[] _hydrogen;
    private readonly double[] _unionized;

    /// <summary>Makes a workspace.</summary>
    /// <param name="basins">Number of basins.</param>
    public WaterChemistry(int basins)
    {
        _constants = new CarbonateConstants[basins];
        _effective = new EffectiveConstants[basins];
        _hydrogen = new double[basins];
        _unionized = new double[basins];
    }

    /// <summary>Constants at the basin's temperature.</summary>
    public ref readonly CarbonateConstants Constants(int basin) => ref _constants[basin];

    /// <summary>Activity of H.</summary>
    public double Hydrogen(int basin) => _hydrogen[basin];

    /// <summary>Share of TAN that is un-ionized, as <see cref="Ammonia.UnionizedFraction"/>.</summary>
    public double UnionizedShare(int basin) => _unionized[basin];

    /// <summary>Constants corrected for the activities in the basin's water.</summary>
    internal ref readonly EffectiveConstants Effective(int basin) => ref _effective[basin];

    /// <summary>Works them out.</summary>
    public void Refresh(Basins basins)
    {
        ArgumentNullException.ThrowIfNull(basins);
        for (int b = 0; b < basins.Count; b++)
        {
            ref CarbonateConstants constants = ref _constants[b];
            constants = CarbonateConstants.At(basins.Celsius[b]);
            double hydrogen = CarbonateSystem.HydrogenOf(basins.PH[b]);
            _hydrogen[b] = hydrogen;

            // Emerson's constant stands in the same table: the share without a second exponential.
            _unionized[b] = constants.KAmmonium / (constants.KAmmonium + hydrogen);
            if (basins.Litres[b] > 0)
            {
                _effective[b] = new EffectiveConstants(in constants, IonicStrength.MolesPerLitre(basins.IonsOf(b)));
            }
        }
    }
}
