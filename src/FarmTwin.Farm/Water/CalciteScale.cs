using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Calcite that grows as scale on wetted surfaces above saturation, and dissolves again below it.</summary>
/// <remarks>
/// The scale is a store of its own inside the farm's books. Clean walls let calcite start slowly: the growing surface is what the crust
/// already covers, and at least a small share of the wall. See docs/model/water-minerals.md.
/// </remarks>
public sealed class CalciteScale
{
    private const double GramsPerMole = 2 * UnitConstants.GramsCalciumCarbonatePerEquivalent;

    private readonly FarmContext _farm;
    private readonly double[] _calciumLoss;
    private readonly double[] _dissolved;

    // Of each basin whose walls meet water with calcium and carbon; elsewhere some water that nothing comes of.
    private readonly bool[] _meets;
    private readonly double[] _celsius;
    private readonly double[] _carbonDioxide;
    private readonly double[] _calcium;
    private readonly double[] _carbon;
    private readonly double[] _phosphorus;
    private readonly double[] _tan;
    private readonly double[] _wallPerLitre;
    private readonly double[] _covered;
    private readonly double[] _moles;

    /// <summary>Makes the process.</summary>
    public CalciteScale(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        int count = farm.Parts.Basins.Length;
        _calciumLoss = new double[count];
        _dissolved = new double[count];
        _meets = new bool[count];
        _celsius = Fours.Zeros(count);
        _carbonDioxide = Fours.Zeros(count);
        _calcium = Fours.Zeros(count);
        _carbon = Fours.Zeros(count);
        _phosphorus = Fours.Zeros(count);
        _tan = Fours.Zeros(count);
        _wallPerLitre = Fours.Zeros(count);
        _covered = Fours.Zeros(count);
        _moles = Fours.Zeros(count);
    }

    /// <summary>Adds what grows and what dissolves in the step.</summary>
    public void Contribute()
    {
        Gather();
        for (int first = 0; first < _moles.Length; first += Fours.Width)
        {
            Exchange(first).CopyTo(_moles, first);
        }

        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        for (int b = 0; b < basins.Count; b++)
        {
            _calciumLoss[b] = 0;
            _dissolved[b] = 0;
            double moles = _meets[b] ? _moles[b] * ExchangeLitres(b) : 0;
            if (moles > 0)
            {
                // As a first-order loss, so that calcium cannot go below zero; and never more carbon than half of what is there.
                _calciumLoss[b] = Math.Min(moles, basins.Litres[b] * _carbon[b] / 2) / _calcium[b] / step.Hours;
                step.Lose(b, Substance.Calcium, _calciumLoss[b]);
            }
            else if (moles < 0)
            {
                _dissolved[b] = Math.Min(-moles, basins.CalciteScaleGrams[b] / GramsPerMole);
                step.Add(b, Substance.Calcium, _dissolved[b] * UnitConstants.AtomicWeight.Calcium / step.Hours);
            }
        }
    }

    /// <summary>Takes the carbon along with the calcium that was solved. Call after the ions, before the carbon.</summary>
    public void Release()
    {
        WaterStep step = _farm.Step;
        for (int b = 0; b < _calciumLoss.Length; b++)
        {
            double moles = GrownMoles(b);
            if (moles != 0)
            {
                step.Add(b, Substance.InorganicCarbon, -moles * UnitConstants.AtomicWeight.Carbon / step.Hours);
            }
        }
    }

    /// <summary>Books it.</summary>
    public void Commit()
    {
        double moles = 0;
        for (int b = 0; b < _calciumLoss.Length; b++)
        {
            double grown = GrownMoles(b);
            _farm.State.Basins.CalciteScaleGrams[b] = Math.Max(0, _farm.State.Basins.CalciteScaleGrams[b] + (grown * GramsPerMole));
            moles += grown;
        }

        FarmBooks books = _farm.State.Books;
        books.PostWater(Door.Precipitation, Substance.Calcium, -moles * UnitConstants.AtomicWeight.Calcium);
        books.PostWater(Door.Precipitation, Substance.InorganicCarbon, -moles * UnitConstants.AtomicWeight.Carbon);
    }

