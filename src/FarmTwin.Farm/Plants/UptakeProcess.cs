using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Plants;

/// <summary>What plants take from the water in a step: transpiration, nutrients in the lit hours, sodium and chloride along with the water.</summary>
/// <remarks>See docs/model/plant-nutrients.md and transpiration.md. All lots of a basin share one factor; the day's share is put into the
/// lots when plants are moved or the day ends.</remarks>
public sealed class UptakeProcess
{
    // An uptake is written as planned rate / concentration; below this the water counts as empty, g/L.
    private const double LeastGramsPerLitre = 1e-9;

    private static readonly int[] SubstanceOfChannel =
        [Substance.Tan, Substance.Nitrate, Substance.Phosphorus, Substance.Potassium, Substance.Calcium, Substance.Magnesium,
         Substance.Sulfate, Substance.Iron];

    private readonly FarmContext _farm;
    private readonly GrowingPlaces _places;
    private readonly NurseryStand _nursery;
    private readonly Stands _stands;
    private readonly int[] _grown;
    private readonly double[] _uptake;
    private readonly double[] _ironShare;
    private readonly double[] _sodium;
    private readonly double[] _chloride;
    private readonly double[] _transpiration;

    /// <summary>Makes the process.</summary>
    public UptakeProcess(FarmContext farm, GrowingPlaces places, NurseryStand nursery)
    {
        ArgumentNullException.ThrowIfNull(farm);
        ArgumentNullException.ThrowIfNull(places);
        _farm = farm;
        _places = places;
        _nursery = nursery;
        _stands = new Stands(farm, places, nursery);
        int basins = farm.Parts.Basins.Length;
        _grown = [.. Enumerable.Range(0, places.Count).Select(places.BasinOf).Where(b => b >= 0).Distinct().Order()];
        _uptake = new double[basins * UptakeAmounts.Count];
        _ironShare = new double[basins * Substance.IronHolders];
        _sodium = new double[basins];
        _chloride = new double[basins];
        _transpiration = new double[basins];
    }

    /// <summary>Litres an hour that the plants give off in this step, from the house as it was at its start.</summary>
    /// <param name="light">Light and air of the step.</param>
    public double Transpire(in StepLight light)
    {
        _stands.Refresh();
        PlantParameters plants = _farm.Parts.Plants;
        double total = 0;
        foreach (int b in _grown)
        {
            _transpiration[b] = _stands.OpenLeafSquareMetres[b] > 0
                ? Transpiration.OfStandsLitresPerHour(
                    _stands.OpenCanopySquareMetres[b],
                    _stands.OpenLeafSquareMetres[b],
                    light.InsideMegajoules,
                    light.VapourDeficitKilopascals,
                    light.InsideMegajoules <= 0,
                    plants)
                : 0;
            _transpiration[b] += b == _nursery.Basin ? _nursery.Transpire(light) : 0;
            total += _transpiration[b];
        }

        return total;
    }

    /// <summary>Adds the transpiration to what leaves the basins.</summary>
    public void AddVapour()
    {
        foreach (int b in _grown)
        {
            _farm.Step.VapourLitresPerHour[b] += _transpiration[b];
        }
    }

    /// <summary>Adds uptake.</summary>
    public void Contribute(in StepLight light)
    {
        FarmParts parts = _farm.Parts;
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        foreach (int b in _grown)
        {
            Array.Clear(_uptake, b * UptakeAmounts.Count, UptakeAmounts.Count);
            _sodium[b] = 0;
            _chloride[b] = 0;
            if (_stands.LeafSquareMetres[b] <= 0 || basins.Litres[b] <= 0)
            {
                continue;
            }

            double perHour = UptakePerHour(b);
            for (int channel = 0; channel < UptakeAmounts.Count; channel++)
            {
                double rate = _stands.Planned[(b * UptakeAmounts.Count) + channel] * perHour;
                if (rate > 0 && channel == (int)UptakeChannel.Iron)
                {
                    _uptake[(b * UptakeAmounts.Count) + channel] = TakeIron(b, rate);
                }
                else if (rate > 0)
                {
                    int substance = SubstanceOfChannel[channel];
                    double grams = basins.Grams[WaterStep.At(b, substance)] / basins.Litres[b];
                    double coefficient = rate / Math.Max(LeastGramsPerLitre, grams);
                    _uptake[(b * UptakeAmounts.Count) + channel] = coefficient;
                    step.Lose(b, substance, coefficient);
                }
            }

            _sodium[b] = parts.Plants.SodiumUptakeShare * _transpiration[b];
            _chloride[b] = parts.Plants.ChlorideUptakeShare * _transpiration[b];
            step.Lose(b, Substance.Sodium, _sodium[b]);
            step.Lose(b, Substance.Chloride, _chloride[b]);
        }
    }

    // Share of a day's uptake that falls into an hour of this step, by the leaf under the sun and in the nursery.
    private double UptakePerHour(int basin)
    {
        double open = _farm.LitHoursOfDay[basin] > 0 ? _farm.LitShare[basin] / _farm.LitHoursOfDay[basin] : 0;
        return basin == _nursery.Basin
            ? ((_stands.OpenLeafSquareMetres[basin] * open) + (_nursery.LeafSquareMetres * _nursery.UptakePerHour())) / _stands.LeafSquareMetres[basin]
            : open;
    }

