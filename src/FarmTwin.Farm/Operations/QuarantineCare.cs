using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Water changes of quarantine tanks, on what the morning's test reads.</summary>
public sealed class QuarantineCare : FarmWork
{
    private readonly WaterChanges _changes;

    /// <summary>Makes it.</summary>
    public QuarantineCare(FarmContext farm, FarmLog log, WaterChanges changes)
        : base(farm, log) => _changes = changes;

    /// <summary>Whether water of a basin may not reach plants: treated within the days of the gate, or with salt in it.</summary>
    /// <param name="farm">The farm.</param>
    /// <param name="basin">The basin.</param>
    /// <param name="day">Today.</param>
    public static bool IsTreated(FarmContext farm, int basin, double day)
    {
        ArgumentNullException.ThrowIfNull(farm);
        CouplingGatesDescription gates = farm.Parts.Farm.Coupling?.Gates ?? new CouplingGatesDescription();
        return day - farm.State.Husbandry.TreatedDay[basin] < gates.TreatmentDays || SaltGramsPerLitre(farm.State.Basins, basin) > gates.SaltGramsPerLitre;
    }

    /// <summary>Sodium chloride that the water's sodium and chloride would make, g/L.</summary>
    public static double SaltGramsPerLitre(Basins basins, int basin)
    {
        ArgumentNullException.ThrowIfNull(basins);
        double moles = Math.Min(
            basins.MilligramsPerLitre(basin, Substance.Sodium) / UnitConstants.AtomicWeight.Sodium,
            basins.MilligramsPerLitre(basin, Substance.Chloride) / UnitConstants.AtomicWeight.Chlorine);
        return moles * (UnitConstants.AtomicWeight.Sodium + UnitConstants.AtomicWeight.Chlorine) / UnitConstants.GramsPerKilogram;
    }

    /// <summary>Tests the tanks and changes water where it must be.</summary>
    public void MorningRound(long seconds)
    {
        for (int q = 0; q < Parts.Quarantines.Length; q++)
        {
            QuarantineDescription quarantine = Parts.Quarantines[q];
            int basin = Parts.QuarantineBasin[q];
            double tan = State.Basins.MilligramsPerLitre(basin, Substance.Tan);
            double nitrite = State.Basins.MilligramsPerLitre(basin, Substance.Nitrite);
            bool stocked = State.Cohorts[basin].Count > 0;
            Spend(Chore.WatchQuarantine, stocked ? 1 : 0);
            if (stocked && (tan > quarantine.ChangeAboveTan
                || nitrite > quarantine.ChangeAboveNitrite || State.Basins.PH[basin] < quarantine.ChangeBelowPH))
            {
                Change(quarantine, basin, $"TAN {tan:0.0}, nitrite {nitrite:0.0} mg N/L, pH {State.Basins.PH[basin]:0.0}", seconds);
            }
        }
    }

    private void Change(QuarantineDescription quarantine, int basin, string why, long seconds)
    {
        Basins basins = State.Basins;
        double litres = quarantine.ChangeShare * basins.Litres[basin];
        bool treated = IsTreated(Farm, basin, DayOf(seconds));
        string gone = treated ? "out of the farm: it was treated" : "out of the farm, to a soil crop";
        if (!treated && quarantine.WaterTo is { } name && _changes.Room(Parts.BasinIndex(name)) >= litres)
        {
            basins.Move(basin, Parts.BasinIndex(name), litres);
            gone = $"to {name}";
        }
        else
        {
            _changes.LeadOut(basin, litres);
        }

        double missing = Parts.Basins[basin].VolumeLitres - basins.Litres[basin];
        string from = "source water";
        if (quarantine.WaterFrom is { } source)
        {
            // A float valve makes good what is taken; a sump is never drawn below half.
            int sump = Parts.BasinIndex(source);
            basins.Move(sump, basin, Math.Min(missing, basins.Litres[sump] / 2));
            from = source;
        }
        else if (missing > 0)
        {
            _changes.LetIn(basin, missing);
        }

        Spend(Chore.ChangeWater, 1);
        State.Husbandry.QuarantineChangedLitres += litres;
        Log.Add(seconds, "change quarantine water", Parts.BasinNames[basin], litres, "L", $"{why}; {gone}, new from {from}");
    }
}
