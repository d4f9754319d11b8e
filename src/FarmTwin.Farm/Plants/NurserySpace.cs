using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>Places on the tiers of the nursery. Sheets of cells are cut apart, so a place may hold strips of several sowings; a tray of
/// microgreens takes a place of its own.</summary>
public static class NurserySpace
{
    // Strips that fill a tray to the last cell take one place for all that rounding does.
    private const double Rounding = 1e-9;

    /// <summary>Cells of a usual sheet that can still be sown on a tier.</summary>
    public static double FreeCells(GrowingState growing, NurseryDescription nursery, int tier)
    {
        ArgumentNullException.ThrowIfNull(nursery);
        return FreeSquareMetres(growing, nursery, tier) / nursery.TraySquareMetres * nursery.CellsPerTray;
    }

    /// <summary>Area on which seedlings can still be sown on a tier, m².</summary>
    public static double FreeSquareMetres(GrowingState growing, NurseryDescription nursery, int tier)
    {
        ArgumentNullException.ThrowIfNull(nursery);
        return Math.Max(0, ((nursery.TraysPerTier - MicrogreenTrays(growing, tier)) * nursery.TraySquareMetres) - SeedlingSquareMetres(growing, tier));
    }

    /// <summary>Whole places that are free on a tier.</summary>
    public static int FreePlaces(GrowingState growing, NurseryDescription nursery, int tier) =>
        nursery.TraysPerTier - MicrogreenTrays(growing, tier) - SeedlingPlaces(growing, nursery, tier);

    /// <summary>Places that seedlings take on a tier.</summary>
    public static int SeedlingPlaces(GrowingState growing, NurseryDescription nursery, int tier)
    {
        ArgumentNullException.ThrowIfNull(nursery);
        return (int)Math.Ceiling((SeedlingSquareMetres(growing, tier) / nursery.TraySquareMetres) - Rounding);
    }

    /// <summary>Trays of microgreens on a tier.</summary>
    public static int MicrogreenTrays(GrowingState growing, int tier)
    {
        ArgumentNullException.ThrowIfNull(growing);
        int trays = 0;
        foreach (MicrogreenTrays sowing in growing.Nursery.Microgreens)
        {
            trays += sowing.Tier == tier ? sowing.Trays : 0;
        }

        return trays;
    }

    private static double SeedlingSquareMetres(GrowingState growing, int tier)
    {
        ArgumentNullException.ThrowIfNull(growing);
        double area = 0;
        foreach (NurseryTray tray in growing.Trays)
        {
            area += tray.Tier == tier ? tray.AreaSquareMetres : 0;
        }

        return area;
    }
}
