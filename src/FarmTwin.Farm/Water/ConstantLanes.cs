using System.Runtime.Intrinsics;
using FarmTwin.Engine.Transport;

namespace FarmTwin.Farm.Water;

/// <summary>The constants of waters with carbonate, as <see cref="CarbonateConstants"/>, of four waters side by side.</summary>
internal readonly struct ConstantLanes
{
    /// <summary>Numbers that four waters' constants take up in an array: six constants and Debye-Hückel's A.</summary>
    public const int Room = 7 * Fours.Width;

    public readonly Vector256<double> K1;
    public readonly Vector256<double> K2;
    public readonly Vector256<double> KWater;
    public readonly Vector256<double> KPhosphate;
    public readonly Vector256<double> KAmmonium;
    public readonly Vector256<double> DebyeHuckel;
    public readonly Vector256<double> KspCalcite;

    /// <summary>Four times the same water.</summary>
    public ConstantLanes(in CarbonateConstants constants)
    {
        K1 = Vector256.Create(constants.K1);
        K2 = Vector256.Create(constants.K2);
        KWater = Vector256.Create(constants.KWater);
        KPhosphate = Vector256.Create(constants.KPhosphate);
        KAmmonium = Vector256.Create(constants.KAmmonium);
        DebyeHuckel = Vector256.Create(constants.DebyeHuckel);
        KspCalcite = Vector256.Create(constants.KspCalcite);
    }

    /// <summary>As <see cref="Put"/> has laid them down.</summary>
    public ConstantLanes(ReadOnlySpan<double> laid)
    {
        K1 = Vector256.Create(laid);
        K2 = Vector256.Create(laid[Fours.Width..]);
        KWater = Vector256.Create(laid[(2 * Fours.Width)..]);
        KPhosphate = Vector256.Create(laid[(3 * Fours.Width)..]);
        KAmmonium = Vector256.Create(laid[(4 * Fours.Width)..]);
        DebyeHuckel = Vector256.Create(laid[(5 * Fours.Width)..]);
        KspCalcite = Vector256.Create(laid[(6 * Fours.Width)..]);
    }

    /// <summary>Lays down the constants of a lane.</summary>
    /// <param name="laid">[<see cref="Room"/>] of the lane's four.</param>
    /// <param name="lane">0 to 3.</param>
    /// <param name="constants">The lane's.</param>
    public static void Put(Span<double> laid, int lane, in CarbonateConstants constants)
    {
        laid = laid.Slice(lane, Room - Fours.Width + 1);
        laid[0] = constants.K1;
        laid[Fours.Width] = constants.K2;
        laid[2 * Fours.Width] = constants.KWater;
        laid[3 * Fours.Width] = constants.KPhosphate;
        laid[4 * Fours.Width] = constants.KAmmonium;
        laid[5 * Fours.Width] = constants.DebyeHuckel;
        laid[6 * Fours.Width] = constants.KspCalcite;
    }
}