    /// <summary>Books uptake and transpiration.</summary>
    public void Commit()
    {
        GrowingState growing = _farm.State.Growing;
        WaterStep step = _farm.Step;
        FarmBooks books = _farm.State.Books;
        _nursery.Commit();
        for (int channel = 0; channel < UptakeAmounts.Count; channel++)
        {
            double taken = 0;
            foreach (int b in _grown)
            {
                int index = (b * UptakeAmounts.Count) + channel;
                if (_uptake[index] > 0)
                {
                    double grams = Taken(b, channel);
                    growing.TakenShare[index] += grams / _stands.Planned[index];
                    taken += grams;
                }
            }

            growing.Nutrition.TakenGrams[Uptake.ElementOf((UptakeChannel)channel)] += taken;
            books.PostWater(Door.PlantUptake, SubstanceOfChannel[channel], -taken);
            if (channel <= (int)UptakeChannel.Nitrate)
            {
                _farm.State.Totals.PlantNitrogenGrams += taken;
            }
        }

        double sodium = 0;
        double chloride = 0;
        foreach (int b in _grown)
        {
            double na = step.Lost(b, Substance.Sodium, _sodium[b]);
            double cl = step.Lost(b, Substance.Chloride, _chloride[b]);
            growing.PassiveSodium[b] += na;
            growing.PassiveChloride[b] += cl;
            sodium += na;
            chloride += cl;
            growing.TranspiredLitres[b] += step.VapourLitresPerHour[b] > 0
                ? _transpiration[b] * step.Hours * Math.Min(1, _farm.Network.Loss[b] / step.VapourLitresPerHour[b])
                : 0;
        }

        books.PostWater(Door.PlantUptake, Substance.Sodium, -sodium);
        books.PostWater(Door.PlantUptake, Substance.Chloride, -chloride);
    }

    /// <summary>Transpiration of a basin's plants in this step, L/h.</summary>
    public double TranspirationOf(int basin) => _transpiration[basin];

    /// <summary>Puts the uptake so far into the lots. Call before plants are moved.</summary>
    public void Settle()
    {
        GrowingState growing = _farm.State.Growing;
        _stands.Refresh();
        for (int place = 0; place < _places.Count; place++)
        {
            int basin = _places.BasinOf(place);
            if (basin >= 0)
            {
                for (int i = 0; i < _places.LotCount(place); i++)
                {
                    SettleLot(_places.LotAt(place, i), basin);
                }
            }
        }

        Array.Clear(growing.TakenShare);
        Array.Clear(growing.PassiveSodium);
        Array.Clear(growing.PassiveChloride);
    }

    /// <summary>Adds what was taken up and not yet put into the lots to the stocks: of each basin the planned sum of its lots, by the share
    /// taken. Changes nothing.</summary>
    public void AddUnsettled(Span<double> stocks)
    {
        GrowingState growing = _farm.State.Growing;
        _stands.Refresh();
        for (int b = 0; b < _stands.LeafSquareMetres.Length; b++)
        {
            for (int channel = 0; channel < UptakeAmounts.Count; channel++)
            {
                int index = (b * UptakeAmounts.Count) + channel;
                stocks[FarmBooks.ElementOf(SubstanceOfChannel[channel])] += growing.TakenShare[index] * _stands.Planned[index];
            }

            stocks[Element.Sodium] += growing.PassiveSodium[b];
            stocks[Element.Chloride] += growing.PassiveChloride[b];
        }
    }

    // Roots draw on the available iron of every holder alike: L/h of available iron.
    private double TakeIron(int b, double rate)
    {
        Basins basins = _farm.State.Basins;
        double available = 0;
        for (int holder = 0; holder < Substance.IronHolders; holder++)
        {
            double share = Iron.AvailableShare(
                (IronHolder)holder, basins.MilligramsPerLitre(b, Substance.Iron + holder), basins.PH[b], _farm.Parts.Plants);
            _ironShare[(b * Substance.IronHolders) + holder] = share;
            available += share * basins.Grams[WaterStep.At(b, Substance.Iron + holder)];
        }

        double coefficient = rate / Math.Max(LeastGramsPerLitre, available / basins.Litres[b]);
        for (int holder = 0; holder < Substance.IronHolders; holder++)
        {
            _farm.Step.Lose(b, Substance.Iron + holder, coefficient * _ironShare[(b * Substance.IronHolders) + holder]);
        }

        return coefficient;
    }

    // What a channel took in the step, g.
    private double Taken(int b, int channel)
    {
        double coefficient = _uptake[(b * UptakeAmounts.Count) + channel];
        if (channel != (int)UptakeChannel.Iron)
        {
            return _farm.Step.Lost(b, SubstanceOfChannel[channel], coefficient);
        }

        double sum = 0;
        for (int holder = 0; holder < Substance.IronHolders; holder++)
        {
            sum += _farm.Step.Lost(b, Substance.Iron + holder, coefficient * _ironShare[(b * Substance.IronHolders) + holder]);
        }

        return sum;
    }

    private void SettleLot(PlantLot lot, int basin)
    {
        GrowingState growing = _farm.State.Growing;
        double[] share = growing.TakenShare;
        int start = basin * UptakeAmounts.Count;
        UptakeAmounts planned = lot.Planned;
        lot.Take(new UptakeAmounts(
            planned.Ammonium * share[start],
            planned.Nitrate * share[start + 1],
            planned.Phosphorus * share[start + 2],
            planned.Potassium * share[start + 3],
            planned.Calcium * share[start + 4],
            planned.Magnesium * share[start + 5],
            planned.Sulfur * share[start + 6],
            planned.Iron * share[start + 7]));
        if (growing.PassiveSodium[basin] > 0 || growing.PassiveChloride[basin] > 0)
        {
            double leaf = lot.IsEmpty ? 0 : lot.LeafAreaIndex(_farm.Parts.Crops[lot.Crop]) * lot.AreaSquareMetres;
            double ofBasin = _stands.LeafSquareMetres[basin] > 0 ? leaf / _stands.LeafSquareMetres[basin] : 0;
            lot.TakePassive(growing.PassiveSodium[basin] * ofBasin, growing.PassiveChloride[basin] * ofBasin);
        }
    }
}
