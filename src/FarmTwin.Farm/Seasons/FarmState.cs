using FarmTwin.Farm.Alarms;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>Everything that changes in a season, in one place: what a snapshot copies.</summary>
/// <remarks>Not thread-safe: one a run.</remarks>
public sealed class FarmState
{
    /// <summary>Makes the state of a farm before anything has happened.</summary>
    public FarmState(FarmParts parts, int valves)
    {
        ArgumentNullException.ThrowIfNull(parts);
        Basins = new Basins(parts.Basins.Length);
        TemperatureAfter = new double[parts.Basins.Length];
        Cohorts = new List<Cohort>[parts.Basins.Length];
        for (int b = 0; b < Cohorts.Length; b++)
        {
            Cohorts[b] = [];
        }

        Beds = new BedState[parts.Filters.Length];
        for (int f = 0; f < Beds.Length; f++)
        {
            Beds[f] = new BedState();
        }

        Mineralizers = new MineralizationState[parts.Mineralizers.Length];
        ValveFlow = new double[valves];
        HeaterHold = [.. parts.Heaters.Select(h => h.HoldCelsius)];
        Doses = new DoseState(parts.Basins.Length);
        Husbandry = new HusbandryState(parts) { SourceChlorineGramsPerLitre = Mishaps.SourceChlorine(parts.Farm.SourceWater) };
        Algae = new AlgaeState(parts.Basins.Length);
        Growing = new GrowingState(parts);
        Operations = new OperationsState(parts);
        Equipment = new EquipmentState(parts, valves);
        Labour = new LabourState(parts.Products.Count);
        Trade = new TradeState(parts.Products.Count);
        Money = new MoneyState(parts.Accounts);
        Probes = new ProbeState(parts.Alarms.ProbeNames.Length);
        Alarms = new AlarmBoard(parts.Alarms.Points.Length, parts.Alarms.People.Length);
        Fuel = new Energy.FuelTanks(parts.FuelTanks);
    }

    /// <summary>Bodies of water.</summary>
    public Basins Basins { get; }

    /// <summary>Temperatures at the end of the step being made up, °C.</summary>
    public double[] TemperatureAfter { get; }

    /// <summary>Fish by basin.</summary>
    public List<Cohort>[] Cohorts { get; }

    /// <summary>Bead beds.</summary>
    public BedState[] Beds { get; }

    /// <summary>Mineralization tanks.</summary>
    public MineralizationState[] Mineralizers { get; }

    /// <summary>Supplements on their way into the water.</summary>
    public DoseState Doses { get; }

    /// <summary>Quarantine, treatments, mishaps, welfare.</summary>
    public HusbandryState Husbandry { get; }

    /// <summary>Algae on water in the light.</summary>
    public AlgaeState Algae { get; }

    /// <summary>Plants.</summary>
    public GrowingState Growing { get; }

    /// <summary>House air and floor.</summary>
    public Climate.HouseState House { get; } = new();

    /// <summary>Exchange set on each valve, L/h each way.</summary>
    public double[] ValveFlow { get; }

    /// <summary>Temperature each water heater holds, °C.</summary>
    public double[] HeaterHold { get; }

    /// <summary>Fuel tanks.</summary>
    public Energy.FuelTanks Fuel { get; }

    /// <summary>Ledgers.</summary>
    public FarmBooks Books { get; } = new();

    /// <summary>Running sums.</summary>
    public FarmTotals Totals { get; private set; } = new();

    /// <summary>Where the work of the farm stands.</summary>
    public OperationsState Operations { get; }

    /// <summary>What is well and what is broken.</summary>
    public EquipmentState Equipment { get; }

    /// <summary>Faults of the season, in the order in which they began.</summary>
    public List<Fault> Faults { get; } = [];

    /// <summary>Hours that people spent.</summary>
    public LabourState Labour { get; }

    /// <summary>Goods offered and sold.</summary>
    public TradeState Trade { get; }

    /// <summary>Money.</summary>
    public MoneyState Money { get; }

    /// <summary>What the probes read.</summary>
    public ProbeState Probes { get; }

    /// <summary>Where the alarms stand.</summary>
    public AlarmBoard Alarms { get; }

    /// <summary>Takes over another's state.</summary>
    public void CopyFrom(FarmState other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Basins.CopyFrom(other.Basins);
        other.TemperatureAfter.CopyTo(TemperatureAfter, 0);
        for (int b = 0; b < Cohorts.Length; b++)
        {
            Cohorts[b].Clear();
            foreach (Cohort cohort in other.Cohorts[b])
            {
                Cohorts[b].Add(cohort.Clone());
            }
        }

        for (int f = 0; f < Beds.Length; f++)
        {
            Beds[f].CopyFrom(other.Beds[f]);
        }

        other.Mineralizers.CopyTo(Mineralizers, 0);
        other.ValveFlow.CopyTo(ValveFlow, 0);
        other.HeaterHold.CopyTo(HeaterHold, 0);
        Doses.CopyFrom(other.Doses);
        Husbandry.CopyFrom(other.Husbandry);
        Algae.CopyFrom(other.Algae);
        Growing.CopyFrom(other.Growing);
        House.CopyFrom(other.House);
        Books.CopyFrom(other.Books);
        Totals = other.Totals.Clone();
        Operations.CopyFrom(other.Operations);
        Equipment.CopyFrom(other.Equipment);
        Faults.Clear();
        foreach (Fault fault in other.Faults)
        {
            Faults.Add(fault.Clone());
        }

        Labour.CopyFrom(other.Labour);
        Trade.CopyFrom(other.Trade);
        Money.CopyFrom(other.Money);
        Probes.CopyFrom(other.Probes);
        Alarms.CopyFrom(other.Alarms);
        Fuel.CopyFrom(other.Fuel);
    }
}
