using CsCheck;
using FarmTwin.Farm.Biofilter;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Biofilter;

public sealed class FilmTests
{
    private const NitrifierPopulation A = NitrifierPopulation.AmmoniaOxidizers;
    private const NitrifierPopulation B = NitrifierPopulation.NitriteOxidizers;

    private static readonly NitrificationParameters Shipped = NitrificationParameters.From(ParameterLibrary.Load("processes", "nitrification"));

    private static NitrificationParameters Parameters => StartUpTank.Parameters;

    [Fact]
    public void The_pH_factor_follows_Ekama()
    {
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-ph-factor").Rows)
        {
            Assert.Equal(PublishedTable.Number(row, "factor"), FilmResponse.Acidity(Parameters, PublishedTable.Number(row, "ph")), 0.005);
        }
    }

    [Fact]
    public void The_pH_factor_never_reaches_zero_on_either_curve()
    {
        NitrificationParameters line = Parameters with { AcidityResponse = AcidityResponse.EnvironmentalProtectionAgencyLine };
        foreach (double pH in (double[])[3, 5.9, 9.5, 9.8, 11])
        {
            Assert.True(FilmResponse.Acidity(Parameters, pH) >= 0.01);
            Assert.True(FilmResponse.Acidity(line, pH) >= 0.01);
        }

        Assert.Equal(1 - (0.833 * 0.7), FilmResponse.Acidity(line, 6.5), 1e-12);
    }

    [Fact]
    public void Ammonia_oxidizers_grow_two_and_a_half_times_faster_at_30_than_at_20()
    {
        Assert.Equal(2.51, FilmResponse.Temperature(Parameters, A, 30) / FilmResponse.Temperature(Parameters, A, 20), 0.01);
        Assert.Equal(FilmResponse.Temperature(Parameters, A, 32) / 2, FilmResponse.Temperature(Parameters, A, 37), 1e-12);
        Assert.Equal(0, FilmResponse.Temperature(Parameters, B, 45));
    }

    [Fact]
    public void The_growth_factors_give_the_rate_of_Activated_Sludge_Model_1()
    {
        // Henze et al. 1987: µ 0.5 1/d, K_NH 1, K_O 0.4 at 2 mg/L of each: 0.278 1/d. Behind no transfer resistance the flux is Monod's.
        double capacity = 0.5 * FilmResponse.Oxygen(0.4, 2);
        Assert.Equal(0.278, FilmFlux.BestGramsPerSquareMetreDay(1e9, capacity, 1, 2), 0.0014);
    }

    [Fact]
    public void Without_transfer_resistance_a_mixed_reactor_settles_where_Monod_theory_says()
    {
        // K 0.57, q 1.7, Y 0.33, b 0.082, retention 20 d: K(1 + bθ)/(θ(Yq − b) − 1) = 0.175 mg/L; washout at 2.09 d.
        Assert.Equal(0.175, MixedReactor(), 0.00175);
    }

    internal static double MixedReactor()
    {
        const double half = 0.57, q = 1.7, yield = 0.33, decay = 0.082, retention = 20, inflow = 30, dt = 0.002;
        double nitrogen = inflow, cells = 1;
        for (int i = 0; i < 600 / dt; i++)
        {
            double rate = FilmFlux.BestGramsPerSquareMetreDay(1e9, q * cells, half, nitrogen);
            nitrogen += dt * (((inflow - nitrogen) / retention) - rate);
            cells += dt * ((yield * rate) - (cells * (decay + (1 / retention))));
        }

        return nitrogen;
    }

    [Fact]
    public void A_mature_film_gains_four_percent_a_degree_while_ammonia_limits_it()
    {
        // Zhu & Chen 2002: 4.275 %/°C measured; nothing here is fitted to it.
        double percent = PercentPerDegree();
        Assert.InRange(percent, 3, 6);
        Assert.Equal(4.275, percent, 0.3);
    }

