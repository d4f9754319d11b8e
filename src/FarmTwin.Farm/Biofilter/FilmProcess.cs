using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Biofilter;

/// <summary>Ammonia, nitrite and oxygen of all basins, solved together with the films that turn one into the other.</summary>
/// <remarks>
/// These act on each other within minutes. Each pass writes the films' flux law as a conductance J/S at the last iterate and
/// solves TAN, then nitrite with what TAN really gave, then oxygen with what both took; so mass closes at any number of passes.
/// See docs/model/nitrification.md.
/// </remarks>
public sealed class FilmProcess
{
    private const int MostPasses = 6;

    // The last change of an iterate; what is left of it is a fraction of that. Against passes repeated to 1e-10 the means of a season
    // stay within 0.03 % and its peaks within 0.05 %.
    private const double Converged = 3e-3;

    // Beyond this the changes do not close in well enough to be extrapolated.
    private const double LargestRatio = 0.9;
    private const double MilligramsPerGram = UnitConstants.GramsPerKilogram;

    // Guards the ratio demand/oxygen where no oxygen is left, mg/L.
    private const double LeastOxygen = 1e-3;

    private readonly FarmContext _farm;
    private readonly NitrificationParameters _nitrification;
    private readonly double _perA;
    private readonly double _perB;
    private readonly double[] _fullA;
    private readonly double[] _fullB;
    private readonly double[] _suspended;
    private readonly bool[] _active;
    private readonly double[] _unionized;
    private readonly double[] _capPerOxygen;
    private readonly double[] _overdue;
    private readonly double[] _conductanceA;
    private readonly double[] _conductanceB;
    private readonly double[] _oxygenFilm;
    private readonly double[] _oxygenFish;
    private readonly double[] _oxygenSolids;
    private readonly double[] _oxygenRoots;
    private readonly double[] _carbonFish;
    private readonly double[] _base;
    private readonly double[] _lastChange;
    private readonly double[] _tan;
    private readonly double[] _nitrite;
    private readonly double[] _oxygen;

