using FarmTwin.Engine;
using FarmTwin.Engine.Transport;
using FarmTwin.Farm;
using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Water;

namespace FarmTwin.Benchmarks;

/// <summary>A fish tank, a bead filter and a sump over a season, on the twin's clock, solver and kernels: the model of reference/one_loop.py.</summary>
public sealed class OneLoop : IHybridModel
{
    private const int Tank = 0;
    private const int Filter = 1;
    private const int Sump = 2;
    private const double MilligramsPerGram = UnitConstants.GramsPerKilogram;

    private readonly OneLoopParameters _loop;
    private readonly NitrificationParameters _nitrification;
    private readonly FlowMatrix _matrix = new(new EliminationPlan(3, [(Tank, Filter), (Filter, Sump), (Sump, Tank)]));
    private readonly double[] _tan = new double[3];
    private readonly double[] _nitrite = new double[3];
    private readonly double[] _oxygen = new double[3];
    private readonly double[] _filmA = new double[3];
    private readonly double[] _filmB = new double[3];
    private readonly double[] _conductanceA = new double[3];
    private readonly double[] _conductanceB = new double[3];
    private readonly double[] _loss = new double[3];
    private readonly double[] _right = new double[3];
    private readonly double[][] _next = [new double[3], new double[3], new double[3]];
    private double _nitrogenFirst;
    private double _nitrogenSecond;
    private double _oxygenFirst;
    private double _oxygenSecond;

    /// <summary>Sets the loop to its first midnight.</summary>
    public OneLoop(OneLoopParameters loop)
    {
        ArgumentNullException.ThrowIfNull(loop);
        _loop = loop;
        _nitrification = loop.Nitrification;
        double flow = loop.FlowLitresPerHour;
        _matrix.Set([.. loop.Litres.Select(l => l + flow)], [flow, flow, flow]);
        Array.Fill(_oxygen, loop.Saturation / MilligramsPerGram);
        Array.Fill(_filmA, loop.Ammonia.Start);
        Array.Fill(_filmB, loop.Nitrite.Start);
        Tan = new double[loop.Days];
        Oxygen = new double[loop.Days];
    }

    /// <summary>TAN of the tank at the end of each day, mg N/L.</summary>
    public double[] Tan { get; }

    /// <summary>Oxygen of the tank at the end of each day, mg/L.</summary>
    public double[] Oxygen { get; }

    /// <inheritdoc/>
    public long LongestStepSeconds => 3600;

    /// <summary>Runs the season.</summary>
    public static OneLoop Run(OneLoopParameters loop)
    {
        ArgumentNullException.ThrowIfNull(loop);
        var model = new OneLoop(loop);
        var simulation = new Simulation(model);
        foreach (double hour in loop.MealHours)
        {
            simulation.Routines.Add(new Routine((long)(hour * 3600), UnitConstants.SecondsPerDay, 0, 0));
        }

        simulation.RunTo(loop.Days * UnitConstants.SecondsPerDay);
        return model;
    }

    /// <inheritdoc/>
    public void Fire(in CalendarEntry entry, Simulation simulation)
    {
        double feed = _loop.FeedGramsPerMeal + (_loop.FeedRisePerDay * (entry.TimeSeconds / UnitConstants.SecondsPerDay));
        _nitrogenFirst += feed * _loop.NitrogenPerFeed;
        _oxygenFirst += feed * _loop.OxygenPerFeed;
    }

    /// <inheritdoc/>
    public void Record(long timeSeconds)
    {
        if (timeSeconds > 0 && timeSeconds % UnitConstants.SecondsPerDay == 0)
        {
            int day = (int)(timeSeconds / UnitConstants.SecondsPerDay) - 1;
            Tan[day] = _tan[Tank] * MilligramsPerGram;
            Oxygen[day] = _oxygen[Tank] * MilligramsPerGram;
        }
    }

