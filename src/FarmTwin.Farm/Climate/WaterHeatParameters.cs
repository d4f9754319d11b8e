using FarmTwin.Farm.Library;

namespace FarmTwin.Farm.Climate;

/// <summary>Heat transfer of water bodies beside their open surface, and of exchangers.</summary>
/// <param name="BubbledActivity">Multiplies evaporation and convection of an aerated surface.</param>
/// <param name="RaftCoverShare">Share of a raft lane's surface under rafts.</param>
/// <param name="RaftWattsPerSquareMetreKelvin">Through a raft, W/(m2 K).</param>
/// <param name="BareWallWattsPerSquareMetreKelvin">Through a bare tank wall indoors, W/(m2 K).</param>
/// <param name="FoamedWallWattsPerSquareMetreKelvin">Through a tank wall with 25 mm of foam, W/(m2 K).</param>
/// <param name="ThickFoamedWallWattsPerSquareMetreKelvin">Through a tank wall with 50 mm of foam, W/(m2 K).</param>
/// <param name="BottomWattsPerSquareMetreKelvin">Through a trough's floor on soil, W/(m2 K).</param>
/// <param name="FoamedBottomWattsPerSquareMetreKelvin">Through a trough's floor on 50 mm of foam, W/(m2 K).</param>
/// <param name="MetalCoilWattsPerSquareMetreKelvin">Immersed stainless or titanium coil, W/(m2 K).</param>
/// <param name="PlasticTubeWattsPerSquareMetreKelvin">Immersed plastic tube, W/(m2 K).</param>
/// <param name="PlateWattsPerSquareMetreKelvin">Plate exchanger, W/(m2 K).</param>
public sealed record WaterHeatParameters(
    double BubbledActivity,
    double RaftCoverShare,
    double RaftWattsPerSquareMetreKelvin,
    double BareWallWattsPerSquareMetreKelvin,
    double FoamedWallWattsPerSquareMetreKelvin,
    double ThickFoamedWallWattsPerSquareMetreKelvin,
    double BottomWattsPerSquareMetreKelvin,
    double FoamedBottomWattsPerSquareMetreKelvin,
    double MetalCoilWattsPerSquareMetreKelvin,
    double PlasticTubeWattsPerSquareMetreKelvin,
    double PlateWattsPerSquareMetreKelvin)
{
    /// <summary>Reads the parameters from the set <c>processes/climate</c>.</summary>
    /// <param name="set">The set.</param>
    /// <exception cref="KeyNotFoundException">A parameter is missing.</exception>
    /// <exception cref="ArgumentException">A parameter has another unit.</exception>
    public static WaterHeatParameters From(ParameterSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return new WaterHeatParameters(
            set.Get("bubbledActivity", "1"),
            set.Get("raftCoverShare", "1"),
            set.Get("raft", "W/m2K"),
            set.Get("bareWall", "W/m2K"),
            set.Get("foamedWall", "W/m2K"),
            set.Get("thickFoamedWall", "W/m2K"),
            set.Get("bottom", "W/m2K"),
            set.Get("foamedBottom", "W/m2K"),
            set.Get("metalCoil", "W/m2K"),
            set.Get("plasticTube", "W/m2K"),
            set.Get("plate", "W/m2K"));
    }
}
