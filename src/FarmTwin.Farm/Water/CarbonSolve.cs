using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Inorganic carbon and its stripping solved together at the alkalinity that the step's ions give; then pH.</summary>
/// <remarks>
/// CO2 is linearized by dCO2/dDIC about the last carbon, and again about what was found where the line missed it: see
/// docs/model/water-carbonate.md. Four basins to a vector. Workspace of one run, not thread-safe.
/// </remarks>
internal sealed class CarbonSolve
{
    private const int MostPasses = 5;
    private const double GramsPerMole = UnitConstants.AtomicWeight.Carbon;

    // A line about the wrong point is drawn again when it misses the carbon dioxide by more than this share.
    private const double LineMiss = 0.01;

    // Last Newton steps in ln h that are small enough, each leaving an error of its square: 1e-4 of the CO2 about which a line is drawn,
    // which is far within what the line is allowed to miss, and 4e-10 of the pH at the end.
    private const double LineTolerance = 0.01;
    private const double EndTolerance = 3e-5;

    private readonly FarmContext _farm;
    private readonly double[] _reference;
    private readonly double[] _referenceCarbonDioxide;
    private readonly double[] _slope;
    private readonly double[] _alkalinity;
    private readonly double[] _phosphorus;
    private readonly double[] _tan;
    private readonly double[] _strength;
    private readonly double[] _baseRight;
    private readonly double[] _baseLoss;
    private readonly double[] _airSource;
    private readonly double[] _airLoss;
    private readonly double[] _right;
    private readonly double[] _loss;
    private readonly double[] _carbon;
    private readonly double[] _acidity;
    private readonly CarbonateLanes[] _end;
    private readonly CarbonateRoots[] _found;

    public CarbonSolve(FarmContext farm)
    {
        _farm = farm;
        int count = farm.Parts.Basins.Length;
        Conductance = Fours.Zeros(count);
        Saturation = Fours.Zeros(count);
        _reference = Fours.Zeros(count);
        _referenceCarbonDioxide = Fours.Zeros(count);
        _slope = Fours.Zeros(count);
        _alkalinity = Fours.Zeros(count);
        _phosphorus = Fours.Zeros(count);
        _tan = Fours.Zeros(count);
        _strength = Fours.Zeros(count);
        _baseRight = Fours.Zeros(count);
        _baseLoss = Fours.Zeros(count);
        _airSource = Fours.Zeros(count);
        _airLoss = Fours.Zeros(count);
        _right = Fours.Zeros(count);
        _loss = Fours.Zeros(count);
        _carbon = Fours.Zeros(count);
        _acidity = Fours.Zeros(count);
        _end = new CarbonateLanes[_carbon.Length / Fours.Width];
        _found = new CarbonateRoots[_end.Length];
    }

    /// <summary>Exchange of carbon dioxide with the air, L/h, set by whoever knows the air; no basin without water has one.</summary>
    public double[] Conductance { get; }

    /// <summary>Carbon dioxide at which a basin is at rest with the air, mol/L.</summary>
    public double[] Saturation { get; }

    /// <summary>Solves, and sets each basin's concentration, alkalinity, carbon dioxide and pH.</summary>
    public void Solve(WaterBalance balance)
    {
        Begin(balance);

        // Where water of another alkalinity arrives (after a dose, at a coupled valve), the last carbon is far from the end's, and the
        // slope there is another one: then the line is drawn again about what was found (Newton).
        for (int pass = 1; ; pass++)
        {
            balance.SolveOne(_loss, _right, _carbon);
            if (!LinesMiss() || pass == MostPasses)
            {
                break;
            }

            Linearize(_carbon);
        }

        Settle();
    }

    /// <summary>Carbon that the air gave in the step, g; what was solved, term by term.</summary>
    public double FromAirGrams()
    {
        Vector256<double> perHour = Vector256<double>.Zero;
        for (int first = 0; first < _carbon.Length; first += Fours.Width)
        {
            perHour += Vector256.Create(_airSource, first) - (Vector256.Create(_airLoss, first) * Vector256.Create(_carbon, first));
        }

        return FourFunctions.Sum(perHour) * _farm.Step.Hours;
    }

