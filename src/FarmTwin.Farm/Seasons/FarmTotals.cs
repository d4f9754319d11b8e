namespace FarmTwin.Farm.Seasons;

/// <summary>Running sums of a season: what was fed, harvested, burnt and used. Copied whole for a snapshot.</summary>
public sealed class FarmTotals
{
    /// <summary>Feed offered, g.</summary>
    public double FeedGrams { get; set; }

    /// <summary>Feed offered today, g.</summary>
    public double FeedTodayGrams { get; set; }

    /// <summary>Feed of the day before, g.</summary>
    public double FeedYesterdayGrams { get; set; }

    /// <summary>Feed that whoever heeds the water cut or withheld, g.</summary>
    public double FeedWithheldGrams { get; set; }

    /// <summary>Fish delivered.</summary>
    public double FishDelivered { get; set; }

    /// <summary>Weight of the fish delivered, g.</summary>
    public double FishDeliveredGrams { get; set; }

    /// <summary>Fish sold.</summary>
    public double FishSold { get; set; }

    /// <summary>Weight of the fish sold, g.</summary>
    public double FishSoldGrams { get; set; }

    /// <summary>Fish that died.</summary>
    public double FishDied { get; set; }

    /// <summary>Weight of the fish that died, g.</summary>
    public double FishDiedGrams { get; set; }

    /// <summary>Deaths of today that base mortality does not explain.</summary>
    public double UnexplainedDeathsToday { get; set; }

    /// <summary>Deaths of the day before that base mortality does not explain.</summary>
    public double UnexplainedDeathsYesterday { get; set; }

    /// <summary>Water that ran over a brim and out of the farm, or was led out of it, L.</summary>
    public double SpilledLitres { get; set; }

    /// <summary>Water that leaked out of basins, L.</summary>
    public double LeakedLitres { get; set; }

    /// <summary>Part of what spilled that the event record has told already, L.</summary>
    public double SpilledLitresLogged { get; set; }

    /// <summary>Ammonia nitrogen oxidized, g N.</summary>
    public double NitrifiedGrams { get; set; }

    /// <summary>Nitrogen gas, g N.</summary>
    public double DenitrifiedGrams { get; set; }

    /// <summary>Source water, L.</summary>
    public double SourceLitres { get; set; }

    /// <summary>Evaporation, L.</summary>
    public double EvaporatedLitres { get; set; }

    /// <summary>Transpiration, L.</summary>
    public double TranspiredLitres { get; set; }

    /// <summary>Heat given by the water heaters, MJ.</summary>
    public double WaterHeatMegajoules { get; set; }

    /// <summary>Heat given by the air heater, MJ.</summary>
    public double AirHeatMegajoules { get; set; }

    /// <summary>Fuel of the air heater, in its sale unit.</summary>
    public double AirFuelUnits { get; set; }

    /// <summary>Carbon dioxide from fuel, kg.</summary>
    public double FuelCarbonDioxideKilograms { get; set; }

    /// <summary>Electricity of pumps, kWh.</summary>
    public double PumpKilowattHours { get; set; }

    /// <summary>Electricity of blowers, kWh.</summary>
    public double BlowerKilowattHours { get; set; }

    /// <summary>Electricity of lamps over rafts, kWh.</summary>
    public double LampKilowattHours { get; set; }

    /// <summary>Electricity of the nursery, kWh.</summary>
    public double NurseryKilowattHours { get; set; }

    /// <summary>Electricity of a heat pump for the water's heat, kWh.</summary>
    public double WaterHeatPumpKilowattHours { get; set; }

    /// <summary>Electricity of a heat pump for the air's heat, kWh.</summary>
    public double AirHeatPumpKilowattHours { get; set; }

    /// <summary>Electricity of the exhaust fans, kWh.</summary>
    public double FanKilowattHours { get; set; }

    /// <summary>Electricity of the pad's pump, kWh.</summary>
    public double PadKilowattHours { get; set; }

    /// <summary>Source water that the pad used, bled water included, L.</summary>
    public double PadLitres { get; set; }

    /// <summary>Hours of wet pad.</summary>
    public double PadHours { get; set; }

    /// <summary>Hours of airing against humidity.</summary>
    public double PurgeHours { get; set; }

    /// <summary>Heat of the air heater for it, MJ.</summary>
    public double PurgeHeatMegajoules { get; set; }

    /// <summary>Fuel of the air heater for it, in its sale unit.</summary>
    public double PurgeFuelUnits { get; set; }

    /// <summary>Carbon dioxide let into the air, g.</summary>
    public double EnrichedGrams { get; set; }

    /// <summary>Hours in which water went from the fish loop to the plant loop and back.</summary>
    public double CoupledHours { get; set; }

    /// <summary>Heat of the water heaters in those hours, MJ.</summary>
    public double CoupledHeaterMegajoules { get; set; }

    /// <summary>Heat that went with the water from the fish loop to the plant loop, net, MJ.</summary>
    public double CarriedToPlantsMegajoules { get; set; }

    /// <summary>The part of it that the heaters gave in the same step, MJ.</summary>
    public double SpentOnPlantWaterMegajoules { get; set; }

    /// <summary>Fuel for it, in the heaters' sale unit.</summary>
    public double SpentOnPlantWaterUnits { get; set; }

    /// <summary>Washes of filters.</summary>
    public double Washes { get; set; }

    /// <summary>Solids carried to mineralization, g dry matter.</summary>
    public double SolidsCarriedGrams { get; set; }

    /// <summary>Nitrogen in them, g.</summary>
    public double SolidsCarriedNitrogenGrams { get; set; }

    /// <summary>Decants.</summary>
    public double Decants { get; set; }

    /// <summary>Water decanted, L.</summary>
    public double DecantedLitres { get; set; }

    /// <summary>Dissolved nitrogen in it, g.</summary>
    public double DecantedNitrogenGrams { get; set; }

    /// <summary>Phosphorus in it, g.</summary>
    public double DecantedPhosphorusGrams { get; set; }

    /// <summary>Potassium in it, g.</summary>
    public double DecantedPotassiumGrams { get; set; }

    /// <summary>Solids taken to compost as thick sludge, g dry matter.</summary>
    public double CompostedSolidsGrams { get; set; }

    /// <summary>Washes that were put off because no tank could take the sludge.</summary>
    public double WashesPutOff { get; set; }

    /// <summary>Nitrogen taken up by plants, g.</summary>
    public double PlantNitrogenGrams { get; set; }

    /// <summary>A copy.</summary>
    public FarmTotals Clone() => (FarmTotals)MemberwiseClone();
}
