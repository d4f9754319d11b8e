using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Oxygen and carbon dioxide between water and air: diffusers and open surfaces, and source water let in.</summary>
/// <remarks>
/// Oxygen: dC/dt = K (βC* − C). Carbon dioxide is stripped with the same diffusers, capped by what the bubbles can carry; carbon is
/// solved at the alkalinity that the step's ions give, linearized by dCO2/dDIC. See docs/model/water-gases.md and water-carbonate.md.
/// </remarks>
public sealed class AirExchange
{
    private const int MostCarbonPasses = 5;

    // A line about the wrong point is drawn again when it misses the carbon dioxide by more than this share.
    private const double CarbonTolerance = 0.01;

    // Last Newton steps in ln h that are small enough, each leaving an error of its square: 1e-4 of the CO2 about which a line is drawn,
    // which is far within what the line is allowed to miss, and 4e-10 of the pH at the end.
    private const double LineTolerance = 0.01;
    private const double EndTolerance = 3e-5;

    private readonly FarmContext _farm;
    private readonly double[] _oxygen;
    private readonly double[] _oxygenSaturation;
    private readonly double[] _carbonDioxide;
    private readonly double[] _carbonDioxideSaturation;
    private readonly double[] _referenceCarbon;
    private readonly double[] _referenceCarbonDioxide;
    private readonly double[] _slope;
    private readonly EndWater[] _end;
    private readonly CarbonateRoot[] _found;
    private readonly double[] _baseSource;
    private readonly double[] _baseLoss;

    /// <summary>Makes the process.</summary>
    public AirExchange(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        int count = farm.Parts.Basins.Length;
        _oxygen = new double[count];
        _oxygenSaturation = new double[count];
        _carbonDioxide = new double[count];
        _carbonDioxideSaturation = new double[count];
        _referenceCarbon = new double[count];
        _referenceCarbonDioxide = new double[count];
        _slope = new double[count];
        _end = new EndWater[count];
        _found = new CarbonateRoot[count];
        _baseSource = new double[count];
        _baseLoss = new double[count];
    }

    /// <summary>Adds what air and source water bring.</summary>
    public void Contribute()
    {
        FarmParts parts = _farm.Parts;
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        for (int b = 0; b < basins.Count; b++)
        {
            double celsius = basins.Celsius[b];
            double airFlow = parts.Basins[b].AirLitresPerMinute * UnitConstants.CubicMetresPerHourPerLitrePerMinute
                * basins.AirShare[b] * _farm.Running.Air[b];
            double open = _farm.OpenSquareMetres(b);
            double diffuser = 0;
            double diffuserCarbonDioxide = 0;
            if (airFlow > 0)
            {
                bool solids = parts.Basins[b].Use is Description.BasinUse.Mineralizer or Description.BasinUse.HoldingTank;
                double standard = Aeration.StandardTransferGramsPerHour(
                    airFlow, parts.Basins[b].DiffuserDepthMetres, parts.Aeration.FineBubbleEfficiencyPerMetre);
                diffuser = standard * _farm.Warmth.OxygenTransfer(b)
                    * (solids ? parts.Aeration.AlphaSolidsWater : parts.Aeration.AlphaClearWater);
                diffuserCarbonDioxide = Aeration.CarbonDioxideConductanceLitresPerHour(
                    diffuser, airFlow, celsius, _farm.Chemistry.Constants(b), parts.Aeration);
            }

            _oxygen[b] = diffuser + Aeration.SurfaceOxygenConductanceLitresPerHour(open, parts.Aeration);
            _carbonDioxide[b] = diffuserCarbonDioxide + Aeration.SurfaceCarbonDioxideConductanceLitresPerHour(open, parts.Aeration);
            _oxygenSaturation[b] = _farm.Warmth.OxygenSaturationGramsPerLitre(b);
            _carbonDioxideSaturation[b] = _farm.Warmth.CarbonDioxideSaturationMoles(b);
            step.Add(b, Substance.Oxygen, (_oxygen[b] * _oxygenSaturation[b]) + _farm.Running.Oxygen[b]);
            step.Lose(b, Substance.Oxygen, _oxygen[b]);
            AddSourceWater(b);
        }
    }