    /// <summary>Makes the process.</summary>
    public FilmProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        int count = farm.Parts.Basins.Length;
        _nitrification = farm.Parts.Nitrification;
        _perA = NitrificationStoichiometry.OxygenPerAmmoniaNitrogen(_nitrification);
        _perB = NitrificationStoichiometry.OxygenPerNitriteNitrogen(_nitrification);
        _fullA = new double[count];
        _fullB = new double[count];
        _suspended = new double[count];
        _active = new bool[count];
        _unionized = new double[count];
        _capPerOxygen = new double[count];
        _overdue = new double[count];
        _conductanceA = new double[count];
        _conductanceB = new double[count];
        _oxygenFilm = new double[count];
        _oxygenFish = new double[count];
        _oxygenSolids = new double[count];
        _oxygenRoots = new double[count];
        _carbonFish = new double[count];
        _base = new double[count * 4];
        _lastChange = new double[count * 3];
        _tan = new double[count];
        _nitrite = new double[count];
        _oxygen = new double[count];
    }

    /// <summary>Passes that the last step took.</summary>
    public int LastPasses { get; private set; }

    /// <summary>Sets the share of its capacity that an overdue wash leaves to a basin's film.</summary>
    public void SetOverdueFactor(int basin, double factor) => _overdue[basin] = factor;

    /// <summary>Solves TAN, nitrite and oxygen; adds the nitrate they give.</summary>
    public void Solve(WaterBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        Begin();
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        double change = double.PositiveInfinity;
        int pass = 0;
        while (pass < MostPasses && (pass < 2 || change > Converged))
        {
            SolveTan(balance);
            SolveNitrite(balance);
            SolveOxygen(balance);
            change = Iterate(pass);
            pass++;
        }

        LastPasses = pass;
        for (int b = 0; b < step.BasinCount; b++)
        {
            step.Add(b, Substance.Nitrate, _conductanceB[b] * step.Concentration[WaterStep.At(b, Substance.Nitrite)]);
            _carbonFish[b] = _farm.OxygenByFish[b] > 0
                ? _farm.CarbonByFish[b] * _oxygenFish[b] * step.Concentration[WaterStep.At(b, Substance.Oxygen)] / _farm.OxygenByFish[b]
                : 0;
            step.Add(b, Substance.InorganicCarbon, _carbonFish[b] + CarbonByRoots(b));
        }
    }

    /// <summary>Grows the films; books oxygen and charge.</summary>
    public void Commit()
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        FarmBooks books = _farm.State.Books;
        double oxidizedA = 0;
        double oxidizedB = 0;
        double film = 0;
        double fish = 0;
        double solids = 0;
        double carbon = 0;
        double roots = 0;
        double carbonRoots = 0;
        for (int b = 0; b < step.BasinCount; b++)
        {
            double a = _conductanceA[b] * step.Concentration[WaterStep.At(b, Substance.Tan)] * step.Hours;
            double n = _conductanceB[b] * step.Concentration[WaterStep.At(b, Substance.Nitrite)] * step.Hours;
            double oxygen = step.Concentration[WaterStep.At(b, Substance.Oxygen)] * step.Hours;
            oxidizedA += a;
            oxidizedB += n;
            film += _oxygenFilm[b] * oxygen;
            fish += _oxygenFish[b] * oxygen;
            solids += _oxygenSolids[b] * oxygen;
            carbon += _carbonFish[b] * step.Hours;
            roots += _oxygenRoots[b] * oxygen;
            carbonRoots += CarbonByRoots(b) * step.Hours;
            double area = basins.FilmSquareMetres[b];
            if (area > 0 && _farm.Network.LitresAfter[b] > 0)
            {
                double perAreaDay = UnitConstants.HoursPerDay / (area * step.Hours);
                double own = FilmShare(b);
                FilmGrowth.Advance(
                    _farm.Parts.Nitrification,
                    ref basins.AmmoniaOxidizers[b],
                    ref basins.NitriteOxidizers[b],
                    a * own * perAreaDay,
                    n * own * perAreaDay,
                    _farm.Warmth.AmmoniaOxidizerDecay(b),
                    _farm.Warmth.NitriteOxidizerDecay(b),
                    step.Hours);
            }
        }

        books.PostWater(Door.Nitrification, Substance.Tan, -oxidizedA);
        books.PostWater(Door.Nitrification, Substance.Nitrite, oxidizedA - oxidizedB);
        books.PostWater(Door.Nitrification, Substance.Nitrate, oxidizedB);
        books.PostWater(Door.Nitrification, Substance.Oxygen, -film);
        books.PostWater(Door.Fish, Substance.Oxygen, -fish);
        books.PostWater(Door.SolidsBreakdown, Substance.Oxygen, -solids);
        books.PostWater(Door.Fish, Substance.InorganicCarbon, carbon);
        books.PostWater(Door.PlantUptake, Substance.Oxygen, -roots);
        books.PostWater(Door.PlantUptake, Substance.InorganicCarbon, carbonRoots);
        _farm.State.Totals.NitrifiedGrams += oxidizedA;
    }

    private void Begin()
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        PopulationParameters ammoniaOxidizers = _nitrification.AmmoniaOxidizers;
        PopulationParameters nitriteOxidizers = _nitrification.NitriteOxidizers;
        for (int b = 0; b < basins.Count; b++)
        {
            int at = WaterStep.At(b, 0);
            _tan[b] = basins.MilligramsPerLitre(b, Substance.Tan);
            _nitrite[b] = basins.MilligramsPerLitre(b, Substance.Nitrite);
            _oxygen[b] = Math.Max(LeastOxygen, basins.MilligramsPerLitre(b, Substance.Oxygen));
            _base[(b * 4) + 0] = step.Loss[at + Substance.Tan];
            _base[(b * 4) + 1] = step.Loss[at + Substance.Nitrite];
            _base[(b * 4) + 2] = step.Loss[at + Substance.Oxygen];
            _base[(b * 4) + 3] = step.Source[at + Substance.Nitrite];
            _conductanceA[b] = 0;
            _conductanceB[b] = 0;
            _suspended[b] = 0;
            _active[b] = basins.Litres[b] > 0 && (basins.FilmSquareMetres[b] > 0 || _farm.SuspendedNitrification[b] > 0);
            if (!_active[b])
            {
                continue;
            }

            // Everything that the passes do not change: the films' capacities times their area, at oxygen in plenty and without free
            // ammonia; the cap, linear in oxygen; what is suspended.
            double alkalinity = Alkalinity.MilligramsCalciumCarbonatePerLitre(basins.Alkalinity[b]);
            double common = FilmResponse.Acidity(_nitrification, basins.PH[b]) * Overdue(b);
            _fullA[b] = _farm.Warmth.AmmoniaOxidizerGrowth(b) * common
                * FilmResponse.Alkalinity(_nitrification, NitrifierPopulation.AmmoniaOxidizers, alkalinity)
                * basins.AmmoniaOxidizers[b] / ammoniaOxidizers.YieldGramsCodPerGramN;
            _fullB[b] = _farm.Warmth.NitriteOxidizerGrowth(b) * common
                * basins.NitriteOxidizers[b] / nitriteOxidizers.YieldGramsCodPerGramN;
            _unionized[b] = _farm.Chemistry.UnionizedShare(b);
            _capPerOxygen[b] = _farm.Warmth.OxygenCap(b);
            _suspended[b] = _fullA[b] > 0 ? Math.Max(0, _farm.SuspendedNitrification[b]) * basins.Litres[b] : 0;
        }
    }

    private void SolveTan(WaterBalance balance)
    {
        Basins basins = _farm.State.Basins;
        double transfer = _nitrification.TransferVelocityMetresPerDay;
        PopulationParameters kinetics = _nitrification.AmmoniaOxidizers;
        for (int b = 0; b < basins.Count; b++)
        {
            if (_active[b])
            {
                double capacity = FilmFlux.LimitedCapacity(kinetics, _fullA[b], _oxygen[b], _tan[b] * _unionized[b]);
                _conductanceA[b] = (basins.FilmSquareMetres[b] * FilmFlux.Conductance(
                    transfer, kinetics.HalfSaturationMilligramsNPerLitre, capacity, _tan[b], _capPerOxygen[b] * _oxygen[b]))
                    + Suspended(b, _tan[b]);
            }

            _farm.Step.Loss[WaterStep.At(b, Substance.Tan)] = _base[b * 4] + _conductanceA[b];
        }

        balance.SolveOne(basins, _farm.Step, Substance.Tan);
    }

    private void SolveNitrite(WaterBalance balance)
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        double transfer = _nitrification.TransferVelocityMetresPerDay;
        PopulationParameters kinetics = _nitrification.NitriteOxidizers;
        for (int b = 0; b < basins.Count; b++)
        {
            double tan = step.Concentration[WaterStep.At(b, Substance.Tan)];
            if (_active[b])
            {
                double capacity = FilmFlux.LimitedCapacity(kinetics, _fullB[b], _oxygen[b], tan * MilligramsPerGram * _unionized[b]);
                _conductanceB[b] = (basins.FilmSquareMetres[b] * FilmFlux.Conductance(
                    transfer, kinetics.HalfSaturationMilligramsNPerLitre, capacity, _nitrite[b], double.PositiveInfinity))
                    + Suspended(b, _nitrite[b]);
            }

            step.Loss[WaterStep.At(b, Substance.Nitrite)] = _base[(b * 4) + 1] + _conductanceB[b];
            step.Source[WaterStep.At(b, Substance.Nitrite)] = _base[(b * 4) + 3] + (_conductanceA[b] * tan);
        }

        balance.SolveOne(basins, step, Substance.Nitrite);
    }

    private void SolveOxygen(WaterBalance balance)
    {
        WaterStep step = _farm.Step;
        double fishLimit = _farm.Parts.Practice.FishOxygenLimit;
        double solidsHalf = _farm.Parts.Practice.SolidsOxygenHalfSaturation;
        double rootsHalf = _farm.Parts.BedParameters.OxygenHalfMilligramsPerLitre;
        for (int b = 0; b < step.BasinCount; b++)
        {
            double oxygen = _oxygen[b];
            int at = WaterStep.At(b, 0);
            double films = (_conductanceA[b] * step.Concentration[at + Substance.Tan] * _perA)
                + (_conductanceB[b] * step.Concentration[at + Substance.Nitrite] * _perB);
            _oxygenFilm[b] = films * MilligramsPerGram / oxygen;
            _oxygenFish[b] = _farm.OxygenByFish[b] > 0 ? _farm.OxygenByFish[b] * MilligramsPerGram / Math.Max(fishLimit, oxygen) : 0;
            _oxygenSolids[b] = _farm.OxygenBySolids[b] * MilligramsPerGram / (solidsHalf + oxygen);
            _oxygenRoots[b] = _farm.OxygenByRoots[b] * MilligramsPerGram / (rootsHalf + oxygen);
            step.Loss[at + Substance.Oxygen] = _base[(b * 4) + 2] + _oxygenFilm[b] + _oxygenFish[b] + _oxygenSolids[b] + _oxygenRoots[b];
        }

        balance.SolveOne(_farm.State.Basins, step, Substance.Oxygen);
    }

    // Takes the solved values as the next iterate. Plain iteration closes in geometrically; from the second pass on each value is
    // extrapolated to the limit of its last two changes (Aitken's delta-squared process), which saves half the passes.
    private double Iterate(int pass)
    {
        double change = 0;
        WaterStep step = _farm.Step;
        for (int b = 0; b < step.BasinCount; b++)
        {
            if (_farm.Network.LitresAfter[b] <= 0)
            {
                continue;
            }

            int at = WaterStep.At(b, 0);
            change = Math.Max(change, Take(ref _tan[b], ref _lastChange[b * 3], step.Concentration[at + Substance.Tan], pass));
            change = Math.Max(change, Take(ref _nitrite[b], ref _lastChange[(b * 3) + 1], step.Concentration[at + Substance.Nitrite], pass));
            change = Math.Max(change, Take(ref _oxygen[b], ref _lastChange[(b * 3) + 2], step.Concentration[at + Substance.Oxygen], pass));
            _oxygen[b] = Math.Max(LeastOxygen, _oxygen[b]);
        }

        return change;
    }

    private static double Take(ref double iterate, ref double lastChange, double gramsPerLitre, int pass)
    {
        double value = gramsPerLitre * MilligramsPerGram;
        double change = value - iterate;
        double next = value;
        if (pass > 0 && lastChange != 0)
        {
            double ratio = change / lastChange;
            if (ratio is > -LargestRatio and < LargestRatio)
            {
                next = value + (change * ratio / (1 - ratio));
                next = Math.Clamp(next, value / 2, value * 2);
            }

            // What was extrapolated is no longer a term of the series.
            lastChange = 0;
        }
        else
        {
            lastChange = change;
        }

        double relative = Math.Abs(change) / (Math.Abs(iterate) + 0.1);
        iterate = next;
        return relative;
    }

    // What breathes O2 gives back as many moles of CO2.
    private double CarbonByRoots(int basin) => _oxygenRoots[basin] * _farm.Step.Concentration[WaterStep.At(basin, Substance.Oxygen)]
        * UnitConstants.AtomicWeight.Carbon / (2 * UnitConstants.AtomicWeight.Oxygen);

    private double Suspended(int basin, double milligramsPerLitre) => _suspended[basin] <= 0
        ? 0
        : _suspended[basin] / (_nitrification.AmmoniaOxidizers.HalfSaturationMilligramsNPerLitre + milligramsPerLitre);

    private double FilmShare(int basin)
    {
        double suspended = Suspended(basin, _tan[basin]);
        return suspended > 0 && _conductanceA[basin] > 0 ? Math.Max(0, 1 - (suspended / _conductanceA[basin])) : 1;
    }

    private double Overdue(int basin) => _overdue[basin] > 0 ? _overdue[basin] : 1;
}