    /// <summary>Gain of the flux by a degree at 20 °C, %, of the film which 0.5 mg N/L keeps there.</summary>
    internal static double PercentPerDegree()
    {
        double xA = 0.2, xB = 0.1;
        for (int hour = 0; hour < 24 * 400; hour++)
        {
            double steady = FluxAt(20, xA, 0.5);
            FilmGrowth.Advance(Parameters, ref xA, ref xB, steady, steady, 20, 1);
        }

        return 100 * Math.Log(FluxAt(20.5, xA, 0.5) / FluxAt(19.5, xA, 0.5));
    }

    [Fact]
    public void An_oxygen_limited_film_gains_one_percent_a_degree()
    {
        double ratio = FilmFlux.OxygenCapGramsPerSquareMetreDay(Parameters, 21, 1) / FilmFlux.OxygenCapGramsPerSquareMetreDay(Parameters, 20, 1);
        Assert.Equal(1.108, 100 * Math.Log(ratio), 0.02);
    }

    [Fact]
    public void Oxygen_rules_the_flux_when_it_is_less_than_three_and_a_half_times_the_ammonia()
    {
        // The most that transfer can bring is k_L S; the cap meets it at DO/S = 4.33/1.23.
        double cap = FilmFlux.OxygenCapGramsPerSquareMetreDay(Parameters, 20, 3.52);
        Assert.Equal(Parameters.TransferVelocityMetresPerDay, cap, 0.005);
        Assert.Equal(cap, FilmFlux.FluxGramsPerSquareMetreDay(Parameters, A, 100, 50, cap));
    }

    [Fact]
    public void Stoichiometry_agrees_with_the_published_equations()
    {
        var values = new Dictionary<string, double>
        {
            ["oxygen"] = NitrificationStoichiometry.OxygenPerNitrogen(Parameters),
            ["alkalinity"] = NitrificationStoichiometry.AlkalinityPerNitrogen,
            ["cells"] = NitrificationStoichiometry.CellsPerNitrogen(Parameters),
            ["cellsEbeling"] = NitrificationStoichiometry.CellsPerNitrogen(Parameters),
        };
        foreach (IReadOnlyDictionary<string, string> row in PublishedTable.Read("filter-stoichiometry").Rows)
        {
            double expected = PublishedTable.Number(row, "value");
            Assert.Equal(expected, values[row["quantity"]], expected * PublishedTable.Number(row, "tolerance"));
        }

        Assert.Equal(3.25, NitrificationStoichiometry.OxygenPerAmmoniaNitrogen(Parameters), 0.01);
        Assert.Equal(1.08, NitrificationStoichiometry.OxygenPerNitriteNitrogen(Parameters), 0.01);
        Assert.Equal(2.86, NitrificationStoichiometry.CodPerDenitrifiedNitrogen, 0.01);
    }

    [Fact]
    public void Ammonifying_and_nitrifying_100_mg_costs_357_mg_of_alkalinity_and_denitrifying_50_mg_returns_179()
    {
        double net = 100 * (NitrificationStoichiometry.AlkalinityReturnedPerNitrogen - NitrificationStoichiometry.AlkalinityPerNitrogen);
        Assert.Equal(-357, net, 3.57);
        Assert.Equal(179, 50 * NitrificationStoichiometry.AlkalinityReturnedPerNitrogen, 1.79);
    }

    [Fact]
    public void Organic_carbon_at_the_weight_of_ammonia_takes_seventy_percent()
    {
        Assert.Equal(1, HeterotrophCompetition.Factor(Parameters, 0));
        Assert.InRange(1 - HeterotrophCompetition.Factor(Parameters, 1), 0.6, 0.8);
        Assert.Equal(HeterotrophCompetition.Factor(Parameters, 1), HeterotrophCompetition.Factor(Parameters, 4));
    }