    /// <summary>Solves inorganic carbon, once oxygen and ions of the step are known; leaves pH at the end of the step.</summary>
    /// <param name="balance">The solver.</param>
    public void SolveCarbon(WaterBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        for (int b = 0; b < basins.Count; b++)
        {
            double litres = _farm.Network.LitresAfter[b];
            if (litres <= 0)
            {
                continue;
            }

            int at = WaterStep.At(b, Substance.InorganicCarbon);
            _baseSource[b] = step.Source[at];
            _baseLoss[b] = step.Loss[at];

            // What is known of the step's end: the ions. The last carbon serves as the first point about which CO2 is linearized.
            double carbon = basins.Grams[at] / Math.Max(basins.Litres[b], litres);
            _end[b] = WaterAtEnd(b);
            Linearize(b, carbon, EndState(b, carbon, _farm.Chemistry.Hydrogen(b), LineTolerance));
        }

        // Where water of another alkalinity arrives (after a dose, at a coupled valve), the last carbon is far from the end's, and the
        // slope there is another one: then the line is drawn again about what was found (Newton).
        for (int pass = 1; ; pass++)
        {
            balance.SolveOne(basins, step, Substance.InorganicCarbon);
            if (!TakeCarbon() || pass == MostCarbonPasses)
            {
                return;
            }

            for (int b = 0; b < basins.Count; b++)
            {
                if (_farm.Network.LitresAfter[b] > 0)
                {
                    Linearize(b, step.Concentration[WaterStep.At(b, Substance.InorganicCarbon)], _found[b]);
                }
            }
        }
    }

    // Sets pH and carbon dioxide from the solved carbon; says whether a line missed them.
    private bool TakeCarbon()
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        bool missed = false;
        for (int b = 0; b < basins.Count; b++)
        {
            if (_farm.Network.LitresAfter[b] <= 0)
            {
                continue;
            }

            double carbon = step.Concentration[WaterStep.At(b, Substance.InorganicCarbon)];
            CarbonateRoot state = EndState(b, carbon, _found[b].Hydrogen, EndTolerance);
            basins.PH[b] = CarbonateSystem.PHOf(state.Hydrogen);
            basins.CarbonDioxideMoles[b] = state.CarbonDioxideMolesPerLitre;
            double line = _referenceCarbonDioxide[b] + (_slope[b] * (carbon - _referenceCarbon[b]) / UnitConstants.AtomicWeight.Carbon);
            missed |= Math.Abs(line - state.CarbonDioxideMolesPerLitre)
                > CarbonTolerance * (state.CarbonDioxideMolesPerLitre + _carbonDioxideSaturation[b]);
        }

