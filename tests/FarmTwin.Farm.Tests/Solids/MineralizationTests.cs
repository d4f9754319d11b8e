using CsCheck;
using FarmTwin.Farm.Solids;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Solids;

public sealed class MineralizationTests
{
    private static readonly SolidsParameters Solids = SolidsParameters.From(ParameterLibrary.Load("processes", "solids"));
    private static readonly MineralizationParameters Parameters = MineralizationParameters.From(ParameterLibrary.Load("processes", "mineralization"));

    [Fact]
    public void Four_grams_a_litre_clear_to_four_fifths_in_twelve_hours()
    {
        // 80 % clear water was reached with flocculant (Water Science and Technology 81:81); the blanket's 20 g/L is assumed.
        Assert.Equal(0.80, MineralizationTank.ClearShare(Parameters, 4, 12), 0.016);
        Assert.Equal(10, MineralizationTank.BlanketGramsPerLitre(Parameters, 2), 1e-12);
        Assert.Equal(25, MineralizationTank.BlanketGramsPerLitre(Parameters, 48), 1e-12);
        Assert.Equal(1, MineralizationTank.BlanketShare(Parameters, 4, 0));
        Assert.Equal(0, MineralizationTank.ClearShare(Parameters, 22, 12), 1e-12);
    }

    [Fact]
    public void The_water_above_clears_with_time_and_never_gains_solids()
    {
        Assert.Equal(4, MineralizationTank.ResidualGramsPerLitre(Parameters, 4, 0), 1e-12);
        Assert.Equal(0.08, MineralizationTank.ResidualGramsPerLitre(Parameters, 4, 24), 0.001);
        Assert.Equal(0.03, MineralizationTank.ResidualGramsPerLitre(Parameters, 0.03, 12), 1e-12);
        Assert.Equal(0.05, MineralizationTank.ResidualGramsPerLitre(Parameters, 1, 100), 1e-9);
    }

    [Fact]
    public void The_decant_leaves_fifteen_centimetres_above_the_blanket()
    {
        // 1000 L on 1 m²: blanket 200 L, clearance 150 L.
        Assert.Equal(650, MineralizationTank.DecantableLitres(Parameters, 1000, 1, 4, 12), 1e-9);
        Assert.Equal(0, MineralizationTank.DecantableLitres(Parameters, 1000, 1, 22, 12));
    }

    [Fact]
    public void The_air_of_a_fresh_batch_must_carry_55_mg_of_oxygen_a_litre_and_hour()
    {
        double demand = MineralizationTank.OxygenDemandMilligramsPerLitreHour(Solids, 10 * Solids.FreshDegradableGramsPerGram, 25);
        Assert.Equal(55, demand, 0.55);
        Assert.InRange(MineralizationTank.MinutesToAnoxia(8, demand), 5, 25);
    }

    [Fact]
    public void A_thick_blanket_loses_two_hundred_milligrams_of_nitrate_within_eight_hours_and_the_water_above_almost_none()
    {
        const double volume = 1000, share = 0.2;
        double capacity = Denitrification.BlanketCapacityMilligramsPerLitreHour(Parameters, 20, 20, 0);
        double blanket = 200, grams = 200, gone = -1;
        for (int hour = 1; hour <= 24; hour++)
        {
            grams -= Denitrification.SettledLossGrams(Parameters, ref blanket, grams, volume, share, capacity, 1);
            gone = gone < 0 && blanket < 1 ? hour : gone;
        }

        Assert.InRange(gone, 7, 9);
        Assert.Equal(0.2 + (0.8 * 0.05), 1 - (grams / 200), 0.015);
    }

    [Fact]
    public void Oxygen_in_the_blanket_stops_the_loss_and_warmth_speeds_it()
    {
        double anoxic = Denitrification.BlanketCapacityMilligramsPerLitreHour(Parameters, 20, 20, 0);
        Assert.True(Denitrification.BlanketCapacityMilligramsPerLitreHour(Parameters, 20, 20, 6) < 0.04 * anoxic);
        Assert.Equal(Math.Pow(1.08, 5), Denitrification.BlanketCapacityMilligramsPerLitreHour(Parameters, 20, 25, 0) / anoxic, 1e-9);
    }

    [Fact]
    public void The_settled_loss_never_exceeds_the_nitrate_and_the_blanket_never_holds_more_than_the_tank()
    {
        (from grams in Gen.Double[0, 500] from blanket in Gen.Double[0, 1000] from share in Gen.Double[0, 1]
         from capacity in Gen.Double[0, 100] from hours in Gen.Double[0.01, 24]
         select (grams, blanket, share, capacity, hours)).Sample(t =>
        {
            double blanket = t.blanket;
            double lost = Denitrification.SettledLossGrams(Parameters, ref blanket, t.grams, 1000, t.share, t.capacity, t.hours);
            return lost >= 0 && lost <= t.grams && blanket >= 0 && blanket * t.share <= (t.grams - lost) * (1 + 1e-9) + 1e-9;
        });
    }

