using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

public sealed class NutrientTests
{
    [Fact]
    public void Nitrogen_dilution_follows_the_published_curves()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("plants-critical-nitrogen").Rows)
        {
            double Of(string column) => PublishedTable.Number(row, column);
            double percent = Stress.CriticalNitrogenPercent(Of("a"), Of("b"), Of("tonnes_per_ha"));
            if (row["percent"].Length > 0)
            {
                Assert.Equal(Of("percent"), percent, Of("percent") * Of("tolerance"));
            }

            // 1 % of 1 t/ha is 10 kg/ha.
            Assert.Equal(Of("uptake_kg_ha"), 10 * percent * Of("tonnes_per_ha"), Of("uptake_kg_ha") * Of("tolerance"));
        }
    }

    [Fact]
    public void A_well_fed_seedling_is_not_called_short_of_nitrogen()
    {
        PlantLot lot = Crops.Seedlings(Crops.Lettuce);
        Assert.True(Crops.Lettuce.CriticalNitrogenPercentAtOneTonne / 100 > Crops.Lettuce.TissueGramsPerGramDry.Nitrogen);
        Uptake.PlanDay(lot, Crops.Lettuce, Crops.Common, Crops.Rich);
        lot.Take(lot.Planned);
        Assert.Equal(1, Stress.NutrientIndex(Element.Nitrogen, lot, Crops.Lettuce, Crops.Common), 12);
        Assert.Equal(1, Stress.Nutrients(lot, Crops.Lettuce, Crops.Common, out _), 12);
    }

    [Fact]
    public void Nitrate_uptake_saturates_as_in_Swiader_and_Freiji()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("plants-nitrate-uptake").Rows)
        {
            Assert.Equal(PublishedTable.Number(row, "share"), Uptake.Saturation(PublishedTable.Number(row, "nitrate"), 9.5), 0.005);
        }

        Assert.Equal(0, Uptake.Saturation(0.42, 9.5, 0.42));
        Assert.Equal(0, Uptake.Saturation(0.1, 9.5, 0.42));
        double minimumMicromoles = Crops.Common.NitrateMinimumMilligramsNPerLitre / 14.007 * 1000;
        Assert.InRange(minimumMicromoles, 0.42, 0.85);
    }

    [Fact]
    public void At_its_half_saturation_a_nutrient_just_suffices()
    {
        double full = PublishedTrialTests.Trial(Crops.Lettuce, Crops.Rich);
        Assert.Equal(full, PublishedTrialTests.Trial(Crops.Lettuce, Crops.Rich with { PotassiumMilligramsPerLitre = 5 }), full * 0.03);
        Assert.True(PublishedTrialTests.Trial(Crops.Lettuce, Crops.Rich with { PotassiumMilligramsPerLitre = 1.5 }) < full * 0.9);
    }

    [Fact]
    public void Lettuce_loses_yield_only_well_below_20_milligrams_of_nitrate_nitrogen()
    {
        double full = PublishedTrialTests.Trial(Crops.Lettuce, Crops.Rich);
        double At(double nitrate) => PublishedTrialTests.Trial(Crops.Lettuce, Crops.Rich with { NitrateMilligramsNPerLitre = nitrate }) / full;
        Assert.InRange(At(20), 0.98, 1.001);
        Assert.InRange(At(55), 0.98, 1.001);
        Assert.True(At(1) < 0.83);
        Assert.True(At(0) < At(1));
    }

    [Fact]
    public void Fish_water_alone_then_iron_then_potassium_and_phosphorus_ranks_as_Nozzi_found()
    {
        (double a, double b, double c, double d) = Nozzi();
        Assert.True(a < 0.95 * b && b < 0.98 * d && c >= 0.9 * d, $"{a} {b} {c} {d}");
    }

    /// <summary>Dry mass in fish water alone, with iron, with potassium and phosphorus too, and in a full solution.</summary>
    internal static (double FishWater, double Iron, double All, double Solution) Nozzi()
    {
        // The order is published; the concentrations are assumed, typical of fish water without supplements.
        RootZone fishOnly = Crops.Rich with
        {
            NitrateMilligramsNPerLitre = 40, PhosphorusMilligramsPerLitre = 0.2, PotassiumMilligramsPerLitre = 2.5, AvailableIronMilligramsPerLitre = 0.03,
        };
        RootZone iron = fishOnly with { AvailableIronMilligramsPerLitre = 0.5 };
        RootZone all = iron with { PotassiumMilligramsPerLitre = 60, PhosphorusMilligramsPerLitre = 10 };
        return (PublishedTrialTests.Trial(Crops.Lettuce, fishOnly), PublishedTrialTests.Trial(Crops.Lettuce, iron),
            PublishedTrialTests.Trial(Crops.Lettuce, all), PublishedTrialTests.Trial(Crops.Lettuce, Crops.Rich));
    }

    [Fact]
    public void Ammonium_fills_at_most_its_share_of_the_nitrogen_demand()
    {
        PlantLot lot = PublishedTrialTests.Well(Crops.Lettuce, 1, 38);
        Uptake.PlanDay(lot, Crops.Lettuce, Crops.Common, Crops.Rich with { TanMilligramsNPerLitre = 5 });
        double demand = Uptake.Demand(Element.Nitrogen, lot, Crops.Lettuce);
        Assert.Equal(0.3 * demand, lot.Planned.Ammonium, 12);
        Assert.Equal(demand, lot.Planned.Nitrogen, 12);
        Uptake.PlanDay(lot, Crops.Lettuce, Crops.Common, Crops.Rich with { TanMilligramsNPerLitre = 5, NitrateMilligramsNPerLitre = 0 });
        Assert.Equal(0, lot.Planned.Nitrate);
        Uptake.PlanDay(lot, Crops.Lettuce, Crops.Common, Crops.Rich);
        Assert.Equal(0, lot.Planned.Ammonium);
    }

    [Fact]
    public void A_starved_lot_stops_before_its_pool_is_used_up()
    {
        PlantLot lot = PublishedTrialTests.Well(Crops.Lettuce, 0.1, 38);
        Crops.Grow(lot, Crops.Lettuce, Crops.Day(Crops.Lettuce, 17, 16, 23, 19), new RootZone(22, 8, 0.3, 7, 0, 0, 0, 0, 0, 0, 0, 0), Crops.Research, 60);
        Assert.InRange(lot.LastStress.Nutrient, 0, 0.01);
        Assert.InRange(Stress.NutrientIndex(lot.LastStress.ShortestNutrient, lot, Crops.Lettuce, Crops.Common), 0.3, 0.42);
        Assert.Equal(Crops.Lettuce.TissueGramsPerGramDry * 0.1, lot.Pools);
    }

    [Fact]
    public void A_starved_lot_recovers_when_it_is_fed()
    {
        PlantLot lot = PublishedTrialTests.Well(Crops.Lettuce, 0.1, 38);
        DayLight day = Crops.Day(Crops.Lettuce, 17, 16, 23, 19);
        Crops.Grow(lot, Crops.Lettuce, day, Crops.Rich with { AvailableIronMilligramsPerLitre = 0 }, Crops.Research, 10);
        Assert.Equal(Element.Iron, lot.LastStress.ShortestNutrient);
        Crops.Grow(lot, Crops.Lettuce, day, Crops.Rich, Crops.Research, 7);
        Assert.Equal(1, lot.LastStress.Nutrient, 6);
    }

    [Fact]
    public void Batch_cropping_draws_the_water_lower_than_staggered_cropping()
    {
        // UVI basil: the same feed for both; only the batch crop went deficient. A well-mixed basin of 0.5 m3 per m2 of raft.
        Assert.True(LowestPotassium(stagger: false) < 0.75 * LowestPotassium(stagger: true));
    }

    [Theory]
    [InlineData(IronHolder.Edta, 6.0, 1)]
    [InlineData(IronHolder.Edta, 7.0, 0)]
    [InlineData(IronHolder.Dtpa, 6.5, 1)]
    [InlineData(IronHolder.Dtpa, 7.0, 0.5)]
    [InlineData(IronHolder.Dtpa, 8.0, 0)]
    [InlineData(IronHolder.Eddha, 8.2, 1)]
    public void Only_EDDHA_keeps_iron_available_in_hard_water(IronHolder chelate, double pH, double share) =>
        Assert.Equal(share, Iron.AvailableShare(chelate, 1, pH, Crops.Common), 12);

    [Fact]
    public void Sodium_comes_in_with_the_water_and_leaves_with_the_plant()
    {
        PlantLot lot = Crops.Seedlings(Crops.Lettuce);
        // 10 L of transpired water at 50 mg/L of sodium and 80 of chloride.
        lot.TakePassive(Crops.Common.SodiumUptakeShare * 50 * 10 / 1000, Crops.Common.ChlorideUptakeShare * 80 * 10 / 1000);
        Assert.Equal(0.12 * 50 * 10 / 1000, lot.Pools.Sodium, 12);
        var harvest = new PlantLot();
        lot.MoveInto(harvest, 1);
        Assert.Equal(0.12 * 80 * 10 / 1000, harvest.Pools.Chloride, 12);
        Assert.Equal(default, lot.Pools);
    }

    private static double LowestPotassium(bool stagger)
    {
        const int Beds = 4;
        const int Cycle = 28;
        double litres = Beds * 500;
        double potassium = litres * 30 / 1000;
        var lots = new PlantLot[Beds];
        DayLight day = Crops.Day(Crops.Basil, 18, 14, 27, 24);
        double lowest = double.PositiveInfinity;
        for (int d = 0; d < 20 * Cycle; d++)
        {
            double concentration = potassium / litres * 1000;
            RootZone root = Crops.Rich with { PotassiumMilligramsPerLitre = concentration };
            double wanted = 0;
            for (int b = 0; b < Beds; b++)
            {
                if (lots[b] is null || (d + (stagger ? b * Cycle / Beds : 0)) % Cycle == 0)
                {
                    lots[b] = PublishedTrialTests.Well(Crops.Basil, 0.3, 25, plants: 25);
                }

                Uptake.PlanDay(lots[b], Crops.Basil, Crops.Common, root);
                wanted += lots[b].Planned.Potassium;
            }

            potassium += Beds * 0.19;
            double factor = wanted > potassium ? potassium / wanted : 1;
            for (int b = 0; b < Beds; b++)
            {
                lots[b].Take(lots[b].Planned with { Potassium = lots[b].Planned.Potassium * factor });
                Growth.DailyStep(lots[b], Crops.Basil, day, root, Crops.Common);
            }

            potassium -= wanted * factor;
            lowest = d > 10 * Cycle ? Math.Min(lowest, concentration) : lowest;
        }

        return lowest;
    }
}
