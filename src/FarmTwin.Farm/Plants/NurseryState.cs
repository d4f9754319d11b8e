using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Plants;

/// <summary>What changes in the nursery beside its seedlings: trays of microgreens, light of today by tier, water in the trays, what was cut.</summary>
public sealed class NurseryState
{
    /// <summary>Makes an empty nursery.</summary>
    public NurseryState(FarmParts parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        int kinds = parts.MicrogreenPlans.Length;
        Light = new DayLight[parts.Tiers.Count * Math.Max(1, parts.Crops.Length)];
        TierKilowattHours = new double[parts.Tiers.Count];
        TraysSown = new double[kinds];
        TraysCut = new double[kinds];
        TraysRefused = new double[kinds];
        TraysFailed = new double[kinds];
        SeedGrams = new double[kinds];
        CutGrams = new double[kinds];
        SoldGrams = new double[kinds];
        LastTrayGrams = new double[kinds];
    }

    /// <summary>Trays of microgreens that stand now.</summary>
    public List<MicrogreenTrays> Microgreens { get; } = [];

    /// <summary>Light of today, [tier × crops + crop].</summary>
    public DayLight[] Light { get; }

    /// <summary>Water given by the clock and not yet transpired, L.</summary>
    public double TrayLitres { get; set; }

    /// <summary>Water that the plants of the nursery asked for today, L.</summary>
    public double AskedLitres { get; set; }

    /// <summary>Water that they transpired today, L.</summary>
    public double TranspiredLitres { get; set; }

    /// <summary>Days on which they got less than they asked for.</summary>
    public double DryDays { get; set; }

    /// <summary>Electricity of each tier's lamps, kWh.</summary>
    public double[] TierKilowattHours { get; }

    /// <summary>Trays sown, by kind.</summary>
    public double[] TraysSown { get; }

    /// <summary>Trays cut, by kind.</summary>
    public double[] TraysCut { get; }

    /// <summary>Trays that found no place, by kind.</summary>
    public double[] TraysRefused { get; }

    /// <summary>Trays on which nothing came up, by kind.</summary>
    public double[] TraysFailed { get; }

    /// <summary>Seed sown, g by kind.</summary>
    public double[] SeedGrams { get; }

    /// <summary>Fresh weight cut, g by kind.</summary>
    public double[] CutGrams { get; }

    /// <summary>Fresh weight of it that can be sold, g by kind.</summary>
    public double[] SoldGrams { get; }

    /// <summary>Fresh weight of a tray last cut, g by kind.</summary>
    public double[] LastTrayGrams { get; }

    /// <summary>Days on which trays of microgreens stood in water that fish live in.</summary>
    public double FishWaterDays { get; set; }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(NurseryState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Microgreens.Clear();
        foreach (MicrogreenTrays trays in other.Microgreens)
        {
            Microgreens.Add(trays.Clone());
        }

        other.Light.CopyTo(Light, 0);
        TrayLitres = other.TrayLitres;
        AskedLitres = other.AskedLitres;
        TranspiredLitres = other.TranspiredLitres;
        DryDays = other.DryDays;
        other.TierKilowattHours.CopyTo(TierKilowattHours, 0);
        other.TraysSown.CopyTo(TraysSown, 0);
        other.TraysCut.CopyTo(TraysCut, 0);
        other.TraysRefused.CopyTo(TraysRefused, 0);
        other.TraysFailed.CopyTo(TraysFailed, 0);
        other.SeedGrams.CopyTo(SeedGrams, 0);
        other.CutGrams.CopyTo(CutGrams, 0);
        other.SoldGrams.CopyTo(SoldGrams, 0);
        other.LastTrayGrams.CopyTo(LastTrayGrams, 0);
        FishWaterDays = other.FishWaterDays;
    }
}
