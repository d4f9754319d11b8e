namespace FarmTwin.Farm.Water;

/// <summary>The state of all bodies of water: mass, never concentration.</summary>
/// <remarks>Plain arrays indexed by basin; copied whole for a snapshot. Not thread-safe: one a run.</remarks>
public sealed class Basins
{
    /// <summary>Makes empty basins.</summary>
    public Basins(int count)
    {
        Count = count;
        Litres = new double[count];
        Celsius = new double[count];
        Grams = new double[count * Substance.Columns];
        PH = new double[count];
        CarbonDioxideMoles = new double[count];
        Alkalinity = new double[count];
        AmmoniaOxidizers = new double[count];
        NitriteOxidizers = new double[count];
        FilmSquareMetres = new double[count];
        AirShare = new double[count];
        UndissolvedCarbonateGrams = new double[count];
        PrecipitatedPhosphorusGrams = new double[count];
        PrecipitatedCalciumGrams = new double[count];
        CalciteScaleGrams = new double[count];
        Array.Fill(AirShare, 1);
    }

    /// <summary>Number of basins.</summary>
    public int Count { get; }

    /// <summary>Water, L.</summary>
    public double[] Litres { get; }

    /// <summary>Temperature, °C.</summary>
    public double[] Celsius { get; }

    /// <summary>Mass of each substance, g, [basin × <see cref="Substance.Columns"/> + substance].</summary>
    public double[] Grams { get; }

    /// <summary>pH, from alkalinity, carbon and temperature at the end of the last step.</summary>
    public double[] PH { get; }

    /// <summary>Free carbon dioxide, mol/L, at the end of the last step.</summary>
    public double[] CarbonDioxideMoles { get; }

    /// <summary>Alkalinity from the ions, eq/L, at the end of the last step.</summary>
    public double[] Alkalinity { get; }

    /// <summary>Ammonia oxidizers of the film, g COD/m².</summary>
    public double[] AmmoniaOxidizers { get; }

    /// <summary>Nitrite oxidizers of the film, g COD/m².</summary>
    public double[] NitriteOxidizers { get; }

    /// <summary>Area on which the film grows, m².</summary>
    public double[] FilmSquareMetres { get; }

    /// <summary>Share of its normal air that flows.</summary>
    public double[] AirShare { get; }

    /// <summary>Calcium carbonate dosed and not yet dissolved, g.</summary>
    public double[] UndissolvedCarbonateGrams { get; }

    /// <summary>Phosphorus that fell out as calcium phosphate and lies in the basin, g.</summary>
    public double[] PrecipitatedPhosphorusGrams { get; }

    /// <summary>Calcium that fell out with it, g.</summary>
    public double[] PrecipitatedCalciumGrams { get; }

    /// <summary>Calcite that grew as scale on the basin's surfaces, g CaCO3.</summary>
    public double[] CalciteScaleGrams { get; }

    /// <summary>Concentration of a substance, mg/L; 0 in a dry basin.</summary>
    public double MilligramsPerLitre(int basin, int substance) =>
        Litres[basin] > 0 ? Grams[(basin * Substance.Columns) + substance] * UnitConstants.GramsPerKilogram / Litres[basin] : 0;

    /// <summary>Suspended solids of all size classes, g dry matter.</summary>
    public double SolidsGrams(int basin)
    {
        double sum = 0;
        int start = (basin * Substance.Columns) + Substance.FirstSolidsClass;
        for (int i = 0; i < Substance.SolidsClasses; i++)
        {
            sum += Grams[start + i];
        }

        return sum;
    }

    /// <summary>The ions of a basin, mol/L.</summary>
    public Ions IonsOf(int basin) => IonsOf(Grams.AsSpan(basin * Substance.Columns, Substance.Columns), Litres[basin]);

