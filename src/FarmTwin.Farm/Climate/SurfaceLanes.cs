using System.Runtime.Intrinsics;

namespace FarmTwin.Farm.Climate;

/// <summary>As <see cref="SurfaceExchange"/>, of a square metre of four waters side by side.</summary>
internal readonly struct SurfaceLanes(
    Vector256<double> evaporation, Vector256<double> slope, Vector256<double> latent, Vector256<double> convective, Vector256<double> radiative)
{
    /// <summary>kg/(m2 h).</summary>
    public readonly Vector256<double> Evaporation = evaporation;

    /// <summary>Of the whole loss by the water's temperature, W/(m2 K).</summary>
    public readonly Vector256<double> Slope = slope;

    /// <summary>W/m2.</summary>
    public readonly Vector256<double> Latent = latent;

    /// <summary>W/m2.</summary>
    public readonly Vector256<double> Convective = convective;

    /// <summary>W/m2.</summary>
    public readonly Vector256<double> Radiative = radiative;
}
