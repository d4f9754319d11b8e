namespace FarmTwin.Farm.Tests.Plants.Reference;

/// <summary>Pieces of reduced TOMGRO (Jones, Kenig and Vallejos 1999, Transactions of the ASAE 42:255–265): test code only, kept for
/// the fruiting crops to compare with.</summary>
internal static class ReducedTomgro
{
    /// <summary>Nodes a day: 0.5 × the temperature factor, 0 at 9 °C, 0.55 at 12, 1 at 28, 0 at 50.</summary>
    public static double NodeRate(double celsius) => 0.5 * celsius switch
    {
        <= 9 => 0,
        <= 12 => 0.55 * (celsius - 9) / 3,
        <= 28 => 0.55 + (0.45 * (celsius - 12) / 16),
        <= 50 => (50 - celsius) / 22,
        _ => 0,
    };

    /// <summary>Leaf area index at a node number: the rate ρ δ λ e^β(N−Nb)/(1 + e^β(N−Nb)) integrated over nodes.</summary>
    public static double LeafArea(double nodes, double plantsPerSquareMetre)
    {
        const double Delta = 0.038;
        const double Beta = 0.169;
        const double Middle = 16;
        return plantsPerSquareMetre * Delta / Beta * Math.Log(1 + Math.Exp(Beta * (nodes - Middle)));
    }

    /// <summary>Gross photosynthesis of the canopy, g CH2O/m²/h.</summary>
    public static double GrossPhotosynthesis(double ppfd, double leafArea, double co2)
    {
        const double Extinction = 0.58;
        const double Transmission = 0.1;
        const double Efficiency = 0.0645;
        double leaf = 0.0693 * co2;
        double top = ((1 - Transmission) * leaf) + (Efficiency * Extinction * ppfd);
        double bottom = ((1 - Transmission) * leaf) + (Efficiency * Extinction * ppfd * Math.Exp(-Extinction * leafArea));
        return 0.108 * leaf / Extinction * Math.Log(top / bottom);
    }

    /// <summary>Maintenance, g/m²/d.</summary>
    public static double Maintenance(double dry, double celsius) => 0.016 * Math.Pow(1.4, (celsius - 20) / 10) * dry;
}
