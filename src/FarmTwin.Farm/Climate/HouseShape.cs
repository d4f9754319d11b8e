namespace FarmTwin.Farm.Climate;

/// <summary>A free-standing house with a gable roof: from its measures to areas and volume.</summary>
/// <param name="LengthMetres">Along the ridge, m.</param>
/// <param name="WidthMetres">Across, m.</param>
/// <param name="SideHeightMetres">Height of the side walls, m.</param>
/// <param name="RidgeHeightMetres">Height of the ridge, m, not below the sides.</param>
public readonly record struct HouseShape(
    double LengthMetres, double WidthMetres, double SideHeightMetres, double RidgeHeightMetres)
{
    /// <summary>Floor area, m2.</summary>
    public double FloorSquareMetres => LengthMetres * WidthMetres;

    /// <summary>Both roof slopes, m2.</summary>
    public double RoofSquareMetres
    {
        get
        {
            double half = WidthMetres / 2;
            double rise = RidgeHeightMetres - SideHeightMetres;
            return 2 * LengthMetres * Math.Sqrt((half * half) + (rise * rise));
        }
    }

    /// <summary>Both side walls, m2.</summary>
    public double SidesSquareMetres => 2 * LengthMetres * SideHeightMetres;

    /// <summary>Both end walls with their gables, m2.</summary>
    public double EndsSquareMetres => WidthMetres * (SideHeightMetres + RidgeHeightMetres);

    /// <summary>Enclosed air, m3.</summary>
    public double VolumeCubicMetres => FloorSquareMetres * 0.5 * (SideHeightMetres + RidgeHeightMetres);

    /// <summary>Length around the floor, m.</summary>
    public double PerimeterMetres => 2 * (LengthMetres + WidthMetres);
}
