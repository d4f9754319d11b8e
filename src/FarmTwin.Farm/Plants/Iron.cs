using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Plants;

/// <summary>How much of the dissolved iron plants can take at a pH, and how fast it is lost. Pure functions.</summary>
/// <remarks>
/// The pH at which each chelate lets go is a general statement of suppliers; the lines between are our own. What light does to a
/// chelate is after Albano and Miller 1995; it scarcely decays in the dark. See docs/model/iron.md.
/// </remarks>
public static class Iron
{
    private const double LogarithmOfTwo = 0.69314718055994531;
    private const double ReferenceCelsius = 20;

    /// <summary>Share of the iron of a holder that is held in solution, and so available, 0–1.</summary>
    /// <param name="holder">What holds it.</param>
    /// <param name="milligramsPerLitre">Iron of that holder, mg/L: without a chelate water holds only so much, with one its concentration
    /// does not matter.</param>
    /// <param name="pH">pH of the water.</param>
    /// <param name="plants">Parameters.</param>
    public static double AvailableShare(IronHolder holder, double milligramsPerLitre, double pH, PlantParameters plants) => holder switch
    {
        IronHolder.Eddha => plants.EddhaAvailability.At(pH),
        IronHolder.Dtpa => plants.DtpaAvailability.At(pH),
        IronHolder.Edta => plants.EdtaAvailability.At(pH),
        IronHolder.Unchelated => plants.UnchelatedIronHeld.At(pH) is var held && milligramsPerLitre > held
            ? held / milligramsPerLitre
            : 1,
        _ => throw new ArgumentOutOfRangeException(nameof(holder)),
    };

    /// <summary>Iron of a basin that plants can take, whatever holds it, mg/L.</summary>
    public static double AvailableMilligramsPerLitre(Basins basins, int basin, PlantParameters plants)
    {
        ArgumentNullException.ThrowIfNull(basins);
        double sum = 0;
        for (int holder = 0; holder < Substance.IronHolders; holder++)
        {
            double iron = basins.MilligramsPerLitre(basin, Substance.Iron + holder);
            sum += iron > 0 ? iron * AvailableShare((IronHolder)holder, iron, basins.PH[basin], plants) : 0;
        }

        return sum;
    }

    /// <summary>First-order loss in the dark, 1/h: microbes (chelates only), and iron that its holder lets go at this pH falls out.</summary>
    /// <param name="holder">What holds it.</param>
    /// <param name="milligramsPerLitre">Iron of that holder, mg/L.</param>
    /// <param name="pH">pH of the water.</param>
    /// <param name="celsius">Its temperature, °C.</param>
    /// <param name="plants">Parameters.</param>
    public static double DarkLossPerHour(IronHolder holder, double milligramsPerLitre, double pH, double celsius, PlantParameters plants)
    {
        double let = (1 - AvailableShare(holder, milligramsPerLitre, pH, plants)) * Rate(holder == IronHolder.Unchelated
            ? plants.UnchelatedIronHalfLifeDays
            : plants.ReleasedIronHalfLifeDays);
        return holder == IronHolder.Unchelated
            ? let
            : let + (Rate(plants.ChelateDarkHalfLifeDays) * Math.Exp(plants.ChelateWarmthPerKelvin * (celsius - ReferenceCelsius)));
    }

    /// <summary>Loss to light, m²/mol of photons that enter the water, for a water of a depth: the deeper, the darker.</summary>
    /// <param name="holder">What holds it.</param>
    /// <param name="depthMetres">Mean depth of the basin, above 0.</param>
    /// <param name="plants">Parameters.</param>
    public static double LightLossSquareMetresPerMole(IronHolder holder, double depthMetres, PlantParameters plants)
    {
        double reach = plants.BlueLightAttenuationPerMetre * depthMetres;
        return (1 - Math.Exp(-reach)) / reach * holder switch
        {
            IronHolder.Eddha => plants.EddhaPhotolysisSquareMetresPerMole,
            IronHolder.Dtpa => plants.DtpaPhotolysisSquareMetresPerMole,
            IronHolder.Edta => plants.EdtaPhotolysisSquareMetresPerMole,
            _ => 0,
        };
    }

    private static double Rate(double halfLifeDays) => LogarithmOfTwo / (halfLifeDays * UnitConstants.HoursPerDay);
}
