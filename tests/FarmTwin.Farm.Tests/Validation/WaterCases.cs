using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Tests.Water;
using FarmTwin.Farm.Water;
using static FarmTwin.Farm.Tests.PublishedTable;

namespace FarmTwin.Farm.Tests.Validation;

/// <summary>Ammonia, gases, carbonate, conductivity, exchange of two loops.</summary>
internal static class WaterCases
{
    private const double MilligramsCarbonDioxidePerMole = 44_009;
    private const string Phreeqc = "PHREEQC 3 with phreeqc.dat (Parkhurst & Appelo 2013)";
    private const string Program = "independent program";

    public static CaseList All()
    {
        var list = new CaseList("Water chemistry");
        Ammonias(list);
        Gases(list);
        Carbonates(list);
        Conductivities(list);
        Exchange(list);
        return list;
    }

    private static void Ammonias(CaseList list)
    {
        const string Emerson = "Emerson et al. 1975";
        list.Worst("water-ammonia-percent", "Un-ionized share of TAN, pH 6-10 and 10-32 °C", Emerson, "own calculation from the published equation", "percent", 1.3,
            r => 100 * Ammonia.UnionizedFraction(Number(r, "ph"), Number(r, "celsius")));
        list.Rows("water-ammonia-published", "Fundamentals of Aquatic Veterinary Medicine, table 1.4; EDIS FA16", "published", "-",
            r => $"Un-ionized share, pH {r["ph"]}, {r["celsius"]} °C", "factor", _ => 0.0002, r => Ammonia.UnionizedFraction(Number(r, "ph"), Number(r, "celsius")));
        list.Rows("fish-ammonia-fraction", "Boyd, Global Aquaculture Advocate", "published", "-", r => $"Un-ionized share in Boyd's table, pH {r["ph"]}, {r["celsius"]} °C", "share",
            r => 0.04 * Number(r, "share"), r => Ammonia.UnionizedFraction(Number(r, "ph"), Number(r, "celsius")));
        list.Near("pKa of ammonium at 25 °C (9.2397 where its constant is misprinted)", Emerson, "published", 9.2464, 0.0005, "-", () => Ammonia.PKa(25));
        list.Near("NH3-N of 3 mg/L TAN at pH 8.5 and 22 °C, a worked example with a rounded pKa", "a consultant's page", "published", 0.37, 0.03 * 0.37, "mg/L",
            () => 3 * Ammonia.UnionizedFraction(8.5, 22));
    }

    private static void Gases(CaseList list)
    {
        list.Worst("water-oxygen-saturation", "Oxygen saturation at 1 atm", "Benson & Krause 1984; EN 25814", "published", "milligrams", 0.01,
            r => OxygenSaturation.MilligramsPerLitre(Number(r, "celsius"), 1));
        list.Rows("water-oxygen-pressure", "EN 25814; Boyd; meter manuals", "published", "mg/L",
            r => $"Oxygen saturation at {r["celsius"]} °C, " + (r["metres"].Length > 0 ? $"{r["metres"]} m" : $"{r["millimetres_mercury"]} mm Hg, salinity {r["salinity"]}"), "milligrams",
            r => Number(r, "tolerance"), r => OxygenSaturation.MilligramsPerLitre(Number(r, "celsius"),
                r["metres"].Length > 0 ? OxygenSaturation.PressureAtmospheres(Number(r, "metres")) : Number(r, "millimetres_mercury") / 760, Number(r, "salinity")));
        AerationParameters clean = WaterLibrary.Aeration with { AlphaClearWater = 0.9, Beta = 1, FoulingFactor = 1 };
        foreach ((double celsius, double oxygen, double percent) in new[] { (20.0, 5.0, 41.0), (30, 5, 31), (20, 0, 91) })
        {
            list.Near($"Share of the rated oxygen transfer delivered at {celsius} °C and {oxygen} mg/L", "an aeration table (saturation of an older table)", "published", percent, 1.5, "%",
                () => Aeration.DeliveredOxygenGramsPerHour(
                    Aeration.OxygenConductanceLitresPerHour(100, clean.AlphaClearWater, celsius, clean), oxygen, celsius, 1, clean));
        }

        foreach ((double ppm, double milligrams) in new[] { (335.0, 0.56), (394, 0.67) })
        {
            list.Near($"CO2 of water at rest with air of {ppm} ppm, 20 °C", "Boyd, Global Aquaculture Advocate", "published", milligrams, 0.01, "mg/L", () =>
            {
                var constants = CarbonateConstants.At(20);
                return CarbonateSystem.SaturationCarbonDioxideMolesPerLitre(in constants, ppm, 1, 20) * MilligramsCarbonDioxidePerMole;
            });
        }

        list.Rows("equipment-outage", "closed form; 20 kg/m3 and half an hour common practice", "own calculation", "min", r => $"Minutes without air, {r["name"]}", "minutes", _ => 0.3,
            r => PowerOutage.MinutesToOxygen(Number(r, "volume_litres"), Number(r, "fish_kilograms"), Number(r, "use"), Number(r, "from"), Number(r, "to")));
    }