        return missed;
    }

    private void Linearize(int b, double carbon, in CarbonateRoot state)
    {
        WaterStep step = _farm.Step;
        int at = WaterStep.At(b, Substance.InorganicCarbon);
        _referenceCarbon[b] = carbon;
        _referenceCarbonDioxide[b] = state.CarbonDioxideMolesPerLitre;
        _slope[b] = state.SlopeOfCarbonDioxide;
        double constant = _carbonDioxideSaturation[b] - state.CarbonDioxideMolesPerLitre
            + (state.SlopeOfCarbonDioxide * carbon / UnitConstants.AtomicWeight.Carbon);
        step.Source[at] = _baseSource[b] + (_carbonDioxide[b] * Math.Max(0, constant) * UnitConstants.AtomicWeight.Carbon);
        step.Loss[at] = _baseLoss[b] + (_carbonDioxide[b] * state.SlopeOfCarbonDioxide);
    }

    /// <summary>Books what was exchanged.</summary>
    public void Commit()
    {
        FarmBooks books = _farm.State.Books;
        WaterStep step = _farm.Step;
        double oxygen = 0;
        double pure = 0;
        double carbon = 0;
        for (int b = 0; b < step.BasinCount; b++)
        {
            if (_farm.Network.LitresAfter[b] <= 0)
            {
                continue;
            }

            pure += _farm.Running.Oxygen[b] * step.Hours;
            oxygen += _oxygen[b] * (_oxygenSaturation[b] - step.Concentration[WaterStep.At(b, Substance.Oxygen)]) * step.Hours;
            double end = step.Concentration[WaterStep.At(b, Substance.InorganicCarbon)];
            double constant = _carbonDioxideSaturation[b] - _referenceCarbonDioxide[b]
                + (_slope[b] * _referenceCarbon[b] / UnitConstants.AtomicWeight.Carbon);
            carbon += _carbonDioxide[b] * step.Hours
                * ((Math.Max(0, constant) * UnitConstants.AtomicWeight.Carbon) - (_slope[b] * end));
        }

        books.PostWater(Door.Air, Substance.Oxygen, oxygen);
        if (pure > 0)
        {
            books.PostWater(Door.BackupOxygen, Substance.Oxygen, pure);
        }

        books.PostWater(Door.Air, Substance.InorganicCarbon, carbon);
        _farm.State.House.WaterCarbonGramsPerHour = -carbon / step.Hours;
        BookSourceWater();
    }

    private void AddSourceWater(int basin)
    {
        double flow = _farm.Network.TopUp[basin];
        if (flow <= 0)
        {
            return;
        }

        double[] water = _farm.Parts.SourceWater.GramsPerLitre;
        for (int substance = 0; substance <= Substance.LastDissolved; substance++)
        {
            _farm.Step.Add(basin, substance, flow * water[substance]);
        }
    }

    private void BookSourceWater()
    {
        FarmBooks books = _farm.State.Books;
        FarmTotals totals = _farm.State.Totals;
        WaterStep step = _farm.Step;
        double topUp = 0;
        double[] water = _farm.Parts.SourceWater.GramsPerLitre;
        for (int b = 0; b < step.BasinCount; b++)
        {
            topUp += _farm.Network.TopUp[b];
            double leak = _farm.Network.Leak[b] * step.Hours;
            double spill = (_farm.Network.Spill[b] * step.Hours) + leak;
            if (spill > 0)
            {
                totals.SpilledLitres += spill - leak;
                totals.LeakedLitres += leak;
                books.Post(Door.Spill, FarmBooks.Water, -spill);
                books.Post(Door.Spill, FarmBooks.Heat, -FarmBooks.MegajoulesOf(spill, _farm.State.TemperatureAfter[b]));
                for (int substance = 0; substance < Substance.Columns; substance++)
                {
                    books.PostWaterFromOutside(Door.Spill, substance, -spill * step.Concentration[WaterStep.At(b, substance)]);
                }
            }
        }

        if (topUp > 0)
        {
            topUp *= step.Hours;
            totals.SourceLitres += topUp;
            books.Post(Door.SourceWater, FarmBooks.Water, topUp);
            books.Post(Door.SourceWater, FarmBooks.Heat, FarmBooks.MegajoulesOf(topUp, _farm.Parts.SourceWater.Celsius));
            for (int substance = 0; substance <= Substance.LastDissolved; substance++)
            {
                if (water[substance] > 0)
                {
                    books.PostWaterFromOutside(Door.SourceWater, substance, topUp * water[substance]);
                }
            }
        }
    }

    // What the ions solved for the end of the step leave to the carbon: it is the same in all passes.
    private EndWater WaterAtEnd(int basin)
    {
        Ions ions = Basins.IonsOf(_farm.Step.Concentration.AsSpan(basin * Substance.Columns, Substance.Columns), 1);
        double alkalinity = Alkalinity.EquivalentsPerLitre(ions);
        _farm.State.Basins.Alkalinity[basin] = alkalinity;
        return new EndWater(
            alkalinity, ions.P, ions.TAN, new EffectiveConstants(_farm.Chemistry.Constants(basin), IonicStrength.MolesPerLitre(ions)));
    }

    // Carbonate system with the ions solved for the end of the step.
    private CarbonateRoot EndState(int basin, double carbonGramsPerLitre, double hydrogenGuess, double tolerance)
    {
        ref readonly EndWater end = ref _end[basin];
        _found[basin] = CarbonateSystem.SolveWith(
            end.Alkalinity,
            carbonGramsPerLitre / UnitConstants.AtomicWeight.Carbon,
            end.Phosphorus,
            end.Tan,
            in end.Constants,
            hydrogenGuess,
            tolerance);
        return _found[basin];
    }

    private readonly struct EndWater(double alkalinity, double phosphorus, double tan, EffectiveConstants constants)
    {
        public readonly EffectiveConstants Constants = constants;

        public double Alkalinity { get; } = alkalinity;

        public double Phosphorus { get; } = phosphorus;

        public double Tan { get; } = tan;
    }
}
