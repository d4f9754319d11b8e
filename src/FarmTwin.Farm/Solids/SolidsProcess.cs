using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Solids;

/// <summary>Suspended solids: breakdown and leaching everywhere, capture and leaching in bead beds.</summary>
/// <remarks>
/// Solved first in a step, because what they release feeds the other balances. Breakdown is first order in the degradable part;
/// the elements follow by their mobile shares, phosphorus and calcium by pH, in a mineralization tank towards an equilibrium.
/// See docs/model/solids.md and mineralization.md.
/// </remarks>
public sealed class SolidsProcess
{
    private const double CarbonPerOxygen = UnitConstants.AtomicWeight.Carbon / (2 * UnitConstants.AtomicWeight.Oxygen);

    private static readonly int[] DissolvedOf = [.. Enumerable.Range(0, Element.Count).Select(Substance.DissolvedOf)];

    private readonly FarmContext _farm;
    private readonly double _fastInAnHour;
    private readonly double _equilibriumInAnHour;
    private readonly double[] _freshShare;
    private readonly double[] _breakdown;
    private readonly double[] _release;
    private readonly double[] _captureClass;
    private readonly double[] _captureMix;
    private readonly double[] _bedDestroyed;
    private readonly double[] _bedReleased;
    // Only the elements whose release needs the content before any breakdown; the others follow from what is left.
    private readonly double[] _originalPerDry;
    private readonly bool[] _isMineralizer;
    private double _carbon;

    /// <summary>Makes the process.</summary>
    public SolidsProcess(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        int count = farm.Parts.Basins.Length;
        _breakdown = new double[count];
        _release = new double[count * Element.Count];
        _captureClass = new double[farm.Parts.Filters.Length * Substance.SolidsClasses];
        _captureMix = new double[farm.Parts.Filters.Length];
        _bedDestroyed = new double[farm.Parts.Filters.Length];
        _bedReleased = new double[farm.Parts.Filters.Length * Element.Count];
        _fastInAnHour = Hydrolysis.Approach(farm.Parts.Solids.FastLeachRatePerDay, 1);
        _equilibriumInAnHour = Hydrolysis.Approach(farm.Parts.Solids.EquilibriumRatePerDay, 1);
        _freshShare = [.. farm.Parts.Solids.MobileShares];
        _originalPerDry = ContentPerDryGram(farm.Parts);
        _isMineralizer = [.. farm.Parts.Basins.Select(b => b.Use == Description.BasinUse.Mineralizer)];
    }

    /// <summary>Adds losses by breakdown and capture, and what the beds leach.</summary>
    public void Contribute()
    {
        _carbon = 0;
        for (int b = 0; b < _farm.Parts.Basins.Length; b++)
        {
            AddBreakdown(b);
        }

        for (int f = 0; f < _farm.Parts.Filters.Length; f++)
        {
            AddCapture(f);
            AddBed(f);
        }
    }

    /// <summary>Turns the solved breakdown into sources of the dissolved substances and a demand for oxygen.</summary>
    public void Release()
    {
        WaterStep step = _farm.Step;
        for (int b = 0; b < step.BasinCount; b++)
        {
            double destroyed = _breakdown[b] * step.Concentration[WaterStep.At(b, Substance.DegradableSolids)];
            AddRespiration(b, destroyed);
            for (int e = 0; e < Element.Count; e++)
            {
                double coefficient = _release[(b * Element.Count) + e];
                if (coefficient > 0)
                {
                    step.Add(b, DissolvedOf[e], coefficient * step.Concentration[WaterStep.At(b, Substance.FirstSolidsElement + e)]);
                }
            }
        }
    }

    /// <summary>Books releases; puts what was captured into the beds.</summary>
    public void Commit()
    {
        WaterStep step = _farm.Step;
        FarmBooks books = _farm.State.Books;
        books.PostWater(Door.SolidsBreakdown, Substance.InorganicCarbon, _carbon * step.Hours);
        for (int e = 0; e < Element.Count; e++)
        {
            double released = 0;
            for (int b = 0; b < step.BasinCount; b++)
            {
                released += step.Lost(b, Substance.FirstSolidsElement + e, _release[(b * Element.Count) + e]);
            }

            for (int f = 0; f < _captureMix.Length; f++)
            {
                released += _bedReleased[(f * Element.Count) + e];
            }

            books.PostWater(Door.SolidsBreakdown, DissolvedOf[e], released);
        }

        for (int f = 0; f < _captureMix.Length; f++)
        {
            CommitBed(f);
        }
    }

    /// <summary>Adds the beds' part of the stocks.</summary>
    public static void AddStocks(FarmContext farm, Span<double> stocks)
    {
        ArgumentNullException.ThrowIfNull(farm);
        foreach (BedState bed in farm.State.Beds)
        {
            for (int e = 0; e < Element.Count; e++)
            {
                stocks[e] += bed.ElementGrams[e];
            }
        }
    }

