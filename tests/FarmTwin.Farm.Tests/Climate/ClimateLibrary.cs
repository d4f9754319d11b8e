using FarmTwin.Farm.Climate;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Climate;

/// <summary>The shipped parameters, and the example site with its assumed normals.</summary>
internal static class ClimateLibrary
{
    public static readonly ClimateParameters Parameters =
        ClimateParameters.From(ParameterLibrary.Load("processes", "climate"));

    public static readonly WeatherSite Site = new(40.1, -76.3, 120, -5);

    // Assumed, of the order of public climate normals of south-eastern Pennsylvania.
    public static readonly MonthlyNormals Normals = new(
        [3.5, 5.2, 10.4, 17.0, 22.4, 27.2, 29.6, 28.6, 24.8, 18.5, 12.0, 5.9],
        [-6.2, -5.3, -1.4, 4.0, 9.5, 14.8, 17.4, 16.5, 12.4, 5.8, 0.9, -3.5],
        [5.8, 5.9, 6.4, 6.0, 5.0, 4.0, 3.4, 3.4, 4.3, 5.1, 5.6, 5.6],
        [5.7, 5.5, 4.8, 4.5, 4.2, 3.6, 2.9, 3.2, 4.5, 4.9, 4.8, 5.2],
        [7.2, 10.2, 14.0, 17.6, 20.3, 22.2, 21.7, 19.2, 15.6, 11.5, 7.9, 6.3],
        [0.33, 0.32, 0.34, 0.37, 0.39, 0.35, 0.33, 0.31, 0.29, 0.28, 0.30, 0.33],
        [3.6, 3.7, 3.8, 3.7, 3.0, 2.6, 2.3, 2.2, 2.4, 2.8, 3.3, 3.4]);

    public static CoverParameters Cover(string name) => CoverParameters.From(ParameterLibrary.Load("covers", name));

    public static FuelProperties Fuel(string name) => FuelProperties.From(ParameterLibrary.Load("fuels", name));

    /// <summary>The example house: 9 x 21 m, 2.4 m at the sides, 4.4 m at the ridge, twin-wall all round.</summary>
    public static HouseParameters House()
    {
        CoverParameters cover = Cover("twin-wall-polycarbonate-8mm");
        return HouseParameters.Gable(new HouseShape(21, 9, 2.4, 4.4), cover, cover, 120, true, Parameters.House) with
        {
            HasThermalScreen = true,
            HeaterCapacityWatts = 35000,
            HeaterSetPointCelsius = 10,
        };
    }
}
