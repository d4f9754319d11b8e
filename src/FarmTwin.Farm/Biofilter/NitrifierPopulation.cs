namespace FarmTwin.Farm.Biofilter;

/// <summary>The two populations of a nitrifying film.</summary>
public enum NitrifierPopulation
{
    /// <summary>Oxidizes TAN to nitrite.</summary>
    AmmoniaOxidizers,

    /// <summary>Oxidizes nitrite to nitrate.</summary>
    NitriteOxidizers,
}
