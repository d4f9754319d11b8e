using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>What depends on a basin's temperature alone, read once a step for all processes.</summary>
/// <remarks>The functions are the processes' own; only their exponentials are tabulated. Workspace of one run, not thread-safe.</remarks>
public sealed class Warmth
{
    private const int Functions = 11;
    private readonly TemperatureTable _table;
    private readonly double[] _values;
    private double _carbonDioxideShare = 1;

    /// <summary>Tabulates the functions of a farm.</summary>
    public Warmth(FarmParts parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        NitrificationParameters nitrification = parts.Nitrification;
        _values = new double[parts.Basins.Length * Functions];
        _table = new TemperatureTable(
        [
            t => parts.Aeration.Beta * OxygenSaturation.MilligramsPerLitre(t, parts.PressureAtmospheres) / UnitConstants.GramsPerKilogram,
            t => CarbonateSystem.SaturationCarbonDioxideMolesPerLitre(
                CarbonateConstants.At(t), parts.Farm.House.CarbonDioxidePpm, parts.PressureAtmospheres, t),
            t => Aeration.OxygenConductanceLitresPerHour(1, 1, t, parts.Aeration),
            t => nitrification.AmmoniaOxidizers.MaximumGrowthRatePerDay
                * FilmResponse.Temperature(nitrification, NitrifierPopulation.AmmoniaOxidizers, t),
            t => nitrification.NitriteOxidizers.MaximumGrowthRatePerDay
                * FilmResponse.Temperature(nitrification, NitrifierPopulation.NitriteOxidizers, t),
            t => FilmResponse.DecayRatePerDay(nitrification, NitrifierPopulation.AmmoniaOxidizers, t),
            t => FilmResponse.DecayRatePerDay(nitrification, NitrifierPopulation.NitriteOxidizers, t),
            t => FilmFlux.OxygenCapGramsPerSquareMetreDay(nitrification, t, 1),
            t => Hydrolysis.RatePerHour(parts.Solids, t, parts.Solids.FullHydrolysisOxygenMilligramsPerLitre),
            t => Hydrolysis.RatePerHour(parts.Solids, t, 0),
            t => Denitrification.BackgroundConductanceLitresPerHour(parts.Mineralization, 1, t),
        ]);
    }

    /// <summary>Oxygen at saturation in the farm's water, g/L.</summary>
    public double OxygenSaturationGramsPerLitre(int basin) => _values[basin * Functions];

    /// <summary>Carbon dioxide in equilibrium with the house air, mol/L.</summary>
    public double CarbonDioxideSaturationMoles(int basin) => _values[(basin * Functions) + 1] * _carbonDioxideShare;

    /// <summary>Oxygen conductance of a diffuser for each g/h of standard transfer at α = 1, L/g.</summary>
    public double OxygenTransfer(int basin) => _values[(basin * Functions) + 2];

    /// <summary>Growth rate of ammonia oxidizers before all else, 1/d.</summary>
    public double AmmoniaOxidizerGrowth(int basin) => _values[(basin * Functions) + 3];

    /// <summary>Growth rate of nitrite oxidizers before all else, 1/d.</summary>
    public double NitriteOxidizerGrowth(int basin) => _values[(basin * Functions) + 4];

    /// <summary>Decay of ammonia oxidizers, 1/d.</summary>
    public double AmmoniaOxidizerDecay(int basin) => _values[(basin * Functions) + 5];

    /// <summary>Decay of nitrite oxidizers, 1/d.</summary>
    public double NitriteOxidizerDecay(int basin) => _values[(basin * Functions) + 6];

    /// <summary>Cap of the ammonia flux for each mg/L of oxygen, g N/(m² d) per mg/L.</summary>
    public double OxygenCap(int basin) => _values[(basin * Functions) + 7];

    /// <summary>Breakdown of solids, 1/h, at an oxygen.</summary>
    public double BreakdownPerHour(int basin, double oxygenMilligramsPerLitre, SolidsParameters solids)
    {
        ArgumentNullException.ThrowIfNull(solids);
        double anoxic = _values[(basin * Functions) + 9];
        double share = Math.Clamp(oxygenMilligramsPerLitre / solids.FullHydrolysisOxygenMilligramsPerLitre, 0, 1);
        return anoxic + (share * (_values[(basin * Functions) + 8] - anoxic));
    }

    /// <summary>Denitrification of standing water, L/h for each litre.</summary>
    public double BackgroundDenitrification(int basin) => _values[(basin * Functions) + 10];

    /// <summary>Reads the table at the basins' temperatures.</summary>
    /// <param name="basins">The basins.</param>
    /// <param name="carbonDioxideShare">Carbon dioxide of the house air over what the table was made for.</param>
    public void Refresh(Basins basins, double carbonDioxideShare)
    {
        _carbonDioxideShare = carbonDioxideShare;
        ArgumentNullException.ThrowIfNull(basins);
        for (int b = 0; b < basins.Count; b++)
        {
            _table.Look(basins.Celsius[b], _values.AsSpan(b * Functions, Functions));
        }
    }
}
