using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Biofilter;

/// <summary>Ammonia, nitrite and oxygen of all basins, solved together with the films that turn one into the other.</summary>
/// <remarks>
/// These act on each other within minutes. Each pass writes the films' flux law as a conductance J/S at the last iterate and
/// solves TAN, then nitrite with what TAN really gave, then oxygen with what both took; so mass closes at any number of passes.
/// Four basins to a vector. See docs/model/nitrification.md.
/// </remarks>
public sealed class FilmProcess
{
    private const int MostPasses = 6;

    // The last change of an iterate; what is left of it is a fraction of that. Against passes repeated to 1e-10 the means of a season
    // stay within 0.03 % and its peaks within 0.05 %.
    private const double Converged = 3e-3;

    private const double MilligramsPerGram = UnitConstants.GramsPerKilogram;

    // Guards the ratio demand/oxygen where no oxygen is left, mg/L.
    private const double LeastOxygen = 1e-3;

    private readonly FarmContext _farm;
    private readonly NitrificationParameters _nitrification;
    private readonly double _perA;
    private readonly double _perB;
    private readonly Iterate _tan;
    private readonly Iterate _nitrite;
    private readonly Iterate _oxygen;
    private readonly double[] _overdue;
    private readonly double[] _nitriteRight;

    // Of each basin with a film, or with nitrifiers in suspension; 0 where there is none.
    private readonly double[] _area;
    private readonly double[] _fullA;
    private readonly double[] _fullB;
    private readonly double[] _suspended;
    private readonly double[] _unionized;
    private readonly double[] _capPerOxygen;
    private readonly double[] _conductanceA;
    private readonly double[] _conductanceB;

    // Oxygen that each takes, over its concentration, L/h.
    private readonly double[] _oxygenFilm;
    private readonly double[] _oxygenFish;
    private readonly double[] _oxygenSolids;
    private readonly double[] _oxygenRoots;

    private readonly double[] _biomassA;
    private readonly double[] _biomassB;
    private readonly double[] _decayA;
    private readonly double[] _decayB;
    private readonly double[] _carbonFish;
    private readonly double[] _carbonRoots;

