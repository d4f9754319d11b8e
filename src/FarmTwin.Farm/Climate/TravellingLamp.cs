namespace FarmTwin.Farm.Climate;

/// <summary>One lamp that travels to and fro on a rail at uniform speed above a strip of crop, or hangs still.</summary>
/// <remarks>
/// A plant integrates photons, so an hourly step uses the mean in time. The rail spreads the same moles over a longer strip; it
/// makes none. Along the strip the mean is a trapezoid (own derivation from a footprint of even brightness; turning pauses are
/// left out). All of the electric power ends as heat in the house.
/// </remarks>
/// <param name="PowerWatts">Electric power, W, above 0.</param>
/// <param name="EfficacyMicromolesPerJoule">PAR photons per joule of electricity, µmol/J.</param>
/// <param name="Utilisation">Share of the photons that lands on the crop, 0 to 1.</param>
/// <param name="FootprintLengthMetres">Length of the lit patch along the rail, m, above 0.</param>
/// <param name="FootprintWidthMetres">Width of the lit patch, m, above 0.</param>
/// <param name="TravelMetres">Way from one turning point to the other, m; 0 for a fixed lamp.</param>
public sealed record TravellingLamp(
    double PowerWatts,
    double EfficacyMicromolesPerJoule,
    double Utilisation,
    double FootprintLengthMetres,
    double FootprintWidthMetres,
    double TravelMetres)
{
    /// <summary>Photon flux that leaves the lamp, µmol/s.</summary>
    public double PhotonFlux => EfficacyMicromolesPerJoule * PowerWatts;

    /// <summary>Photon flux that lands on the crop, µmol/s.</summary>
    public double PhotonFluxOnCrop => Utilisation * PhotonFlux;

    /// <summary>Length of the strip that gets any light, m.</summary>
    public double StripLengthMetres => TravelMetres + FootprintLengthMetres;

    /// <summary>Area of the strip that gets any light, m2.</summary>
    public double StripAreaSquareMetres => StripLengthMetres * FootprintWidthMetres;

    /// <summary>PPFD under the lamp if it stood still, µmol/(m2 s).</summary>
    public double StaticPpfd => PhotonFluxOnCrop / (FootprintLengthMetres * FootprintWidthMetres);

    /// <summary>Mean PPFD over the whole strip while the lamp is on, µmol/(m2 s).</summary>
    public double SweptMeanPpfd => PhotonFluxOnCrop / StripAreaSquareMetres;

    /// <summary>Mean PPFD of the even stretch in the middle of the strip, µmol/(m2 s).</summary>
    public double InteriorPpfd => PhotonFluxOnCrop / (Math.Max(TravelMetres, FootprintLengthMetres) * FootprintWidthMetres);

    /// <summary>Mean PPFD at a place along the strip, µmol/(m2 s): rises linearly at both ends, even between.</summary>
    /// <param name="metresFromEnd">Distance from one end of the strip, m; 0 outside the strip.</param>
    public double PpfdAt(double metresFromEnd)
    {
        double fromNearerEnd = Math.Min(metresFromEnd, StripLengthMetres - metresFromEnd);
        double ramp = Math.Min(TravelMetres, FootprintLengthMetres);
        return fromNearerEnd < 0 ? 0
            : fromNearerEnd >= ramp ? InteriorPpfd
            : InteriorPpfd * fromNearerEnd / ramp;
    }

    /// <summary>Photons per square metre of strip from some hours of light, mol/m2.</summary>
    /// <param name="hours">Hours on.</param>
    public double MeanLightIntegral(double hours) => Par.LightIntegral(SweptMeanPpfd, hours);

    /// <summary>Electricity of some hours of light, kWh.</summary>
    /// <param name="hours">Hours on.</param>
    public double EnergyKilowattHours(double hours) => PowerWatts * hours / 1000;
}
