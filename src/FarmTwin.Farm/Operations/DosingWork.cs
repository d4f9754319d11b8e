using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Standing dosing rules: test, and dose supplements in turn, within the hydroxide limit and, while there are fish, a largest rise of pH.</summary>
public sealed class DosingWork : FarmWork
{
    // Below this a supplement is no base whose pH must be watched, eq/kg.
    private const double LeastBaseEquivalents = 0.1;

    // Less than this is dust at the bottom, mg of CaCO3 a litre of the loop.
    private const double LeastPowderMilligramsPerLitre = 1;

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
        if (!IsInForce(rule, seconds))
        {
            return;
        }

        int basin = Parts.BasinIndex(dosing.Basin);
        double litres = Loops.Litres(basin);
        if (litres <= 0)
        {
            return;
        }

        Spend(Chore.ReadOne, 1);
        (double value, double want) = Test(dosing, basin, litres);
        if (want == 0)
        {
            return;
        }

        if (NextSupplement(dosing, rule, basin, litres) is not { } supplement)
        {
            return;
        }

        double grams = GramsFor(dosing, supplement, want, litres);
        grams = Math.Min(grams, LargestGrams(supplement, basin, litres));
        if (grams > 0)
        {
            Drip(basin, supplement, grams, seconds);
            Log.Add(seconds, "dose", _names[rule], grams, "g", $"{supplement.Title} into {dosing.Basin}; the test read {value:0.##}");
        }
    }

    /// <summary>Whether a rule is in force: within its days, and with the valves as it wants them.</summary>
    public bool IsInForce(int rule, long seconds)
    {
        DosingDescription dosing = _rules[rule];
        double day = DayOf(seconds);
        bool opened = !double.IsNaN(State.Operations.OpenedDay);
        bool coupled = !double.IsNaN(State.Operations.CoupledDay);
        return day >= dosing.FromDay && day <= (dosing.UntilDay ?? double.PositiveInfinity)
            && !(dosing.EndsWhenOpened && opened) && !(dosing.EndsWhenCoupled && coupled) && (!dosing.BeginsWhenCoupled || coupled);
    }

    /// <summary>Lets a supplement drip into a basin over the hours of practice.</summary>
    public void Drip(int basin, Supplement supplement, double grams, long seconds) => Give(
        basin, supplement, grams, seconds + (long)(Parts.Practice.DosingHours * UnitConstants.SecondsPerHour));

    /// <summary>Pours a supplement into a basin at once.</summary>
    public void Pour(int basin, Supplement supplement, double grams) => Give(basin, supplement, grams, null);

    private void Give(int basin, Supplement supplement, double grams, long? untilSeconds)
    {
        ArgumentNullException.ThrowIfNull(supplement);
        double kilograms = grams / UnitConstants.GramsPerKilogram;
        Spend(Chore.Dose, 1);
        State.Operations.DosedGrams[Array.IndexOf(_supplementNames, supplement.Name)] += grams;
        if (supplement.DissolvesSlowly && supplement.CalciumGramsPerKilogram > 0)
        {
            // Lies as a solid and dissolves while the water is short of saturation; booked as it dissolves.
            State.Basins.UndissolvedCarbonateGrams[basin] += grams;
            return;
        }

        Put(Substance.InorganicCarbon, supplement.InorganicCarbonGramsPerKilogram * kilograms);
        Put(Substance.Tan, supplement.TanGramsNPerKilogram * kilograms);
        Put(Substance.Nitrate, supplement.NitrateGramsNPerKilogram * kilograms);
        Put(Substance.Phosphorus, supplement.PhosphorusGramsPerKilogram * kilograms);
        Put(Substance.Potassium, supplement.PotassiumGramsPerKilogram * kilograms);
        Put(Substance.Calcium, supplement.CalciumGramsPerKilogram * kilograms);
        Put(Substance.Magnesium, supplement.MagnesiumGramsPerKilogram * kilograms);
        Put(Substance.Sodium, supplement.SodiumGramsPerKilogram * kilograms);
        Put(Substance.Chloride, supplement.ChlorideGramsPerKilogram * kilograms);
        Put(Substance.Sulfate, supplement.SulfateGramsSPerKilogram * kilograms);
        Put(Substance.Iron, supplement.ChelatedIronGramsPerKilogram * kilograms);

        void Put(int substance, double amount)
        {
            if (amount <= 0)
            {
                return;
            }

            if (untilSeconds is { } until)
            {
                State.Doses.Add(basin, substance, amount, until);
                return;
            }

            State.Basins.Grams[WaterStep.At(basin, substance)] += amount;
            State.Books.PostWaterFromOutside(Door.Dosing, substance, amount);
        }
    }

    // The rule's supplements take turns, but no powder goes onto powder that still lies undissolved: the next one has its turn.
    private Supplement? NextSupplement(DosingDescription dosing, int rule, int basin, double litres)
    {
        bool powderLies = State.Basins.UndissolvedCarbonateGrams[basin] * UnitConstants.GramsPerKilogram / litres > LeastPowderMilligramsPerLitre;
        for (int passed = 0; passed < dosing.With.Count; passed++)
        {
            Supplement supplement = Parts.Supplements[dosing.With[State.Operations.DosingTurn[rule]++ % dosing.With.Count]];
            if (!supplement.DissolvesSlowly || !powderLies)
            {
                return supplement;
            }
        }

        return null;
    }

    // What the test reads, and the rise that is wanted (a fall is negative; 0 for nothing to do).
    private (double Value, double Want) Test(DosingDescription dosing, int basin, double litres)
    {
        switch (dosing)
        {
            case KeepAlkalinity alkalinity:
                double now = Alkalinity.MilligramsCalciumCarbonatePerLitre(State.Basins.Alkalinity[basin]);
                return (now, now < alkalinity.AtMilligramsPerLitre
                    ? Math.Min(alkalinity.MostPerDose, alkalinity.UpToMilligramsPerLitre - now)
                    : 0);
            case KeepNitrate nitrate:
                return Below(Loops.MilligramsPerLitre(basin, Substance.Nitrate), nitrate.AtMilligramsNPerLitre, nitrate.UpToMilligramsNPerLitre);
            case KeepElement element:
                return Below(Loops.MilligramsPerLitre(basin, SubstanceOf(element.Element)), element.AtMilligramsPerLitre, element.UpToMilligramsPerLitre);
            case HoldPH hold:
                double pH = hold.ByProbe is { } probe ? ReadingOf(probe, State.Basins.PH[basin]) : State.Basins.PH[basin];
                double held = Alkalinity.MilligramsCalciumCarbonatePerLitre(State.Basins.Alkalinity[basin]);

                // At the carbon dioxide that the air sets, alkalinity goes with ten to the pH.
                return (pH, pH > hold.AbovePH && held > 0
                    ? -Math.Min(hold.MostPerDose, held * (1 - Math.Pow(10, hold.DownToPH - pH)))
                    : 0);
            default:
                throw new DescriptionException($"The dosing rule '{dosing.GetType().Name}' is not known to this version.");
        }

        static (double Value, double Want) Below(double value, double floor, double upTo) => (value, value < floor ? upTo - value : 0);
    }

    // A doser believes its probe; before the first sample it goes by the water.
    private double ReadingOf(string probe, double unread) =>
        State.Probes.Reading[Parts.Alarms.ProbeIndex(probe)] is var reading && double.IsNaN(reading) ? unread : reading;

    private static int SubstanceOf(KeptElement element) => element switch
    {
        KeptElement.Phosphorus => Substance.Phosphorus,
        KeptElement.Potassium => Substance.Potassium,
        KeptElement.Calcium => Substance.Calcium,
        KeptElement.Magnesium => Substance.Magnesium,
        KeptElement.Sulfur => Substance.Sulfate,
        KeptElement.Iron => Substance.Iron,
        KeptElement.Chloride => Substance.Chloride,
        _ => throw new ArgumentOutOfRangeException(nameof(element), element, "This element cannot be kept."),
    };

    private static double GramsFor(DosingDescription dosing, Supplement supplement, double rise, double litres)
    {
        if (dosing is KeepAlkalinity or HoldPH)
        {
            return BaseDose.GramsForRise(supplement, rise, litres);
        }

        double perKilogram = dosing is KeepElement kept
            ? kept.Element switch
            {
                KeptElement.Phosphorus => supplement.PhosphorusGramsPerKilogram,
                KeptElement.Potassium => supplement.PotassiumGramsPerKilogram,
                KeptElement.Calcium => supplement.CalciumGramsPerKilogram,
                KeptElement.Magnesium => supplement.MagnesiumGramsPerKilogram,
                KeptElement.Sulfur => supplement.SulfateGramsSPerKilogram,
                KeptElement.Iron => supplement.ChelatedIronGramsPerKilogram,
                _ => supplement.ChlorideGramsPerKilogram,
            }
            : supplement.NitrateGramsNPerKilogram;
        return perKilogram > 0
            ? rise * litres / perKilogram
            : throw new DescriptionException($"dosing: '{supplement.Name}' brings none of what the rule keeps.");
    }

    // The hydroxide limit of the carbonate system, and for the sake of fish no more than a set rise of pH.
    private double LargestGrams(Supplement supplement, int basin, double litres)
    {
        double limit = BaseDose.LargestGrams(supplement, State.Basins.CarbonDioxideMoles[basin], litres, Parts.Dosing);
        bool fish = State.Cohorts.Any(c => c.Count > 0);
        if (!fish || supplement.AlkalinityEquivalentsPerKilogram < LeastBaseEquivalents || supplement.DissolvesSlowly)
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
            if (dose.PH <= Math.Max(Parts.Practice.PHRaisedFreely, dose.PHBefore + Parts.Practice.LargestPHRise))
            {
                break;
            }

            grams /= 2;
        }

        return Math.Min(limit, grams);
    }
}
