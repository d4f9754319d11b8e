using System.Runtime.Intrinsics;

namespace FarmTwin.Farm.Water;

/// <summary>As <see cref="CarbonateState"/>, of four waters, with the activity of H in place of pH: a step needs no logarithm until its end.</summary>
internal readonly struct CarbonateRoots(
    Vector256<double> hydrogen, Vector256<double> carbonDioxideMolesPerLitre, Vector256<double> slopeOfCarbonDioxide)
{
    public readonly Vector256<double> Hydrogen = hydrogen;
    public readonly Vector256<double> CarbonDioxideMolesPerLitre = carbonDioxideMolesPerLitre;
    public readonly Vector256<double> SlopeOfCarbonDioxide = slopeOfCarbonDioxide;
}
