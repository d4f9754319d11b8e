using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Solids;

/// <summary>Where nitrate is lost as gas: the settled blanket of a mineralization tank and pockets of standing water; and the tank's own nitrifiers.</summary>
/// <remarks>See docs/model/mineralization.md. The tank's cycle (air off, decant, air on) is run by Operations.</remarks>
public sealed class MineralizationProcess
{
    // Keeps the coefficient finite where the step would take all.
    private const double LeastNitrateShare = 1e-3;

    private readonly FarmContext _farm;
    // Denitrification with an organic donor frees five moles of carbon for four of nitrogen.
    private const double CarbonPerNitrogen = 1.25 * UnitConstants.AtomicWeight.Carbon / UnitConstants.AtomicWeight.Nitrogen;

    private readonly double[] _denitrification;
    private readonly double[] _pockets;
    private readonly double[] _blanketNitrate;

    /// <summary>Makes the process.</summary>
    public MineralizationProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        _denitrification = new double[farm.Parts.Basins.Length];
        _pockets = new double[farm.Parts.Basins.Length];
        _blanketNitrate = new double[farm.Parts.Mineralizers.Length];
    }

    /// <summary>Adds losses of nitrate and the suspended nitrifiers' capacity.</summary>
    public void Contribute()
    {
        FarmParts parts = _farm.Parts;
        Basins basins = _farm.State.Basins;
        for (int b = 0; b < basins.Count; b++)
        {
            // The water of a media bed stands among its grains; elsewhere only what lies in settled pockets does.
            double standing = (parts.Basins[b].Use == BasinUse.MediaBed ? 1 : parts.Basins[b].PocketShare) * basins.Litres[b];
            _pockets[b] = standing * _farm.Warmth.BackgroundDenitrification(b);
            _denitrification[b] = _pockets[b];
        }

        for (int m = 0; m < parts.Mineralizers.Length; m++)
        {
            AddTank(m);
        }

        for (int b = 0; b < basins.Count; b++)
        {
            if (_denitrification[b] > 0)
            {
                _farm.Step.Lose(b, Substance.Nitrate, _denitrification[b]);
            }
        }
    }

    /// <summary>
    /// Once the ions are solved: the carbon of the donor in pockets, whose sediment is not followed. In a tank the donor is the
    /// sludge itself, and its carbon comes with its breakdown.
    /// </summary>
    public void Release()
    {
        WaterStep step = _farm.Step;
        for (int b = 0; b < step.BasinCount; b++)
        {
            if (_pockets[b] > 0)
            {
                step.Add(b, Substance.InorganicCarbon,
                    CarbonPerNitrogen * _pockets[b] * step.Concentration[WaterStep.At(b, Substance.Nitrate)]);
            }
        }
    }

    /// <summary>Books the gas; advances the tanks' clocks.</summary>
    public void Commit()
    {
        WaterStep step = _farm.Step;
        double lost = 0;
        double carbon = 0;
        for (int b = 0; b < step.BasinCount; b++)
        {
            lost += step.Lost(b, Substance.Nitrate, _denitrification[b]);
            carbon += CarbonPerNitrogen * step.Lost(b, Substance.Nitrate, _pockets[b]);
        }

        _farm.State.Books.PostWater(Door.Denitrification, Substance.InorganicCarbon, carbon);

        if (lost > 0)
        {
            _farm.State.Books.PostWaterFromOutside(Door.Denitrification, Substance.Nitrate, -lost);
            _farm.State.Totals.DenitrifiedGrams += lost;
        }

        for (int m = 0; m < _farm.Parts.Mineralizers.Length; m++)
        {
            int b = _farm.Parts.MineralizerBasin[m];
            bool airOn = _farm.State.Basins.AirShare[b] * _farm.Running.Air[b] > 0 && _farm.Parts.Basins[b].AirLitresPerMinute > 0;
            _farm.State.Mineralizers[m] = _farm.State.Mineralizers[m].Advance(
                _farm.Parts.Mineralization, step.Hours, airOn, _blanketNitrate[m]);
        }
    }

    private void AddTank(int m)
    {
        FarmParts parts = _farm.Parts;
        Basins basins = _farm.State.Basins;
        int b = parts.MineralizerBasin[m];
        MineralizationState state = _farm.State.Mineralizers[m];
        double litres = basins.Litres[b];
        double nitrate = basins.MilligramsPerLitre(b, Substance.Nitrate);
        _blanketNitrate[m] = nitrate;
        if (litres <= 0)
        {
            return;
        }

        double oxygen = basins.MilligramsPerLitre(b, Substance.Oxygen);
        _farm.SuspendedNitrification[b] = MineralizationTank.NitrificationMilligramsPerLitreHour(
            parts.Mineralization,
            state.NitrifierShare,
            FilmResponse.Acidity(parts.Nitrification, basins.PH[b]),
            FilmResponse.Oxygen(parts.Nitrification.AmmoniaOxidizers.OxygenHalfSaturationMilligramsPerLitre, Math.Max(0, oxygen)));
        if (!state.IsStill || nitrate <= 0)
        {
            return;
        }

        double mixed = basins.SolidsGrams(b) / litres;
        double share = MineralizationTank.BlanketShare(parts.Mineralization, mixed, state.AirOffHours + _farm.Step.Hours);
        double blanketDry = share > 0 ? mixed / share : 0;
        double capacity = Denitrification.BlanketCapacityMilligramsPerLitreHour(
            parts.Mineralization, blanketDry * parts.Practice.SludgeVolatileShare, basins.Celsius[b], oxygen);

        // No more nitrate is reduced than the breakdown of degradable solids can feed: without this bound well digested sludge
        // denitrifies on a donor that it no longer has, and frees alkalinity without carbon (pH ran to 9.8).
        double degradable = basins.Grams[WaterStep.At(b, Substance.DegradableSolids)] / (share * litres);
        double fed = degradable * _farm.Warmth.BreakdownPerHour(b, oxygen, parts.Solids) * parts.Solids.OxygenPerVolatileSolids
            / NitrificationStoichiometry.CodPerDenitrifiedNitrogen * UnitConstants.GramsPerKilogram;
        capacity = Math.Min(capacity, fed);
        double blanket = state.BlanketNitrateMilligramsNPerLitre;
        double loss = Denitrification.SettledLossGrams(
            parts.Mineralization,
            ref blanket,
            basins.Grams[WaterStep.At(b, Substance.Nitrate)],
            litres,
            share,
            capacity,
            _farm.Step.Hours);
        _blanketNitrate[m] = blanket;

        // The coefficient meets the concentration of the step's end: it is set so that in a tank that stands by itself the loss is just that.
        double end = Math.Max(LeastNitrateShare * nitrate, nitrate - (loss * UnitConstants.GramsPerKilogram / litres));
        _denitrification[b] += loss / (_farm.Step.Hours * end / UnitConstants.GramsPerKilogram);
    }
}