    /// <summary>Makes the process.</summary>
    public FilmProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        int count = farm.Parts.Basins.Length;
        _nitrification = farm.Parts.Nitrification;
        _perA = NitrificationStoichiometry.OxygenPerAmmoniaNitrogen(_nitrification);
        _perB = NitrificationStoichiometry.OxygenPerNitriteNitrogen(_nitrification);
        _tan = new Iterate(count, Substance.Tan, 0);
        _nitrite = new Iterate(count, Substance.Nitrite, 0);
        _oxygen = new Iterate(count, Substance.Oxygen, LeastOxygen);
        _overdue = new double[count];
        _nitriteRight = Fours.Zeros(count);
        _area = Fours.Zeros(count);
        _fullA = Fours.Zeros(count);
        _fullB = Fours.Zeros(count);
        _suspended = Fours.Zeros(count);
        _unionized = Fours.Zeros(count);
        _capPerOxygen = Fours.Zeros(count);
        _conductanceA = Fours.Zeros(count);
        _conductanceB = Fours.Zeros(count);
        _oxygenFilm = Fours.Zeros(count);
        _oxygenFish = Fours.Zeros(count);
        _oxygenSolids = Fours.Zeros(count);
        _oxygenRoots = Fours.Zeros(count);
        _biomassA = Fours.Zeros(count);
        _biomassB = Fours.Zeros(count);
        _decayA = Fours.Zeros(count);
        _decayB = Fours.Zeros(count);
        _carbonFish = Fours.Zeros(count);
        _carbonRoots = Fours.Zeros(count);
        Array.Fill(_decayA, 1);
        Array.Fill(_decayB, 1);
    }

    /// <summary>How many passes the last solve took.</summary>
    public int LastPasses { get; private set; }

    /// <summary>Sets the share of its activity that a basin's film keeps while its beads are overdue for washing.</summary>
    public void SetOverdueFactor(int basin, double factor) => _overdue[basin] = factor;

    /// <summary>Solves TAN, nitrite and oxygen of the step.</summary>
    public void Solve(WaterBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        Begin(balance);
        double change = double.PositiveInfinity;
        int pass = 0;
        while (pass < MostPasses && (pass < 2 || change > Converged))
        {
            SolveTan(balance);
            SolveNitrite(balance);
            SolveOxygen(balance);
            change = Math.Max(_tan.Take(pass), Math.Max(_nitrite.Take(pass), _oxygen.Take(pass)));
            pass++;
        }

        LastPasses = pass;
        WaterStep step = _farm.Step;
        _tan.Settle(step);
        _nitrite.Settle(step);
        _oxygen.Settle(step);
        for (int b = 0; b < step.BasinCount; b++)
        {
            double oxygen = _oxygen.GramsPerLitre[b];

            // What breathes O2 gives back as many moles of CO2.
            _carbonRoots[b] = _oxygenRoots[b] * oxygen * UnitConstants.AtomicWeight.Carbon / (2 * UnitConstants.AtomicWeight.Oxygen);
            _carbonFish[b] = _farm.OxygenByFish[b] > 0 ? _farm.CarbonByFish[b] * _oxygenFish[b] * oxygen / _farm.OxygenByFish[b] : 0;
            step.Add(b, Substance.Nitrate, _conductanceB[b] * _nitrite.GramsPerLitre[b]);
            step.Add(b, Substance.InorganicCarbon, _carbonFish[b] + _carbonRoots[b]);
        }
    }

    /// <summary>Books what was solved and lets the films grow.</summary>
    public void Commit()
    {
        FarmBooks books = _farm.State.Books;
        double hours = _farm.Step.Hours;
        Vector256<double> sumA = Vector256<double>.Zero;
        Vector256<double> sumB = Vector256<double>.Zero;
        Vector256<double> sumFilm = Vector256<double>.Zero;
        Vector256<double> sumFish = Vector256<double>.Zero;
        Vector256<double> sumSolids = Vector256<double>.Zero;
        Vector256<double> sumRoots = Vector256<double>.Zero;
        Vector256<double> sumCarbonFish = Vector256<double>.Zero;
        Vector256<double> sumCarbonRoots = Vector256<double>.Zero;
        for (int first = 0; first < _area.Length; first += Fours.Width)
        {
            Vector256<double> oxygen = Vector256.Create(_oxygen.GramsPerLitre, first);
            Vector256<double> a = Vector256.Create(_conductanceA, first) * Vector256.Create(_tan.GramsPerLitre, first);
            Vector256<double> n = Vector256.Create(_conductanceB, first) * Vector256.Create(_nitrite.GramsPerLitre, first);
            sumA += a;
            sumB += n;
            sumFilm += Vector256.Create(_oxygenFilm, first) * oxygen;
            sumFish += Vector256.Create(_oxygenFish, first) * oxygen;
            sumSolids += Vector256.Create(_oxygenSolids, first) * oxygen;
            sumRoots += Vector256.Create(_oxygenRoots, first) * oxygen;
            sumCarbonFish += Vector256.Create(_carbonFish, first);
            sumCarbonRoots += Vector256.Create(_carbonRoots, first);
            Grow(first, a, n, hours);
        }

        TakeFilms();
        double oxidizedA = FourFunctions.Sum(sumA) * hours;
        double oxidizedB = FourFunctions.Sum(sumB) * hours;
        double film = FourFunctions.Sum(sumFilm) * hours;
        double fish = FourFunctions.Sum(sumFish) * hours;
        double solids = FourFunctions.Sum(sumSolids) * hours;
        double roots = FourFunctions.Sum(sumRoots) * hours;
        double carbon = FourFunctions.Sum(sumCarbonFish) * hours;
        double carbonRoots = FourFunctions.Sum(sumCarbonRoots) * hours;
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

    // Everything that the passes do not change: the films' capacities times their area, at oxygen in plenty and without free ammonia;
    // the cap, linear in oxygen; what is suspended.
    private void Begin(WaterBalance balance)
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        double[] litresAfter = _farm.Network.LitresAfter;
        _tan.Begin(balance, basins, step, litresAfter);
        _nitrite.Begin(balance, basins, step, litresAfter);
        _oxygen.Begin(balance, basins, step, litresAfter);
        double yieldA = _nitrification.AmmoniaOxidizers.YieldGramsCodPerGramN;
        double yieldB = _nitrification.NitriteOxidizers.YieldGramsCodPerGramN;
        for (int b = 0; b < basins.Count; b++)
        {
            bool active = basins.Litres[b] > 0 && (basins.FilmSquareMetres[b] > 0 || _farm.SuspendedNitrification[b] > 0);
            double common = active ? FilmResponse.Acidity(_nitrification, basins.PH[b]) * Overdue(b) : 0;
            double alkalinity = Alkalinity.MilligramsCalciumCarbonatePerLitre(basins.Alkalinity[b]);
            _area[b] = active ? basins.FilmSquareMetres[b] : 0;
            _fullA[b] = _farm.Warmth.AmmoniaOxidizerGrowth(b) * common
                * FilmResponse.Alkalinity(_nitrification, NitrifierPopulation.AmmoniaOxidizers, alkalinity) * basins.AmmoniaOxidizers[b] / yieldA;
            _fullB[b] = _farm.Warmth.NitriteOxidizerGrowth(b) * common * basins.NitriteOxidizers[b] / yieldB;
            _unionized[b] = _farm.Chemistry.UnionizedShare[b];
            _capPerOxygen[b] = _farm.Warmth.OxygenCap(b);
            _suspended[b] = _fullA[b] > 0 ? Math.Max(0, _farm.SuspendedNitrification[b]) * basins.Litres[b] : 0;
            _biomassA[b] = basins.AmmoniaOxidizers[b];
            _biomassB[b] = basins.NitriteOxidizers[b];
            _decayA[b] = _farm.Warmth.AmmoniaOxidizerDecay(b);
            _decayB[b] = _farm.Warmth.NitriteOxidizerDecay(b);
        }
    }

    private void SolveTan(WaterBalance balance)
    {
        double transfer = _nitrification.TransferVelocityMetresPerDay;
        PopulationParameters kinetics = _nitrification.AmmoniaOxidizers;
        for (int first = 0; first < _area.Length; first += Fours.Width)
        {
            Vector256<double> tan = Vector256.Create(_tan.MilligramsPerLitre, first);
            Vector256<double> oxygen = Vector256.Create(_oxygen.MilligramsPerLitre, first);
            Vector256<double> capacity = FilmFlux.LimitedCapacity(
                kinetics, Vector256.Create(_fullA, first), oxygen, tan * Vector256.Create(_unionized, first));
            Vector256<double> flux = FilmFlux.Conductance(
                transfer, kinetics.HalfSaturationMilligramsNPerLitre, capacity, tan, Vector256.Create(_capPerOxygen, first) * oxygen);
            Vector256<double> conductance = (Vector256.Create(_area, first) * flux) + Suspended(first, tan);
            conductance.CopyTo(_conductanceA, first);
            (Vector256.Create(_tan.BaseLoss, first) + conductance).CopyTo(_tan.Loss, first);
        }

        _tan.Solve(balance);
    }

    private void SolveNitrite(WaterBalance balance)
    {
        double transfer = _nitrification.TransferVelocityMetresPerDay;
        PopulationParameters kinetics = _nitrification.NitriteOxidizers;
        for (int first = 0; first < _area.Length; first += Fours.Width)
        {
            Vector256<double> tan = Vector256.Create(_tan.GramsPerLitre, first);
            Vector256<double> nitrite = Vector256.Create(_nitrite.MilligramsPerLitre, first);
            Vector256<double> capacity = FilmFlux.LimitedCapacity(
                kinetics,
                Vector256.Create(_fullB, first),
                Vector256.Create(_oxygen.MilligramsPerLitre, first),
                tan * MilligramsPerGram * Vector256.Create(_unionized, first));
            Vector256<double> flux = FilmFlux.Conductance(
                transfer, kinetics.HalfSaturationMilligramsNPerLitre, capacity, nitrite, Vector256.Create(double.PositiveInfinity));
            Vector256<double> conductance = (Vector256.Create(_area, first) * flux) + Suspended(first, nitrite);
            conductance.CopyTo(_conductanceB, first);
            (Vector256.Create(_nitrite.BaseLoss, first) + conductance).CopyTo(_nitrite.Loss, first);
            (Vector256.Create(_nitrite.BaseRight, first) + (Vector256.Create(_conductanceA, first) * tan)).CopyTo(_nitriteRight, first);
        }

        balance.SolveOne(_nitrite.Loss, _nitriteRight, _nitrite.GramsPerLitre);
    }

    private void SolveOxygen(WaterBalance balance)
    {
        Vector256<double> fishLimit = Vector256.Create(_farm.Parts.Practice.FishOxygenLimit);
        Vector256<double> solidsHalf = Vector256.Create(_farm.Parts.Practice.SolidsOxygenHalfSaturation);
        Vector256<double> rootsHalf = Vector256.Create(_farm.Parts.BedParameters.OxygenHalfMilligramsPerLitre);
        for (int first = 0; first < _area.Length; first += Fours.Width)
        {
            Vector256<double> oxygen = Vector256.Create(_oxygen.MilligramsPerLitre, first);
            Vector256<double> films = (Vector256.Create(_conductanceA, first) * Vector256.Create(_tan.GramsPerLitre, first) * _perA)
                + (Vector256.Create(_conductanceB, first) * Vector256.Create(_nitrite.GramsPerLitre, first) * _perB);
            Vector256<double> film = films * MilligramsPerGram / oxygen;
            Vector256<double> fish = Vector256.Create(_farm.OxygenByFish, first) * MilligramsPerGram / Vector256.Max(fishLimit, oxygen);
            Vector256<double> solids = Vector256.Create(_farm.OxygenBySolids, first) * MilligramsPerGram / (solidsHalf + oxygen);
            Vector256<double> roots = Vector256.Create(_farm.OxygenByRoots, first) * MilligramsPerGram / (rootsHalf + oxygen);
            film.CopyTo(_oxygenFilm, first);
            fish.CopyTo(_oxygenFish, first);
            solids.CopyTo(_oxygenSolids, first);
            roots.CopyTo(_oxygenRoots, first);
            (Vector256.Create(_oxygen.BaseLoss, first) + film + fish + solids + roots).CopyTo(_oxygen.Loss, first);
        }

        _oxygen.Solve(balance);
    }

    // What is suspended serves nobody's film: a film grows by its own share of what was oxidized.
    private void Grow(int first, Vector256<double> oxidizedA, Vector256<double> oxidizedB, double hours)
    {
        Vector256<double> one = Vector256<double>.One;
        Vector256<double> conductance = Vector256.Create(_conductanceA, first);
        Vector256<double> suspended = Suspended(first, Vector256.Create(_tan.MilligramsPerLitre, first));
        Vector256<double> own = Vector256.ConditionalSelect(
            Vector256.GreaterThan(suspended, Vector256<double>.Zero) & Vector256.GreaterThan(conductance, Vector256<double>.Zero),
            Vector256.Max(Vector256<double>.Zero, one - (suspended / conductance)),
            one);
        Vector256<double> area = Vector256.Create(_area, first);
        Vector256<double> perAreaDay = Vector256.ConditionalSelect(
            Vector256.GreaterThan(area, Vector256<double>.Zero), own * UnitConstants.HoursPerDay / area, Vector256<double>.Zero);
        FilmGrowth.Advance(
            _nitrification, _nitrification.AmmoniaOxidizers, Vector256.Create(_biomassA, first), oxidizedA * perAreaDay,
            Vector256.Create(_decayA, first), hours).CopyTo(_biomassA, first);
        FilmGrowth.Advance(
            _nitrification, _nitrification.NitriteOxidizers, Vector256.Create(_biomassB, first), oxidizedB * perAreaDay,
            Vector256.Create(_decayB, first), hours).CopyTo(_biomassB, first);
    }

    private void TakeFilms()
    {
        Basins basins = _farm.State.Basins;
        for (int b = 0; b < basins.Count; b++)
        {
            if (basins.FilmSquareMetres[b] > 0 && _farm.Network.LitresAfter[b] > 0)
            {
                basins.AmmoniaOxidizers[b] = _biomassA[b];
                basins.NitriteOxidizers[b] = _biomassB[b];
            }
        }
    }

    private Vector256<double> Suspended(int first, Vector256<double> milligramsPerLitre) => Vector256.Create(_suspended, first)
        / (Vector256.Create(_nitrification.AmmoniaOxidizers.HalfSaturationMilligramsNPerLitre) + milligramsPerLitre);

    private double Overdue(int basin) => _overdue[basin] > 0 ? _overdue[basin] : 1;
}
