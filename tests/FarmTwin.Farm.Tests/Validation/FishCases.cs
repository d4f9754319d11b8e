using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Tests.Fish;
using static FarmTwin.Farm.Tests.PublishedTable;

namespace FarmTwin.Farm.Tests.Validation;

/// <summary>Growth, feed, excretion, breathing, deaths.</summary>
internal static class FishCases
{
    private static readonly FishParameters Nile = FishLibrary.Nile;

    public static CaseList All()
    {
        var list = new CaseList("Fish");
        Cohorts(list);
        Growth(list);
        Waste(list);
        Harm(list);
        return list;
    }

    private static void Cohorts(CaseList list)
    {
        const string Uvi = "Rakocy et al. 2004, UVI, means of 20 harvests";
        const string Basis = "published; start weight and temperature from memory";
        foreach (string species in new[] { "nile", "red" })
        {
            IReadOnlyDictionary<string, string> row = UviCohortTests.Row(species);
            var tank = new Lazy<ConstantTank>(() => UviCohortTests.Run(species == "nile" ? Nile : FishLibrary.Red, row));
            double final = Number(row, "finalGrams"), yield = Number(row, "yieldKilogramsPerCubicMetre");
            list.Near($"UVI {species} tilapia: weight after 168 d", Uvi, Basis, final, 0.03 * final, "g", () => tank.Value.Cohort.MeanGrams, Standing.Calibrated);
            list.Near($"UVI {species} tilapia: feed conversion", Uvi, Basis, Number(row, "feedConversion"), 0.05, "g/g", () => tank.Value.FeedConversion, Standing.Calibrated);
            list.Near($"UVI {species} tilapia: yield", Uvi, Basis, yield, 0.03 * yield, "kg/m3", () => tank.Value.Cohort.BiomassGrams / 1000, Standing.Calibrated);
        }

        list.Near("UVI: feed of four staggered tanks over 214 m2 of basil (published independently of the cohorts)", "Rakocy et al. 2004", "abstract", 81.4, 0.05 * 81.4, "g/(m2 d)",
            () => UviCohortTests.Staggered(UviCohortTests.FedOneTank()).Average() * 1000 / 214);
        list.Near("UVI nursery: 1 g to 50 g in 12 weeks, with a strain of G 0.0331", "UVI nursery page", "published; G fitted to it", 50, 1.5, "g",
            () => UviCohortTests.Nursery(Nile with { GrowthCoefficient = 0.0331 }, 1, 84), Standing.Calibrated);
        list.Gap("UVI nursery: 1 g to 50 g in 12 weeks, with the default strain", "UVI nursery page", "published", 50, 1.5, "g",
            () => UviCohortTests.Nursery(Nile, 1, 84), "Small fish of a good strain grow faster than the coefficient fitted from 79 g upwards: state the strain's own coefficient.");
        list.Gap("Recirculating nursery: 2.07 g, 70 d, 400/m3", "Latin American Journal of Aquatic Research 41:150 (2013)", "abstract", 69.3, 3, "g",
            () => UviCohortTests.Nursery(Nile, 2.07, 70), "As above; its water temperature was not seen.");
        list.Gap("50 g to 900 g in 24 weeks", "UVI application page", "published (an advertisement)", 900, 45, "g",
            () => UviCohortTests.Nursery(Nile, 50, 168), "A quarter above the mean growth of the same farm's own paper: not followed.");
    }

    private static void Growth(CaseList list)
    {
        list.Near("Days from 55 to 600 g at 29 °C by the power law used as a cross-check", "Goddek & Körner 2019", "second hand", 151.8, 0.3, "d", () => GrowthCurves.PowerLawDays(55, 600, 29), Standing.Arithmetic);
        list.Near("Gain at 100 g, 29 °C, by the same", "Goddek & Körner 2019", "second hand", 2.434, 0.005, "g/d", () => GrowthCurves.PowerLawGainGramsPerDay(100, 29), Standing.Arithmetic);
        list.Band("Nile tilapia from 79.2 g, 168 d at 28 °C (power law 670 g, measured 813.8 g at a temperature not seen)", "Goddek & Körner 2019; Rakocy et al. 2004", "second hand; from memory", 650, 900, "g",
            GrowthTests.From79Grams);
        IReadOnlyList<IReadOnlyDictionary<string, string>> trial = Read("fish-temperature-trial").Rows;
        double cool = Number(trial[0], "finalGrams");
        list.Near("Weight at 24 °C after 90 d, predicted from the same trial's 30 °C", "International Journal of Aquaculture, article 479", "published", cool, 0.15 * cool, "g",
            () => GrowthTests.At24From30(Number(trial[1], "finalGrams")));
        list.Band("Growth at 30.3 °C over that at 22.2 °C (\"three times\")", "SRAC 283", "published", 2.4, 3.7, "-", () => GrowthTests.Gain(30.3) / GrowthTests.Gain(22.2));
        list.Band("Feed taken at 17.2 °C over maintenance (\"near nil\")", "SRAC 283", "published", 0, 0.4, "-",
            () => Feeding.AppetiteGramsPerFishDay(Nile, 100, FishLibrary.Clean(17.2)) / Feeding.MaintenanceGramsPerDay(Nile, 100, 17.2));
        list.Near("Growth by thermal units: 10 g, 10 °C, 100 d", "Iwama & Tautz 1981", "from memory", 31.39, 0.01, "g", () => GrowthCurves.ThermalUnitGrams(10, 1, 1000), Standing.Arithmetic);
        list.Band("Final weight after 200 d at 6.5 over 2.6 mg/L oxygen (more: order only)", "Papoutsoglou & Tziha 1996", "abstract", 1.05, double.PositiveInfinity, "-", () => Long(6.51) / Long(2.63));
        list.Band("Q10 of maintenance, carp 2.38 from four temperatures", "Goolish & Adelman 1984", "abstract; another species", 2.0, 2.4, "-", () => Nile.MaintenanceQ10);
        list.Band("Growth at 500 mg NO3-N/L over that without", "Monsees et al.", "abstract", 0.97, 1, "-", () => Stress.NitrateFactor(Nile, 500), Standing.Calibrated);

        static double Long(double oxygen)
        {
            var tank = new ConstantTank(FishLibrary.Blue, FishLibrary.Clean(28) with { OxygenMilligramsPerLitre = oxygen }, 1, 27.3);
            tank.Run(200);
            return tank.Cohort.MeanGrams;
        }
    }