    /// <summary>The ions in a row of masses in a volume, mol/L; none in a dry one.</summary>
    public static Ions IonsOf(ReadOnlySpan<double> grams, double litres)
    {
        if (litres <= 0)
        {
            return default;
        }

        double perLitre = 1 / litres;
        return new Ions(
            Na: grams[Substance.Sodium] * (perLitre / UnitConstants.AtomicWeight.Sodium),
            K: grams[Substance.Potassium] * (perLitre / UnitConstants.AtomicWeight.Potassium),
            Ca: grams[Substance.Calcium] * (perLitre / UnitConstants.AtomicWeight.Calcium),
            Mg: grams[Substance.Magnesium] * (perLitre / UnitConstants.AtomicWeight.Magnesium),
            Cl: grams[Substance.Chloride] * (perLitre / UnitConstants.AtomicWeight.Chlorine),
            NitrateN: grams[Substance.Nitrate] * (perLitre / UnitConstants.AtomicWeight.Nitrogen),
            NitriteN: grams[Substance.Nitrite] * (perLitre / UnitConstants.AtomicWeight.Nitrogen),
            SulfateS: grams[Substance.Sulfate] * (perLitre / UnitConstants.AtomicWeight.Sulfur),
            P: grams[Substance.Phosphorus] * (perLitre / UnitConstants.AtomicWeight.Phosphorus),
            TAN: grams[Substance.Tan] * (perLitre / UnitConstants.AtomicWeight.Nitrogen));
    }

    /// <summary>Electric conductivity of a basin at 25 °C, µS/cm; not a number in a dry one.</summary>
    public double MicrosiemensPerCentimetre(int basin)
    {
        if (Litres[basin] <= 0)
        {
            return double.NaN;
        }

        Ions ions = IonsOf(basin);
        return Conductivity.MicrosiemensPerCentimetreAt25(
            ions,
            Grams[WaterStep.At(basin, Substance.InorganicCarbon)] / Litres[basin] / UnitConstants.AtomicWeight.Carbon,
            PH[basin],
            CarbonateConstants.At(Celsius[basin]),
            IonicStrength.MolesPerLitre(ions));
    }

    /// <summary>Moves water with all it carries from one basin to another, at once.</summary>
    /// <returns>The litres moved: no more than there are.</returns>
    public double Move(int from, int to, double litres)
    {
        double moved = Math.Min(litres, Litres[from]);
        if (moved <= 0)
        {
            return 0;
        }

        double share = moved / Litres[from];
        Warm(to, moved, Celsius[from]);
        for (int column = 0; column < Substance.Columns; column++)
        {
            double grams = Grams[(from * Substance.Columns) + column] * share;
            Grams[(from * Substance.Columns) + column] -= grams;
            Grams[(to * Substance.Columns) + column] += grams;
        }

        Litres[from] -= moved;
        Litres[to] += moved;
        return moved;
    }

    /// <summary>Sets the temperature that a basin takes when water of another temperature is about to be added.</summary>
    public void Warm(int basin, double addedLitres, double addedCelsius)
    {
        double total = Litres[basin] + addedLitres;
        if (total > 0)
        {
            Celsius[basin] = ((Celsius[basin] * Litres[basin]) + (addedCelsius * addedLitres)) / total;
        }
    }

    /// <summary>Takes over the state of other basins of the same farm.</summary>
    public void CopyFrom(Basins other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.Litres.CopyTo(Litres, 0);
        other.Celsius.CopyTo(Celsius, 0);
        other.Grams.CopyTo(Grams, 0);
        other.PH.CopyTo(PH, 0);
        other.CarbonDioxideMoles.CopyTo(CarbonDioxideMoles, 0);
        other.Alkalinity.CopyTo(Alkalinity, 0);
        other.AmmoniaOxidizers.CopyTo(AmmoniaOxidizers, 0);
        other.NitriteOxidizers.CopyTo(NitriteOxidizers, 0);
        other.FilmSquareMetres.CopyTo(FilmSquareMetres, 0);
        other.AirShare.CopyTo(AirShare, 0);
        other.UndissolvedCarbonateGrams.CopyTo(UndissolvedCarbonateGrams, 0);
        other.PrecipitatedPhosphorusGrams.CopyTo(PrecipitatedPhosphorusGrams, 0);
        other.PrecipitatedCalciumGrams.CopyTo(PrecipitatedCalciumGrams, 0);
        other.CalciteScaleGrams.CopyTo(CalciteScaleGrams, 0);
    }
}
