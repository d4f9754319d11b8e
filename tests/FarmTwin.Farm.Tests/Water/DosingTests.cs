using FarmTwin.Farm.Library;
using FarmTwin.Farm.Water;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Water;

public sealed class DosingTests
{
    private static readonly Ions PlantLoop = WaterLibrary.Millimolar(k: 0.6, tan: 0.07, cl: 0.07);

    [Fact]
    public void Base_equivalents_follow_the_dosing_table()
    {
        foreach (var row in PublishedTable.Read("water-base-equivalents").Rows)
        {
            Supplement pure = WaterLibrary.Pure(row["supplement"]);
            double perEquivalent = 1000 / pure.AlkalinityEquivalentsPerKilogram;
            Near(row, "grams_per_equivalent", perEquivalent);
            Near(row, "grams_caco3_per_gram", UnitConstants.GramsCalciumCarbonatePerEquivalent / perEquivalent);
            Near(row, "grams_per_m3", BaseDose.GramsForRise(pure, 1, 1000));
            double litres = 1000 * UnitConstants.LitresPerUsGallon;
            double grams = BaseDose.GramsForRise(pure, 10, litres);
            Near(row, "grams_per_1000_gal", grams);
            double content = row["element"] switch
            {
                "K" => pure.PotassiumGramsPerKilogram,
                "Ca" => pure.CalciumGramsPerKilogram,
                "Mg" => pure.MagnesiumGramsPerKilogram,
                _ => pure.SodiumGramsPerKilogram,
            };
            Near(row, "element_mg", grams * content / litres);
            Near(row, "carbon_mm", grams * pure.InorganicCarbonMolesPerKilogram / litres);
        }
    }

    [Fact]
    public void Twenty_milligrams_in_a_thousand_gallons_take_151_g_bicarbonate_or_56_g_lime()
    {
        double litres = 1000 * UnitConstants.LitresPerUsGallon;
        Assert.Equal(151, BaseDose.GramsForRise(WaterLibrary.Pure("potassium-bicarbonate"), 20, litres), 0.005 * 151);
        Assert.Equal(56, BaseDose.GramsForRise(WaterLibrary.Pure("calcium-hydroxide"), 20, litres), 0.005 * 56);
        Assert.Equal(15.6, 151 * 0.390504 / litres * 1000, 0.1);
    }

    [Fact]
    public void An_impure_product_takes_more_of_itself()
    {
        double pure = BaseDose.GramsForRise(WaterLibrary.Pure("potassium-hydroxide"), 10, 1000);
        Assert.Equal(pure / 0.88, BaseDose.GramsForRise(WaterLibrary.Product("potassium-hydroxide"), 10, 1000), 1e-9);
    }

    [Fact]
    public void A_neutral_salt_or_an_acid_is_no_base()
    {
        Assert.Throws<ArgumentException>(() => BaseDose.GramsForRise(WaterLibrary.Product("potassium-chloride"), 10, 1000));
        Assert.Throws<ArgumentException>(() => BaseDose.GramsForRise(WaterLibrary.Product("nitric-acid"), 10, 1000));
        Assert.True(BaseDose.GramsForRise(WaterLibrary.Product("nitric-acid"), -10, 1000) > 0);
    }

    [Fact]
    public void Hydroxide_in_weak_water_makes_ammonia_toxic_and_bicarbonate_does_not()
    {
        Supplement hydroxide = WaterLibrary.Product("potassium-hydroxide");
        Supplement bicarbonate = WaterLibrary.Product("potassium-bicarbonate");
        DosePrediction lethal = BaseDose.Predict(in PlantLoop, 0.75e-3, 22, 1000, hydroxide, BaseDose.GramsForRise(hydroxide, 20, 1000), WaterLibrary.Dosing);
        DosePrediction safe = BaseDose.Predict(in PlantLoop, 0.75e-3, 22, 1000, bicarbonate, BaseDose.GramsForRise(bicarbonate, 20, 1000), WaterLibrary.Dosing);
        double tan = 0.07 * UnitConstants.AtomicWeight.Nitrogen;
        Assert.Equal(6.96, lethal.PHBefore, 0.02);
        Assert.True(lethal.PH > 9.5, $"pH {lethal.PH}");
        Assert.True(lethal.UnionizedAmmoniaMilligramsNPerLitreBefore < 0.005 * tan);
        Assert.True(lethal.UnionizedAmmoniaMilligramsNPerLitre > 0.5 * tan);
        Assert.False(lethal.KeepsHydroxideLimit);
        Assert.True(safe.PH < 7.3);
        Assert.True(safe.KeepsHydroxideLimit);
        Assert.Equal(lethal.AlkalinityMilligramsCalciumCarbonatePerLitre, safe.AlkalinityMilligramsCalciumCarbonatePerLitre, 1e-9);
    }

