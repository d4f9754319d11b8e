using FarmTwin.Farm.Description;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>The water of the farm as the record shows it: both loops, the tanks, the plant sump.</summary>
internal sealed class RecordedWater
{
    private readonly FarmContext _farm;

    /// <summary>Finds the loops and the tanks of a farm.</summary>
    public RecordedWater(FarmContext farm)
    {
        _farm = farm;
        FishLoop = new LoopWater(farm, LoopUses.Fish);
        PlantLoop = new LoopWater(farm, LoopUses.Plant);
        Tanks = new TankWater(farm);
        PlantSump = Array.FindIndex(farm.Parts.Basins, b => b.Use == BasinUse.PlantSump);
    }

    /// <summary>The loop of the fish.</summary>
    public LoopWater FishLoop { get; }

    /// <summary>The loop of the plants.</summary>
    public LoopWater PlantLoop { get; }

    /// <summary>The fish tanks.</summary>
    public TankWater Tanks { get; }

    /// <summary>Basin of the plant sump; negative where there is none.</summary>
    public int PlantSump { get; }

    /// <summary>Basin of the first tank; negative where there is none.</summary>
    public int FirstTank => Tanks.TankBasins.Length > 0 ? Tanks.TankBasins[0] : -1;

    /// <summary>pH of the plant loop, taken in its sump.</summary>
    public double PlantPH => PlantSump >= 0 ? _farm.State.Basins.PH[PlantSump] : double.NaN;

    /// <summary>Works out what the columns of a step show.</summary>
    public void Look()
    {
        FishLoop.Look();
        PlantLoop.Look();
        Tanks.Look();
    }
}