    private static void Carbonates(CaseList list)
    {
        list.Worst("water-equilibrium-constants", "pK1 of carbonic acid, 5-35 °C", "Plummer & Busenberg 1982", "own calculation from the published equation", "pk1", 0.02,
            r => -Math.Log10(CarbonateConstants.At(Number(r, "celsius")).K1));
        list.Worst("water-equilibrium-constants", "pK2 of carbonic acid, 5-35 °C", "Plummer & Busenberg 1982", "own calculation from the published equation", "pk2", 0.02,
            r => -Math.Log10(CarbonateConstants.At(Number(r, "celsius")).K2));
        list.Rows("water-ph-cases", Phreeqc, Program, "pH", r => $"pH: {r["case"]}", "ph", r => Number(r, "tolerance"), FarmWaterPH);
        list.Near("pH of pure water under 390 ppm CO2, 25 °C", "aqion", "published", 5.61, 0.01, "pH",
            () => CarbonateSystem.SolveOpen(0, CarbonateConstants.At(25).KHenry * 0.00039, 0, 0, CarbonateConstants.At(25), 0).PH);
        list.Near("pH of 0.5 mM NaOH without CO2", "University of Maryland, textbook solution", "published", 10.7, 0.05, "pH", () => Closed(5e-4, 0, 25, 5e-4).PH);
        list.Near("pH of 0.05 mM KHCO3, closed", "University of Maryland, textbook solution", "published", 8.0, 0.1, "pH", () => Closed(5e-5, 5e-5, 25, 5e-5).PH);
        list.Near("CO2 of the fish loop's water (KHCO3 1.6 mM, C 1.85 mM, 26 °C)", Phreeqc, Program, 11.06, 0.15, "mg/L",
            () => Closed(1.6e-3, 1.85e-3, 26, 1.6e-3).CarbonDioxideMolesPerLitre * MilligramsCarbonDioxidePerMole);
        foreach ((double pH, double celsius, double factor) in new[] { (6.8, 25.0, 0.313), (7.0, 25, 0.197), (7.4, 20, 0.084) })
        {
            list.Near($"CO2 over alkalinity as CaCO3 at pH {pH}, {celsius} °C", "Tucker 1984", "second hand", factor, 0.03 * factor, "mg/mg", () =>
            {
                var constants = CarbonateConstants.At(celsius);
                double alkalinity = Alkalinity.EquivalentsFromCalciumCarbonate(50);
                double carbon = CarbonateSystem.InorganicCarbonForPH(alkalinity, pH, 0, 0, in constants, 0);
                return Closed(alkalinity, carbon, celsius, 0).CarbonDioxideMolesPerLitre * MilligramsCarbonDioxidePerMole / 50;
            });
        }

        list.Near("Calcite saturation index, Ca 60 and alkalinity 100 mg/L, pH 7.8, 25 °C", Phreeqc, Program, 0.23, 0.06, "-", () =>
        {
            var constants = CarbonateConstants.At(25);
            double alkalinity = Alkalinity.EquivalentsFromCalciumCarbonate(100);
            double calcium = 0.060 / UnitConstants.AtomicWeight.Calcium;
            Ions ions = new(0, 0, calcium, 0, (2 * calcium) - alkalinity, 0, 0, 0, 0, 0);
            double strength = IonicStrength.MolesPerLitre(in ions);
            double carbon = CarbonateSystem.InorganicCarbonForPH(alkalinity, 7.8, 0, 0, in constants, strength);
            return CarbonateSystem.CalciteSaturationIndex(calcium, carbon, 7.8, in constants, strength);
        });
        list.Near("Alkalinity taken by nitrifying 588 lb N a day", "a water operators' course (2.35 MGD at 30 mg N/L)", "published", 4198, 4.2, "lb/d",
            () => 2.35 * 30 * 8.34 * 2 * UnitConstants.GramsCalciumCarbonatePerEquivalent / UnitConstants.AtomicWeight.Nitrogen, Standing.Arithmetic);
    }

