using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.DesignSheet;

/// <summary>Steady oxygen and carbon dioxide of the fish loop at the hour of greatest demand, basin by basin.</summary>
/// <remarks>
/// (G + Σ Q) C = G β C* + Σ Q C_from − R, G by diffuser and surface as in the season, solved by repetition. Fish breathe as after the
/// meal, films as over the day, in the filter's chamber; bacteria of a tank's water take a share of what its fish take.
/// </remarks>
public sealed class LoopOxygen
{
    private const int Repetitions = 400;

    private readonly DesignCase _design;
    private readonly double[] _demand;
    private readonly double[] _carbonDioxide;

    /// <summary>Solves a day.</summary>
    /// <param name="design">The design.</param>
    /// <param name="day">Day of the fish plan.</param>
    public LoopOxygen(DesignCase design, int day)
    {
        ArgumentNullException.ThrowIfNull(design);
        _design = design;
        FarmParts parts = design.Parts;
        int count = parts.Basins.Length;
        _demand = new double[count];
        _carbonDioxide = new double[count];
        double tan = 0;
        double respiration = 1 + design.Bands.Get("tankRespiration", "1");
        foreach (IGrouping<int, StandingFish> tank in design.Fish.At(day).GroupBy(f => f.Tank))
        {
            FishDay fish = FishDay.Of(parts, tank, design.FairWater);
            _demand[tank.Key] += fish.PeakOxygenGramsPerHour * respiration;
            _carbonDioxide[tank.Key] += fish.PeakCarbonDioxideGramsPerHour * respiration;
            tan += fish.TanGrams;
        }

        int[] filters = parts.FilterBasin.Length > 0 ? parts.FilterBasin : [.. design.FishLoop.Where(b => parts.Basins[b].Use == BasinUse.FishSump)];
        foreach (int filter in filters)
        {
            _demand[filter] += tan / UnitConstants.HoursPerDay * NitrificationStoichiometry.OxygenPerNitrogen(parts.Nitrification) / filters.Length;
        }

        Conductance = [.. Enumerable.Range(0, count).Select(b => AirConductance(design, b, 1) + SurfaceConductance(design, b))];
        Saturation = parts.Aeration.Beta * OxygenSaturation.MilligramsPerLitre(design.HoldCelsius, parts.PressureAtmospheres);
        MilligramsPerLitre = Solve(Conductance, Saturation, _demand, -1);
        CarbonDioxideMilligramsPerLitre = Solve([.. Enumerable.Range(0, count).Select(CarbonDioxideConductance)], CarbonDioxideOfAir(), _carbonDioxide, 1);
    }

    /// <summary>Oxygen conductance of every basin, L/h.</summary>
    public double[] Conductance { get; }

    /// <summary>Saturation of the farm's water, mg/L.</summary>
    public double Saturation { get; }

    /// <summary>Oxygen of every basin, mg/L; negative where the demand cannot be met.</summary>
    public double[] MilligramsPerLitre { get; }

    /// <summary>Carbon dioxide of every basin, mg/L.</summary>
    public double[] CarbonDioxideMilligramsPerLitre { get; }

    /// <summary>Oxygen that a basin's fish, water and films take, g/h.</summary>
    public double DemandGramsPerHour(int basin) => _demand[basin];

    /// <summary>Oxygen that the loop's air gives while its water holds a level, over what the loop takes.</summary>
    public double SupplyOverDemand(double milligramsPerLitre) =>
        _design.FishLoop.Sum(b => Conductance[b]) * (Saturation - milligramsPerLitre) / UnitConstants.GramsPerKilogram
            / _design.FishLoop.Sum(DemandGramsPerHour);

    /// <summary>Oxygen conductance of a share of a basin's normal air, L/h.</summary>
    public static double AirConductance(DesignCase design, int basin, double airShare)
    {
        ArgumentNullException.ThrowIfNull(design);
        AerationParameters aeration = design.Parts.Aeration;
        BasinDescription described = design.Parts.Basins[basin];
        return Aeration.OxygenConductanceLitresPerHour(
            Aeration.StandardTransferGramsPerHour(
                airShare * described.AirLitresPerMinute * UnitConstants.CubicMetresPerHourPerLitrePerMinute, described.DiffuserDepthMetres, aeration.FineBubbleEfficiencyPerMetre),
            aeration.AlphaClearWater, design.HoldCelsius, aeration);
    }

    /// <summary>Oxygen conductance of a basin's open surface, L/h.</summary>
    public static double SurfaceConductance(DesignCase design, int basin)
    {
        ArgumentNullException.ThrowIfNull(design);
        BasinDescription described = design.Parts.Basins[basin];
        return Aeration.SurfaceOxygenConductanceLitresPerHour(described.SurfaceSquareMetres * (1 - described.CoveredShare), design.Parts.Aeration);
    }

    private double CarbonDioxideConductance(int basin)
    {
        CarbonateConstants constants = CarbonateConstants.At(_design.HoldCelsius);
        BasinDescription described = _design.Parts.Basins[basin];
        return Aeration.CarbonDioxideConductanceLitresPerHour(
                AirConductance(_design, basin, 1), described.AirLitresPerMinute * UnitConstants.CubicMetresPerHourPerLitrePerMinute, _design.HoldCelsius,
                constants, _design.Parts.Aeration)
            + Aeration.SurfaceCarbonDioxideConductanceLitresPerHour(described.SurfaceSquareMetres * (1 - described.CoveredShare), _design.Parts.Aeration);
    }

    private double CarbonDioxideOfAir() => CarbonateConstants.At(_design.HoldCelsius).KHenry * _design.Farm.House.CarbonDioxidePpm * 1e-6
        * _design.Parts.PressureAtmospheres * UnitConstants.AtomicWeight.Carbon * UnitConstants.CarbonDioxidePerCarbon * UnitConstants.GramsPerKilogram;

    private double[] Solve(double[] conductance, double saturation, double[] grams, int sign)
    {
        string[] pipes = _design.Network.PipeNames;
        var edges = pipes.Select((name, p) => (
                From: _design.Parts.BasinIndex(_design.Farm.Pipes[name].From),
                To: _design.Parts.BasinIndex(_design.Farm.Pipes[name].To),
                Flow: _design.Network.EdgeFlow[p]))
            .Where(e => e.Flow > 0 && _design.IsFishLoop(e.From) && _design.IsFishLoop(e.To)).ToArray();
        double[] level = [.. conductance.Select(_ => saturation)];
        for (int i = 0; i < Repetitions; i++)
        {
            foreach (int b in _design.FishLoop)
            {
                double flow = edges.Where(e => e.To == b).Sum(e => e.Flow);
                double arriving = edges.Where(e => e.To == b).Sum(e => e.Flow * level[e.From]);
                double mass = sign * grams[b] * UnitConstants.GramsPerKilogram;
                level[b] = conductance[b] + flow > 0 ? ((conductance[b] * saturation) + arriving + mass) / (conductance[b] + flow) : level[b];
            }
        }

        return level;
    }
}
