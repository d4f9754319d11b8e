using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>What husbandry and its mishaps leave behind: treatments, sprays, missed chores, covers taken off, welfare. Copied whole for a snapshot.</summary>
public sealed class HusbandryState
{
    /// <summary>Number of duties.</summary>
    public const int Duties = (int)Duty.Round + 1;

    /// <summary>Makes the state of a farm on which nothing went wrong yet.</summary>
    public HusbandryState(FarmParts parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        int basins = parts.Basins.Length;
        TreatedDay = new double[basins];
        Array.Fill(TreatedDay, double.NegativeInfinity);
        DiedToday = new double[basins];
        WithheldToday = new bool[basins];
        UncoveredShare = new double[basins];
        UncoveredUntilDay = new double[basins];
        CaptureShare = new double[parts.Filters.Length];
        Array.Fill(CaptureShare, 1);
        BypassedUntilDay = new double[parts.Filters.Length];
        MissedUntilSeconds = new long[Duties];
    }

    /// <summary>Day of the last treatment of each basin.</summary>
    public double[] TreatedDay { get; }

    /// <summary>Fish of each basin that died since midnight.</summary>
    public double[] DiedToday { get; }

    /// <summary>The dead by cause.</summary>
    public Fish.DeathTally Deaths { get; } = new();

    /// <summary>Basins in which feed was withheld since midnight.</summary>
    public bool[] WithheldToday { get; }

    /// <summary>Day of the last spray on the plants.</summary>
    public double SprayedDay { get; set; } = double.NegativeInfinity;

    /// <summary>Share of each basin's cover that is off.</summary>
    public double[] UncoveredShare { get; }

    /// <summary>Day on which it is put back.</summary>
    public double[] UncoveredUntilDay { get; }

    /// <summary>Share of the flow through each filter that passes its bed.</summary>
    public double[] CaptureShare { get; }

    /// <summary>Day on which all of it does again.</summary>
    public double[] BypassedUntilDay { get; }

    /// <summary>Until when each duty is missed, seconds.</summary>
    public long[] MissedUntilSeconds { get; }

    /// <summary>Single duties that were missed.</summary>
    public double DutiesMissed { get; set; }

    /// <summary>Ration of an overfeeding, share of the appetite; 0 while there is none.</summary>
    public double OverfeedRation { get; set; }

    /// <summary>Day on which it ends.</summary>
    public double OverfeedUntilDay { get; set; }

    /// <summary>Residual chlorine of the source water just now, g/L.</summary>
    public double SourceChlorineGramsPerLitre { get; set; }

    /// <summary>Day from which it is neutralised again.</summary>
    public double ChlorineUntilDay { get; set; }

    /// <summary>Days of single tanks on which feed was withheld because of the water.</summary>
    public double WithheldTankDays { get; set; }

    /// <summary>Days of single tanks on which more fish died than is let pass.</summary>
    public double HighDeathTankDays { get; set; }

    /// <summary>Batches that went through quarantine.</summary>
    public double QuarantinesEnded { get; set; }

    /// <summary>Times that one was prolonged.</summary>
    public double QuarantinesProlonged { get; set; }

    /// <summary>Water changed in quarantine, L.</summary>
    public double QuarantineChangedLitres { get; set; }

    /// <summary>Whether a duty is missed now.</summary>
    public bool Misses(Duty duty, long seconds) => MissedUntilSeconds[(int)duty] > seconds;

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(HusbandryState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        other.TreatedDay.CopyTo(TreatedDay, 0);
        other.DiedToday.CopyTo(DiedToday, 0);
        Deaths.CopyFrom(other.Deaths);
        other.WithheldToday.CopyTo(WithheldToday, 0);
        SprayedDay = other.SprayedDay;
        other.UncoveredShare.CopyTo(UncoveredShare, 0);
        other.UncoveredUntilDay.CopyTo(UncoveredUntilDay, 0);
        other.CaptureShare.CopyTo(CaptureShare, 0);
        other.BypassedUntilDay.CopyTo(BypassedUntilDay, 0);
        other.MissedUntilSeconds.CopyTo(MissedUntilSeconds, 0);
        DutiesMissed = other.DutiesMissed;
        OverfeedRation = other.OverfeedRation;
        OverfeedUntilDay = other.OverfeedUntilDay;
        SourceChlorineGramsPerLitre = other.SourceChlorineGramsPerLitre;
        ChlorineUntilDay = other.ChlorineUntilDay;
        WithheldTankDays = other.WithheldTankDays;
        HighDeathTankDays = other.HighDeathTankDays;
        QuarantinesEnded = other.QuarantinesEnded;
        QuarantinesProlonged = other.QuarantinesProlonged;
        QuarantineChangedLitres = other.QuarantineChangedLitres;
    }
}
