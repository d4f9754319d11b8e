using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Washing bead filters: a transfer of sludge and its water, which strips some film; nothing goes to drain.</summary>
public sealed class FilterCare : FarmWork
{
    private readonly MineralizerCare _mineralizers;

    /// <summary>Makes it.</summary>
    public FilterCare(FarmContext farm, FarmLog log, MineralizerCare mineralizers)
        : base(farm, log) => _mineralizers = mineralizers;

    /// <summary>Solids held by a bed, kg per m³ of beads.</summary>
    public static double HeldKilogramsPerCubicMetre(FarmContext farm, int filter)
    {
        ArgumentNullException.ThrowIfNull(farm);
        // g/L is kg/m³.
        return farm.State.Beds[filter].DryGrams / farm.Parts.Filters[filter].BeadsLitres;
    }

    /// <summary>Washes what is due.</summary>
    public void Check(long seconds)
    {
        for (int f = 0; f < Parts.Filters.Length; f++)
        {
            BeadFilterDescription filter = Parts.Filters[f];
            BedState bed = State.Beds[f];
            double days = DayOf(seconds - bed.LastWashSeconds);
            double flow = BeadBed.FlowShare(Parts.Solids, HeldKilogramsPerCubicMetre(Farm, f));
            bool dirty = bed.DryGrams > 0.02 * filter.BeadsLitres;
            if (dirty && (days >= filter.WashEveryDays - 0.01 || flow < filter.WashAtFlowShare))
            {
                Wash(f, seconds, flow);
            }
        }
    }

    /// <summary>Washes a filter now, so hard that film goes with the sludge.</summary>
    /// <param name="f">The filter.</param>
    /// <param name="stripShare">Share of the film that goes.</param>
    /// <param name="seconds">Now.</param>
    public void WashHard(int f, double stripShare, long seconds)
    {
        Log.Add(seconds, "wash too hard", Parts.FilterNames[f], stripShare, "of film", "nitrifying film is washed off with the sludge");
        Wash(f, seconds, BeadBed.FlowShare(Parts.Solids, HeldKilogramsPerCubicMetre(Farm, f)), stripShare);
    }

    private void Wash(int f, long seconds, double flow, double? stripShare = null)
    {
        BeadFilterDescription filter = Parts.Filters[f];
        BedState bed = State.Beds[f];
        int from = Parts.FilterBasin[f];
        int to = _mineralizers.Receiver(filter);
        if (to < 0 && filter.SludgeTo is not null)
        {
            State.Totals.WashesPutOff++;
            Log.Add(seconds, "wash put off", Parts.FilterNames[f], bed.DryGrams, "g",
                "no tank can take the sludge: the mineralization tank settles or is full, and so is the holding tank");
            return;
        }

        double water = to >= 0 ? MoveSludge(from, to, filter, bed) : LeadSludgeOut(from, filter, bed, seconds);

        Spend(Chore.WashFilter, 1);
        State.Totals.Washes++;
        State.Totals.SolidsCarriedGrams += bed.DryGrams;
        State.Totals.SolidsCarriedNitrogenGrams += bed.ElementGrams[Element.Nitrogen];
        Log.Add(seconds, "wash filter", Parts.FilterNames[f], bed.DryGrams, "g",
            $"{bed.DryGrams:0} g of solids with {water:0} L to {(to >= 0 ? Parts.BasinNames[to] : "compost, out of the farm")}; flow was {flow:0%} of clean");
        bed.DryGrams = 0;
        bed.DegradableGrams = 0;
        Array.Clear(bed.ElementGrams);
        bed.LastWashSeconds = seconds;
        double beads = Parts.FilterMedia[f].PackedAreaSquareMetres(filter.BeadsLitres);
        double share = State.Basins.FilmSquareMetres[from] > 0 ? beads / State.Basins.FilmSquareMetres[from] : 0;
        FilmGrowth.Strip(
            Parts.Nitrification,
            ref State.Basins.AmmoniaOxidizers[from],
            ref State.Basins.NitriteOxidizers[from],
            (stripShare ?? filter.StripShare) * share);
        if (to >= 0)
        {
            _mineralizers.Received(to, seconds);
        }
    }

    private double MoveSludge(int from, int to, BeadFilterDescription filter, BedState bed)
    {
        double water = State.Basins.Move(from, to, filter.WashWaterLitres);
        double[] grams = State.Basins.Grams;
        int start = WaterStep.At(to, 0);

        // What a wash knocks off the beads is floc of the coarsest class.
        grams[start + Substance.FirstSolidsClass] += bed.DryGrams;
        grams[start + Substance.DegradableSolids] += bed.DegradableGrams;
        for (int e = 0; e < Element.Count; e++)
        {
            grams[start + Substance.FirstSolidsElement + e] += bed.ElementGrams[e];
        }

        return water;
    }

    private double LeadSludgeOut(int from, BeadFilterDescription filter, BedState bed, long seconds)
    {
        double water = Math.Min(filter.WashWaterLitres, State.Basins.Litres[from] / 2);
        if (water > 0)
        {
            LedOut.Take(State, from, water, water / State.Basins.Litres[from], Door.SludgeCompost);
        }

        for (int e = 0; e < Element.Count; e++)
        {
            State.Books.PostWaterFromOutside(Door.SludgeCompost, Substance.FirstSolidsElement + e, -bed.ElementGrams[e]);
        }

        State.Totals.CompostedSolidsGrams += bed.DryGrams;
        Log.Add(seconds, "sludge to compost", Parts.BasinNames[from], bed.DryGrams / UnitConstants.GramsPerKilogram, "kg DM",
            $"{water:0} L of wash water with what was on the beads");
        return water;
    }
}
