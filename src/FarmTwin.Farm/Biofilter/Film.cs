namespace FarmTwin.Farm.Biofilter;

/// <summary>Living biomass of one wetted surface, per square metre. A value; the default is a sterile surface.</summary>
/// <param name="AmmoniaOxidizersGramsCodPerSquareMetre">x_A, g COD/m².</param>
/// <param name="NitriteOxidizersGramsCodPerSquareMetre">x_B, g COD/m².</param>
public readonly record struct Film(double AmmoniaOxidizersGramsCodPerSquareMetre, double NitriteOxidizersGramsCodPerSquareMetre)
{
    /// <summary>Both populations together, g COD/m².</summary>
    public double TotalGramsCodPerSquareMetre => AmmoniaOxidizersGramsCodPerSquareMetre + NitriteOxidizersGramsCodPerSquareMetre;
}