    private static void Conductivities(CaseList list)
    {
        list.Rows("water-conductivity", "Standard Methods 2510; measured salts of the PHREEQC tests", "published; KNO3 and lettuce solution independent program", "µS/cm",
            r => $"Conductivity at 25 °C: {r["case"]}", "ec", r => Number(r, "ec") * Math.Max(Number(r, "percent_below"), Number(r, "percent_above")) / 100, r =>
            {
                var constants = CarbonateConstants.At(25);
                Ions ions = WaterLibrary.Millimolar(
                    Number(r, "na"), Number(r, "k"), Number(r, "ca"), Number(r, "mg"), Number(r, "cl"), Number(r, "no3"), Number(r, "so4"), Number(r, "p"));
                return Conductivity.MicrosiemensPerCentimetreAt25(
                    in ions, Number(r, "carbon") / 1000, Number(r, "ph"), in constants, IonicStrength.MolesPerLitre(in ions));
            });
        list.Near("5.00 mS/cm as an uncompensated meter reads it at 15 °C (1.91 %/K)", "a logger's manual", "published", 4.05, 0.01, "mS/cm",
            () => Conductivity.Uncompensated(5, 15, WaterLibrary.Meters));
    }

    private static void Exchange(CaseList list)
    {
        foreach ((string column, double fish, double plant) in new[] { ("fish_nitrate", 150.0, 20.0), ("fish_celsius", 27, 20) })
        {
            foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("water-two-loop-exchange").Rows.Where(r => r[column].Length > 0))
            {
                list.Near($"Two loops exchanging 386 L/h: {column.Replace('_', ' ')} after {row["hours"]} h", "identity of two mixed reactors", "own calculation by hand",
                    Number(row, column), 0.1, column == "fish_nitrate" ? "mg N/L" : "°C",
                    () => TwoLoopExchange.After(new LoopPair(fish, plant), 2700, 9000, 386, Number(row, "hours")).FishLoop);
            }
        }
    }

    private static CarbonateState Closed(double alkalinity, double carbon, double celsius, double strength) =>
        CarbonateSystem.Solve(alkalinity, carbon, 0, 0, CarbonateConstants.At(celsius), strength, 7);

    private static double FarmWaterPH(IReadOnlyDictionary<string, string> row)
    {
        var constants = CarbonateConstants.At(Number(row, "celsius"));
        double alkalinity = Number(row, "alkalinity") / 1000, phosphorus = Number(row, "phosphorus") / 1000, strength = Number(row, "potassium") / 1000;
        return row["air_ppm"].Length > 0
            ? CarbonateSystem.SolveOpen(alkalinity, constants.KHenry * Number(row, "air_ppm") * 1e-6, phosphorus, 0, in constants, strength).PH
            : CarbonateSystem.Solve(alkalinity, Number(row, "carbon") / 1000, phosphorus, 0, in constants, strength, 7).PH;
    }
}
