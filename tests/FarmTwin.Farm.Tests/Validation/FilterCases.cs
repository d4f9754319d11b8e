using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Tests.Biofilter;
using FarmTwin.Scenarios.Library;
using static FarmTwin.Farm.Tests.PublishedTable;

namespace FarmTwin.Farm.Tests.Validation;

/// <summary>Nitrification, start-up, solids.</summary>
internal static class FilterCases
{
    private const NitrifierPopulation Ammonia = NitrifierPopulation.AmmoniaOxidizers;
    private static readonly NitrificationParameters Parameters = StartUpTank.Parameters;
    private static readonly SolidsParameters Solids = SolidsParameters.From(ParameterLibrary.Load("processes", "solids"));
    private static readonly MineralizationParameters Mineralization = MineralizationParameters.From(ParameterLibrary.Load("processes", "mineralization"));

    public static CaseList All()
    {
        var list = new CaseList("Filter and solids");
        Rates(list);
        Filters(list);
        SolidMatter(list);
        return list;
    }

    private static void Rates(CaseList list)
    {
        list.Worst("filter-ph-factor", "Effect of pH on nitrifier growth, pH 5.5-9", "Ekama & Wentzel 2008", "second hand", "factor", 0.6, r => FilmResponse.Acidity(Parameters, Number(r, "ph")));
        list.Near("Growth of ammonia oxidizers at 30 over 20 °C", "Vannecke & Volcke 2015", "published", 2.51, 0.01, "-",
            () => FilmResponse.Temperature(Parameters, Ammonia, 30) / FilmResponse.Temperature(Parameters, Ammonia, 20));
        list.Near("Autotroph growth of Activated Sludge Model 1 at NH 2, DO 2 mg/L", "Henze et al. 1987", "published", 0.278, 0.0014, "1/d",
            () => FilmFlux.BestGramsPerSquareMetreDay(1e9, 0.5 * FilmResponse.Oxygen(0.4, 2), 1, 2), Standing.Arithmetic);
        list.Near("Ammonia left by a mixed nitrifying reactor, 20 d", "Monod theory with Metcalf & Eddy's figures", "second hand", 0.175, 0.00175, "mg N/L", FilmTests.MixedReactor, Standing.Arithmetic);
        list.Near("Gain of a mature film's rate by a degree", "Zhu & Chen 2002", "abstract", 4.275, 0.3, "%/K", FilmTests.PercentPerDegree);
        list.Band("Rate lost where organic carbon weighs as much as ammonia nitrogen (70 %)", "Zhu & Chen 2001", "abstract", 60, 80, "%", () => 100 * (1 - HeterotrophCompetition.Factor(Parameters, 1)), Standing.Calibrated);
        var values = new Dictionary<string, Func<double>>
        {
            ["oxygen"] = () => NitrificationStoichiometry.OxygenPerNitrogen(Parameters),
            ["alkalinity"] = () => NitrificationStoichiometry.AlkalinityPerNitrogen,
            ["cells"] = () => NitrificationStoichiometry.CellsPerNitrogen(Parameters),
            ["cellsEbeling"] = () => NitrificationStoichiometry.CellsPerNitrogen(Parameters),
        };
        list.Rows("filter-stoichiometry", "Ebeling et al. 2006; US EPA 1975", "from memory", "g/g N", r => $"Nitrification: {r["quantity"]}", "value",
            r => Number(r, "value") * Number(r, "tolerance"), r => values[r["quantity"]]());
        list.Near("Surface of 1 mm spheres at void share 0.344", "Timmons, Holder & Ebeling", "published", 3936, 1, "m2/m3", () => SurfaceMedium.OfSpheresSquareMetresPerCubicMetre(0.001, 0.344), Standing.Arithmetic);
    }

