namespace FarmTwin.Farm.Description;

/// <summary>What a basin is for; decides its defaults and where it is shown.</summary>
public enum BasinUse
{
    /// <summary>Fish live in it.</summary>
    FishTank,

    /// <summary>The chamber of a filter.</summary>
    Filter,

    /// <summary>A sump of the fish loop.</summary>
    FishSump,

    /// <summary>A sump of the plant loop.</summary>
    PlantSump,

    /// <summary>A raft lane.</summary>
    Lane,

    /// <summary>A transplant trough.</summary>
    Trough,

    /// <summary>A media bed.</summary>
    MediaBed,

    /// <summary>The nursery's own reservoir.</summary>
    NurseryReservoir,

    /// <summary>A mineralization tank.</summary>
    Mineralizer,

    /// <summary>Holds sludge while the mineralization tank settles.</summary>
    HoldingTank,

    /// <summary>Keeps newly delivered fish apart; part of neither loop.</summary>
    Quarantine,
}

/// <summary>Which uses of basins make up a loop.</summary>
public static class LoopUses
{
    /// <summary>Basins of the fish loop.</summary>
    public static IReadOnlyList<BasinUse> Fish { get; } = [BasinUse.FishTank, BasinUse.Filter, BasinUse.FishSump];

    /// <summary>Basins of the plant loop.</summary>
    public static IReadOnlyList<BasinUse> Plant { get; } = [BasinUse.PlantSump, BasinUse.Lane, BasinUse.Trough, BasinUse.MediaBed];
}

/// <summary>A body of water.</summary>
public sealed record BasinDescription
{
    /// <summary>What it is for.</summary>
    [Input("use", "What it is for")]
    public required BasinUse Use { get; init; }

    /// <summary>Water at the normal level, L.</summary>
    [Input("volume", "Water at the normal level", Unit = "L", Low = 1, High = 1e6)]
    public required double VolumeLitres { get; init; }

    /// <summary>Water at the start; the normal level when left out.</summary>
    [Input("initialVolume", "Water at the start; the normal level when left out", Unit = "L", Low = 0, High = 1e6)]
    public double? InitialVolumeLitres { get; init; }

    /// <summary>Water with which it is filled on day 0, L: none in tanks that wait for sludge.</summary>
    public double FirstFillingLitres => InitialVolumeLitres ?? (Use is BasinUse.Mineralizer or BasinUse.HoldingTank ? 0 : VolumeLitres);

    /// <summary>Water to the brim, L; a tenth above the normal level when left out.</summary>
    [Input("brim", "Water to the brim; a tenth above the normal level when left out", Unit = "L", Low = 1, High = 1.2e6)]
    public double? BrimLitres { get; init; }

    /// <summary>Surface, m².</summary>
    [Input("surface", "Water surface", Unit = "m2", Low = 0.01, High = 5000)]
    public required double SurfaceSquareMetres { get; init; }

    /// <summary>Share of the surface that is covered by a lid or rafts.</summary>
    [Input("covered", "Share of the surface under a lid or rafts", Unit = "1", Low = 0, High = 1)]
    public double CoveredShare { get; init; }

    /// <summary>Conductance of walls, floor and lid to the air, W/K.</summary>
    [Input("wallLoss", "Heat conductance of walls, floor and lid to the house air", Unit = "W/K", Low = 0, High = 1e5)]
    public required double WallWattsPerKelvin { get; init; }

    /// <summary>Wetted surface on which films grow, m² (walls, raft undersides; beads and roots are added).</summary>
    [Input("wettedSurface", "Wetted surface of walls and raft undersides on which films grow", Unit = "m2", Low = 0, High = 1e5)]
    public required double WettedSquareMetres { get; init; }

    /// <summary>Air through its diffusers, L/min.</summary>
    [Input("air", "Air through its diffusers", Unit = "L/min", Low = 0, High = 1e5)]
    public double AirLitresPerMinute { get; init; }

