using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>What a step did while a fault was open, or shortly after: added to the fault's figures.</summary>
internal static class FaultObservation
{
    private const double SecondsPerMinute = 60;

    /// <summary>Sets the figures that a fault begins with.</summary>
    public static void Begin(FarmContext farm, Fault fault)
    {
        Basins basins = farm.State.Basins;
        for (int b = 0; b < basins.Count; b++)
        {
            fault.LastOxygen[b] = basins.Litres[b] > 0 ? basins.MilligramsPerLitre(b, Substance.Oxygen) : double.NaN;
            fault.LowestOxygen[b] = fault.LastOxygen[b];
            fault.LowestCelsius[b] = basins.Celsius[b];
            foreach (Cohort cohort in farm.State.Cohorts[b])
            {
                fault.BiomassGrams[b] += cohort.BiomassGrams;
                fault.FishOxygenGramsPerHour[b] += Metabolism.Preview(
                    cohort, farm.Parts.Species[cohort.SpeciesIndex], 1, FishProcess.WaterOf(basins, b)).OxygenDemandGrams;
            }

            for (int level = 0; level < Fault.OxygenLevels.Length; level++)
            {
                if (fault.LastOxygen[b] <= Fault.OxygenLevels[level])
                {
                    fault.MinutesTo[(b * Fault.OxygenLevels.Length) + level] = 0;
                }
            }
        }
    }

    /// <summary>Adds what the fault's own leak let out in a step.</summary>
    public static void CountLeak(FarmContext farm, Fault fault, double hours) =>
        fault.LeakedLitres += fault.Kind == FaultKind.Leak ? farm.Network.Leak[fault.Part] * hours : 0;

    /// <summary>Adds a step that ends now.</summary>
    public static void Look(FarmContext farm, Fault fault, long seconds, double hours)
    {
        FarmState state = farm.State;
        Basins basins = state.Basins;
        for (int b = 0; b < basins.Count; b++)
        {
            fault.SpilledLitres += farm.Network.Spill[b] * hours;
            fault.Died[b] += farm.Died[b];
            fault.DiedGrams[b] += farm.DiedGrams[b];
            if (basins.Litres[b] <= 0)
            {
                fault.LastOxygen[b] = double.NaN;
                continue;
            }

            double oxygen = basins.MilligramsPerLitre(b, Substance.Oxygen);
            double tan = basins.MilligramsPerLitre(b, Substance.Tan);
            double unionized = tan * Ammonia.UnionizedFraction(basins.PH[b], basins.Celsius[b]);
            TimesTo(fault, b, oxygen, seconds, hours);
            fault.LowestOxygen[b] = double.IsNaN(fault.LowestOxygen[b]) ? oxygen : Math.Min(fault.LowestOxygen[b], oxygen);
            fault.LowestCelsius[b] = Math.Min(fault.LowestCelsius[b], basins.Celsius[b]);
            fault.HighestCarbonDioxide[b] = Math.Max(fault.HighestCarbonDioxide[b], basins.CarbonDioxideMoles[b] * UnitConstants.CarbonDioxideMilligramsPerMole);
            fault.HighestUnionizedAmmonia[b] = Math.Max(fault.HighestUnionizedAmmonia[b], unionized);
            fault.StillHours[b] += farm.Network.Outflow(b) <= 0 ? hours : 0;
            fault.AnoxicHours[b] += oxygen < farm.Parts.Faults.AnoxicOxygen ? hours : 0;
            bool bad = oxygen < farm.Parts.Faults.RootsOxygen
                || basins.Litres[b] < farm.Parts.Faults.RootsDryShare * farm.Network.NormalLitres[b];
            fault.BadRootHours[b] = bad ? fault.BadRootHours[b] + hours : 0;
            fault.LongestBadRootHours[b] = Math.Max(fault.LongestBadRootHours[b], fault.BadRootHours[b]);
        }

        fault.PlantsAtRisk = Math.Max(fault.PlantsAtRisk, PlantsAtRisk(farm, fault));
    }

    // Straight between two looks, a minute apart where it matters.
    private static void TimesTo(Fault fault, int b, double oxygen, long seconds, double hours)
    {
        double before = double.IsNaN(fault.LastOxygen[b]) ? oxygen : fault.LastOxygen[b];
        for (int level = 0; level < Fault.OxygenLevels.Length; level++)
        {
            ref double minutes = ref fault.MinutesTo[(b * Fault.OxygenLevels.Length) + level];
            double target = Fault.OxygenLevels[level];
            if (double.IsNaN(minutes) && oxygen <= target)
            {
                double ago = before > oxygen ? (target - oxygen) / (before - oxygen) : 0;
                minutes = ((seconds - fault.BeganSeconds) / SecondsPerMinute) - (Math.Clamp(ago, 0, 1) * hours * UnitConstants.SecondsPerHour / SecondsPerMinute);
            }
        }

        fault.LastOxygen[b] = oxygen;
    }

    private static double PlantsAtRisk(FarmContext farm, Fault fault)
    {
        double plants = 0;
        int[] lanes = farm.Parts.LaneBasin;
        for (int lane = 0; lane < lanes.Length; lane++)
        {
            plants += IsTooLong(farm, fault, lanes[lane]) ? farm.State.Growing.Lanes[lane].Standing : 0;
        }

        for (int bed = 0; bed < farm.State.Growing.Beds.Length; bed++)
        {
            plants += IsTooLong(farm, fault, farm.Parts.BedBasin[bed]) ? farm.State.Growing.Beds[bed].Plants.Plants : 0;
        }

        int[] troughs = farm.Parts.TroughBasin;
        for (int trough = 0; trough < troughs.Length; trough++)
        {
            for (int crop = 0; IsTooLong(farm, fault, troughs[trough]) && crop < farm.Parts.CropNames.Length; crop++)
            {
                plants += farm.State.Growing.Troughs[trough].Standing(crop);
            }
        }

        return plants;
    }

    private static bool IsTooLong(FarmContext farm, Fault fault, int basin) =>
        fault.BadRootHours[basin] > farm.Parts.Faults.RootsBearHours;
}
