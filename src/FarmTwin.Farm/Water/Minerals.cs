using System.Runtime.Intrinsics;

namespace FarmTwin.Farm.Water;

/// <summary>Rates at which calcium carbonate dissolves and calcium phosphate falls out or dissolves again, as first-order terms.</summary>
/// <remarks>
/// Both are driven by saturation; how calcite grows as scale: <see cref="CalciteKinetics"/>. Amorphous calcium phosphate, Ca3(PO4)2, takes 1.5 Ca a P and 2 equivalents of alkalinity a P in the ion form.
/// Rates are assumed; the form is Plummer, Wigley and Parkhurst 1978 and Meyer and Eanes 1978 (from memory of the sources, not
/// re-read). See docs/model/water-minerals.md.
/// </remarks>
public static class Minerals
{
    /// <summary>Calcium taken with each phosphorus in Ca3(PO4)2, mol/mol.</summary>
    public const double CalciumPerPhosphorus = 1.5;

    /// <summary>Ions in a formula unit of calcium phosphate, three of calcium and two of phosphate.</summary>
    public const int CalciumPhosphateIons = 5;

    /// <summary>Third dissociation of phosphoric acid at 25 °C, -log10 (PHREEQC data base).</summary>
    private const double PhosphatePKa3 = 12.346;
    private static readonly double PhosphateK3 = Math.Pow(10, -PhosphatePKa3);

    /// <summary>Rate at which a store of calcium carbonate dissolves, 1/h: zero at and above saturation.</summary>
    /// <param name="calciteSaturationIndex">From <see cref="CarbonateSystem.CalciteSaturationIndex"/>; minus infinity is
    /// allowed.</param>
    /// <param name="parameters">Parameters.</param>
    public static double CalciteDissolutionPerHour(double calciteSaturationIndex, MineralParameters parameters) =>
        CalciteDissolutionAtRatioPerHour(Math.Exp(CarbonateConstants.LogarithmOfTen * calciteSaturationIndex), parameters);

    /// <summary>The same by the saturation ratio Ω.</summary>
    internal static double CalciteDissolutionAtRatioPerHour(double saturationRatio, MineralParameters parameters) =>
        parameters.CalciteDissolutionPerDay / UnitConstants.HoursPerDay * Math.Max(0, 1 - saturationRatio);

    /// <summary>log10 of the ion product of amorphous calcium phosphate over its value at saturation.</summary>
    /// <param name="calciumMolesPerLitre">mol/L; zero gives minus infinity.</param>
    /// <param name="phosphorusMolesPerLitre">Dissolved phosphate, mol/L; zero gives minus infinity.</param>
    /// <param name="pH">pH as a meter reads it.</param>
    /// <param name="constants">Constants at the water's temperature.</param>
    /// <param name="ionicStrength">mol/L.</param>
    /// <param name="parameters">Parameters.</param>
    public static double CalciumPhosphateSaturationIndex(double calciumMolesPerLitre, double phosphorusMolesPerLitre, double pH,
        in CarbonateConstants constants, double ionicStrength, MineralParameters parameters) =>
        Math.Log10(CalciumPhosphateActivityProduct(
            Vector256.Create(calciumMolesPerLitre),
            Vector256.Create(phosphorusMolesPerLitre),
            Vector256.Create(CarbonateSystem.HydrogenOf(pH)),
            new EffectiveLanes(new ConstantLanes(in constants), Vector256.Create(ionicStrength))).ToScalar()) - parameters.CalciumPhosphateLogSolubility;

    /// <summary>Ion product of amorphous calcium phosphate in four waters, {Ca}³{PO4}².</summary>
    internal static Vector256<double> CalciumPhosphateActivityProduct(
        Vector256<double> calciumMolesPerLitre, Vector256<double> phosphorusMolesPerLitre, Vector256<double> hydrogen, in EffectiveLanes k)
    {
        Vector256<double> inverseSquare = k.InverseGamma1 * k.InverseGamma1;
        Vector256<double> gamma2 = Vector256<double>.One / (inverseSquare * inverseSquare);
        Vector256<double> calcium = gamma2 * calciumMolesPerLitre;

        // HPO4 = PO4 + H; the activity of PO4 itself, so no coefficient of charge three enters.
        Vector256<double> phosphate = gamma2 * phosphorusMolesPerLitre * k.Phosphate * PhosphateK3 / ((hydrogen + k.Phosphate) * hydrogen);
        return calcium * calcium * calcium * phosphate * phosphate;
    }

    /// <summary>Rate at which dissolved phosphate precipitates, 1/h of the phosphate: zero at and below saturation.</summary>
    /// <remarks>With the fifth root of the saturation ratio, since five ions form the solid: k (1 - Ω^(-1/5)).</remarks>
    /// <param name="saturationIndex">From <see cref="CalciumPhosphateSaturationIndex"/>.</param>
    /// <param name="parameters">Parameters.</param>
    public static double CalciumPhosphatePrecipitationPerHour(double saturationIndex, MineralParameters parameters) =>
        saturationIndex > 0
            ? parameters.CalciumPhosphatePerHour * (1 - Math.Exp(-CarbonateConstants.LogarithmOfTen * saturationIndex / CalciumPhosphateIons))
            : 0;
}