    /// <summary>Depth of the diffusers, m.</summary>
    [Input("diffuserDepth", "Water above the diffusers", Unit = "m", Low = 0, High = 10)]
    public double DiffuserDepthMetres { get; init; } = 0.5;

    /// <summary>The blower that feeds the diffusers.</summary>
    [Input("blower", "The blower that feeds its diffusers", Of = "blowers")]
    public string? Blower { get; init; }

    /// <summary>Whether a float valve keeps the normal level with source water.</summary>
    [Input("floatValve", "Whether a float valve keeps the normal level with source water")]
    public bool FloatValve { get; init; }

    /// <summary>Most that the float valve lets in, L/h.</summary>
    [Input("floatValveFlow", "Most that the float valve lets in", Unit = "L/h", Low = 1, High = 1e6)]
    public double FloatValveLitresPerHour { get; init; } = 600;

    /// <summary>Whether the float valve is an electric one, which stays shut without power.</summary>
    [Input("floatValveNeedsPower", "Whether the float valve is an electric one, which stays shut without power")]
    public bool FloatValveNeedsPower { get; init; }

    /// <summary>Temperature at the start, °C.</summary>
    [Input("initialTemperature", "Temperature at the start", Unit = "°C", Low = 0, High = 45)]
    public double InitialTemperatureCelsius { get; init; } = 15;

    /// <summary>Share of its water that stands in settled pockets and denitrifies.</summary>
    [Input("pockets", "Share of its water that stands in settled pockets without air", Unit = "1", Low = 0, High = 0.5)]
    public double PocketShare { get; init; }
}

/// <summary>What moves the water in a pipe.</summary>
public enum PipeDrive
{
    /// <summary>A pump.</summary>
    Pump,

    /// <summary>Gravity: what overflows its basin.</summary>
    Overflow,
}

/// <summary>A pipe between two basins.</summary>
public sealed record PipeDescription
{
    /// <summary>Basin it leaves.</summary>
    [Input("from", "Basin it leaves", Of = "basins")]
    public required string From { get; init; }

    /// <summary>Basin it enters.</summary>
    [Input("to", "Basin it enters", Of = "basins")]
    public required string To { get; init; }

    /// <summary>What moves the water.</summary>
    [Input("drive", "What moves the water")]
    public required PipeDrive Drive { get; init; }

    /// <summary>Pumped flow, L/h.</summary>
    [Input("flow", "Pumped flow", Unit = "L/h", Low = 0, High = 1e6)]
    public double FlowLitresPerHour { get; init; }

    /// <summary>The filter whose held solids throttle this pumped flow.</summary>
    [Input("throttledBy", "The filter whose held solids throttle this pumped flow", Of = "filters")]
    public string? ThrottledBy { get; init; }

    /// <summary>The valve it passes; without one it takes the rest of its basin's overflow.</summary>
    [Input("valve", "The valve it passes; a pipe without one takes the rest of the overflow", Of = "valves")]
    public string? Valve { get; init; }

    /// <summary>Electric power of the pump, W.</summary>
    [Input("power", "Electric power of its pump", Unit = "W", Low = 0, High = 1e5)]
    public double PowerWatts { get; init; }

    /// <summary>Water that runs back through the pipe when its pump stops, L.</summary>
    [Input("drainBack", "Water that runs back through the pipe into the basin it leaves when its pump stops", Unit = "L", Low = 0, High = 1e5)]
    public double DrainBackLitres { get; init; }

    /// <summary>Whether a check valve keeps it from running back.</summary>
    [Input("checkValve", "Whether a check valve keeps the water from running back")]
    public bool CheckValve { get; init; }

    /// <summary>Length, m; the design sheet reckons the head from it.</summary>
    [Input("length", "Length of the pipe; with its bore and lift the design sheet reckons the head", Unit = "m", Low = 0, High = 1000)]
    public double? LengthMetres { get; init; }