    [Theory]
    [InlineData("potassium-hydroxide")]
    [InlineData("calcium-hydroxide")]
    [InlineData("potassium-carbonate")]
    public void The_largest_dose_allowed_keeps_pH_below_eight(string name)
    {
        // Half of the free carbon dioxide left: pH rises by log of (more bicarbonate over half the gas), under half a unit here.
        Supplement product = WaterLibrary.Product(name);
        var constants = CarbonateConstants.At(22);
        double gas = CarbonateSystem.Solve(0.6e-3, 0.75e-3, 0, 0, in constants, 0.6e-3, 7).CarbonDioxideMolesPerLitre;
        double grams = BaseDose.LargestGrams(product, gas, 1000, WaterLibrary.Dosing);
        DosePrediction prediction = BaseDose.Predict(in PlantLoop, 0.75e-3, 22, 1000, product, 0.999 * grams, WaterLibrary.Dosing);
        Assert.True(prediction.KeepsHydroxideLimit);
        Assert.InRange(prediction.PH - prediction.PHBefore, 0.1, 0.5);
    }

    [Theory]
    [InlineData("potassium-bicarbonate", false, false)]
    [InlineData("potassium-hydroxide", true, false)]
    [InlineData("calcium-hydroxide", true, false)]
    [InlineData("magnesium-hydroxide", true, true)]
    [InlineData("calcium-carbonate", false, true)]
    public void Hydroxides_and_slow_solids_are_marked(string name, bool hydroxide, bool slow)
    {
        Supplement product = WaterLibrary.Product(name);
        Assert.Equal(hydroxide, product.IsHydroxide);
        Assert.Equal(slow, product.DissolvesSlowly);
        if (hydroxide)
        {
            Assert.Equal(product.AlkalinityEquivalentsPerKilogram, product.HydroxideEquivalentsPerKilogram, 1e-4);
        }
    }

    [Fact]
    public void Neutral_salts_carry_no_alkalinity_and_acids_carry_their_equivalents()
    {
        foreach (string name in ParameterLibrary.Names("supplements"))
        {
            Supplement pure = WaterLibrary.Pure(name);
            double expected = name switch
            {
                "potassium-bicarbonate" => 1000 / 100.114,
                "potassium-carbonate" => 2000 / 138.204,
                "potassium-hydroxide" => 1000 / 56.105,
                "calcium-hydroxide" => 2000 / 74.092,
                "calcium-carbonate" => 2000 / 100.086,
                "magnesium-hydroxide" => 2000 / 58.319,
                "sodium-bicarbonate" => 1000 / 84.006,
                "nitric-acid" => -1000 / 63.012,
                "phosphoric-acid" => -1000 / 97.994,
                "iron-eddha" => 60 / 55.845,
                "iron-dtpa" => 110 / 55.845,
                _ => 0,
            };
            Assert.True(Math.Abs(pure.AlkalinityEquivalentsPerKilogram - expected) < 2e-5, $"{name}: {pure.AlkalinityEquivalentsPerKilogram} for {expected}");
        }
    }

    [Theory]
    [InlineData("ammonium-chloride", 14.007 / 53.489)]
    [InlineData("potassium-nitrate", 14.007 / 101.102)]
    [InlineData("calcium-nitrate", 28.014 / 236.144)]
    public void Nitrogen_of_a_salt_is_that_of_its_formula(string name, double share)
    {
        Supplement pure = WaterLibrary.Pure(name);
        Assert.Equal(1000 * share, pure.TanGramsNPerKilogram + pure.NitrateGramsNPerKilogram, 0.01);
    }

