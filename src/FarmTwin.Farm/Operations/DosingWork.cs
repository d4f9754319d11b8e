using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Standing dosing rules: test, and dose supplements in turn, within the hydroxide limit and a largest rise of pH.</summary>
public sealed class DosingWork : FarmWork
{
    private readonly DosingDescription[] _rules;
    private readonly string[] _names;
    private readonly string[] _supplementNames;

    /// <summary>Makes it.</summary>
    public DosingWork(FarmContext farm, FarmLog log)
        : base(farm, log)
    {
        _rules = [.. Parts.Farm.Dosing.Values];
        _names = [.. Parts.Farm.Dosing.Keys];
        _supplementNames = [.. Parts.Supplements.Keys];
    }

    /// <summary>Looks at a rule.</summary>
    public void Check(int rule, long seconds)
    {
        DosingDescription dosing = _rules[rule];
        double day = DayOf(seconds);
        bool coupled = !double.IsNaN(State.Operations.CoupledDay);
        if (day < dosing.FromDay || day > (dosing.UntilDay ?? double.PositiveInfinity)
            || (dosing.EndsWhenCoupled && coupled) || (dosing.BeginsWhenCoupled && !coupled))
        {
            return;
        }

        int basin = Parts.BasinIndex(dosing.Basin);
        double litres = LoopLitres(basin);
        if (litres <= 0)
        {
            return;
        }

        double value = Measure(dosing.Keep, basin);
        double want;
        if (dosing.Keep == DosedQuantity.HighestPH)
        {
            if (value <= dosing.At)
            {
                return;
            }

            // At the carbon dioxide that the air sets, alkalinity goes with ten to the pH.
            double alkalinity = Alkalinity.MilligramsCalciumCarbonatePerLitre(State.Basins.Alkalinity[basin]);
            want = -Math.Min(dosing.MostPerDose, alkalinity * (1 - Math.Pow(10, (dosing.UpTo ?? dosing.At) - value)));
        }
        else
        {
            if (value >= dosing.At)
            {
                return;
            }

            want = Math.Min(dosing.MostPerDose, (dosing.UpTo ?? dosing.At) - value);
        }

        int turn = State.Operations.DosingTurn[rule]++ % dosing.With.Count;
        Supplement supplement = Parts.Supplements[dosing.With[turn]];
        double grams = GramsFor(dosing.Keep, supplement, want, litres);
        grams = Math.Min(grams, LargestGrams(supplement, basin, litres));
        if (grams > 0)
        {
            Apply(basin, supplement, grams);
            Log.Add(seconds, "dose", _names[rule], grams, "g", $"{supplement.Title} into {dosing.Basin}; the test read {value:0.##}");
        }
    }

    /// <summary>Puts a supplement into a basin and books it.</summary>
    public void Apply(int basin, Supplement supplement, double grams)
    {
        ArgumentNullException.ThrowIfNull(supplement);
        double kilograms = grams / UnitConstants.GramsPerKilogram;
        State.Operations.DosedGrams[Array.IndexOf(_supplementNames, supplement.Name)] += grams;
        if (supplement.DissolvesSlowly && supplement.CalciumGramsPerKilogram > 0)
        {
            // Lies as a solid and dissolves while the water is short of saturation; booked as it dissolves.
            State.Basins.UndissolvedCarbonateGrams[basin] += grams;
            return;
        }

        Put(basin, Substance.InorganicCarbon, supplement.InorganicCarbonGramsPerKilogram * kilograms);
        Put(basin, Substance.Tan, supplement.TanGramsNPerKilogram * kilograms);
        Put(basin, Substance.Nitrate, supplement.NitrateGramsNPerKilogram * kilograms);
        Put(basin, Substance.Phosphorus, supplement.PhosphorusGramsPerKilogram * kilograms);
        Put(basin, Substance.Potassium, supplement.PotassiumGramsPerKilogram * kilograms);
        Put(basin, Substance.Calcium, supplement.CalciumGramsPerKilogram * kilograms);
        Put(basin, Substance.Magnesium, supplement.MagnesiumGramsPerKilogram * kilograms);
        Put(basin, Substance.Sodium, supplement.SodiumGramsPerKilogram * kilograms);
        Put(basin, Substance.Chloride, supplement.ChlorideGramsPerKilogram * kilograms);
        Put(basin, Substance.Sulfate, supplement.SulfateGramsSPerKilogram * kilograms);
        Put(basin, Substance.Iron, supplement.ChelatedIronGramsPerKilogram * kilograms);
    }

