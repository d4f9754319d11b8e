using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

public sealed class PublishedTrialTests
{
    [Fact]
    public void Calibrated_basil_gains_from_light_as_Walters_and_Currey_saw() => Crops.InBand("basil_light", BasilLight());

    internal static double BasilLight()
    {
        double Dry(double dli)
        {
            PlantLot lot = Well(Crops.Basil, 0.05, 25);
            Crops.Grow(lot, Crops.Basil, Crops.Day(Crops.Basil, dli, 16, 24, 20), Crops.Rich, Crops.Research, 21);
            return lot.DryGrams;
        }

        return Dry(15) / Dry(7);
    }

    [Fact]
    public void Calibrated_Sucrine_gains_from_sun_as_Delaide_saw() => Crops.InBand("sucrine_light", SucrineLight());

    internal static double SucrineLight()
    {
        // 15-day seedlings, 21 days in the system, a transmission of 0.7 (not published), 25 plants/m2.
        double Fresh(double megajoules)
        {
            PlantLot lot = Crops.Seedlings(Crops.Lettuce);
            Crops.Grow(lot, Crops.Lettuce, Crops.Day(Crops.Lettuce, 8.64, 16, 22, 19), Crops.Rich, Crops.Common, 13);
            Crops.Space(lot, 25);
            DayLight day = Crops.Day(Crops.Lettuce, megajoules / 21 * 0.7 * 2.06, 14, 23, 18);
            Crops.Grow(lot, Crops.Lettuce, day, Crops.Rich, Crops.Common, 21);
            return lot.FreshShootGrams(Crops.Lettuce);
        }

        return Fresh(316.21) / Fresh(180.94);
    }

    [Fact]
    public void Aquaponic_lettuce_lies_within_the_published_bracket()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("plants-aquaponic-lettuce").Rows)
        {
            double grams = AquaponicHead(row);
            double ratio = grams / ((PublishedTable.Number(row, "low_g") + PublishedTable.Number(row, "high_g")) / 2);
            Assert.True(ratio is >= 0.7 and <= 1.4, $"{row["study"]}: {grams:F0} g, ratio {ratio:F2}");
        }
    }

    internal static double AquaponicHead(IReadOnlyDictionary<string, string> row)
    {
        double Of(string column) => PublishedTable.Number(row, column);
        CropParameters crop = Crops.Lettuce with { DryMatterContent = Of("dry_matter") };
        PlantLot lot = Crops.Seedlings(crop, density: 1550);
        Crops.Grow(lot, crop, Crops.Day(crop, 10, 16, 22, 19), Crops.Rich, Crops.Common, 12);
        Crops.Space(lot, 97);
        Crops.Grow(lot, crop, Crops.Day(crop, Of("assumed_dli"), 14, 24, 18), Crops.Rich, Crops.Common, (int)Of("start_age_days") - 14);
        Crops.Space(lot, Of("plants_per_m2"));
        Crops.Grow(lot, crop, Crops.Day(crop, Of("assumed_dli"), 14, 24, 18), Crops.Rich, Crops.Common, (int)Of("days"));
        return lot.FreshShootGrams(crop);
    }

    [Fact]
    public void Roots_do_not_mind_oxygen_from_2_to_17_milligrams()
    {
        Crops.InBand("oxygen_spread", OxygenSpread());
        Assert.True(InOxygen(1) < 0.6 * InOxygen(2.1));
    }

    internal static double OxygenSpread()
    {
        double[] masses = [.. new[] { 2.1, 4.2, 8.4, 16.8 }.Select(InOxygen)];
        return (masses.Max() - masses.Min()) / masses.Max();
    }

    private static double InOxygen(double milligrams) => Trial(Crops.Lettuce, Crops.Rich with { OxygenMilligramsPerLitre = milligrams });

    [Fact]
    public void Calibrated_basil_in_trout_water_yields_less() => Crops.InBand("basil_root_temperature", RootTemperature());

    internal static double RootTemperature() =>
        Trial(Crops.Basil, Crops.Rich with { TemperatureCelsius = 21 }) / Trial(Crops.Basil, Crops.Rich with { TemperatureCelsius = 11 });

    [Fact]
    public void Conductivity_of_a_balanced_solution_does_not_drive_basil() => Crops.InBand("conductivity_spread", ConductivitySpread());

    internal static double ConductivitySpread()
    {
        double[] masses = [.. new[] { 0.5, 1, 2, 3, 4 }.Select(ec => Trial(Crops.Basil, Hoagland(ec)))];
        return (masses.Max() - masses.Min()) / masses.Max();
    }

    [Fact]
    public void Calibrated_ammonium_halves_lettuce_step_by_step()
    {
        double[] masses = [.. new[] { 0, 2.5, 5, 7.5, 10 }.Select(InAmmoniumNitrate)];
        for (int i = 1; i < masses.Length; i++)
        {
            Assert.True(masses[i] < masses[i - 1]);
        }

        Crops.InBand("ammonium_half", AmmoniumHalf());
    }

    internal static double AmmoniumHalf() => InAmmoniumNitrate(10) / InAmmoniumNitrate(0);

    private static double InAmmoniumNitrate(double millimoles) => Trial(Crops.Lettuce, Crops.Rich with
    {
        NitrateMilligramsNPerLitre = (11 + millimoles) * 14.007,
        TanMilligramsNPerLitre = millimoles * 14.007,
    });

    [Fact]
    public void Ammonium_of_fish_water_costs_nothing()
    {
        double plain = Trial(Crops.Lettuce, Crops.Rich with { NitrateMilligramsNPerLitre = 40 });
        double fish = Trial(Crops.Lettuce, Crops.Rich with { NitrateMilligramsNPerLitre = 40, TanMilligramsNPerLitre = 1 });
        Assert.Equal(plain, fish, plain * 1e-6);
    }

    internal static RootZone Hoagland(double ec) => new(
        24, 8, ec, 6, 210 * ec / 2, 0, 31 * ec / 2, 235 * ec / 2, 200 * ec / 2, 48 * ec / 2, 64 * ec / 2, 2.5 * ec / 2);

    /// <summary>Four weeks at 25 plants/m2 from young plants in moderate light; returns dry mass.</summary>
    internal static double Trial(CropParameters crop, RootZone root, int days = 28)
    {
        PlantLot lot = Well(crop, 0.1, 25);
        Crops.Grow(lot, crop, Crops.Day(crop, 15, 16, 23, 19), root, Crops.Common, days);
        return lot.DryGrams;
    }

    internal static PlantLot Well(CropParameters crop, double grams, double density, double plants = 1)
    {
        PlantLot lot = Crops.Seedlings(crop, plants, density);
        lot.GramsDryPerPlant = grams;
        lot.Pools = crop.TissueGramsPerGramDry * lot.DryGrams;
        lot.PotentialGainGrams = lot.DryGrams * 0.3;
        return lot;
    }
}