    /// <summary>Puts fresh solids into a basin at once (a meal's faeces and leftovers).</summary>
    public static void Add(FarmContext farm, int basin, double dryGrams, in ElementGrams elements)
    {
        ArgumentNullException.ThrowIfNull(farm);
        double[] grams = farm.State.Basins.Grams;
        int start = WaterStep.At(basin, 0);
        SolidsParameters solids = farm.Parts.Solids;
        for (int i = 0; i < Substance.SolidsClasses; i++)
        {
            grams[start + Substance.FirstSolidsClass + i] += dryGrams * solids.ClassShares[i];
        }

        grams[start + Substance.DegradableSolids] += dryGrams * solids.FreshDegradableGramsPerGram;
        elements.AddTo(grams.AsSpan(start + Substance.FirstSolidsElement, Element.Count));
    }

    // Volatile solids broken down want oxygen. Their carbon is freed whether oxygen, nitrate or fermentation takes it up: about one
    // mole of carbon dioxide for one of the oxygen that full oxidation would take.
    private void AddRespiration(int b, double destroyedGramsPerHour)
    {
        double oxygen = destroyedGramsPerHour * _farm.Parts.Solids.OxygenPerVolatileSolids;
        double carbon = oxygen * CarbonPerOxygen;
        _farm.OxygenBySolids[b] += oxygen;
        _carbon += carbon;
        _farm.Step.Add(b, Substance.InorganicCarbon, carbon);
    }

    private void AddBreakdown(int b)
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        double litres = _farm.Network.LitresAfter[b];
        _breakdown[b] = 0;
        Array.Clear(_release, b * Element.Count, Element.Count);
        double dry = basins.SolidsGrams(b);
        if (litres <= 0 || dry <= 0)
        {
            return;
        }

        SolidsParameters solids = _farm.Parts.Solids;
        double degradable = basins.Grams[WaterStep.At(b, Substance.DegradableSolids)];
        double rate = _farm.Warmth.BreakdownPerHour(b, basins.MilligramsPerLitre(b, Substance.Oxygen), solids);
        double remaining = Hydrolysis.RemainingShare(solids, dry, degradable);
        double original = Hydrolysis.OriginalDryMatterGrams(solids, dry, degradable);
        _breakdown[b] = rate * litres;
        step.Lose(b, Substance.DegradableSolids, _breakdown[b]);
        double ofDry = _breakdown[b] * Math.Min(1, degradable / dry);
        for (int i = 0; i < Substance.SolidsClasses; i++)
        {
            step.Lose(b, Substance.FirstSolidsClass + i, ofDry);
        }

