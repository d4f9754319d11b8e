using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Tests.Plants;
using static FarmTwin.Farm.Tests.PublishedTable;

namespace FarmTwin.Farm.Tests.Validation;

/// <summary>Growth, uptake, fruit, seed.</summary>
internal static class PlantCases
{
    public static CaseList All()
    {
        var list = new CaseList("Plants");
        Leaves(list);
        Nutrients(list);
        Fruit(list);
        return list;
    }

    private static void Leaves(CaseList list)
    {
        Case(list, "cornell_lettuce", "Lettuce sown 35 d ago, 17 mol/(m2 d), 24/19 °C", "published; spacing from memory",
            () => LettuceScheduleTests.Head(17, 24, 19).FreshShootGrams(Crops.Lettuce));
        Case(list, "basil_light", "Basil, dry mass at DLI 15 over DLI 7, 3 weeks (2.78)", "published", PublishedTrialTests.BasilLight);
        Case(list, "sucrine_light", "Lettuce 'Sucrine', fresh mass at 316 over 181 MJ/m2 (2.26-2.48)", "second hand", PublishedTrialTests.SucrineLight);
        foreach (IReadOnlyDictionary<string, string> row in Read("plants-aquaponic-lettuce").Rows)
        {
            double mean = (Number(row, "low_g") + Number(row, "high_g")) / 2;
            list.Band($"Head of aquaponic lettuce, {row["study"]}: {row["low_g"]}-{row["high_g"]} g, here 0.7-1.4 of their mean", "as named, from public reading notes", "second hand; light inside assumed",
                0.7 * mean, 1.4 * mean, "g", () => PublishedTrialTests.AquaponicHead(row));
        }

        Case(list, "oxygen_spread", "Lettuce in 2.1-16.8 mg/L oxygen: spread of mass (no difference seen)", "published", PublishedTrialTests.OxygenSpread);
        Case(list, "basil_root_temperature", "Basil, fresh mass with roots at 21 over 11 °C", "second hand", PublishedTrialTests.RootTemperature);
        Case(list, "conductivity_spread", "Basil in EC 0.5-4 mS/cm: spread of mass (no difference seen)", "published", PublishedTrialTests.ConductivitySpread);
        Case(list, "light_bound", "Fresh lettuce by mole of light over the finishing fortnight, never above the best report", "abstract",
            () => (LettuceScheduleTests.Head(17, 24, 19).FreshShootGrams(Crops.Lettuce) - LettuceScheduleTests.Head(17, 24, 19, last: 21).FreshShootGrams(Crops.Lettuce)) * 38 / (17 * 14));
        list.Near("Pond area for 960 heads a day, 10 d at 81/m2 and 14 d at 28/m2", "Rutgers, floating hydroponics for lettuce", "published", 598, 3, "m2",
            () => (Succession.Standing(960 * 7, 10) / 81) + (Succession.Standing(960 * 7, 14) / 28));
        list.Near("Residence of 28.93 plants a day in 810 places", "Little's law", "own calculation", 28, 0.01, "d", () => Succession.ResidenceDays(810, 28.93 * 7));
    }

    private static void Nutrients(CaseList list)
    {
        Case(list, "ammonium_half", "Lettuce with 10 mM ammonium nitrate over that without, beside 11 mM nitrate", "abstract, ambiguous", PublishedTrialTests.AmmoniumHalf);
        list.Rows("plants-critical-nitrogen", "Tei et al. 2002; Conversa & Elia 2019", "abstract; lettuce demands from memory", "kg N/ha", r => $"Critical nitrogen uptake, {r["crop"]}, {r["tonnes_per_ha"]} t/ha", "uptake_kg_ha",
            r => Number(r, "uptake_kg_ha") * Number(r, "tolerance"), r => 10 * Number(r, "tonnes_per_ha") * Stress.CriticalNitrogenPercent(Number(r, "a"), Number(r, "b"), Number(r, "tonnes_per_ha")));
        list.Rows("plants-nitrate-uptake", "Swiader & Freiji 1996", "abstract", "-", r => $"Nitrate uptake at {r["nitrate"]} µmol/L over the greatest", "share", _ => 0.005, r => Uptake.Saturation(Number(r, "nitrate"), 9.5), Standing.Arithmetic);
        list.Band("Least nitrate that lettuce still takes up", "Swiader & Freiji 1996", "abstract", 0.42, 0.85, "µmol/L", () => Crops.Common.NitrateMinimumMilligramsNPerLitre / 14.007 * 1000, Standing.Calibrated);
        const string Nozzi = "Nozzi et al. 2018: 4.0, 4.9, 6.1 kg/m2 against 5.65 in solution";
        const string Basis = "second hand; concentrations assumed: order only";
        list.Band("Lettuce in fish water with iron over fish water alone (1.2): more", Nozzi, Basis, 1.05, double.PositiveInfinity, "-", () => NutrientTests.Nozzi().Iron / NutrientTests.Nozzi().FishWater);
        list.Band("Lettuce with potassium and phosphorus too, over iron alone (1.25): more", Nozzi, Basis, 1.02, double.PositiveInfinity, "-", () => NutrientTests.Nozzi().All / NutrientTests.Nozzi().Iron);
        list.Gap("Lettuce in supplemented fish water over mineral solution", "Delaide et al. 2016", "second hand", 1.39, 0.14, "-",
            () => PublishedTrialTests.Trial(Crops.Lettuce, Crops.Rich with { TanMilligramsNPerLitre = 1 }) / PublishedTrialTests.Trial(Crops.Lettuce, Crops.Rich),
            "Whatever in fish water speeds growth beyond its nutrients is not in the twin: reports span 0.65-1.39 of solution culture, and no bonus is granted.");
    }