    private static void Filters(CaseList list)
    {
        list.Rows("filter-bead-ratings", "Malone & Beecher 2000", "from memory", "g/(m3 d)", r => $"TAN conversion of a bead bed at {r["tan"]} mg N/L", "vtr", r => 0.25 * Number(r, "vtr"),
            r => 1150 * FilmFlux.FluxGramsPerSquareMetreDay(Parameters, Ammonia, 0.8, Number(r, "tan")), Standing.Calibrated);
        var courses = new Lazy<StartUpCourse[]>(() =>
            [.. new[] { 70.0, 350 }.Select(load => new StartUpTank(1150, 25, 7.5, 6, 0.5, 0.5) { LoadPerDay = _ => load }.Implicit(150, 1))]);
        list.Near("Nitrite over TAN of a mature bed, load 350 over load 70 g/(m3 d): constant", "Nijhof & Klapwijk 1995", "abstract", 1, 0.25, "-",
            () => courses.Value[1].Nitrite[150] / courses.Value[1].Tan[150] / (courses.Value[0].Nitrite[150] / courses.Value[0].Tan[150]));
        var carp = new Lazy<Dictionary<string, double>>(StartUpTests.CarpFilter);
        foreach (IReadOnlyDictionary<string, string> row in Read("filter-carp-maturation").Rows)
        {
            list.Band($"Maturation of a carp filter: {row["quantity"]}", "Applied Sciences 2020, 10, 626", "abstract; load and inocula assumed", Number(row, "low"), Number(row, "high"),
                row["quantity"].Contains("Day", StringComparison.Ordinal) ? "d" : "mg N/L", () => carp.Value[row["quantity"]], Standing.Calibrated);
        }

        const string Tyson = "Tyson et al. 2008, perlite trickling bed: 19, 31, 80 g TAN/(m3 d) at pH 6, 7, 8";
        const string Why = "A bed some weeks old, measured in a pH series of its own; the law for adapted nitrifiers is flatter. The order holds, the steepness between pH 7 and 8 does not: expect a young filter to do worse below pH 7.5 than the twin says.";
        list.Band("TAN removal rises from pH 6 to 7 to 8 (least of the two ratios)", Tyson, "abstract", 1, double.PositiveInfinity, "-", () => Math.Min(Acidity(7) / Acidity(6), Acidity(8) / Acidity(7)));
        list.Gap("TAN removal at pH 6 over pH 8", Tyson, "abstract", 0.2375, 0.3 * 0.2375, "-", () => Acidity(6) / Acidity(8), Why);
        list.Gap("TAN removal at pH 7 over pH 8", Tyson, "abstract", 0.3875, 0.3 * 0.3875, "-", () => Acidity(7) / Acidity(8), Why);
    }

    private static void SolidMatter(CaseList list)
    {
        double dryness = Solids.FreshDegradableGramsPerGram;
        foreach (IReadOnlyDictionary<string, string> row in Read("filter-hydrolysis-batch").Rows.Where(r => r["leachedShare"].Length > 0))
        {
            list.Near($"Degradable nitrogen leached before a wash every {row["day"]} d, 25 °C", "first-order law", "own calculation", Number(row, "leachedShare"),
                0.02 * Number(row, "leachedShare"), "-", () => BeadBed.LeachedShare(24 * Hydrolysis.RatePerHour(Solids, 25, 6), Number(row, "day")));
        }

        list.Near("Clear share above 4 g/L of solids after 12 h (80 % with flocculant; blanket of 20 g/L assumed)", "Water Science and Technology 81:81 (2020)", "abstract", 0.80, 0.016, "-",
            () => MineralizationTank.ClearShare(Mineralization, 4, 12), Standing.Calibrated);
        list.Near("Stokes velocity of 50 µm, excess density 50 kg/m3, 25 °C", "Stokes's law", "own calculation", 0.276, 0.002, "m/h", () => Settling.VelocityMetresPerHour(50e-6, 50, 25));
        list.Near("4.6 US gal/min over a square foot", "Davidson & Summerfelt 2005", "published", 0.0031 * 3600, 0.12, "m/h",
            () => Settling.SurfaceLoadingMetresPerHour(4.6 * UnitConstants.LitresPerUsGallon * 60, 0.3048 * 0.3048), Standing.Arithmetic);
        list.Near("Oxygen that a fresh batch of 10 g/L asks at 25 °C", "first-order law", "own calculation", 55, 0.55, "mg/(L h)",
            () => MineralizationTank.OxygenDemandMilligramsPerLitreHour(Solids, 10 * dryness, 25));
    }

    private static double Acidity(double pH) => FilmResponse.Acidity(Parameters, pH);
}