    [Fact]
    public void The_settled_loss_converges_with_the_step()
    {
        double Loss(int steps)
        {
            double blanket = 50, grams = 50;
            for (int i = 0; i < steps; i++)
            {
                grams -= Denitrification.SettledLossGrams(Parameters, ref blanket, grams, 1000, 0.3, 10, 12.0 / steps);
            }

            return 50 - grams;
        }

        Assert.Equal(Loss(12_000), Loss(12), 0.01 * Loss(12_000));
    }

    [Fact]
    public void Background_loss_applies_to_standing_water_alone()
    {
        double coefficient = Denitrification.BackgroundConductanceLitresPerHour(Parameters, 400, 20);
        Assert.Equal(0.03 * 400, coefficient * 24, 1e-9);
        Assert.Equal(0, Denitrification.BackgroundConductanceLitresPerHour(Parameters, 0, 25));
    }

    [Fact]
    public void Sulphide_must_be_expected_after_a_day_without_air_and_sooner_where_warm_and_without_nitrate()
    {
        Assert.Equal(SulphideRisk.None, MineralizationTank.SulphideRisk(Parameters, 10, 0, 25));
        Assert.Equal(SulphideRisk.Watch, MineralizationTank.SulphideRisk(Parameters, 18, 0, 25));
        Assert.Equal(SulphideRisk.Danger, MineralizationTank.SulphideRisk(Parameters, 24.5, 0, 15));
        Assert.Equal(SulphideRisk.Watch, MineralizationTank.SulphideRisk(Parameters, 14, 12, 20));
        Assert.Equal(SulphideRisk.Danger, MineralizationTank.SulphideRisk(Parameters, 14, 12, 28));
    }

    [Fact]
    public void Sludge_rises_only_when_warm_rich_in_nitrate_and_long_still()
    {
        Assert.True(MineralizationTank.SludgeMayRise(Parameters, 5, 150, 25));
        Assert.False(MineralizationTank.SludgeMayRise(Parameters, 5, 150, 18));
        Assert.False(MineralizationTank.SludgeMayRise(Parameters, 1, 150, 25));
        Assert.False(MineralizationTank.SludgeMayRise(Parameters, 5, 10, 25));
    }

    [Fact]
    public void A_decant_names_everything_that_stands_against_it()
    {
        Assert.Equal(DecantRefusals.None, MineralizationTank.Refusals(Parameters, 13, 500, 0.08, 0.5, 0.1, SulphideRisk.Watch));
        Assert.Equal(
            DecantRefusals.NotSettled | DecantRefusals.NoClearWater | DecantRefusals.Turbid | DecantRefusals.TooMuchTan | DecantRefusals.TooMuchNitrite | DecantRefusals.Sulphide,
            MineralizationTank.Refusals(Parameters, 3, 0, 2, 3, 2, SulphideRisk.Danger));
    }

    [Fact]
    public void The_cycle_runs_in_order_and_the_clocks_stand_while_the_air_runs()
    {
        var state = new MineralizationState(MineralizationPhase.Filling, 0, 0, 0, 0, 0);
        state = state.Enter(MineralizationPhase.Aerating, 80).Advance(Parameters, 180, airIsOn: true, 120);
        Assert.Equal(0.5, state.NitrifierShare, 1e-12);
        Assert.False(state.IsStill);
        state = state.Enter(MineralizationPhase.Settling, 120);
        Assert.Equal(120, state.BlanketNitrateMilligramsNPerLitre);
        state = state.Advance(Parameters, 6, airIsOn: false, 30).Advance(Parameters, 6, airIsOn: false, 0.2);
        Assert.Equal((12.0, 6.0, 12.0), (state.AirOffHours, state.NitrateGoneHours, state.HoursInPhase));
        Assert.Equal(0.5, state.NitrifierShare, 1e-12);
        state = state.Enter(MineralizationPhase.Decanting, 100);
        Assert.Equal(0.2, state.BlanketNitrateMilligramsNPerLitre);
        state = state.Enter(MineralizationPhase.Aerating, 90);
        Assert.Equal((0.0, 0.0), (state.AirOffHours, state.NitrateGoneHours));
    }

    [Fact]
    public void The_tank_nitrifies_at_two_milligrams_an_hour_once_developed()
    {
        Assert.Equal(2, MineralizationTank.NitrificationMilligramsPerLitreHour(Parameters, 1, 1, 1), 1e-12);
        Assert.Equal(0.5, MineralizationTank.NitrificationMilligramsPerLitreHour(Parameters, 0.5, 0.5, 1), 1e-12);
    }

    [Fact]
    public void The_kernels_allocate_nothing()
    {
        // The first use reads the library; that is not the kernels'.
        double blanket = 100, sum = BeadBed.FlowShare(Solids, 1) * MineralizationTank.BlanketShare(Parameters, 1, 1);
        var state = new MineralizationState(MineralizationPhase.Settling, 0, 0, 0, 100, 1);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            double share = MineralizationTank.BlanketShare(Parameters, 4, i / 40.0);
            sum += Denitrification.SettledLossGrams(Parameters, ref blanket, 100, 1000, share, 10, 1);
            sum += Hydrolysis.ReleasedGrams(Solids, Element.Nitrogen, 5, 0.5, 0.01, 7, 1);
            sum += Hydrolysis.EquilibriumReleaseGrams(Solids, Element.Calcium, 5, 1, 6, 6, 1);
            state = state.Advance(Parameters, 1, false, blanket);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }
}