    /// <inheritdoc/>
    public void Advance(long fromSeconds, long toSeconds)
    {
        double excreted = TwoStageLag.Advance(ref _nitrogenFirst, ref _nitrogenSecond, _loop.LagPerHour, 0, 1);
        double breathed = TwoStageLag.Advance(ref _oxygenFirst, ref _oxygenSecond, _loop.LagPerHour, 0, 1) + _loop.RestingOxygenGramsPerHour;
        (double[] tan, double[] nitrite, double[] oxygen) = (_next[0], _next[1], _next[2]);
        _tan.CopyTo(tan, 0);
        _nitrite.CopyTo(nitrite, 0);
        _oxygen.CopyTo(oxygen, 0);
        for (int pass = 0; pass < _loop.Passes; pass++)
        {
            SolveTan(tan, oxygen, excreted);
            SolveNitrite(tan, nitrite, oxygen);
            SolveOxygen(tan, nitrite, oxygen, breathed);
        }

        for (int b = 0; b < 3; b++)
        {
            double perArea = _loop.FilmSquareMetres[b] > 0 ? UnitConstants.HoursPerDay / _loop.FilmSquareMetres[b] : 0;
            FilmGrowth.Advance(
                _nitrification, ref _filmA[b], ref _filmB[b], _conductanceA[b] * tan[b] * perArea, _conductanceB[b] * nitrite[b] * perArea,
                _loop.Celsius, 1);
        }

        tan.CopyTo(_tan, 0);
        nitrite.CopyTo(_nitrite, 0);
        oxygen.CopyTo(_oxygen, 0);
    }

    private void SolveTan(double[] tan, double[] oxygen, double excreted)
    {
        for (int b = 0; b < 3; b++)
        {
            _conductanceA[b] = Conductance(NitrifierPopulation.AmmoniaOxidizers, _loop.Ammonia.Growth, b, _filmA[b], tan[b], oxygen[b], tan[b],
                _loop.CapPerOxygen * oxygen[b] * MilligramsPerGram);
            _right[b] = (_loop.Litres[b] * _tan[b]) + (b == Tank ? excreted : 0);
        }

        _matrix.Solve(_conductanceA, _right, tan);
    }

    private void SolveNitrite(double[] tan, double[] nitrite, double[] oxygen)
    {
        for (int b = 0; b < 3; b++)
        {
            _conductanceB[b] = Conductance(
                NitrifierPopulation.NitriteOxidizers, _loop.Nitrite.Growth, b, _filmB[b], nitrite[b], oxygen[b], tan[b], double.PositiveInfinity);
            _right[b] = (_loop.Litres[b] * _nitrite[b]) + (_conductanceA[b] * tan[b]);
        }

        _matrix.Solve(_conductanceB, _right, nitrite);
    }

    private void SolveOxygen(double[] tan, double[] nitrite, double[] oxygen, double breathed)
    {
        for (int b = 0; b < 3; b++)
        {
            double films = (_conductanceA[b] * tan[b] * _loop.OxygenPerAmmonia) + (_conductanceB[b] * nitrite[b] * _loop.OxygenPerNitrite);
            _loss[b] = _loop.AerationLitresPerHour[b] + (films / oxygen[b])
                + (b == Tank ? breathed * MilligramsPerGram / Math.Max(_loop.FishOxygenLimit, oxygen[b] * MilligramsPerGram) : 0);
            _right[b] = (_loop.Litres[b] * _oxygen[b]) + (_loop.AerationLitresPerHour[b] * _loop.Saturation / MilligramsPerGram);
        }

        _matrix.Solve(_loss, _right, oxygen);
    }

    private double Conductance(
        NitrifierPopulation population, double growth, int basin, double biomass, double nitrogen, double oxygen, double tan, double cap)
    {
        double capacity = FilmFlux.CapacityGramsPerSquareMetreDay(
            _nitrification, population, biomass, growth, oxygen * MilligramsPerGram, tan * MilligramsPerGram * _loop.UnionizedShare);
        return _loop.FilmSquareMetres[basin]
            * FilmFlux.ConductanceLitresPerHourPerSquareMetre(_nitrification, population, capacity, nitrogen * MilligramsPerGram, cap);
    }
}
