namespace FarmTwin.Farm.Plants;

/// <summary>How much of the chelated iron plants can take at a pH, and how fast the chelate is lost.</summary>
/// <remarks>The pH at which each chelate lets go is a general statement of suppliers; the lines between are our own.</remarks>
public static class Iron
{
    /// <summary>Share of the chelated iron that is available, 0–1.</summary>
    public static double AvailableShare(IronChelate chelate, double pH, PlantParameters plants) => chelate switch
    {
        IronChelate.Edta => plants.EdtaAvailability.At(pH),
        IronChelate.Dtpa => plants.DtpaAvailability.At(pH),
        IronChelate.Eddha => plants.EddhaAvailability.At(pH),
        _ => throw new ArgumentOutOfRangeException(nameof(chelate)),
    };

    /// <summary>First-order loss of chelate to light and microbes, 1/h.</summary>
    public static double LossPerHour(PlantParameters plants) =>
        Math.Log(2) / (plants.ChelateHalfLifeDays * UnitConstants.HoursPerDay);
}
