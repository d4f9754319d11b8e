using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Iron that is lost from the water: light breaks chelates, microbes eat them, and what is not held falls out as hydroxide.</summary>
/// <remarks>See docs/model/iron.md.</remarks>
public sealed class IronLoss
{
    private const double MolesPerMicromoleHour = Growth.MolesPerMicromole * UnitConstants.SecondsPerHour;

    private readonly FarmContext _farm;
    private readonly double[] _light;
    private readonly double[] _loss;

    /// <summary>Makes the process.</summary>
    public IronLoss(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        Description.BasinDescription[] basins = farm.Parts.Basins;
        _loss = new double[basins.Length * Substance.IronHolders];
        _light = new double[basins.Length * Substance.IronHolders];
        for (int b = 0; b < basins.Length; b++)
        {
            double open = basins[b].SurfaceSquareMetres > 0 ? 1 - basins[b].CoveredShare : 0;
            for (int holder = 0; open > 0 && holder < Substance.IronHolders; holder++)
            {
                double depth = basins[b].VolumeLitres / UnitConstants.LitresPerCubicMetre / basins[b].SurfaceSquareMetres;
                _light[(b * Substance.IronHolders) + holder] =
                    open * Iron.LightLossSquareMetresPerMole((IronHolder)holder, depth, farm.Parts.Plants);
            }
        }
    }

    /// <summary>Adds the losses.</summary>
    /// <param name="light">Light of the step.</param>
    public void Contribute(in StepLight light)
    {
        Basins basins = _farm.State.Basins;
        for (int b = 0; b < basins.Count; b++)
        {
            double photons = (light.NaturalPhotons + _farm.LampPhotons[b]) * MolesPerMicromoleHour;
            for (int holder = 0; holder < Substance.IronHolders; holder++)
            {
                int index = (b * Substance.IronHolders) + holder;
                _loss[index] = 0;
                if (basins.Grams[WaterStep.At(b, Substance.Iron + holder)] > 0)
                {
                    _loss[index] = _farm.Network.LitresAfter[b] * ((_light[index] * photons)
                        + Iron.DarkLossPerHour((IronHolder)holder, basins.MilligramsPerLitre(b, Substance.Iron + holder), basins.PH[b], basins.Celsius[b], _farm.Parts.Plants));
                    _farm.Step.Lose(b, Substance.Iron + holder, _loss[index]);
                }
            }
        }
    }

    /// <summary>Books them.</summary>
    public void Commit()
    {
        WaterStep step = _farm.Step;
        double lost = 0;
        for (int b = 0; b < step.BasinCount; b++)
        {
            for (int holder = 0; holder < Substance.IronHolders; holder++)
            {
                lost += step.Lost(b, Substance.Iron + holder, _loss[(b * Substance.IronHolders) + holder]);
            }
        }

        _farm.State.Books.Post(Door.IronLost, Element.Iron, -lost);
    }
}