        SetAcidShares(basins.PH[b]);
        for (int e = 0; e < Element.Count; e++)
        {
            double content = basins.Grams[WaterStep.At(b, Substance.FirstSolidsElement + e)];
            if (content <= 0)
            {
                continue;
            }

            double perHour = ReleaseRate(b, e, content, original, remaining, rate);
            if (perHour > 0)
            {
                _release[(b * Element.Count) + e] = perHour * litres;
                step.Lose(b, Substance.FirstSolidsElement + e, perHour * litres);
            }
        }
    }

    // Share of an element's content that dissolves in an hour.
    private double ReleaseRate(int b, int e, double content, double originalDry, double remaining, double breakdownRate)
    {
        double fresh = _freshShare[e];
        if (Hydrolysis.IsFast(e))
        {
            return Hydrolysis.LeachableGrams(fresh, content, _originalPerDry[e] * originalDry) * _fastInAnHour / content;
        }

        if (_isMineralizer[b] && e is Element.Phosphorus or Element.Calcium)
        {
            return Math.Max(0, Hydrolysis.EquilibriumReleaseGrams(
                fresh, content, 0, _originalPerDry[e] * originalDry, _equilibriumInAnHour)) / content;
        }

        return breakdownRate * Hydrolysis.MobileShare(fresh, remaining);
    }

    // The mobile shares of phosphorus and calcium follow the pH around the solids; the others stand.
    private void SetAcidShares(double pH) =>
        (_freshShare[Element.Phosphorus], _freshShare[Element.Calcium]) = Hydrolysis.AcidMobileShares(_farm.Parts.Solids, pH);

    private void AddCapture(int f)
    {
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        int b = _farm.Parts.FilterBasin[f];
        double flow = _farm.Network.Outflow(b);
        double dry = basins.SolidsGrams(b);
        double mix = 0;
        for (int i = 0; i < Substance.SolidsClasses; i++)
        {
            // A mixed cell that keeps a share η of what passes has the loss coefficient Q η/(1 − η).
            double share = Math.Min(_farm.Parts.Practice.LargestCapture, _farm.Parts.Solids.CapturePerPass[i])
                * _farm.State.Husbandry.CaptureShare[f];
            double coefficient = flow * share / (1 - share);
            _captureClass[(f * Substance.SolidsClasses) + i] = coefficient;
            step.Lose(b, Substance.FirstSolidsClass + i, coefficient);
            double weight = dry > 0
                ? basins.Grams[WaterStep.At(b, Substance.FirstSolidsClass + i)] / dry
                : _farm.Parts.Solids.ClassShares[i];
            mix += coefficient * weight;
        }

        _captureMix[f] = mix;
        step.Lose(b, Substance.DegradableSolids, mix);
        for (int e = 0; e < Element.Count; e++)
        {
            step.Lose(b, Substance.FirstSolidsElement + e, mix);
        }
    }

    private void AddBed(int f)
    {
        BedState bed = _farm.State.Beds[f];
        int b = _farm.Parts.FilterBasin[f];
        Basins basins = _farm.State.Basins;
        WaterStep step = _farm.Step;
        SolidsParameters solids = _farm.Parts.Solids;
        _bedDestroyed[f] = 0;
        Array.Clear(_bedReleased, f * Element.Count, Element.Count);
        if (bed.DryGrams <= 0 || _farm.Network.LitresAfter[b] <= 0)
        {
            return;
        }

        double rate = _farm.Warmth.BreakdownPerHour(b, basins.MilligramsPerLitre(b, Substance.Oxygen), solids);
        double remaining = Hydrolysis.RemainingShare(solids, bed.DryGrams, bed.DegradableGrams);
        _bedDestroyed[f] = Hydrolysis.DestroyedGrams(bed.DegradableGrams, rate, step.Hours);
        AddRespiration(b, _bedDestroyed[f] / step.Hours);
        double slow = Hydrolysis.DestroyedGrams(1, rate, step.Hours);
        double fast = Hydrolysis.Approach(solids.FastLeachRatePerDay, step.Hours);
        SetAcidShares(basins.PH[b]);
        for (int e = 0; e < Element.Count; e++)
        {
            double released = bed.ElementGrams[e] * Hydrolysis.MobileShare(_freshShare[e], remaining) * (Hydrolysis.IsFast(e) ? fast : slow);
            _bedReleased[(f * Element.Count) + e] = released;
            step.Add(b, DissolvedOf[e], released / step.Hours);
        }
    }

    private void CommitBed(int f)
    {
        BedState bed = _farm.State.Beds[f];
        WaterStep step = _farm.Step;
        int b = _farm.Parts.FilterBasin[f];
        double captured = 0;
        for (int i = 0; i < Substance.SolidsClasses; i++)
        {
            captured += step.Lost(b, Substance.FirstSolidsClass + i, _captureClass[(f * Substance.SolidsClasses) + i]);
        }

        bed.DryGrams += captured - _bedDestroyed[f];
        bed.DegradableGrams += step.Lost(b, Substance.DegradableSolids, _captureMix[f]) - _bedDestroyed[f];
        for (int e = 0; e < Element.Count; e++)
        {
            bed.ElementGrams[e] += step.Lost(b, Substance.FirstSolidsElement + e, _captureMix[f]) - _bedReleased[(f * Element.Count) + e];
        }
    }

    // What a gram of fresh solids of this farm's feed holds of each element.
    private static double[] ContentPerDryGram(FarmParts parts)
    {
        FeedComposition feed = parts.Feed;
        double uneaten = parts.Farm.Feeding.UneatenShare;
        double faecal = parts.Species.Length > 0 ? parts.Species[0].FaecalDryGramsPerGram : 0;
        double dryPerKilogram = UnitConstants.GramsPerKilogram * ((faecal * (1 - uneaten)) + (feed.DryMatterFraction * uneaten));
        var content = new double[Element.Count];
        if (dryPerKilogram <= 0)
        {
            return content;
        }

        content[Element.Phosphorus] = feed.GramsPerKilogram.Phosphorus * feed.SolidShare.Phosphorus / dryPerKilogram;
        content[Element.Potassium] = feed.GramsPerKilogram.Potassium * feed.SolidShare.Potassium / dryPerKilogram;
        content[Element.Calcium] = feed.GramsPerKilogram.Calcium * feed.SolidShare.Calcium / dryPerKilogram;
        content[Element.Sodium] = feed.GramsPerKilogram.Sodium * feed.SolidShare.Sodium / dryPerKilogram;
        content[Element.Chloride] = feed.GramsPerKilogram.Chloride * feed.SolidShare.Chloride / dryPerKilogram;
        return content;
    }
}