    // What is known of the step's end: the ions. The last carbon serves as the first point about which CO2 is linearized.
    private void Begin(WaterBalance balance)
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        WaterChemistry chemistry = _farm.Chemistry;
        balance.Gather(basins, step, Substance.InorganicCarbon, _baseRight);
        for (int b = 0; b < basins.Count; b++)
        {
            double litres = _farm.Network.LitresAfter[b];
            int row = WaterStep.At(b, 0);
            bool wet = litres > 0;
            ReadOnlySpan<double> end = step.Concentration.AsSpan(row, Substance.Columns);
            (double alkalinity, double strength) = wet ? IonSums.Of(end, 1) : default;
            _alkalinity[b] = alkalinity;
            _strength[b] = strength;
            _phosphorus[b] = wet ? end[Substance.Phosphorus] / UnitConstants.AtomicWeight.Phosphorus : 0;
            _tan[b] = wet ? end[Substance.Tan] / UnitConstants.AtomicWeight.Nitrogen : 0;
            _baseLoss[b] = step.Loss[row + Substance.InorganicCarbon];
            _carbon[b] = wet ? basins.Grams[row + Substance.InorganicCarbon] / Math.Max(basins.Litres[b], litres) : 0;
            Conductance[b] = wet ? Conductance[b] : 0;
        }

        for (int first = 0; first < _carbon.Length; first += Fours.Width)
        {
            _end[first / Fours.Width] = new CarbonateLanes(
                Vector256.Create(_alkalinity, first),
                Vector256.Create(_phosphorus, first),
                Vector256.Create(_tan, first),
                new EffectiveLanes(chemistry.Constants4(first), Vector256.Create(_strength, first)));
            _found[first / Fours.Width] = CarbonateSystem.SolveFour(
                in _end[first / Fours.Width],
                Vector256.Create(_carbon, first) / GramsPerMole,
                Vector256.Create(chemistry.Hydrogen, first),
                LineTolerance);
        }

        Linearize(_carbon);
    }

    private void Linearize(double[] about)
    {
        for (int first = 0; first < about.Length; first += Fours.Width)
        {
            ref readonly CarbonateRoots found = ref _found[first / Fours.Width];
            Vector256<double> carbon = Vector256.Create(about, first);
            Vector256<double> conductance = Vector256.Create(Conductance, first);
            Vector256<double> constant = Vector256.Create(Saturation, first) - found.CarbonDioxideMolesPerLitre
                + (found.SlopeOfCarbonDioxide * carbon / GramsPerMole);
            Vector256<double> source = conductance * Vector256.Max(Vector256<double>.Zero, constant) * GramsPerMole;
            carbon.CopyTo(_reference, first);
            found.CarbonDioxideMolesPerLitre.CopyTo(_referenceCarbonDioxide, first);
            found.SlopeOfCarbonDioxide.CopyTo(_slope, first);
            Vector256<double> loss = conductance * found.SlopeOfCarbonDioxide;
            source.CopyTo(_airSource, first);
            loss.CopyTo(_airLoss, first);
            (Vector256.Create(_baseRight, first) + source).CopyTo(_right, first);
            (Vector256.Create(_baseLoss, first) + loss).CopyTo(_loss, first);
        }
    }

    // Finds the water that the solved carbon makes; says whether a line missed its carbon dioxide.
    private bool LinesMiss()
    {
        Vector256<double> missed = Vector256<double>.Zero;
        for (int first = 0; first < _carbon.Length; first += Fours.Width)
        {
            int four = first / Fours.Width;
            Vector256<double> carbon = Vector256.Create(_carbon, first);
            CarbonateRoots found = CarbonateSystem.SolveFour(in _end[four], carbon / GramsPerMole, _found[four].Hydrogen, EndTolerance);
            _found[four] = found;
            Vector256<double> line = Vector256.Create(_referenceCarbonDioxide, first)
                + (Vector256.Create(_slope, first) * (carbon - Vector256.Create(_reference, first)) / GramsPerMole);
            missed |= Vector256.GreaterThan(
                Vector256.Abs(line - found.CarbonDioxideMolesPerLitre),
                LineMiss * (found.CarbonDioxideMolesPerLitre + Vector256.Create(Saturation, first)));
        }

        return missed != Vector256<double>.Zero;
    }

    private void Settle()
    {
        Basins basins = _farm.State.Basins;
        for (int first = 0; first < _carbon.Length; first += Fours.Width)
        {
            ref readonly CarbonateRoots found = ref _found[first / Fours.Width];
            CarbonateSystem.PHOf(found.Hydrogen).CopyTo(_acidity, first);
            found.CarbonDioxideMolesPerLitre.CopyTo(_referenceCarbonDioxide, first);
        }

        for (int b = 0; b < basins.Count; b++)
        {
            _farm.Step.Concentration[WaterStep.At(b, Substance.InorganicCarbon)] = _carbon[b];
            if (_farm.Network.LitresAfter[b] > 0)
            {
                basins.Alkalinity[b] = _alkalinity[b];
                basins.PH[b] = _acidity[b];
                basins.CarbonDioxideMoles[b] = _referenceCarbonDioxide[b];
            }
        }
    }
}
