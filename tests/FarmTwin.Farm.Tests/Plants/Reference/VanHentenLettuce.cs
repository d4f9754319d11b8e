namespace FarmTwin.Farm.Tests.Plants.Reference;

/// <summary>The two-state lettuce model of van Henten (1994), Agricultural Systems 45:55–72, and the one-state form of 2003: test code
/// only, a published neighbour to compare with. States and rates per square metre and second.</summary>
internal sealed class VanHentenLettuce(double boundaryConductance, double stomatalConductance, double rootShare)
{
    public static VanHentenLettuce SetA { get; } = new(0.007, 0.005, 0.07);

    public static VanHentenLettuce SetB { get; } = new(0.004, 0.007, 0.07);

    public double PhotosynthesisMaximum(double light, double celsius, double co2)
    {
        double gamma = 40 * Math.Pow(2, (celsius - 20) / 10);
        double efficiency = 17e-6 * (co2 - gamma) / (co2 + (2 * gamma));
        double carboxylation = (-1.32e-5 * celsius * celsius) + (5.94e-4 * celsius) - 2.64e-3;
        double conductance = 1 / ((1 / boundaryConductance) + (1 / stomatalConductance) + (1 / carboxylation));
        double supply = conductance * 1.83e-3 * (co2 - gamma);
        return efficiency * light * supply / ((efficiency * light) + supply);
    }

    public (double Nonstructural, double Structural, double Photosynthesis, double Respiration) Rates(
        double nonstructural, double structural, double light, double celsius, double co2)
    {
        double growth = 5e-6 * nonstructural / (structural + nonstructural) * Math.Pow(1.6, (celsius - 20) / 10);
        double respiration = ((3.47e-7 * (1 - rootShare)) + (1.16e-7 * rootShare)) * structural * Math.Pow(2, (celsius - 25) / 10);
        double photosynthesis = PhotosynthesisMaximum(light, celsius, co2) * (1 - Math.Exp(-0.9 * 0.075 * (1 - rootShare) * structural));
        double gain = growth * structural;
        return ((0.68 * photosynthesis) - gain - respiration - ((1 - 0.8) / 0.8 * gain), gain, photosynthesis, respiration);
    }

    /// <summary>The days of the worked season: 100 W/m² for 14 h, 22/16 °C.</summary>
    public (double Nonstructural, double Structural) Season(double nonstructural, double structural, int days) =>
        Season(nonstructural, structural, days, 100, 14, 22, 16);

    /// <summary>Square-wave days with Runge–Kutta of fourth order at ten minutes.</summary>
    public (double Nonstructural, double Structural) Season(
        double nonstructural, double structural, int days, double litWatts, int litHours, double litCelsius, double darkCelsius)
    {
        const double Step = 600;
        double n = nonstructural;
        double s = structural;
        for (int i = 0; i < days * 144; i++)
        {
            bool lit = i % 144 < litHours * 6;
            double light = lit ? litWatts : 0;
            double celsius = lit ? litCelsius : darkCelsius;
            var k1 = Rates(n, s, light, celsius, 400);
            var k2 = Rates(n + (Step / 2 * k1.Nonstructural), s + (Step / 2 * k1.Structural), light, celsius, 400);
            var k3 = Rates(n + (Step / 2 * k2.Nonstructural), s + (Step / 2 * k2.Structural), light, celsius, 400);
            var k4 = Rates(n + (Step * k3.Nonstructural), s + (Step * k3.Structural), light, celsius, 400);
            n += Step / 6 * (k1.Nonstructural + (2 * k2.Nonstructural) + (2 * k3.Nonstructural) + k4.Nonstructural);
            s += Step / 6 * (k1.Structural + (2 * k2.Structural) + (2 * k3.Structural) + k4.Structural);
        }

        return (n, s);
    }

    public static double OneState(double dry, double outdoorRadiation, double celsius, double co2)
    {
        double conductance = (-5.11e-6 * celsius * celsius) + (2.3e-4 * celsius) - 6.29e-4;
        double supply = conductance * (co2 - 5.2e-5);
        double light = 3.55e-9 * outdoorRadiation;
        double photosynthesis = (1 - Math.Exp(-53 * dry)) * light * supply / (light + supply);
        return (0.544 * photosynthesis) - (2.65e-7 * dry * Math.Pow(2, (0.1 * celsius) - 2.5));
    }
}
