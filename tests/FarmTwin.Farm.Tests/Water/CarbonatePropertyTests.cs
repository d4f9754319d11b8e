using CsCheck;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Tests.Water;

public sealed class CarbonatePropertyTests
{
    private static readonly Gen<(double Alkalinity, double Carbon, double Phosphorus, double Tan, double Celsius, double Guess)> Waters =
        Gen.Select(Gen.Double[-3e-3, 8e-3], Gen.Double[0, 8e-3], Gen.Double[0, 2e-3], Gen.Double[0, 2e-3], Gen.Double[0, 45], Gen.Double[0, 14]);

    [Fact]
    public void Solving_is_the_inverse_of_setting_a_pH()
    {
        Gen.Select(Gen.Double[5.5, 9.5], Gen.Double[2e-4, 8e-3], Gen.Double[0, 1e-3], Gen.Double[0, 1e-3], Gen.Double[0, 45], Gen.Double[2, 12])
            .Sample((pH, alkalinity, phosphorus, tan, celsius, guess) =>
            {
                var constants = CarbonateConstants.At(celsius);
                double carbon = CarbonateSystem.InorganicCarbonForPH(alkalinity, pH, phosphorus, tan, in constants, 0.01);
                return carbon <= 0
                    || Math.Abs(CarbonateSystem.Solve(alkalinity, carbon, phosphorus, tan, in constants, 0.01, guess).PH - pH) < 1e-9;
            }, iter: 2000);
    }

    [Fact]
    public void The_solution_does_not_depend_on_the_guess()
    {
        Waters.Sample(water =>
        {
            var constants = CarbonateConstants.At(water.Celsius);
            double first = Solve(water, water.Carbon, in constants).PH;
            double second = CarbonateSystem.Solve(
                water.Alkalinity, water.Carbon, water.Phosphorus, water.Tan, in constants, 0.01, first + 1e-3).PH;
            return Math.Abs(first - second) < 1e-9;
        }, iter: 2000);
    }

    [Fact]
    public void The_slope_is_the_finite_difference_of_carbon_dioxide_at_fixed_alkalinity()
    {
        Waters.Where(w => w.Carbon > 1e-4).Sample(water =>
        {
            var constants = CarbonateConstants.At(water.Celsius);
            double width = 1e-4 * water.Carbon;
            double above = Solve(water, water.Carbon + width, in constants).CarbonDioxideMolesPerLitre;
            double below = Solve(water, water.Carbon - width, in constants).CarbonDioxideMolesPerLitre;
            double slope = Solve(water, water.Carbon, in constants).SlopeOfCarbonDioxide;
            double difference = (above - below) / (2 * width);

            // 1e-4 wide, the difference itself is good to about that near an end point of the titration.
            return slope is > 0 and <= 1.0000001 && Math.Abs(slope - difference) < 2e-3 * Math.Max(slope, 1e-3);
        }, iter: 2000);
    }

    [Fact]
    public void More_carbon_lowers_pH_and_more_alkalinity_raises_it()
    {
        Waters.Where(w => w.Alkalinity > -2e-3).Sample(water =>
        {
            var constants = CarbonateConstants.At(water.Celsius);
            double pH = Solve(water, water.Carbon, in constants).PH;
            double carbonated = Solve(water, water.Carbon + 1e-4, in constants).PH;
            double dosed = CarbonateSystem.Solve(
                water.Alkalinity + 1e-4, water.Carbon, water.Phosphorus, water.Tan, in constants, 0.01, 7).PH;
            return carbonated <= pH + 1e-12 && (dosed > pH || dosed > 12.49); // the search ends at 12.5
        }, iter: 2000);
    }

    [Fact]
    public void Water_in_equilibrium_with_a_gas_solves_to_that_gas_and_back()
    {
        Gen.Select(Gen.Double[-1e-3, 6e-3], Gen.Double[1e-6, 1e-3], Gen.Double[0, 1e-3], Gen.Double[0, 1e-3])
            .Sample((alkalinity, gas, phosphorus, tan) =>
            {
                var constants = CarbonateConstants.At(24);
                OpenCarbonateState open = CarbonateSystem.SolveOpen(alkalinity, gas, phosphorus, tan, in constants, 0.01);
                CarbonateState closed = CarbonateSystem.Solve(
                    alkalinity, open.InorganicCarbonMolesPerLitre, phosphorus, tan, in constants, 0.01, 7);
                return Math.Abs(closed.PH - open.PH) < 1e-8 && Math.Abs((closed.CarbonDioxideMolesPerLitre / gas) - 1) < 1e-6;
            }, iter: 2000);
    }

    [Fact]
    public void The_species_sum_to_the_carbon_and_agree_with_the_solution()
    {
        Waters.Sample(water =>
        {
            var constants = CarbonateConstants.At(water.Celsius);
            CarbonateState state = Solve(water, water.Carbon, in constants);
            CarbonateSpecies species = CarbonateSpecies.At(water.Carbon, state.PH, in constants, 0.01);
            double sum = species.CarbonDioxideMolesPerLitre + species.BicarbonateMolesPerLitre + species.CarbonateMolesPerLitre;
            return Math.Abs(sum - water.Carbon) < 1e-15
                && Math.Abs(species.CarbonDioxideMolesPerLitre - state.CarbonDioxideMolesPerLitre) < 1e-12;
        }, iter: 2000);
    }

    private static CarbonateState Solve(
        (double Alkalinity, double Carbon, double Phosphorus, double Tan, double Celsius, double Guess) water,
        double carbon, in CarbonateConstants constants) =>
        CarbonateSystem.Solve(water.Alkalinity, carbon, water.Phosphorus, water.Tan, in constants, 0.01, water.Guess);
}
