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
    private readonly FarmContext _farm;
    private readonly double[] _oxygen;
    private readonly double[] _oxygenSaturation;
    private readonly CarbonSolve _carbon;

    /// <summary>Makes the process.</summary>
    public AirExchange(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        int count = farm.Parts.Basins.Length;
        _oxygen = new double[count];
        _oxygenSaturation = new double[count];
        _carbon = new CarbonSolve(farm);
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
            _carbon.Conductance[b] = diffuserCarbonDioxide + Aeration.SurfaceCarbonDioxideConductanceLitresPerHour(open, parts.Aeration);
            _oxygenSaturation[b] = _farm.Warmth.OxygenSaturationGramsPerLitre(b);
            _carbon.Saturation[b] = _farm.Warmth.CarbonDioxideSaturationMoles(b);
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
        _carbon.Solve(balance);
    }

    /// <summary>Books what was exchanged.</summary>
    public void Commit()
    {
        FarmBooks books = _farm.State.Books;
        WaterStep step = _farm.Step;
        double oxygen = 0;
        double pure = 0;
        double carbon = _carbon.FromAirGrams();
        for (int b = 0; b < step.BasinCount; b++)
        {
            if (_farm.Network.LitresAfter[b] <= 0)
            {
                continue;
            }

            pure += _farm.Running.Oxygen[b] * step.Hours;
            oxygen += _oxygen[b] * (_oxygenSaturation[b] - step.Concentration[WaterStep.At(b, Substance.Oxygen)]) * step.Hours;
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
}