    [Fact]
    public void The_bridging_mix_has_the_modified_Sonneveld_proportions_a_tenth_ammonium_and_closed_charge()
    {
        Supplement mix = WaterLibrary.Product("bridging-mix");
        double nitrogen = mix.TanGramsNPerKilogram + mix.NitrateGramsNPerKilogram;
        double perMilligram = nitrogen / 150;
        Assert.Equal(31 * perMilligram, mix.PhosphorusGramsPerKilogram, 1e-4);
        Assert.Equal(210 * perMilligram, mix.PotassiumGramsPerKilogram, 1e-4);
        Assert.Equal(90 * perMilligram, mix.CalciumGramsPerKilogram, 1e-4);
        Assert.Equal(24 * perMilligram, mix.MagnesiumGramsPerKilogram, 1e-4);
        Assert.Equal(1 * perMilligram, mix.IronGramsPerKilogram, 1e-4);
        Assert.InRange(mix.TanGramsNPerKilogram / nitrogen, 0.08, 0.12);
        Assert.Equal(0, mix.AlkalinityEquivalentsPerKilogram, 2e-6);
    }

    [Fact]
    public void The_bridging_mix_is_the_sum_of_shipped_salts()
    {
        // mg/L of each pure salt at full strength, iron chelate at 6 %.
        (string Name, double Milligrams)[] recipe =
        [
            ("calcium-nitrate", 530.2944), ("potassium-nitrate", 527.4339), ("monoammonium-phosphate", 115.1216),
            ("magnesium-sulfate", 243.3731), ("potassium-sulfate", 13.4408), ("iron-eddha", 16.6667),
        ];
        Supplement mix = WaterLibrary.Product("bridging-mix");
        double total = recipe.Sum(r => r.Milligrams);
        double Share(Func<Supplement, double> content) => recipe.Sum(r => r.Milligrams * content(WaterLibrary.Pure(r.Name))) / total;
        Assert.Equal(Share(s => s.TanGramsNPerKilogram), mix.TanGramsNPerKilogram, 1e-3);
        Assert.Equal(Share(s => s.NitrateGramsNPerKilogram), mix.NitrateGramsNPerKilogram, 1e-3);
        Assert.Equal(Share(s => s.PhosphorusGramsPerKilogram), mix.PhosphorusGramsPerKilogram, 1e-3);
        Assert.Equal(Share(s => s.PotassiumGramsPerKilogram), mix.PotassiumGramsPerKilogram, 1e-3);
        Assert.Equal(Share(s => s.CalciumGramsPerKilogram), mix.CalciumGramsPerKilogram, 1e-3);
        Assert.Equal(Share(s => s.MagnesiumGramsPerKilogram), mix.MagnesiumGramsPerKilogram, 1e-3);
        Assert.Equal(Share(s => s.SulfateGramsSPerKilogram), mix.SulfateGramsSPerKilogram, 1e-3);
        Assert.Equal(Share(s => s.IronGramsPerKilogram), mix.IronGramsPerKilogram, 1e-3);
    }

    [Fact]
    public void A_supplement_with_a_misspelled_content_is_refused()
    {
        ParameterSet set = new("odd", "Odd", [Purity(), Purity() with { Name = "potasium", Unit = "g/kg" }]);
        Assert.Contains("potasium", Assert.Throws<ArgumentException>(() => Supplement.From(set)).Message, StringComparison.Ordinal);
    }

    private static Parameter Purity() => new("purity", 1, "1", 0, 1, "none", Basis.Assumed, "Purity.");

    private static void Near(IReadOnlyDictionary<string, string> row, string column, double value)
    {
        string digits = row[column];
        int point = digits.IndexOf('.');
        double unit = point < 0 ? 1 : Math.Pow(10, -(digits.Length - point - 1));
        Assert.True(Math.Abs(value - PublishedTable.Number(row, column)) <= 0.51 * unit, $"{row["supplement"]}, {column}: {value} for {digits}");
    }
}
