using CsCheck;
using FarmTwin.Farm.Solids;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Solids;

public sealed class SolidsTests
{
    private static readonly SolidsParameters Parameters = SolidsParameters.From(ParameterLibrary.Load("processes", "solids"));

    private static double FreshDegradable => Parameters.FreshDegradableGramsPerGram;

    [Fact]
    public void A_batch_loses_volatile_solids_and_nitrogen_as_the_first_order_law_says()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-hydrolysis-batch").Rows)
        {
            if (row["volatileDestroyed"].Length == 0)
            {
                continue;
            }

            double dry = 10, degradable = 10 * FreshDegradable, nitrogen = 0.4;
            int hours = (int)PublishedTable.Number(row, "day") * 24;
            for (int i = 0; i < hours; i++)
            {
                Step(ref dry, ref degradable, ref nitrogen, Element.Nitrogen, 25, 1);
            }

            Assert.Equal(PublishedTable.Number(row, "volatileDestroyed"), 10 - dry, 0.01 * PublishedTable.Number(row, "volatileDestroyed"));
            Assert.Equal(PublishedTable.Number(row, "nitrogenReleased"), 1000 * (0.4 - nitrogen), 0.01 * PublishedTable.Number(row, "nitrogenReleased"));
        }
    }

    [Fact]
    public void Smolt_sludge_calibrated_releases_its_nitrogen_as_measured()
    {
        // Rate and plateau are fitted to these three points, so this checks the integration, not the model.
        double dry = 1, degradable = FreshDegradable, soluble = 181;
        double nitrogen = (908 - 181) / Parameters.MobileShares[Element.Nitrogen];
        double held = nitrogen;
        SolidsParameters fitted = Parameters with { HydrolysisRatePerDay = 0.175 };
        double rate = Hydrolysis.RatePerHour(fitted, 20, 6);
        int day = 0;
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-solids-digestion").Rows)
        {
            for (; day < PublishedTable.Number(row, "day"); day++)
            {
                for (int hour = 0; hour < 24; hour++)
                {
                    double q = Hydrolysis.RemainingShare(fitted, dry, degradable);
                    held -= Hydrolysis.ReleasedGrams(fitted, Element.Nitrogen, held, q, rate, 7, 1);
                    double destroyed = Hydrolysis.DestroyedGrams(degradable, rate, 1);
                    dry -= destroyed;
                    degradable -= destroyed;
                }
            }

            double expected = PublishedTable.Number(row, "solubleNitrogen");
            Assert.Equal(expected, soluble + nitrogen - held, 0.02 * expected);
        }
    }

    [Fact]
    public void Trout_manure_gives_back_at_most_its_mobile_part_and_the_balance_of_each_element_closes()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-trout-manure").Rows)
        {
            int element = (int)PublishedTable.Number(row, "element");
            double original = PublishedTable.Number(row, "gramsPerKilogram"), held = original, dissolved = 0, dry = 1000, degradable = 1000 * FreshDegradable;
            for (int i = 0; i < 24 * 60; i++)
            {
                double rate = Hydrolysis.RatePerHour(Parameters, 25, 6);
                double q = Hydrolysis.RemainingShare(Parameters, dry, degradable);
                double released = Hydrolysis.IsFast(element)
                    ? Hydrolysis.LeachedGrams(Parameters, element, held, original, 1)
                    : Hydrolysis.ReleasedGrams(Parameters, element, held, q, rate, 6.5, 1);
                held -= released;
                dissolved += released;
                double destroyed = Hydrolysis.DestroyedGrams(degradable, rate, 1);
                dry -= destroyed;
                degradable -= destroyed;
            }

            Assert.Equal(original, held + dissolved, 1e-12 * original * 1440);
            Assert.Equal(Hydrolysis.FreshMobileShare(Parameters, element, 6.5), dissolved / original, 0.001);
        }
    }

    [Fact]
    public void The_mobile_share_is_exact_for_mixtures_of_ages()
    {
        (from young in Gen.Double[0.01, 10] from old in Gen.Double[0.01, 10] from q in Gen.Double[0, 1] select (young, old, q)).Sample(t =>
        {
            double f = Parameters.MobileShares[Element.Magnesium];
            double degradable = FreshDegradable * (t.young + (t.q * t.old));
            double dry = ((1 - FreshDegradable) * (t.young + t.old)) + degradable;
            double content = t.young + (t.old * (1 - f + (f * t.q)));
            double mobile = content * Hydrolysis.MobileShare(Parameters, Element.Magnesium, Hydrolysis.RemainingShare(Parameters, dry, degradable));
            return Math.Abs(mobile - (f * (t.young + (t.q * t.old)))) < 1e-9 * content
                && Math.Abs(Hydrolysis.OriginalDryMatterGrams(Parameters, dry, degradable) - t.young - t.old) < 1e-9 * dry;
        });
    }

    [Fact]
    public void Release_does_not_depend_on_the_step()
    {
        double dry = 10, degradable = 10 * FreshDegradable, nitrogen = 0.4, dryFine = dry, degradableFine = degradable, nitrogenFine = nitrogen;
        Step(ref dry, ref degradable, ref nitrogen, Element.Nitrogen, 25, 24);
        for (int i = 0; i < 1440; i++)
        {
            Step(ref dryFine, ref degradableFine, ref nitrogenFine, Element.Nitrogen, 25, 1.0 / 60);
        }

        Assert.Equal(nitrogen, nitrogenFine, 1e-12);
        Assert.Equal(dry, dryFine, 1e-10);
    }

    [Fact]
    public void Phosphorus_dissolves_as_the_tank_turns_acid_and_falls_back_when_it_is_limed()
    {
        Assert.Equal(0.475, Hydrolysis.FreshMobileShare(Parameters, Element.Phosphorus, 5.6), 1e-12);
        Assert.Equal(0.575, Hydrolysis.FreshMobileShare(Parameters, Element.Calcium, 5.6), 1e-12);
        double solid = 10, dissolved = 0;
        for (int hour = 0; hour < 24 * 40; hour++)
        {
            double released = Hydrolysis.EquilibriumReleaseGrams(Parameters, Element.Phosphorus, solid, dissolved, 10, hour < 480 ? 5.2 : 7.5, 1);
            solid -= released;
            dissolved += released;
            if (hour == 479)
            {
                Assert.Equal(10 * Hydrolysis.FreshMobileShare(Parameters, Element.Phosphorus, 5.2), dissolved, 0.2);
            }
        }

        Assert.Equal(10 * Hydrolysis.FreshMobileShare(Parameters, Element.Phosphorus, 7.5), dissolved, 0.2);
        Assert.Equal(10, solid + dissolved, 1e-9);
    }

    [Fact]
    public void Potassium_leaches_within_days_and_iron_stays()
    {
        double potassium = 1;
        for (int hour = 0; hour < 48; hour++)
        {
            potassium -= Hydrolysis.LeachedGrams(Parameters, Element.Potassium, potassium, 1, 1);
        }

        Assert.Equal(0.1 + (0.9 * Math.Exp(-1)), potassium, 1e-9);
        Assert.True(Hydrolysis.FreshMobileShare(Parameters, Element.Iron, 7) <= 0.05);
    }

    [Fact]
    public void Hydrolysis_halves_in_under_four_days_at_25_and_runs_at_half_speed_without_oxygen()
    {
        double rate = 24 * Hydrolysis.RatePerHour(Parameters, 25, 6);
        Assert.Equal(3.6, Math.Log(2) / rate, 0.05);
        Assert.Equal(0.5, Hydrolysis.RatePerHour(Parameters, 25, 0) / Hydrolysis.RatePerHour(Parameters, 25, 2), 1e-12);
        Assert.Equal(0.75, Hydrolysis.RatePerHour(Parameters, 25, 0.5) / Hydrolysis.RatePerHour(Parameters, 25, 2), 1e-12);
    }

    [Fact]
    public void The_leached_share_of_a_wash_interval_matches_the_closed_form_and_a_stepped_bed()
    {
        double rate = 24 * Hydrolysis.RatePerHour(Parameters, 25, 6);
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-hydrolysis-batch").Rows)
        {
            if (row["leachedShare"].Length == 0)
            {
                continue;
            }

            double days = PublishedTable.Number(row, "day"), expected = PublishedTable.Number(row, "leachedShare"), held = 0, arrived = 0;
            Assert.Equal(expected, BeadBed.LeachedShare(rate, days), 0.02 * expected);
            for (int minute = 0; minute < days * 1440; minute++)
            {
                held += 1;
                arrived += 1;
                held -= Hydrolysis.DestroyedGrams(held, rate / 24, 1.0 / 60);
            }

            Assert.Equal(expected, 1 - (held / arrived), 0.02 * expected);
        }

        Assert.Equal(BeadBed.LeachedShare(1e-4, 0.9999), BeadBed.LeachedShare(1e-4, 1.0001), 1e-8);
    }

    [Fact]
    public void A_loaded_bed_loses_flow_then_capacity()
    {
        Assert.Equal(0.5, BeadBed.FlowShare(Parameters, 6), 1e-12);
        Assert.Equal(0.75, BeadBed.FlowShare(Parameters, 2), 1e-12);
        Assert.Equal(1, BeadBed.OverdueWashFactor(Parameters, 1.5));
        Assert.Equal(0.75, BeadBed.OverdueWashFactor(Parameters, 2.25), 1e-12);
        Assert.Equal(0.5, BeadBed.OverdueWashFactor(Parameters, 9), 1e-12);
    }

    [Fact]
    public void Suspended_solids_settle_where_production_meets_capture()
    {
        // P/(η Q), weighted over classes: the finest tenth of the solids makes most of what floats (published: fines dominate).
        double coarse = 0, fine = 0;
        for (int i = 0; i < SolidsParameters.ClassCount; i++)
        {
            double steady = Parameters.ClassShares[i] * 150 / (Parameters.CapturePerPass[i] * 24_000);
            coarse += i < 2 ? steady : 0;
            fine += i >= 3 ? steady : 0;
        }

        Assert.True(fine > coarse);
    }

    [Fact]
    public void Stokes_law_gives_the_published_velocity_and_loading()
    {
        Assert.Equal(0.276, Settling.VelocityMetresPerHour(50e-6, 50, 25), 0.002);
        Assert.Equal(1.138e-3, Settling.ViscosityPascalSeconds(15), 0.01e-3);
        double diameter = Settling.CriticalDiameterMetres(0.9, 12, 20, 25);
        Assert.Equal(0.9 / 12, Settling.VelocityMetresPerHour(diameter, 20, 25), 1e-9);

        // After 12 h in 0.9 m fresh solids (excess density 50) above 26 µm are down; light floc (20) only above 41 µm.
        Assert.Equal(26e-6, Settling.CriticalDiameterMetres(0.9, 12, 50, 25), 1e-6);
        Assert.Equal(41e-6, diameter, 1e-6);

        // Davidson & Summerfelt 2005: 0.0031 m³/(s m²) is 4.6 US gallons a minute and square foot.
        double usGallonsPerMinute = 4.6 * UnitConstants.LitresPerUsGallon * 60;
        Assert.Equal(0.0031 * 3600, Settling.SurfaceLoadingMetresPerHour(usGallonsPerMinute, 0.3048 * 0.3048), 0.12);
    }

    private static void Step(ref double dry, ref double degradable, ref double content, int element, double celsius, double hours)
    {
        double rate = Hydrolysis.RatePerHour(Parameters, celsius, 6);
        double q = Hydrolysis.RemainingShare(Parameters, dry, degradable);
        content -= Hydrolysis.ReleasedGrams(Parameters, element, content, q, rate, 7, hours);
        double destroyed = Hydrolysis.DestroyedGrams(degradable, rate, hours);
        dry -= destroyed;
        degradable -= destroyed;
    }
}
