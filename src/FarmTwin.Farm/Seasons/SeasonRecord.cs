using FarmTwin.Engine;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Equipment;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Seasons;

/// <summary>What a season leaves behind: a row a day, a row an hour, and the peaks of the hourly means.</summary>
/// <remarks>A loop's figure is the mean over its basins by volume; a tank figure is the worst tank's.</remarks>
public sealed class SeasonRecord
{
    private readonly FarmContext _farm;
    private readonly List<Column> _columns = [];
    private readonly List<Column> _hourColumns = [];
    private readonly int[] _fish;
    private readonly int[] _plant;
    private readonly int[] _tanks;
    private readonly int _plantSump;
    private readonly double[] _marks;
    private readonly double[] _fishConcentration = new double[Substance.LastDissolved + 1];
    private readonly double[] _plantConcentration = new double[Substance.LastDissolved + 1];
    private readonly int[] _stepColumns;
    private readonly Func<double>[] _stepValues;
    private readonly Func<double>[] _hourValues;
    private double _fishAlkalinity;
    private double _plantCelsius;
    private TankFigures _tankFigures;

    /// <summary>Prepares the record of a season.</summary>
    public SeasonRecord(FarmContext farm)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _farm = farm;
        BasinDescription[] basins = farm.Parts.Basins;
        _fish = [.. Indexes(basins, LoopUses.Fish)];
        _plant = [.. Indexes(basins, LoopUses.Plant)];
        _tanks = [.. Indexes(basins, [BasinUse.FishTank])];
        _plantSump = Array.FindIndex(basins, b => b.Use == BasinUse.PlantSump);
        AddWaterColumns();
        AddHouseColumns();
        AddStateColumns();
        AddBedColumns();
        AddPlaceColumns();
        AddFlowColumns();
        AddHourColumns();
        Weeks = new WeekRecord(farm);
        AddProbeColumns();
        Days = new Recorder([.. _columns.Select(c => c.Recorded)], (int)farm.Parts.Farm.LengthDays + 1);
        Hours = new Recorder([.. _hourColumns.Select(c => c.Recorded)], ((int)farm.Parts.Farm.LengthDays * 24) + 1);
        _stepColumns = [.. Enumerable.Range(0, _columns.Count)
            .Where(i => _columns[i].Recorded.Kind is ColumnKind.Mean or ColumnKind.Minimum or ColumnKind.Maximum)];
        _stepValues = [.. _stepColumns.Select(i => _columns[i].Value)];
        _hourValues = [.. _hourColumns.Select(c => c.Value)];
        Faults = new FaultTrace(farm);
        _marks = new double[_columns.Count];
        Peaks = new Peak[_hourColumns.Count];
        Array.Fill(Peaks, Peak.None);
    }

    /// <summary>A row a day.</summary>
    public Recorder Days { get; }

    /// <summary>A row a week.</summary>
    public WeekRecord Weeks { get; }

    /// <summary>A row an hour.</summary>
    public Recorder Hours { get; }

    /// <summary>A row a step while a fault is open and for some hours after.</summary>
    public FaultTrace Faults { get; }

    /// <summary>Highest and lowest hourly mean of every column of <see cref="Hours"/>.</summary>
    public Peak[] Peaks { get; }

    /// <summary>Adds a step.</summary>
    public void Step(double seconds)
    {
        Basins basins = _farm.State.Basins;
        MeanOf(_fish, _fishConcentration);
        MeanOf(_plant, _plantConcentration);
        _fishAlkalinity = Alkalinity.MilligramsCalciumCarbonatePerLitre(LoopMean(_fish, basins.Alkalinity));
        _plantCelsius = LoopMean(_plant, basins.Celsius);
        LookAtTanks();
        for (int i = 0; i < _stepColumns.Length; i++)
        {
            Days.Accumulate(_stepColumns[i], _stepValues[i](), seconds);
        }

        for (int i = 0; i < _hourValues.Length; i++)
        {
            Hours.Accumulate(i, _hourValues[i](), seconds);
        }
    }

    /// <summary>Ends an hour, where the clock stands at one.</summary>
    public void Instant(long seconds)
    {
        if (seconds == 0 || seconds % 3600 != 0 || seconds == _lastHour)
        {
            return;
        }

        _lastHour = seconds;
        Hours.CloseRow();
        ReadOnlySpan<double> row = Hours.Row(Hours.RowCount - 1);
        for (int i = 0; i < row.Length; i++)
        {
            Peaks[i] = Peaks[i].With(row[i], seconds);
        }
    }

    /// <summary>Ends a day.</summary>
    public void Day()
    {
        for (int i = 0; i < _columns.Count; i++)
        {
            switch (_columns[i].Recorded.Kind)
            {
                case ColumnKind.Instant:
                    Days.Accumulate(i, _columns[i].Value(), 0);
                    break;
                case ColumnKind.Sum:
                    double now = _columns[i].Value();
                    Days.Accumulate(i, now - _marks[i], 0);
                    _marks[i] = now;
                    break;
                default:
                    break;
            }
        }

        Days.CloseRow();
        if (Days.RowCount % UnitConstants.DaysPerWeek == 0)
        {
            Weeks.Close();
        }
    }

    /// <summary>Takes over another record.</summary>
    public void CopyFrom(SeasonRecord other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Days.CopyFrom(other.Days);
        Weeks.CopyFrom(other.Weeks);
        Hours.CopyFrom(other.Hours);
        Faults.CopyFrom(other.Faults);
        other._marks.CopyTo(_marks, 0);
        other.Peaks.CopyTo(Peaks, 0);
        _lastHour = other._lastHour;
    }

    private long _lastHour = -1;

    private void AddWaterColumns()
    {
        Basins basins = _farm.State.Basins;
        Mean("fish_water_C", "°C", () => _tankFigures.Celsius);
        Add("fish_water_lowest_C", "°C", ColumnKind.Minimum, () => _tankFigures.Celsius);
        Mean("plant_water_C", "°C", () => _plantCelsius);
        Mean("oxygen_tanks_mg_per_L", "mg/L", () => _tankFigures.LowestOxygen);
        Add("oxygen_tanks_lowest_mg_per_L", "mg/L", ColumnKind.Minimum, () => _tankFigures.LowestOxygen);
        Mean("oxygen_plant_loop_mg_per_L", "mg/L", () => Loop(_plant, Substance.Oxygen));
        Mean("tan_fish_loop_mgN_per_L", "mg N/L", () => Loop(_fish, Substance.Tan));
        Add("tan_tanks_highest_mgN_per_L", "mg N/L", ColumnKind.Maximum, () => _tankFigures.HighestTan);
        Add("ammonia_unionized_tanks_highest_mgN_per_L", "mg N/L", ColumnKind.Maximum, () => _tankFigures.HighestUnionized);
        Mean("nitrite_fish_loop_mgN_per_L", "mg N/L", () => Loop(_fish, Substance.Nitrite));
        Mean("nitrate_fish_loop_mgN_per_L", "mg N/L", () => Loop(_fish, Substance.Nitrate));
        Mean("nitrate_plant_loop_mgN_per_L", "mg N/L", () => Loop(_plant, Substance.Nitrate));
        Mean("tan_plant_loop_mgN_per_L", "mg N/L", () => Loop(_plant, Substance.Tan));
        Mean("pH_fish_loop", "1", () => _tankFigures.PH);
        Mean("pH_plant_loop", "1", () => _plantSump >= 0 ? basins.PH[_plantSump] : double.NaN);
        Mean("alkalinity_fish_loop_mgCaCO3_per_L", "mg/L as CaCO3", () => _fishAlkalinity);
        Mean("alkalinity_plant_loop_mgCaCO3_per_L", "mg/L as CaCO3",
            () => Alkalinity.MilligramsCalciumCarbonatePerLitre(LoopMean(_plant, basins.Alkalinity)));
        Mean("carbon_dioxide_tanks_mg_per_L", "mg/L", () => _tankFigures.CarbonDioxideMoles * 44010);
        foreach ((int[] loop, string name) in new[] { (_fish, "fish_loop"), (_plant, "plant_loop") })
        {
            Mean($"phosphorus_{name}_mg_per_L", "mg/L", () => Loop(loop, Substance.Phosphorus));
            Mean($"potassium_{name}_mg_per_L", "mg/L", () => Loop(loop, Substance.Potassium));
            Mean($"calcium_{name}_mg_per_L", "mg/L", () => Loop(loop, Substance.Calcium));
            Mean($"magnesium_{name}_mg_per_L", "mg/L", () => Loop(loop, Substance.Magnesium));
            Mean($"sulfate_{name}_mgS_per_L", "mg S/L", () => Loop(loop, Substance.Sulfate));
            Mean($"sodium_{name}_mg_per_L", "mg/L", () => Loop(loop, Substance.Sodium));
            Mean($"chloride_{name}_mg_per_L", "mg/L", () => Loop(loop, Substance.Chloride));
            Mean($"iron_{name}_mg_per_L", "mg/L", () => IronOf(loop));
        }

        Instant("conductivity_fish_loop_uS_per_cm", "µS/cm", () => Conductance(_tanks.Length > 0 ? _tanks[0] : -1));
        Instant("conductivity_plant_loop_uS_per_cm", "µS/cm", () => Conductance(_plantSump));
        Instant("calcite_index_fish_loop", "1", () => CalciteIndex(_tanks.Length > 0 ? _tanks[0] : -1));
        Instant("calcite_index_plant_loop", "1", () => CalciteIndex(_plantSump));
        Instant("calcite_scale_g", "g", () => basins.CalciteScaleGrams.Sum());
        Instant("calcium_phosphate_gP", "g P", () => basins.PrecipitatedPhosphorusGrams.Sum());
        Mean("solids_fish_loop_mg_per_L", "mg/L", () => Solids(_fish));
        Mean("solids_plant_loop_mg_per_L", "mg/L", () => Solids(_plant));
        Add("chlorine_tanks_highest_mg_per_L", "mg/L", ColumnKind.Maximum, () => HighestOfTanks(Substance.Chlorine));
        Instant("algae_g", "g", Algae);
    }

    private void AddHouseColumns()
    {
        Climate.HouseState house = _farm.State.House;
        Mean("outside_air_C", "°C", () => house.OutsideCelsius);
        Add("outside_air_lowest_C", "°C", ColumnKind.Minimum, () => house.OutsideCelsius);
        Mean("house_air_C", "°C", () => house.AirCelsius);
        Add("house_air_lowest_C", "°C", ColumnKind.Minimum, () => house.AirCelsius);
        Add("house_air_highest_C", "°C", ColumnKind.Maximum, () => house.AirCelsius);
        Mean("house_humidity_percent", "%", () => house.RelativeHumidityPercent);
        Mean("house_carbon_dioxide_ppm", "ppm", () => house.CarbonDioxidePpm);
        Instant("daylight_at_crop_mol_per_m2", "mol/m2/d", () => house.NaturalMolesToday);
        Instant("lamp_light_at_crop_mol_per_m2", "mol/m2/d", () => house.LampMolesToday);
    }

    private void AddStateColumns()
    {
        FarmState state = _farm.State;
        FarmParts parts = _farm.Parts;
        Instant("fish_number", "fish", () => SumCohorts(-1, c => c.Number));
        Instant("fish_biomass_kg", "kg", () => SumCohorts(-1, c => c.BiomassGrams) / 1000);
        foreach (int tank in _tanks)
        {
            string name = parts.BasinNames[tank];
            Instant($"biomass_{name}_kg", "kg", () => SumCohorts(tank, c => c.BiomassGrams) / 1000);
            Instant($"mean_weight_{name}_g", "g", () => SumCohorts(tank, c => c.Number) is > 0 and var n
                ? SumCohorts(tank, c => c.BiomassGrams) / n
                : double.NaN);
        }

        for (int f = 0; f < parts.Filters.Length; f++)
        {
            int filter = f;
            int basin = parts.FilterBasin[f];
            string name = parts.FilterNames[f];
            Instant($"ammonia_oxidizers_{name}_share", "1",
                () => state.Basins.AmmoniaOxidizers[basin] / parts.Nitrification.AmmoniaOxidizers.MaximumBiomassGramsCodPerSquareMetre);
            Instant($"nitrite_oxidizers_{name}_share", "1",
                () => state.Basins.NitriteOxidizers[basin] / parts.Nitrification.NitriteOxidizers.MaximumBiomassGramsCodPerSquareMetre);
            Add($"flow_{name}_share", "1", ColumnKind.Minimum, () => BeadBed.FlowShare(
                parts.Solids, Operations.FilterCare.HeldKilogramsPerCubicMetre(_farm, filter)));
        }

        for (int m = 0; m < parts.Mineralizers.Length; m++)
        {
            int basin = parts.MineralizerBasin[m];
            string name = parts.Mineralizers[m].Basin;
            Instant($"water_{name}_L", "L", () => state.Basins.Litres[basin]);
            Instant($"solids_{name}_g_per_L", "g/L", () => state.Basins.Litres[basin] > 0 ? state.Basins.SolidsGrams(basin) / state.Basins.Litres[basin] : 0);
            Instant($"nitrate_{name}_mgN_per_L", "mg N/L", () => state.Basins.MilligramsPerLitre(basin, Substance.Nitrate));
            Instant($"tan_{name}_mgN_per_L", "mg N/L", () => state.Basins.MilligramsPerLitre(basin, Substance.Tan));
            Instant($"pH_{name}", "1", () => state.Basins.PH[basin]);
        }

        for (int c = 0; c < parts.CropNames.Length; c++)
        {
            int crop = c;
            string name = parts.CropNames[c];
            Instant($"standing_{name}_plants", "plants", () => Standing(crop));
            if (parts.Crops[c].Fruit is { } fruit)
            {
                AddFruitColumns(crop, name, fruit);
                continue;
            }

            Instant($"boards_{name}", "boards", () => Boards(crop));
            Instant($"head_weight_{name}_g", "g", () => state.Growing.LastHeadGrams[crop]);
            Instant($"head_age_{name}_d", "d", () => state.Growing.LastHeadAge[crop]);
            Instant($"oldest_board_{name}_g", "g", () => OldestBoard(crop));
            foreach (int element in Plants.Stress.Nutritive)
            {
                int i = (crop * Element.Count) + element;
                Instant($"deficiency_{name}_{Element.Names[element]}_share", "1", () => state.Growing.Nutrition.Deficiency[i]);
            }

            Sum($"heads_{name}", "heads", () => state.Growing.HeadsHarvested[crop]);
            Sum($"saleable_{name}_kg", "kg", () => state.Growing.SaleableGrams[crop] / 1000);
            Sum($"first_grade_{name}", "heads", () => state.Growing.Harvest[crop].FirstHeads);
            Sum($"second_grade_{name}", "heads", () => state.Growing.Harvest[crop].SecondHeads);
            Sum($"unsaleable_{name}", "heads", () => state.Growing.Harvest[crop].UnsaleableHeads);
        }
    }

    private void AddPlaceColumns()
    {
        FarmState state = _farm.State;
        FarmParts parts = _farm.Parts;
        string[] lanes = [.. parts.Farm.Lanes.Keys];
        for (int l = 0; l < lanes.Length; l++)
        {
            RaftLane lane = state.Growing.Lanes[l];
            Instant($"empty_places_{lanes[l]}", "places", () => lane.EmptyHoles);
        }

        if (parts.Farm.Nursery is not { } nursery)
        {
            return;
        }

        Instant("nursery_seedling_places", "places", () => Places(t => NurserySpace.SeedlingPlaces(state.Growing, nursery, t)));
        Instant("nursery_microgreen_places", "places", () => Places(t => NurserySpace.MicrogreenTrays(state.Growing, t)));
        for (int k = 0; k < parts.MicrogreenNames.Length; k++)
        {
            int kind = k;
            string name = parts.MicrogreenNames[k];
            Sum($"trays_{name}", "trays", () => state.Growing.Nursery.TraysCut[kind]);
            Instant($"tray_weight_{name}_g", "g", () => state.Growing.Nursery.LastTrayGrams[kind]);
            Sum($"saleable_{name}_kg", "kg", () => state.Growing.Nursery.SoldGrams[kind] / 1000);
        }

        double Places(Func<int, int> ofTier)
        {
            int sum = 0;
            for (int t = 0; t < parts.Tiers.Count; t++)
            {
                sum += ofTier(t);
            }

            return sum;
        }
    }

    private void AddFruitColumns(int crop, string name, FruitParameters fruit)
    {
        GrowingState growing = _farm.State.Growing;
        Instant($"bed_plants_{name}", "plants", () => SumBeds(crop, b => b.Plants.Plants));
        Instant($"canopy_{name}_kg_dry", "kg", () => SumBeds(crop, b => b.Plants.DryGrams) / 1000);
        Instant($"fruit_on_{name}_kg", "kg", () => SumBeds(crop, b => fruit.FreshGrams(b.Plants.Fruit?.DryGrams ?? 0)) / 1000);
        Sum($"picked_{name}_kg", "kg", () => growing.Fruit[crop].PickedGrams / 1000);
        Sum($"saleable_{name}_kg", "kg", () => growing.SaleableGrams[crop] / 1000);
    }

    private void AddBedColumns()
    {
        FarmParts parts = _farm.Parts;
        GrowingState growing = _farm.State.Growing;
        Basins basins = _farm.State.Basins;
        for (int b = 0; b < parts.Beds.Length; b++)
        {
            int bed = b;
            int basin = parts.BedBasin[b];
            string name = parts.BedNames[b];
            Instant($"plants_{name}", "plants", () => growing.Beds[bed].Plants.Plants);
            Mean($"oxygen_{name}_mg_per_L", "mg/L", () => basins.MilligramsPerLitre(basin, Substance.Oxygen));
            Mean($"water_height_{name}_mm", "mm", () => BedProcess.HeightMetres(parts, bed, basins.Litres[basin]) * 1000);
            Instant($"growth_factor_{name}", "1", () => growing.Beds[bed].Plants.IsEmpty ? double.NaN : growing.Beds[bed].Plants.LastStress.Combined);
        }
    }

    private double SumBeds(int crop, Func<MediaBed, double> value)
    {
        double sum = 0;
        for (int b = 0; b < _farm.Parts.Beds.Length; b++)
        {
            sum += _farm.Parts.BedCrop[b] == crop ? value(_farm.State.Growing.Beds[b]) : 0;
        }

        return sum;
    }

    private void AddFlowColumns()
    {
        FarmState state = _farm.State;
        Sum("feed_kg", "kg", () => state.Totals.FeedGrams / 1000);
        Sum("fish_sold_kg", "kg", () => state.Totals.FishSoldGrams / 1000);
        Sum("fish_sold", "fish", () => state.Totals.FishSold);
        Sum("fish_died", "fish", () => state.Totals.FishDied);
        Sum("nitrified_gN", "g N", () => state.Totals.NitrifiedGrams);
        Sum("denitrified_gN", "g N", () => state.Totals.DenitrifiedGrams);
        Sum("plant_uptake_gN", "g N", () => state.Totals.PlantNitrogenGrams);
        Sum("decanted_L", "L", () => state.Totals.DecantedLitres);
        Sum("solids_carried_g", "g", () => state.Totals.SolidsCarriedGrams);
        Sum("source_water_L", "L", () => state.Totals.SourceLitres);
        Sum("evaporation_L", "L", () => state.Totals.EvaporatedLitres);
        Sum("transpiration_L", "L", () => state.Totals.TranspiredLitres);
        Sum("water_heat_kWh", "kWh", () => state.Totals.WaterHeatMegajoules / UnitConstants.MegajoulesPerKilowattHour);
        Sum("air_heat_kWh", "kWh", () => state.Totals.AirHeatMegajoules / UnitConstants.MegajoulesPerKilowattHour);
        AddEnergyColumns();
        Mean("exchange_L_per_h", "L/h", () => state.ValveFlow.Length > 0 ? _farm.Running.ExchangeOf(0) : 0);
        Sum("work_h", "h", () => state.Labour.Hours);
        if (_farm.Parts.Farm.Prices is not null)
        {
            Sum("income", "money", () => state.Money.Ledger.TotalIn);
            Sum("costs", "money", () => state.Money.Ledger.TotalOut);
            Instant("cash", "money", () => state.Money.Cash);
        }
    }

    private void AddEnergyColumns()
    {
        FarmTotals Totals() => _farm.State.Totals;
        FarmParts parts = _farm.Parts;
        double[] units = _farm.State.Operations.HeaterUnits;
        int[] electric = [.. Enumerable.Range(0, units.Length).Where(h => parts.HeaterFuel[h].IsElectric)];
        int burner = Array.FindIndex(parts.HeaterFuel, f => !f.IsElectric);
        int[] burners = [.. Enumerable.Range(0, units.Length).Where(h => burner >= 0 && parts.Heaters[h].Fuel == parts.Heaters[burner].Fuel)];
        bool electricAir = parts.AirHeaterFuel?.IsElectric ?? false;
        double Heaters() => UnitsOf(electric) + (electricAir ? Totals().AirFuelUnits : 0);
        Sum("electricity_kWh", "kWh", () => Totals().PumpKilowattHours + Totals().BlowerKilowattHours + Totals().LampKilowattHours
            + Totals().NurseryKilowattHours + Totals().FanKilowattHours + Totals().PadKilowattHours + Heaters());
        Sum("electricity_pumps_kWh", "kWh", () => Totals().PumpKilowattHours);
        Sum("electricity_blowers_kWh", "kWh", () => Totals().BlowerKilowattHours);
        Sum("electricity_lamps_kWh", "kWh", () => Totals().LampKilowattHours);
        Sum("electricity_nursery_kWh", "kWh", () => Totals().NurseryKilowattHours);
        Sum("electricity_fans_kWh", "kWh", () => Totals().FanKilowattHours + Totals().PadKilowattHours);
        Sum("electricity_heaters_kWh", "kWh", Heaters);
        Sum("pad_water_L", "L", () => Totals().PadLitres);
        if (burner >= 0)
        {
            Sum($"water_fuel_{parts.HeaterFuel[burner].SaleUnit}", parts.HeaterFuel[burner].SaleUnit, () => UnitsOf(burners));
        }

        if (parts.AirHeaterFuel is { IsElectric: false } air)
        {
            Sum($"air_fuel_{air.SaleUnit}", air.SaleUnit, () => Totals().AirFuelUnits);
        }

        for (int t = 0; t < parts.FuelTanks.Length; t++)
        {
            int tank = t;
            Instant($"fuel_{parts.FuelTanks[t].Name}_L", "L", () => _farm.State.Fuel.Litres[tank]);
            Instant($"fuel_{parts.FuelTanks[t].Name}_days", "d", () => _farm.State.Fuel.DaysLeft(tank));
        }

        double UnitsOf(int[] heaters)
        {
            double sum = 0;
            foreach (int h in heaters)
            {
                sum += units[h];
            }

            return sum;
        }
    }

    private void AddHourColumns()
    {
        Hour("electric_load_kW", "kW", () => _farm.State.House.ElectricWatts / 1000);
        Basins basins = _farm.State.Basins;
        Hour("tan_fish_loop_mgN_per_L", "mg N/L", () => Loop(_fish, Substance.Tan));
        Hour("nitrite_fish_loop_mgN_per_L", "mg N/L", () => Loop(_fish, Substance.Nitrite));
        Hour("ammonia_unionized_tanks_mgN_per_L", "mg N/L", () => _tankFigures.HighestUnionized);
        Hour("oxygen_tanks_mg_per_L", "mg/L", () => _tankFigures.LowestOxygen);
        Hour("fish_water_C", "°C", () => _tankFigures.Celsius);
        Hour("plant_water_C", "°C", () => _plantCelsius);
        Hour("nitrate_fish_loop_mgN_per_L", "mg N/L", () => Loop(_fish, Substance.Nitrate));
        Hour("nitrate_plant_loop_mgN_per_L", "mg N/L", () => Loop(_plant, Substance.Nitrate));
        Hour("pH_fish_loop", "1", () => _tankFigures.PH);
        Hour("pH_plant_loop", "1", () => _plantSump >= 0 ? basins.PH[_plantSump] : double.NaN);
        Hour("carbon_dioxide_tanks_mg_per_L", "mg/L", () => _tankFigures.CarbonDioxideMoles * 44010);
        Hour("house_air_C", "°C", () => _farm.State.House.AirCelsius);
        Hour("outside_air_C", "°C", () => _farm.State.House.OutsideCelsius);
        Hour("house_humidity_percent", "%", () => _farm.State.House.RelativeHumidityPercent);
        Hour("house_carbon_dioxide_ppm", "ppm", () => _farm.State.House.CarbonDioxidePpm);
        Hour("daylight_umol_per_m2_s", "µmol/m2/s", () => _farm.State.House.NaturalPhotons);
        Hour("fish_number", "fish", () => SumCohorts(-1, c => c.Number));
    }

    // What each probe reads, beside what is there to be read.
    private void AddProbeColumns()
    {
        Alarms.AlarmParts parts = _farm.Parts.Alarms;
        Alarms.ProbeState probes = _farm.State.Probes;
        for (int p = 0; p < parts.ProbeNames.Length; p++)
        {
            int probe = p;
            string name = parts.ProbeNames[p];
            string ending = Alarms.ProbeQuantities.ColumnEnding(parts.Quantities[p]);
            string unit = Alarms.ProbeQuantities.Unit(parts.Quantities[p]);
            Mean($"probe_{name}_{ending}", unit, () => probes.Reading[probe]);
            Mean($"true_{name}_{ending}", unit, () => probes.Truth[probe]);
            Hour($"probe_{name}_{ending}", unit, () => probes.Reading[probe]);
            Hour($"true_{name}_{ending}", unit, () => probes.Truth[probe]);
        }
    }

    private void Mean(string name, string unit, Func<double> value) => Add(name, unit, ColumnKind.Mean, value);

    private void Instant(string name, string unit, Func<double> value) => Add(name, unit, ColumnKind.Instant, value);

    private void Sum(string name, string unit, Func<double> value) => Add(name, unit, ColumnKind.Sum, value);

    private void Add(string name, string unit, ColumnKind kind, Func<double> value) =>
        _columns.Add(new Column(new RecordedColumn(name, unit, kind), value));

    private void Hour(string name, string unit, Func<double> value) =>
        _hourColumns.Add(new Column(new RecordedColumn(name, unit, ColumnKind.Mean), value));

    private static IEnumerable<int> Indexes(BasinDescription[] basins, IReadOnlyList<BasinUse> uses) =>
        Enumerable.Range(0, basins.Length).Where(b => uses.Contains(basins[b].Use));

    // Concentrations of a loop, worked out once a step for all columns that show them.
    private double Loop(int[] loop, int substance) =>
        (ReferenceEquals(loop, _fish) ? _fishConcentration : _plantConcentration)[substance];

    private double IronOf(int[] loop)
    {
        double sum = 0;
        for (int holder = 0; holder < Substance.IronHolders; holder++)
        {
            sum += Loop(loop, Substance.Iron + holder);
        }

        return sum;
    }

    private void MeanOf(int[] loop, double[] concentration)
    {
        Array.Clear(concentration);
        Basins basins = _farm.State.Basins;
        double litres = 0;
        foreach (int b in loop)
        {
            ReadOnlySpan<double> grams = basins.Grams.AsSpan(WaterStep.At(b, 0), concentration.Length);
            for (int i = 0; i < concentration.Length; i++)
            {
                concentration[i] += grams[i];
            }

            litres += basins.Litres[b];
        }

        double scale = litres > 0 ? UnitConstants.GramsPerKilogram / litres : double.NaN;
        for (int i = 0; i < concentration.Length; i++)
        {
            concentration[i] *= scale;
        }
    }

    private double HighestOfTanks(int substance)
    {
        double highest = 0;
        foreach (int b in _tanks)
        {
            highest = Math.Max(highest, _farm.State.Basins.MilligramsPerLitre(b, substance));
        }

        return highest;
    }

    private double Algae()
    {
        double grams = 0;
        foreach (double dry in _farm.State.Algae.DryGrams)
        {
            grams += dry;
        }

        return grams;
    }

    private double LoopMean(int[] loop, double[] values)
    {
        double sum = 0;
        double litres = 0;
        foreach (int b in loop)
        {
            sum += values[b] * _farm.State.Basins.Litres[b];
            litres += _farm.State.Basins.Litres[b];
        }

        return litres > 0 ? sum / litres : double.NaN;
    }

    private double Solids(int[] loop)
    {
        double grams = 0;
        double litres = 0;
        foreach (int b in loop)
        {
            grams += _farm.State.Basins.SolidsGrams(b);
            litres += _farm.State.Basins.Litres[b];
        }

        return litres > 0 ? grams * UnitConstants.GramsPerKilogram / litres : double.NaN;
    }

    // What the columns show of the tanks, worked out once a step: means by volume, and the worst tank.
    private void LookAtTanks()
    {
        Basins basins = _farm.State.Basins;
        double litres = 0;
        double celsius = 0;
        double acidity = 0;
        double carbonDioxide = 0;
        double oxygen = double.PositiveInfinity;
        double highestTan = 0;
        double unionized = 0;
        foreach (int b in _tanks)
        {
            double water = basins.Litres[b];
            litres += water;
            celsius += water * basins.Celsius[b];
            acidity += water * basins.PH[b];
            carbonDioxide += water * basins.CarbonDioxideMoles[b];
            double tan = basins.MilligramsPerLitre(b, Substance.Tan);
            oxygen = Math.Min(oxygen, basins.MilligramsPerLitre(b, Substance.Oxygen));
            highestTan = Math.Max(highestTan, tan);
            unionized = Math.Max(unionized, tan * Ammonia.UnionizedFraction(basins.PH[b], basins.Celsius[b]));
        }

        // A farm without tanks has no worst tank.
        double share = litres > 0 ? 1 / litres : double.NaN;
        _tankFigures = new TankFigures(
            celsius * share,
            acidity * share,
            carbonDioxide * share,
            _tanks.Length > 0 ? oxygen : double.NaN,
            highestTan,
            unionized);
    }

    private double Conductance(int basin) => basin < 0 ? double.NaN : _farm.State.Basins.MicrosiemensPerCentimetre(basin);

    private double CalciteIndex(int basin)
    {
        Basins basins = _farm.State.Basins;
        if (basin < 0 || basins.Litres[basin] <= 0)
        {
            return double.NaN;
        }

        Ions ions = basins.IonsOf(basin);
        double index = CarbonateSystem.CalciteSaturationIndex(
            ions.Ca,
            basins.Grams[WaterStep.At(basin, Substance.InorganicCarbon)] / basins.Litres[basin] / UnitConstants.AtomicWeight.Carbon,
            basins.PH[basin],
            CarbonateConstants.At(basins.Celsius[basin]),
            IonicStrength.MolesPerLitre(ions));
        return double.IsFinite(index) ? index : double.NaN;
    }

    private double SumCohorts(int tank, Func<Cohort, double> value)
    {
        double sum = 0;
        for (int b = 0; b < _farm.State.Cohorts.Length; b++)
        {
            if (tank < 0 || tank == b)
            {
                foreach (Cohort cohort in _farm.State.Cohorts[b])
                {
                    sum += value(cohort);
                }
            }
        }

        return sum;
    }

    private double Standing(int crop)
    {
        GrowingState growing = _farm.State.Growing;
        double plants = 0;
        foreach (NurseryTray tray in growing.Trays)
        {
            plants += tray.Crop == crop ? tray.Lot.Plants : 0;
        }

        foreach (TransplantTrough trough in growing.Troughs)
        {
            plants += trough.Standing(crop);
        }

        foreach (RaftLane lane in growing.Lanes)
        {
            for (int i = 0; i < lane.Count; i++)
            {
                plants += lane[i].Crop == crop ? lane[i].Plants : 0;
            }
        }

        return plants + SumBeds(crop, b => b.Plants.Plants);
    }

    private double Boards(int crop)
    {
        int boards = 0;
        foreach (RaftLane lane in _farm.State.Growing.Lanes)
        {
            for (int i = 0; i < lane.Count; i++)
            {
                boards += lane[i].Crop == crop ? 1 : 0;
            }
        }

        return boards;
    }

    private double OldestBoard(int crop)
    {
        double grams = double.NaN;
        double sown = double.PositiveInfinity;
        foreach (RaftLane lane in _farm.State.Growing.Lanes)
        {
            if (lane.Count > 0 && lane[0].Crop == crop && lane[0].SownDay < sown)
            {
                sown = lane[0].SownDay;
                grams = lane.ExitFreshGramsPerPlant(_farm.Parts.Crops[crop]);
            }
        }

        return grams;
    }

    private readonly record struct TankFigures(
        double Celsius, double PH, double CarbonDioxideMoles, double LowestOxygen, double HighestTan, double HighestUnionized);

    private readonly record struct Column(RecordedColumn Recorded, Func<double> Value);
}