    /// <summary>Adds the scale's calcium to the stocks.</summary>
    public static void AddStocks(FarmContext farm, Span<double> stocks)
    {
        ArgumentNullException.ThrowIfNull(farm);
        foreach (double grams in farm.State.Basins.CalciteScaleGrams)
        {
            stocks[Element.Calcium] += grams / GramsPerMole * UnitConstants.AtomicWeight.Calcium;
        }
    }

    private double GrownMoles(int b) =>
        (_farm.Step.Lost(b, Substance.Calcium, _calciumLoss[b]) / UnitConstants.AtomicWeight.Calcium) - _dissolved[b];

    // What a basin holds and passes on in the step.
    private double ExchangeLitres(int b) => _farm.Network.LitresAfter[b] + (_farm.Network.Outflow(b) * _farm.Step.Hours);

    private void Gather()
    {
        Basins basins = _farm.State.Basins;
        double fullCover = _farm.Parts.Minerals.CalciteFullCoverGramsPerSquareMetre;
        for (int b = 0; b < _meets.Length; b++)
        {
            double wall = _farm.Parts.Basins[b].WettedSquareMetres;
            ReadOnlySpan<double> grams = basins.Grams.AsSpan(WaterStep.At(b, 0), Substance.Columns);
            _meets[b] = wall > 0 && basins.Litres[b] > 0 && _farm.Network.LitresAfter[b] > 0
                && grams[Substance.InorganicCarbon] > 0 && grams[Substance.Calcium] > 0;
            if (!_meets[b])
            {
                continue;
            }

            double perLitre = 1 / basins.Litres[b];
            _celsius[b] = basins.Celsius[b];
            _carbonDioxide[b] = basins.CarbonDioxideMoles[b];
            _calcium[b] = grams[Substance.Calcium] * perLitre / UnitConstants.AtomicWeight.Calcium;
            _carbon[b] = grams[Substance.InorganicCarbon] * perLitre / UnitConstants.AtomicWeight.Carbon;
            _phosphorus[b] = grams[Substance.Phosphorus] * perLitre / UnitConstants.AtomicWeight.Phosphorus;
            _tan[b] = grams[Substance.Tan] * perLitre / UnitConstants.AtomicWeight.Nitrogen;
            _wallPerLitre[b] = wall / ExchangeLitres(b);
            _covered[b] = Math.Min(1, basins.CalciteScaleGrams[b] / (wall * fullCover));
        }
    }

    // What four waters lose to growing calcite, or gain from dissolving scale, mol/L.
    private Vector256<double> Exchange(int first)
    {
        MineralParameters minerals = _farm.Parts.Minerals;
        Vector256<double> one = Vector256<double>.One;
        ref readonly EffectiveLanes k = ref _farm.Chemistry.Effective4(first);
        Vector256<double> hydrogen = Vector256.Create(_farm.Chemistry.Hydrogen, first);
        Vector256<double> calcium = Vector256.Create(_calcium, first);
        Vector256<double> carbon = Vector256.Create(_carbon, first);
        Vector256<double> phosphorus = Vector256.Create(_phosphorus, first);
        Vector256<double> covered = Vector256.Create(_covered, first);
        Vector256<double> saturation = CalciteKinetics.SaturationRatio(
            calcium, carbon, hydrogen, in k, _farm.Chemistry.Constants4(first).KspCalcite);
        Vector256<double> grows = Vector256.GreaterThan(saturation, one);
        Vector256<double> surface = Vector256.ConditionalSelect(
            grows,
            Vector256.Max(Vector256.Create(minerals.CalciteSeedShare), covered) * CalciteKinetics.ShareLeftByPhosphate(
                phosphorus * (UnitConstants.AtomicWeight.Phosphorus * UnitConstants.GramsPerKilogram), minerals),
            covered);
        Vector256<double> forward = surface * Vector256.Create(_wallPerLitre, first) * _farm.Step.Hours
            * CalciteKinetics.ForwardMolesPerSquareMetreHour(
                Vector256.Create(_celsius, first), hydrogen, Vector256.Create(_carbonDioxide, first));
        var water = new CarbonateLanes(default, phosphorus, Vector256.Create(_tan, first), in k);
        return CalciteKinetics.ExchangedMolesPerLitre(
            forward, saturation, CalciteKinetics.SlopePerMole(in water, calcium, carbon, hydrogen));
    }
}
