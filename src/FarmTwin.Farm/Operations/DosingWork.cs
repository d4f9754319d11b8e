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

        double wanted = GramsFor(dosing, supplement, want, litres);
        BaseAllowance allowance = BaseAllowance.For(Farm, supplement, basin, wanted);
        double grams = allowance.IsHydroxideRule ? allowance.Grams : Math.Min(wanted, LargestWithFish(supplement, basin, litres));
        if (allowance.IsRefused)
        {
            Log.Add(seconds, "dose refused", _names[rule], wanted, "g", $"{supplement.Title} into {dosing.Basin}: {allowance.Why}; dose a bicarbonate instead");
        }
        else if (grams > 0)
        {
            Give(basin, supplement, grams, seconds + (long)(Math.Max(Parts.Practice.DosingHours, allowance.Hours) * UnitConstants.SecondsPerHour));
            string spread = allowance.IsHydroxideRule
                ? $", dripped over {Math.Max(Parts.Practice.DosingHours, allowance.Hours):0} h by the hydroxide rule" + (grams < wanted ? $" ({wanted:0} g wanted)" : string.Empty)
                : string.Empty;
            Log.Add(seconds, "dose", _names[rule], grams, "g", $"{supplement.Title} into {dosing.Basin}; the test read {value:0.##}{spread}");
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

    /// <summary>Pours a supplement into a basin at once, whatever comes of it; says so where that breaks the hydroxide rule.</summary>
    public void Pour(int basin, Supplement supplement, double grams, long seconds)
    {
        BaseAllowance allowance = BaseAllowance.For(Farm, supplement, basin, grams);
        if (allowance.IsHydroxideRule && grams > allowance.GramsPerHour && State.Basins.Litres[basin] > 0)
        {
            DosePrediction dose = Predict(supplement, basin, State.Basins.Litres[basin], grams);
            Log.Add(seconds, "hydroxide rule broken", Parts.BasinNames[basin], grams, "g",
                $"{supplement.Title} at once: pH {dose.PHBefore:0.0} to {dose.PH:0.0}, NH3-N {dose.UnionizedAmmoniaMilligramsNPerLitre:0.00} mg/L; no more than {allowance.GramsPerHour:0.#} g an hour");
        }

        Give(basin, supplement, grams, null);
    }

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
        Put(Substance.Iron + (int)supplement.IronHolder, supplement.IronGramsPerKilogram * kilograms);

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
        if (dosing is KeepAlkalinity { ChosenBy: ChosenBy.Need })
        {
            return NeededBase(dosing, basin, powderLies);
        }

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

    // The base whose cation the loop is shortest of, measured by its aim.
    private Supplement? NeededBase(DosingDescription dosing, int basin, bool powderLies)
    {
        Supplement? best = null;
        double shortest = double.PositiveInfinity;
        foreach (string name in dosing.With)
        {
            Supplement supplement = Parts.Supplements[name];
            if (supplement.DissolvesSlowly && powderLies)
            {
                continue;
            }

            double plenty = Math.Min(
                Plenty(supplement.PotassiumGramsPerKilogram, Substance.Potassium, Parts.Dosing.PotassiumAimMilligramsPerLitre),
                Math.Min(
                    Plenty(supplement.CalciumGramsPerKilogram, Substance.Calcium, Parts.Dosing.CalciumAimMilligramsPerLitre),
                    Plenty(supplement.MagnesiumGramsPerKilogram, Substance.Magnesium, Parts.Dosing.MagnesiumAimMilligramsPerLitre)));
            (best, shortest) = plenty < shortest || best is null ? (supplement, plenty) : (best, shortest);
        }

        return best;

        double Plenty(double content, int substance, double aim) =>
            content > 0 ? Loops.MilligramsPerLitre(basin, substance) / aim : double.PositiveInfinity;
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
                return Below(MilligramsPerLitre(basin, element.Element), element.AtMilligramsPerLitre, element.UpToMilligramsPerLitre);
            case ProtectFromNitrite protect:
                double nitrite = Loops.MilligramsPerLitre(basin, Substance.Nitrite);
                double chloride = Loops.MilligramsPerLitre(basin, Substance.Chloride);
                return nitrite > protect.AboveNitrite ? Below(chloride, protect.Ratio * nitrite, protect.Ratio * nitrite) : (chloride, 0);
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

    // A test of iron reads all that is dissolved, whatever holds it.
    private double MilligramsPerLitre(int basin, KeptElement element)
    {
        int substance = SubstanceOf(element);
        double sum = Loops.MilligramsPerLitre(basin, substance);
        for (int holder = 1; element == KeptElement.Iron && holder < Substance.IronHolders; holder++)
        {
            sum += Loops.MilligramsPerLitre(basin, substance + holder);
        }

        return sum;
    }

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
                KeptElement.Iron => supplement.IronGramsPerKilogram,
                _ => supplement.ChlorideGramsPerKilogram,
            }
            : dosing is ProtectFromNitrite ? supplement.ChlorideGramsPerKilogram : supplement.NitrateGramsNPerKilogram;
        return perKilogram > 0
            ? rise * litres / perKilogram
            : throw new DescriptionException($"dosing: '{supplement.Name}' brings none of what the rule keeps.");
    }

    // For the sake of fish no more than a set rise of pH.
    private double LargestWithFish(Supplement supplement, int basin, double litres)
    {
        bool fish = State.Cohorts.Any(c => c.Count > 0);
        if (!fish || supplement.AlkalinityEquivalentsPerKilogram < LeastBaseEquivalents || supplement.DissolvesSlowly)
        {
            return double.PositiveInfinity;
        }

        double grams = BaseDose.GramsForRise(supplement, 50, litres);
        for (int halving = 0; halving < 12; halving++)
        {
            DosePrediction dose = Predict(supplement, basin, litres, grams);
            if (dose.PH <= Math.Max(Parts.Practice.PHRaisedFreely, dose.PHBefore + Parts.Practice.LargestPHRise))
            {
                break;
            }

            grams /= 2;
        }

        return grams;
    }

    private DosePrediction Predict(Supplement supplement, int basin, double litres, double grams)
    {
        double carbon = State.Basins.Grams[WaterStep.At(basin, Substance.InorganicCarbon)]
            / State.Basins.Litres[basin] / UnitConstants.AtomicWeight.Carbon;
        return BaseDose.Predict(State.Basins.IonsOf(basin), carbon, State.Basins.Celsius[basin], litres, supplement, grams, Parts.Dosing);
    }
}