    private static void Waste(CaseList list)
    {
        var nile = new Lazy<ConstantTank>(() => UviCohortTests.Run(Nile, UviCohortTests.Row("nile")));
        list.Near("TAN of a kilogram of 32 % feed (0.092 of the protein)", "Timmons & Ebeling", "second hand", 29.44, 0.3, "g",
            () => 1000 * nile.Value.TanGrams / nile.Value.Cohort.FedGrams);
        list.Band("Feed nitrogen kept as gain, over a cycle", "the spread of budgets: Goddek et al. 2016 and others", "second hand", 0.20, 0.36, "-",
            () => Nile.TissueOf(nile.Value.Cohort.GainedGrams).Nitrogen / FishLibrary.Feed.ElementsOf(nile.Value.Cohort.FedGrams).Nitrogen);
        list.Band("Oxygen used per feed (sources disagree)", "aquaculture texts", "second hand", 0.17, 0.6, "g/g", () => nile.Value.OxygenGrams / nile.Value.Cohort.FedGrams);
        list.Near("Oxygen of a fasting 100 g fish at 28 °C by the published regression, a low bound", "regression on small Nile tilapia", "abstract", 227, 0.1, "mg/(kg h)",
            () => OxygenCheck.RegressionMilligramsPerKilogramHour(100, 28), Standing.Arithmetic);
        list.Gap("TAN of a red tilapia growing from 20 to 200 g", "Iranian Journal of Fisheries Sciences, article 114814, rates integrated", "abstract", 3.27, 0.07, "g N",
            () =>
            {
                var tank = new ConstantTank(FishLibrary.Red, FishLibrary.Clean(28), 1, 20);
                while (tank.Cohort.MeanGrams < 200)
                {
                    tank.Run(1);
                }

                return tank.TanGrams;
            },
            "The measured rates imply a conversion of 0.96 and fall to a fifth of what a fed fish of 200 g must give off; the ration is not stated. The twin follows the nitrogen of the feed.");
    }

    private static void Harm(CaseList list)
    {
        list.Near("Growth at 0.73 mg NH3-N/L over that without", "Abdalla & McNabb 1998", "abstract", 0.5, 0.03, "-", () => Stress.AmmoniaFactor(Nile, 0.73), Standing.Calibrated);
        FishWater low = FishLibrary.Clean(28) with { OxygenMilligramsPerLitre = 1.5 };
        list.Band("Feed taken at 1.5 over 7 mg/L oxygen (0.60 measured)", "Tsadik & Kutty 1987", "published", 0.45, 0.70, "-",
            () => Feeding.AppetiteGramsPerFishDay(Nile, 8.1, low) / Feeding.AppetiteGramsPerFishDay(Nile, 8.1, FishLibrary.Clean(28)));
        list.Band("Conversion at 1.5 over 7 mg/L oxygen (4.7 measured)", "Tsadik & Kutty 1987", "published", 2, 5, "-",
            () => StressAndSurvivalTests.Conversion(low) / StressAndSurvivalTests.Conversion(FishLibrary.Clean(28)), Standing.Calibrated);
        foreach (IReadOnlyDictionary<string, string> row in Read("fish-cold-deaths").Rows)
        {
            list.Band($"Dead after {row["hours"]} h at {row["celsius"]} °C", "SRAC 283; Charo-Karisa et al. 2005; FAO TP 589", "second hand", Number(row, "leastPercentDead"),
                Number(row, "mostPercentDead"), "%", () => 100 * StressAndSurvivalTests.Dead(FishLibrary.Clean(Number(row, "celsius")), 100, Number(row, "hours")));
        }

        list.Near("Dead after 96 h at 2.65 mg NH3-N/L, 45 g", "Abdalla & McNabb 1998", "abstract", 50, 1, "%",
            () => 100 * StressAndSurvivalTests.Dead(FishLibrary.Clean(28) with { UnionizedAmmoniaMilligramsNPerLitre = 2.65 }, 45, 96), Standing.Calibrated);
        list.Near("Dead after 96 h at 13.6 mg NO2-N/L with 70 mg/L chloride", "Wang et al. 2006", "abstract, authors from memory", 50, 1, "%",
            () => 100 * StressAndSurvivalTests.Dead(FishLibrary.Clean(28) with { NitriteMilligramsNPerLitre = 13.6, ChlorideMilligramsPerLitre = 70 }, 1.8, 96), Standing.Calibrated);
    }
}