    /// <summary>Inner diameter, m.</summary>
    [Input("bore", "Inner diameter of the pipe", Unit = "m", Low = 0.003, High = 2)]
    public double? BoreMetres { get; init; }

    /// <summary>Height from the water it is drawn from to where it leaves the pipe, m.</summary>
    [Input("lift", "Height from the water that it is drawn from to where it leaves the pipe, or to the water that it enters", Unit = "m", Low = 0, High = 100)]
    public double? LiftMetres { get; init; }
}

/// <summary>A valve on one or more pipes.</summary>
public sealed record ValveDescription
{
    /// <summary>What it does.</summary>
    [Input("about", "What it joins")]
    public string About { get; init; } = string.Empty;
}

/// <summary>A blower.</summary>
public sealed record BlowerDescription
{
    /// <summary>Electric power, W.</summary>
    [Input("power", "Electric power", Unit = "W", Low = 0, High = 1e5)]
    public required double PowerWatts { get; init; }
}

/// <summary>A bead filter on one basin.</summary>
public sealed record BeadFilterDescription
{
    /// <summary>Its chamber.</summary>
    [Input("basin", "The chamber that holds its beads", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Bead volume, L.</summary>
    [Input("beads", "Volume of the beads", Unit = "L", Low = 1, High = 1e5)]
    public required double BeadsLitres { get; init; }

    /// <summary>Medium.</summary>
    [Input("medium", "The medium", LibraryFolder = "media")]
    public string Medium { get; init; } = "beads-3mm";

    /// <summary>Share of the mature film that the seeded media bring.</summary>
    [Input("matureMedia", "Share of the bed that is mature media from a running farm", Unit = "1", Low = 0, High = 1)]
    public double MatureMediaShare { get; init; }

    /// <summary>Longest time between washes, d.</summary>
    [Input("washEvery", "Longest time between washes", Unit = "d", Low = 0.1, High = 60)]
    public double WashEveryDays { get; init; } = 2;

    /// <summary>Wash when the flow has fallen to this share.</summary>
    [Input("washAtFlow", "Wash earlier when the flow has fallen to this share of the clean flow", Unit = "1", Low = 0.1, High = 1)]
    public double WashAtFlowShare { get; init; } = 0.75;

    /// <summary>Water leaving with a wash, L.</summary>
    [Input("washWater", "Water that leaves with a wash", Unit = "L", Low = 0, High = 1e4)]
    public required double WashWaterLitres { get; init; }

    /// <summary>Share of the film stripped by a wash.</summary>
    [Input("strips", "Share of the film stripped by a wash", Unit = "1", Low = 0, High = 0.9)]
    public double StripShare { get; init; } = 0.02;

    /// <summary>Where the sludge goes.</summary>
    [Input("sludgeTo", "The basin that takes the sludge; out of the farm, to compost, when left out", Of = "basins")]
    public string? SludgeTo { get; init; }

    /// <summary>Where it goes while that basin settles.</summary>
    [Input("meanwhileTo", "The basin that takes the sludge while the first one settles or is full", Of = "basins")]
    public string? MeanwhileTo { get; init; }
}

/// <summary>A mineralization tank and its cycle.</summary>
public sealed record MineralizerDescription
{
    /// <summary>The tank.</summary>
    [Input("basin", "The tank", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Where sludge waits while it settles.</summary>
    [Input("holding", "Where sludge waits while it settles", Of = "basins")]
    public string? Holding { get; init; }

    /// <summary>Where clear water goes.</summary>
    [Input("decantTo", "The basin that takes the clear water", Of = "basins")]
    public required string DecantTo { get; init; }

    /// <summary>Air stays on at least this long, d.</summary>
    [Input("aerate", "Air stays on for at least", Unit = "d", Low = 0, High = 60)]
    public double AerateDays { get; init; } = 7;

    /// <summary>Water above which a settling is started.</summary>
    [Input("settleAbove", "Share of the volume from which on it is settled and decanted", Unit = "1", Low = 0, High = 1)]
    public double SettleAboveShare { get; init; } = 0.7;

    /// <summary>Time without air before decanting, h.</summary>
    [Input("settle", "Time without air before decanting", Unit = "h", Low = 1, High = 96)]
    public double SettleHours { get; init; } = 16;

    /// <summary>Clear water is not let out above this TAN, mg N/L.</summary>
    [Input("decantBelowTan", "No decant above this TAN of the tank", Unit = "mg N/L", Low = 0, High = 500)]
    public double DecantBelowTanMilligramsNPerLitre { get; init; } = 15;

    /// <summary>Clear water is not let out above this nitrite, mg N/L.</summary>
    [Input("decantBelowNitrite", "No decant above this nitrite of the tank", Unit = "mg N/L", Low = 0, High = 500)]
    public double DecantBelowNitriteMilligramsNPerLitre { get; init; } = 5;

    /// <summary>Solids above which thick sludge is taken to compost, g/L.</summary>
    [Input("thickenAbove", "Thick sludge goes to compost when the settled tank holds more solids than this", Unit = "g/L", Low = 1, High = 100)]
    public double ThickenAboveGramsPerLitre { get; init; } = 8;

    /// <summary>Share of the settled blanket taken to compost at a time.</summary>
    [Input("compostShare", "Share of the settled blanket taken to compost at a time", Unit = "1", Low = 0, High = 1)]
    public double CompostShare { get; init; } = 0.5;
}

/// <summary>A heater of water.</summary>
public sealed record WaterHeaterDescription
{
    /// <summary>The basin it heats through its exchanger.</summary>
    [Input("basin", "The basin that it heats through its exchanger", Of = "basins")]
    public required string Basin { get; init; }

    /// <summary>Output, kW.</summary>
    [Input("output", "Heat output", Unit = "kW", Low = 0.01, High = 2000)]
    public required double OutputKilowatts { get; init; }

    /// <summary>The basin whose temperature is held (the heated one when left out).</summary>
    [Input("hold", "Water temperature that it holds", Unit = "°C", Low = 0, High = 40)]
    public required double HoldCelsius { get; init; }

    /// <summary>The temperature probe that its thermostat reads; a true thermostat when left out.</summary>
    [Input("thermostat", "The temperature probe in its basin that its thermostat reads; a true thermostat when left out", Of = "probes")]
    public string? Thermostat { get; init; }

    /// <summary>Fuel.</summary>
    [Input("fuel", "The fuel it burns", LibraryFolder = "fuels")]
    public string Fuel { get; init; } = "propane";

    /// <summary>Heat out per heat in.</summary>
    [Input("efficiency", "Heat out per heat of the fuel, on the higher heating value; of a heat pump at 7 °C outside; the fuel's usual one when left out", Unit = "1", Low = 0.3, High = 6)]
    public double? Efficiency { get; init; }

    /// <summary>Temperature of the hot loop, °C.</summary>
    [Input("hotLoop", "Temperature of the hot loop", Unit = "°C", Low = 25, High = 90)]
    public double HotLoopCelsius { get; init; } = 60;

    /// <summary>Flow of the hot loop, L/h.</summary>
    [Input("hotFlow", "Flow of the hot loop", Unit = "L/h", Low = 1, High = 1e5)]
    public double HotFlowLitresPerHour { get; init; } = 600;

    /// <summary>Conductance of the exchanger, W/K.</summary>
    [Input("exchanger", "Conductance of the exchanger", Unit = "W/K", Low = 1, High = 1e6)]
    public double ExchangerWattsPerKelvin { get; init; } = 600;

    /// <summary>Electric power of its circulation pump, W.</summary>
    [Input("power", "Electric power of its circulation pump", Unit = "W", Low = 0, High = 5000)]
    public double PowerWatts { get; init; } = 45;
}