    [Fact]
    public void Alkalinity_limits_only_ammonia_oxidizers_and_only_when_it_is_nearly_gone()
    {
        Assert.Equal(5.0 / 6, FilmResponse.Alkalinity(Shipped, A, 25), 1e-12);
        Assert.Equal(1, FilmResponse.Alkalinity(Shipped, B, 0));
        Assert.Equal(0, FilmResponse.Alkalinity(Shipped, A, -1));
    }

    [Fact]
    public void Flux_lies_below_capacity_and_below_transfer_and_rises_with_concentration()
    {
        (from s in Gen.Double[0, 200] from capacity in Gen.Double[0, 5] from more in Gen.Double[0, 5] select (s, capacity, more)).Sample(t =>
        {
            double flux = FilmFlux.FluxGramsPerSquareMetreDay(Parameters, A, t.capacity, t.s);
            double conductance = FilmFlux.ConductanceLitresPerHourPerSquareMetre(Parameters, A, t.capacity, t.s);
            return flux >= 0
                && flux <= (t.capacity * (1 + 1e-12)) && flux <= (Parameters.TransferVelocityMetresPerDay * t.s * (1 + 1e-12))
                && FilmFlux.FluxGramsPerSquareMetreDay(Parameters, A, t.capacity, t.s + t.more) >= flux - 1e-12
                && Math.Abs((conductance * t.s * 24 / 1000) - flux) <= 1e-12 * (1 + flux);
        });
    }

    [Fact]
    public void Conductance_has_a_finite_limit_without_nitrogen_and_without_oxygen()
    {
        double expected = 0.8 / (0.5 + (0.8 / 0.43)) * 1000 / 24;
        Assert.Equal(expected, FilmFlux.ConductanceLitresPerHourPerSquareMetre(Parameters, A, 0.8, 0), 1e-9);
        double[] ratios = [.. ((double[])[0, 1e-12, 1e-6, 1e-3]).Select(OxygenConductanceAt)];
        Assert.All(ratios, r => Assert.InRange(r / ratios[2], 0.99, 1.01));
    }

    [Fact]
    public void Best_law_solves_the_balance_of_transfer_and_uptake()
    {
        (from s in Gen.Double[1e-9, 100] from capacity in Gen.Double[1e-9, 5] select (s, capacity)).Sample(t =>
        {
            double flux = FilmFlux.BestGramsPerSquareMetreDay(0.43, t.capacity, 0.5, t.s);
            double surface = t.s - (flux / 0.43);
            return Math.Abs(flux - (t.capacity * surface / (0.5 + surface))) < 1e-9 * t.capacity;
        });
    }

    [Fact]
    public void Film_growth_is_exact_over_any_step_and_stays_between_floor_and_full()
    {
        (from flux in Gen.Double[0, 3] from share in Gen.Double[0, 1] from t in Gen.Double[5, 35] select (flux, share, t)).Sample(c =>
        {
            Film film = FilmGrowth.AtShare(Parameters, c.share, c.share);
            double xA = film.AmmoniaOxidizersGramsCodPerSquareMetre, xB = film.NitriteOxidizersGramsCodPerSquareMetre, yA = xA, yB = xB;
            FilmGrowth.Advance(Parameters, ref xA, ref xB, c.flux, c.flux, c.t, 240);
            for (int i = 0; i < 240; i++)
            {
                FilmGrowth.Advance(Parameters, ref yA, ref yB, c.flux, c.flux, c.t, 1);
            }

            double full = Parameters.AmmoniaOxidizers.MaximumBiomassGramsCodPerSquareMetre;
            return Math.Abs(xA - yA) < 1e-12 && Math.Abs(xB - yB) < 1e-12 && xA <= full && xA >= full * Parameters.FloorShare;
        });
    }