    private static void Fruit(CaseList list)
    {
        var cucumber = new Lazy<FruitingStand>(FruitingTests.TropicalCucumber);
        var tomato = new Lazy<(ElementGrams Taken, double Fresh)>(FruitingTests.SwissTomato);
        FruitCase(list, "uvi_cucumber_first_pick", "Cucumber in the tropics, first pick", "abstract; light assumed", () => cucumber.Value.FirstPickDay);
        FruitCase(list, "uvi_cucumber_yield", "Cucumber in the tropics, yield", "abstract; light assumed", () => cucumber.Value.PickedKilogramsPerSquareMetre);
        FruitCase(list, "graber_junge_nitrogen", "Tomato, nitrogen in a kilogram of fruit", "second hand; light assumed", () => tomato.Value.Taken.Nitrogen / tomato.Value.Fresh);
        FruitCase(list, "graber_junge_phosphorus", "Tomato, phosphorus in a kilogram of fruit", "second hand; light assumed", () => tomato.Value.Taken.Phosphorus / tomato.Value.Fresh);
        FruitCase(list, "graber_junge_potassium", "Tomato, potassium in a kilogram of fruit", "second hand; light assumed", () => tomato.Value.Taken.Potassium / tomato.Value.Fresh);
        FruitCase(list, "graber_junge_fruit_nitrogen", "Tomato, nitrogen removed with fruit", "second hand; light assumed", () => tomato.Value.Taken.Nitrogen / 67);
        const string Order = "Yang & Kim 2020: tomato takes a greater share than basil and lettuce";
        const string Areas = "abstract: order only, areas and densities not seen";
        list.Band("Nitrogen of tomato over 90 d over that of basil in the same days, by area: more", Order, Areas, 1, double.PositiveInfinity, "-",
            () => FruitingTests.StandNitrogen() / (3 * LeafNitrogen(Crops.Basil)));
        list.BandGap("Nitrogen of tomato over 90 d over that of lettuce in the same days, by area: more", Order, Areas, 1, double.PositiveInfinity, "-",
            () => FruitingTests.StandNitrogen() / (3 * LeafNitrogen(Crops.Lettuce)),
            "Lettuce planted anew at final spacing every 30 d closes its canopy sooner than tomato at 2.5/m2. Whether their lettuce stood so densely is not known.");
        FruitCase(list, "suhl_yield", "Tomato, yield of a season", "second hand; light assumed", FruitingTests.BerlinTomato);
    }

    /// <summary>Nitrogen that a square metre of a leafy crop takes up in 30 d from a young plant, g.</summary>
    private static double LeafNitrogen(CropParameters crop)
    {
        PlantLot lot = PublishedTrialTests.Well(crop, 0.1, 25, 25);
        double before = lot.Elements.Nitrogen;
        Crops.Grow(lot, crop, Crops.Day(crop, 15, 14, 22, 18), Crops.Rich, Crops.Common, 30);
        return lot.Elements.Nitrogen - before;
    }

    private static void Case(CaseList list, string name, string claim, string basis, Func<double> value)
    {
        IReadOnlyDictionary<string, string> row = Read("plants-cases").Rows.Single(r => r["case"] == name);
        list.Span("plants-cases", "case", name, claim, row["source"], basis, row["unit"], value, row["calibrated"] == "yes" ? Standing.Calibrated : Standing.Test);
    }

    private static void FruitCase(CaseList list, string name, string claim, string basis, Func<double> value)
    {
        IReadOnlyDictionary<string, string> row = Read("plants-fruiting").Rows.Single(r => r["case"] == name);
        list.Span("plants-fruiting", "case", name, claim, row["source"], basis, row["unit"], value, row["kind"] == "calibrated" ? Standing.Calibrated : Standing.Test);
    }
}
