using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Solids;

/// <summary>Parameters of suspended and held solids, as <c>processes/solids.json</c> states them.</summary>
/// <remarks>Immutable. How much is produced belongs to the fish; here: size classes, capture, holding and release.</remarks>
public sealed record SolidsParameters
{
    /// <summary>Number of size classes, coarse to fine: above 100, 50–100, 20–50, 5–20, below 5 µm.</summary>
    public const int ClassCount = 5;

    private double[] _classShares = [];
    private double[] _captures = [];
    private double[] _mobileShares = [];

    /// <summary>Share of the dry matter leaving the fish in each size class; sums to 1.</summary>
    public ReadOnlySpan<double> ClassShares => _classShares;

    /// <summary>Share of each class that a bead bed keeps in a pass.</summary>
    public ReadOnlySpan<double> CapturePerPass => _captures;

    /// <summary>Share of each element (<see cref="Element"/> order) that can ever dissolve; P and Ca are 0 here, their share follows pH.</summary>
    public ReadOnlySpan<double> MobileShares => _mobileShares;

    /// <summary>Hydrolysis of degradable volatile solids at 20 °C with oxygen, 1/d.</summary>
    public required double HydrolysisRatePerDay { get; init; }

    /// <summary>Growth of hydrolysis per °C (base of the power; reference 20 °C).</summary>
    public required double HydrolysisTemperatureBase { get; init; }

    /// <summary>Hydrolysis without oxygen over that with.</summary>
    public required double AnoxicHydrolysisFactor { get; init; }

    /// <summary>Oxygen from which hydrolysis runs in full, mg/L.</summary>
    public required double FullHydrolysisOxygenMilligramsPerLitre { get; init; }

    /// <summary>Volatile solids in fresh dry matter (share).</summary>
    public required double VolatileShare { get; init; }

    /// <summary>Degradable part of fresh volatile solids (share).</summary>
    public required double DegradableShare { get; init; }

    /// <summary>Oxygen per volatile solids destroyed, g/g.</summary>
    public required double OxygenPerVolatileSolids { get; init; }

    /// <summary>Rate at which K, Na and Cl leach, 1/d.</summary>
    public required double FastLeachRatePerDay { get; init; }

    /// <summary>Rate of approach of P and Ca to their pH equilibrium in the mineralization tank, 1/d.</summary>
    public required double EquilibriumRatePerDay { get; init; }

    /// <summary>Dissolved share of phosphorus at high pH.</summary>
    public required double PhosphorusBaseShare { get; init; }

    /// <summary>What low pH adds to it.</summary>
    public required double PhosphorusAcidShare { get; init; }

    /// <summary>Steepness of the curve, decades per pH unit.</summary>
    public required double PhosphorusSlopePerPH { get; init; }

    /// <summary>pH at the middle of the curve.</summary>
    public required double PhosphorusMiddlePH { get; init; }

    /// <summary>What calcium's dissolved share exceeds phosphorus' by.</summary>
    public required double CalciumExtraShare { get; init; }

    /// <summary>Held dry matter that halves the flow through a bead bed, kg per m³ of beads.</summary>
    public required double HalfFlowLoadKilogramsPerCubicMetre { get; init; }

    /// <summary>Held dry matter above which heterotrophs displace nitrifiers, kg per m³ of beads.</summary>
    public required double FullLoadKilogramsPerCubicMetre { get; init; }

    /// <summary>Most that an overdue wash takes from the film's capacity (share).</summary>
    public required double OverdueWashLoss { get; init; }

    /// <summary>Degradable volatile solids in fresh dry matter, g/g.</summary>
    public double FreshDegradableGramsPerGram => VolatileShare * DegradableShare;

    /// <summary>Reads every value by name and unit.</summary>
    /// <param name="set">The set <c>processes/solids</c>.</param>
    /// <exception cref="KeyNotFoundException">A value is missing.</exception>
    /// <exception cref="ArgumentException">A value is stated in another unit, or the class shares do not sum to 1.</exception>
    public static SolidsParameters From(ParameterSet set)
    {
        double[] shares = ReadClasses(set, "ClassShare");
        double sum = 0;
        foreach (double share in shares)
        {
            sum += share;
        }

        // A replicate may have drawn one share; the others must have been drawn with it.
        if (Math.Abs(sum - 1) > 1e-9)
        {
            throw new ArgumentException($"The class shares of '{set.Name}' sum to {sum}, not to 1.", nameof(set));
        }

        double potassium = set.Get("potassiumMobileShare", "1");
        double salt = set.Get("sodiumChlorideMobileShare", "1");
        return new SolidsParameters
        {
            _classShares = shares,
            _captures = ReadClasses(set, "Capture"),
            _mobileShares =
            [
                set.Get("nitrogenMobileShare", "1"), 0, potassium, 0, set.Get("magnesiumMobileShare", "1"), salt, salt,
                set.Get("sulfurMobileShare", "1"), set.Get("ironMobileShare", "1"),
            ],
            HydrolysisRatePerDay = set.Get("hydrolysisRate", "1/d"),
            HydrolysisTemperatureBase = set.Get("hydrolysisTemperatureBase", "1"),
            AnoxicHydrolysisFactor = set.Get("anoxicHydrolysisFactor", "1"),
            FullHydrolysisOxygenMilligramsPerLitre = set.Get("fullHydrolysisOxygen", "mg/L"),
            VolatileShare = set.Get("volatileShare", "1"),
            DegradableShare = set.Get("degradableShare", "1"),
            OxygenPerVolatileSolids = set.Get("oxygenPerVolatileSolids", "g O2/g VS"),
            FastLeachRatePerDay = set.Get("fastLeachRate", "1/d"),
            EquilibriumRatePerDay = set.Get("equilibriumRate", "1/d"),
            PhosphorusBaseShare = set.Get("phosphorusBaseShare", "1"),
            PhosphorusAcidShare = set.Get("phosphorusAcidShare", "1"),
            PhosphorusSlopePerPH = set.Get("phosphorusSlope", "1/pH"),
            PhosphorusMiddlePH = set.Get("phosphorusMiddle", "pH"),
            CalciumExtraShare = set.Get("calciumExtraShare", "1"),
            HalfFlowLoadKilogramsPerCubicMetre = set.Get("halfFlowLoad", "kg DM/m3"),
            FullLoadKilogramsPerCubicMetre = set.Get("fullLoad", "kg DM/m3"),
            OverdueWashLoss = set.Get("overdueWashLoss", "1"),
        };
    }

    private static double[] ReadClasses(ParameterSet set, string ending) =>
    [
        set.Get("above100" + ending, "1"), set.Get("from50To100" + ending, "1"), set.Get("from20To50" + ending, "1"),
        set.Get("from5To20" + ending, "1"), set.Get("below5" + ending, "1"),
    ];
}