    [Fact]
    public void Stripping_and_seeding_account_for_every_gram()
    {
        Film film = FilmGrowth.AtShare(Parameters, 0.6, 0.4);
        double xA = film.AmmoniaOxidizersGramsCodPerSquareMetre, xB = film.NitriteOxidizersGramsCodPerSquareMetre;
        double stripped = FilmGrowth.Strip(Parameters, ref xA, ref xB, 0.1);
        Assert.Equal(0.1 * film.TotalGramsCodPerSquareMetre, stripped, 1e-12);
        Assert.Equal(film.TotalGramsCodPerSquareMetre, stripped + xA + xB, 1e-12);
        FilmGrowth.Seed(Parameters, ref xA, ref xB, 1);
        FilmGrowth.Seed(Parameters, ref xA, ref xB, 1);
        Assert.Equal(Parameters.AmmoniaOxidizers.MaximumBiomassGramsCodPerSquareMetre, xA);
        FilmGrowth.Strip(Parameters, ref xA, ref xB, 1);
        Assert.Equal(Parameters.FloorShare * Parameters.NitriteOxidizers.MaximumBiomassGramsCodPerSquareMetre, xB, 1e-15);
    }

    [Fact]
    public void The_kernels_allocate_nothing()
    {
        var conditions = new FilmConditions(25, 7.2, 6, 0.01, 80);
        double xA = 0.2, xB = 0.05;

        // The first use reads the library; that is not the kernels'.
        FilmGrowth.Strip(Shipped, ref xA, ref xB, 0);
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            double capacity = FilmFlux.CapacityGramsPerSquareMetreDay(Shipped, A, xA, conditions);
            double cap = FilmFlux.OxygenCapGramsPerSquareMetreDay(Shipped, 25, 6);
            double flux = FilmFlux.ConductanceLitresPerHourPerSquareMetre(Shipped, A, capacity, 0.5, cap) * 0.5 * 24 / 1000;
            FilmGrowth.Advance(Shipped, ref xA, ref xB, flux, flux, 25, 1);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Packed_spheres_have_the_published_surface()
    {
        // 1 mm microbeads at void share 0.344: 3936 m²/m³ (Timmons, Holder & Ebeling).
        Assert.Equal(3936, SurfaceMedium.OfSpheresSquareMetresPerCubicMetre(0.001, 0.344), 1.0);
        SurfaceMedium beads = SurfaceMedium.From(ParameterLibrary.Load("media", "beads-3mm"));
        Assert.Equal(115, beads.PackedAreaSquareMetres(100), 1e-9);
    }

    [Fact]
    public void Every_medium_of_the_library_can_be_read_and_has_a_surface()
    {
        Assert.Equal(["beads-3mm", "expanded-clay", "gravel", "raft", "roots", "wall"], ParameterLibrary.Names("media"));
        foreach (string name in ParameterLibrary.Names("media"))
        {
            SurfaceMedium medium = SurfaceMedium.From(ParameterLibrary.Load("media", name));
            Assert.True(medium.PackedAreaSquareMetres(1000) + medium.FlatAreaSquareMetres(1) > 0, name);
        }
    }

    private static double OxygenConductanceAt(double oxygen)
    {
        var conditions = new FilmConditions(25, 7.2, oxygen, 0, 100);
        double fluxA = FilmFlux.FluxGramsPerSquareMetreDay(
            Parameters, A, FilmFlux.CapacityGramsPerSquareMetreDay(Parameters, A, 0.2, conditions), 1, FilmFlux.OxygenCapGramsPerSquareMetreDay(Parameters, 25, oxygen));
        double fluxB = FilmFlux.FluxGramsPerSquareMetreDay(Parameters, B, FilmFlux.CapacityGramsPerSquareMetreDay(Parameters, B, 0.05, conditions), 1);
        return FilmFlux.OxygenConductanceLitresPerHourPerSquareMetre(Parameters, fluxA, fluxB, oxygen);
    }

    private static double FluxAt(double celsius, double biomass, double tan)
    {
        var conditions = new FilmConditions(celsius, 7.2, 6, 0, 100);
        return FilmFlux.FluxGramsPerSquareMetreDay(
            Parameters, A, FilmFlux.CapacityGramsPerSquareMetreDay(Parameters, A, biomass, conditions), tan);
    }
}
