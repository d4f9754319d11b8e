using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Water;

/// <summary>Residual chlorine that comes with top-up water and spray that dripped in: carried with the water, used up, and poisonous meanwhile.</summary>
/// <remarks>
/// Both decay in first order. Chlorine kills films by Chick and Watson's law, dx/dt = −k C x; what it and the spray do to fish stands with
/// the hazards of the fish. Tags without mass in the ledgers. See docs/model/mishaps.md.
/// </remarks>
public sealed class ToxicantProcess
{
    private readonly FarmContext _farm;
    private readonly double _chlorinePerHour;
    private readonly double _sprayPerHour;

    /// <summary>Makes the process.</summary>
    public ToxicantProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _chlorinePerHour = farm.Parts.Husbandry.ChlorineDecayPerHour;
        _sprayPerHour = Math.Log(2) / (farm.Parts.Husbandry.SprayHalfLifeDays * UnitConstants.HoursPerDay);
    }

    /// <summary>Adds what comes in and what is used up.</summary>
    public void Contribute()
    {
        WaterStep step = _farm.Step;
        double source = _farm.State.Husbandry.SourceChlorineGramsPerLitre;
        for (int b = 0; b < step.BasinCount; b++)
        {
            double litres = _farm.Network.LitresAfter[b];
            step.Lose(b, Substance.Chlorine, _chlorinePerHour * litres);
            step.Lose(b, Substance.Pesticide, _sprayPerHour * litres);
            if (source > 0 && _farm.Network.TopUp[b] > 0)
            {
                step.Add(b, Substance.Chlorine, _farm.Network.TopUp[b] * source);
            }
        }
    }

    /// <summary>Kills film by the chlorine that was solved.</summary>
    public void Commit()
    {
        WaterStep step = _farm.Step;
        Basins basins = _farm.State.Basins;
        for (int b = 0; b < step.BasinCount; b++)
        {
            double chlorine = step.Concentration[WaterStep.At(b, Substance.Chlorine)] * UnitConstants.GramsPerKilogram;
            if (chlorine > 0 && _farm.Network.LitresAfter[b] > 0)
            {
                FilmGrowth.Strip(
                    _farm.Parts.Nitrification, ref basins.AmmoniaOxidizers[b], ref basins.NitriteOxidizers[b],
                    1 - Math.Exp(-_farm.Parts.Husbandry.ChlorineFilmKillLitresPerMilligramHour * chlorine * step.Hours));
            }
        }
    }
}
