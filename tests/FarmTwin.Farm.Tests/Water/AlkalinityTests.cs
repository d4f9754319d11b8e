using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

public sealed class AlkalinityTests
{
    private static readonly Ions Water = new(1e-3, 2e-3, 1.5e-3, 5e-4, 1e-3, 3e-3, 1e-5, 4e-4, 2e-4, 3e-4);

    [Fact]
    public void Each_process_changes_alkalinity_by_its_published_equivalents_a_mole()
    {
        // Soetaert et al. 2007, after Wolf-Gladrow et al. 2007.
        Check("nitrification", -2, Water with { TAN = Water.TAN - 1e-4, NitrateN = Water.NitrateN + 1e-4 });
        Check("nitrification to nitrite", -2, Water with { TAN = Water.TAN - 1e-4, NitriteN = Water.NitriteN + 1e-4 });
        Check("denitrification", 1, Water with { NitrateN = Water.NitrateN - 1e-4 });
        Check("ammonia excretion", 1, Water with { TAN = Water.TAN + 1e-4 });
        Check("phosphate excretion", -1, Water with { P = Water.P + 1e-4 });
        Check("nitrate uptake", 1, Water with { NitrateN = Water.NitrateN - 1e-4 });
        Check("ammonium uptake", -1, Water with { TAN = Water.TAN - 1e-4 });
        Check("phosphate uptake", 1, Water with { P = Water.P - 1e-4 });
        Check("potassium uptake", -1, Water with { K = Water.K - 1e-4 });
        Check("calcium uptake", -2, Water with { Ca = Water.Ca - 1e-4 });
        Check("magnesium uptake", -2, Water with { Mg = Water.Mg - 1e-4 });
        Check("sulfate uptake", 2, Water with { SulfateS = Water.SulfateS - 1e-4 });
        Check("calcite dissolution", 2, Water with { Ca = Water.Ca + 1e-4 });
        Check("sodium chloride", 0, Water with { Na = Water.Na + 1e-4, Cl = Water.Cl + 1e-4 });
        Check("calcium phosphate precipitation", -2, Water with { Ca = Water.Ca - 1.5e-4, P = Water.P - 1e-4 });
    }

    [Fact]
    public void Nitrifying_a_plants_daily_ammonia_takes_the_published_alkalinity()
    {
        // 2.35 million US gal a day at 30 mg N/L and 8.34 lb per gallon: 588 lb N and 4198 lb CaCO3 a day.
        double nitrogen = 2.35 * 30 * 8.34;
        double perPound = 2 * UnitConstants.GramsCalciumCarbonatePerEquivalent / UnitConstants.AtomicWeight.Nitrogen;
        Assert.Equal(588, nitrogen, 0.1);
        Assert.Equal(4198, nitrogen * perPound, 4.2);
    }

    [Fact]
    public void From_feed_protein_to_nitrate_the_net_loss_is_one_equivalent()
    {
        Ions excreted = Water with { TAN = Water.TAN + 1e-4 };
        Ions nitrified = excreted with { TAN = Water.TAN, NitrateN = Water.NitrateN + 1e-4 };
        Check("net", -1, nitrified);
    }

    [Fact]
    public void Ionic_strength_without_pH_is_that_of_the_species_below_pH_8_5()
    {
        var constants = CarbonateConstants.At(24);
        foreach (double carbon in new[] { 1.3e-3, 1.5e-3, 2e-3 })
        {
            Ions ions = WaterLibrary.Millimolar(na: 0.5, k: 2, ca: 1.5, mg: 0.5, cl: 0.8, no3: 3, so4: 0.6, p: 0.3, tan: 0.1);
            double alkalinity = Alkalinity.EquivalentsPerLitre(in ions);
            double strength = IonicStrength.MolesPerLitre(in ions);
            double pH = CarbonateSystem.Solve(alkalinity, carbon, ions.P, ions.TAN, in constants, strength, 7).PH;
            CarbonateSpecies species = CarbonateSpecies.At(carbon, pH, in constants, strength);
            double secondary = 1 / (1 + Math.Pow(10, 7.05 - pH));
            double summed = 0.5 * (ions.Na + ions.K + ions.TAN + ions.Cl + ions.NitrateN + (4 * (ions.Ca + ions.Mg + ions.SulfateS))
                + species.BicarbonateMolesPerLitre + (4 * species.CarbonateMolesPerLitre) + (ions.P * (1 + (3 * secondary))));
            Assert.True(pH < 8.5, $"pH {pH}");
            Assert.Equal(summed, strength, 0.03 * summed);
        }
    }

    [Fact]
    public void Carbon_dioxide_exchange_leaves_alkalinity_and_raises_pH()
    {
        // Ions hold no carbon: what is stripped cannot touch alkalinity. Stripping the fish loop raises pH by more than one unit.
        var constants = CarbonateConstants.At(26);
        double before = CarbonateSystem.Solve(1.6e-3, 1.85e-3, 0, 0, in constants, 1.6e-3, 7).PH;
        OpenCarbonateState after = CarbonateSystem.SolveOpen(1.6e-3, constants.KHenry * 420e-6, 0, 0, in constants, 1.6e-3);
        CarbonateSpecies species = CarbonateSpecies.At(after.InorganicCarbonMolesPerLitre, after.PH, in constants, 1.6e-3);
        double gamma = DaviesActivity.Monovalent(1.6e-3, constants.DebyeHuckel);
        double titrated = species.BicarbonateMolesPerLitre + (2 * species.CarbonateMolesPerLitre)
            + (constants.KWater / gamma * Math.Pow(10, after.PH)) - (Math.Pow(10, -after.PH) / gamma);
        Assert.True(after.PH - before > 1);
        Assert.Equal(1.6e-3, titrated, 1e-9);
    }

    private static void Check(string process, double equivalentsPerMole, Ions after)
    {
        double change = (Alkalinity.EquivalentsPerLitre(in after) - Alkalinity.EquivalentsPerLitre(in Water)) / 1e-4;
        Assert.True(Math.Abs(change - equivalentsPerMole) < 1e-9, $"{process}: {change} for {equivalentsPerMole}");
    }
}
