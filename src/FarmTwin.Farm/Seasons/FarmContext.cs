using FarmTwin.Engine;
using FarmTwin.Engine.Transport;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>What every process of a step sees: the parts, the state, the pipes and the balance being made up.</summary>
/// <remarks>Processes meet here and in the events; none calls another.</remarks>
public sealed class FarmContext
{
    /// <summary>Gathers them.</summary>
    public FarmContext(FarmParts parts, FarmState state, FlowNetwork network)
    {
        Parts = parts;
        State = state;
        Network = network;
        Step = new WaterStep(parts.Basins.Length);
        OxygenByFish = Fours.Zeros(parts.Basins.Length);
        OxygenBySolids = Fours.Zeros(parts.Basins.Length);
        OxygenByRoots = Fours.Zeros(parts.Basins.Length);
        CarbonByFish = Fours.Zeros(parts.Basins.Length);
        Died = new double[parts.Basins.Length];
        DiedGrams = new double[parts.Basins.Length];
        SuspendedNitrification = Fours.Zeros(parts.Basins.Length);
        LampPhotons = new double[parts.Basins.Length];
        LitShare = new double[parts.Basins.Length];
        LitHoursOfDay = new double[parts.Basins.Length];
        FuelTaken = new double[parts.FuelTanks.Length];
        TierLight = new Climate.TierLight[parts.Tiers.Count];
        Warmth = new Warmth(parts);
        Chemistry = new WaterChemistry(parts.Basins.Length);
        Running = new RunningEquipment(parts, state, network);
        Loops = new Loops(this);
    }

    /// <summary>What does not change.</summary>
    public FarmParts Parts { get; }

    /// <summary>What changes.</summary>
    public FarmState State { get; }

    /// <summary>The pipes.</summary>
    public FlowNetwork Network { get; }

    /// <summary>The balance of the step.</summary>
    public WaterStep Step { get; }

    /// <summary>Oxygen that the fish of each basin need, g/h.</summary>
    public double[] OxygenByFish { get; }

    /// <summary>Oxygen that the breakdown of solids in each basin would take, g/h.</summary>
    public double[] OxygenBySolids { get; }

    /// <summary>Oxygen that the roots and microbes of each media bed would breathe, g/h.</summary>
    public double[] OxygenByRoots { get; }

    /// <summary>Carbon that the fish of each basin breathe out when they get all the oxygen they need, g C/h.</summary>
    public double[] CarbonByFish { get; }

    /// <summary>Fish of each basin that died in the last step for a cause that base mortality does not explain.</summary>
    public double[] Died { get; }

    /// <summary>Their weight, g.</summary>
    public double[] DiedGrams { get; }

    /// <summary>The events to come. Set once, when the clock has been made.</summary>
    public Calendar Calendar { get; internal set; } = new();

    /// <summary>Nitrifying capacity in suspension, mg N/(L h).</summary>
    public double[] SuspendedNitrification { get; }

    /// <summary>What runs just now.</summary>
    public RunningEquipment Running { get; }

    /// <summary>Which basins circulate as one water.</summary>
    public Loops Loops { get; }

    /// <summary>What depends on the basins' temperature alone.</summary>
    public Warmth Warmth { get; }

    /// <summary>What depends on the basins' temperature, pH and ions at the start of the step.</summary>
    public WaterChemistry Chemistry { get; }

    /// <summary>Light of the lamps over each basin's crop, mean of the step, µmol/(m² s).</summary>
    public double[] LampPhotons { get; }

    /// <summary>Share of the step in which each basin's crop is lit, by sun or lamps.</summary>
    public double[] LitShare { get; }

    /// <summary>Lit hours of this day over each basin's crop, h.</summary>
    public double[] LitHoursOfDay { get; }

    /// <summary>Fuel taken from each tank in this step, L.</summary>
    public double[] FuelTaken { get; }

    /// <summary>Light of the nursery's tiers.</summary>
    public Climate.TierLight[] TierLight { get; }

    /// <summary>Water surface of a basin that is open just now, m².</summary>
    public double OpenSquareMetres(int basin) => Parts.Basins[basin].SurfaceSquareMetres
        * (1 - (Parts.Basins[basin].CoveredShare * (1 - State.Husbandry.UncoveredShare[basin])));

    /// <summary>Clears the demands of the last step.</summary>
    public void ClearDemands()
    {
        Array.Clear(FuelTaken);
        Array.Clear(OxygenByFish);
        Array.Clear(OxygenBySolids);
        Array.Clear(OxygenByRoots);
        Array.Clear(CarbonByFish);
        Array.Clear(SuspendedNitrification);
    }
}