    private void Put(int basin, int substance, double grams)
    {
        if (grams > 0)
        {
            State.Basins.Grams[WaterStep.At(basin, substance)] += grams;
            State.Books.PostWaterFromOutside(Door.Dosing, substance, grams);
        }
    }

    private double Measure(DosedQuantity keep, int basin) => keep switch
    {
        DosedQuantity.Alkalinity => Alkalinity.MilligramsCalciumCarbonatePerLitre(State.Basins.Alkalinity[basin])
            + (State.Basins.UndissolvedCarbonateGrams[basin] * UnitConstants.GramsPerKilogram / LoopLitres(basin)),
        DosedQuantity.HighestPH => State.Basins.PH[basin],
        _ => LoopMilligramsPerLitre(basin, SubstanceOf(keep)),
    };

    private static int SubstanceOf(DosedQuantity keep) => keep switch
    {
        DosedQuantity.Nitrate => Substance.Nitrate,
        DosedQuantity.Potassium => Substance.Potassium,
        DosedQuantity.Calcium => Substance.Calcium,
        DosedQuantity.Magnesium => Substance.Magnesium,
        DosedQuantity.Phosphorus => Substance.Phosphorus,
        DosedQuantity.Sulfate => Substance.Sulfate,
        DosedQuantity.Iron => Substance.Iron,
        DosedQuantity.Chloride => Substance.Chloride,
        _ => throw new ArgumentOutOfRangeException(nameof(keep), keep, "This quantity is no substance."),
    };

    private static double GramsFor(DosedQuantity keep, Supplement supplement, double rise, double litres)
    {
        if (keep is DosedQuantity.Alkalinity or DosedQuantity.HighestPH)
        {
            return BaseDose.GramsForRise(supplement, rise, litres);
        }

        double perKilogram = keep switch
        {
            DosedQuantity.Nitrate => supplement.NitrateGramsNPerKilogram,
            DosedQuantity.Potassium => supplement.PotassiumGramsPerKilogram,
            DosedQuantity.Calcium => supplement.CalciumGramsPerKilogram,
            DosedQuantity.Magnesium => supplement.MagnesiumGramsPerKilogram,
            DosedQuantity.Phosphorus => supplement.PhosphorusGramsPerKilogram,
            DosedQuantity.Sulfate => supplement.SulfateGramsSPerKilogram,
            DosedQuantity.Iron => supplement.ChelatedIronGramsPerKilogram,
            DosedQuantity.Chloride => supplement.ChlorideGramsPerKilogram,
            _ => 0,
        };
        return perKilogram > 0
            ? rise * litres / perKilogram
            : throw new DescriptionException($"dosing: '{supplement.Name}' brings none of what the rule keeps ({keep}).");
    }

    // The hydroxide limit of the carbonate system, and no more than a set rise of pH.
    private double LargestGrams(Supplement supplement, int basin, double litres)
    {
        double limit = BaseDose.LargestGrams(supplement, State.Basins.CarbonDioxideMoles[basin], litres, Parts.Dosing);
        if (supplement.AlkalinityEquivalentsPerKilogram <= 0 || supplement.DissolvesSlowly)
        {
            return limit;
        }

        Ions ions = State.Basins.IonsOf(basin);
        double carbon = State.Basins.Grams[WaterStep.At(basin, Substance.InorganicCarbon)]
            / State.Basins.Litres[basin] / UnitConstants.AtomicWeight.Carbon;
        double grams = Math.Min(limit, BaseDose.GramsForRise(supplement, 50, litres));
        for (int halving = 0; halving < 12; halving++)
        {
            DosePrediction dose = BaseDose.Predict(ions, carbon, State.Basins.Celsius[basin], litres, supplement, grams, Parts.Dosing);
            if (dose.PH - dose.PHBefore <= Parts.Practice.LargestPHRise)
            {
                break;
            }

            grams /= 2;
        }

        return Math.Min(limit, grams);
    }
}
