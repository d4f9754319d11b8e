namespace FarmTwin.Farm.Plants;

/// <summary>What remains of seed sown from stage to stage, and Little's law between them. Pure.</summary>
/// <param name="Germinated">Share of the cells with a seedling.</param>
/// <param name="Kept">Share of the seedlings left after the cull.</param>
/// <param name="Transplanted">Share of those set out that live through the trough.</param>
/// <param name="Grown">Share of those spaced out that are harvested.</param>
/// <param name="Sold">Share of the harvest that can be sold.</param>
public readonly record struct Succession(double Germinated, double Kept, double Transplanted, double Grown, double Sold)
{
    private const double DaysPerWeek = 7;

    // A share worked back and forth must not make one cell more of rounding.
    private const double Rounding = 1e-9;

    /// <summary>Marketable heads a cell sown.</summary>
    public double ToMarket => Germinated * Kept * Transplanted * Grown * Sold;

    /// <summary>Marketable heads a plant set on a board.</summary>
    public double BoardToMarket => Grown * Sold;

    /// <summary>The shares of a crop.</summary>
    /// <param name="crop">The crop.</param>
    /// <param name="bedCelsius">Temperature of the seed bed, °C.</param>
    public static Succession Of(CropParameters crop, double bedCelsius)
    {
        ArgumentNullException.ThrowIfNull(crop);
        return new Succession(
            crop.SeedLotShare * crop.Germination.Share(bedCelsius),
            1 - crop.NurseryCullShare,
            1 - crop.TransplantLossShare,
            1 - crop.GrowingLossShare,
            1 - crop.UnsaleableShare);
    }

    /// <summary>Cells to sow each time for so many marketable heads a week, whole.</summary>
    public int CellsPerSowing(double headsPerWeek, double sowEveryDays) =>
        (int)Math.Ceiling((headsPerWeek / DaysPerWeek * sowEveryDays / ToMarket) - Rounding);

    /// <summary>Boards to harvest and plant a week for so many marketable heads a week.</summary>
    public double BoardsPerWeek(double headsPerWeek, int holesPerBoard) => headsPerWeek / BoardToMarket / holesPerBoard;

    /// <summary>Little's law: plants that stand at a stage.</summary>
    public static double Standing(double plantsPerWeek, double residenceDays) => plantsPerWeek / DaysPerWeek * residenceDays;

    /// <summary>Little's law: days that a plant stays at a stage that is kept full.</summary>
    public static double ResidenceDays(double places, double plantsPerWeek) =>
        plantsPerWeek > 0 ? places / plantsPerWeek * DaysPerWeek : double.PositiveInfinity;
}
