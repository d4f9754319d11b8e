using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Sowing and transplanting, and the plants that are lost on the way; what waits and why is in the record.</summary>
public sealed class CropWork : FarmWork
{
    private const double Rounding = 1e-9;

    private readonly PlantProcess _plants;
    private readonly PlantLot _waste = new();

    /// <summary>Makes it.</summary>
    public CropWork(FarmContext farm, FarmLog log, PlantProcess plants)
        : base(farm, log) => _plants = plants;

    private GrowingState Growing => State.Growing;

    /// <summary>Sows a crop.</summary>
    public void Sow(int crop, long seconds)
    {
        NurseryDescription nursery = Parts.Farm.Nursery
            ?? throw new DescriptionException("crops: sowing needs a nursery; describe one under 'nursery'.");
        int wanted = Parts.Schedules[crop].CellsAt(DayOf(seconds));
        double cells = 0;
        for (int t = 0; t < Parts.Tiers.Count && cells < wanted; t++)
        {
            double here = Parts.Tiers.UseOf(t, DayOf(seconds)) == TierUse.Seedlings
                ? Math.Min(wanted - cells, Math.Floor(NurserySpace.FreeCells(Growing, nursery, t) + Rounding))
                : 0;
            if (here > 0)
            {
                Growing.Trays.Add(new NurseryTray(crop, here, here / nursery.CellsPerTray * nursery.TraySquareMetres, DayOf(seconds), t));
                cells += here;
            }
        }

        if (cells < wanted)
        {
            Log.Add(seconds, "nursery full", Parts.CropNames[crop], wanted - cells, "cells", "the nursery has no more trays free for seedlings");
        }

        if (cells <= 0)
        {
            return;
        }

        Spend(Chore.SowTray, cells / nursery.CellsPerTray, Parts.Products.OfCrop(crop));
        Growing.CellsSown[crop] += cells;
        Growing.Changed = true;
        Log.Add(seconds, "sow", Parts.CropNames[crop], cells, "cells", string.Empty);
    }

    /// <summary>Moves seedlings that are old enough to the trough, as far as there are places.</summary>
    public void Transplant(long seconds)
    {
        double day = DayOf(seconds);
        bool settled = false;
        for (int t = 0; t < Growing.Trays.Count; t++)
        {
            NurseryTray tray = Growing.Trays[t];
            if (!tray.IsUp || tray.Lot.IsEmpty || tray.AgeDays(day) < Parts.CropPlans[tray.Crop].NurseryDays - 0.5)
            {
                continue;
            }

            foreach (TransplantTrough trough in Growing.Troughs)
            {
                double free = trough.FreePlaces(tray.Crop);
                if (free < 1)
                {
                    continue;
                }

                if (!settled)
                {
                    _plants.Settle();
                    settled = true;
                }

                // The weak ones are culled once, when the tray is first lifted.
                if (!tray.IsCulled)
                {
                    tray.Cull(Parts.Crops[tray.Crop], _waste);
                    ToCompost(tray.Crop);
                }

                double moved = trough.Enter(tray.Lot);
                Spend(Chore.TransplantPlant, moved, Parts.Products.OfCrop(tray.Crop));
                Growing.Changed = true;
                Log.Add(seconds, "transplant", Parts.CropNames[tray.Crop], moved, "plants", $"at {tray.AgeDays(day):0} days to the trough");
                bool firstDay = tray.AgeDays(day) < Parts.CropPlans[tray.Crop].NurseryDays + 1;
                if (firstDay && tray.Lot.Plants > 1)
                {
                    Log.Add(seconds, "trough full", Parts.CropNames[tray.Crop], tray.Lot.Plants, "plants", "they wait in the nursery");
                }
            }
        }

        Discard(day, seconds);
    }

    /// <summary>Losses of the day on lanes and in troughs: dead plants to compost.</summary>
    public void DailyLosses()
    {
        for (int l = 0; l < Growing.Lanes.Length; l++)
        {
            RaftLane lane = Growing.Lanes[l];
            for (int i = 0; i < lane.Count; i++)
            {
                int crop = lane[i].Crop;
                double perDay = Parts.Crops[crop].GrowingLossShare / Math.Max(1, Parts.CropPlans[crop].LeastLaneDays);
                lane.Lose(i, lane[i].Plants * perDay, _waste);
                ToCompost(crop);
            }
        }

        for (int t = 0; t < Growing.Troughs.Length; t++)
        {
            TransplantTrough trough = Growing.Troughs[t];
            for (int i = trough.Count - 1; i >= 0; i--)
            {
                int crop = trough[i].Crop;
                double perDay = Parts.Crops[crop].TransplantLossShare / Math.Max(1, Parts.CropPlans[crop].TroughDays);
                trough.Lose(i, trough[i].Plants * perDay, _waste);
                ToCompost(crop);
            }
        }

        Growing.Changed = true;
    }

    private void ToCompost(int crop)
    {
        if (_waste.Plants > 0 || _waste.DryGrams > 0)
        {
            _plants.PostPlants(Door.CropCompost, _waste.Pools, _waste.WaterLitres(Parts.Crops[crop]), -1);
            Growing.WasteDryGrams[crop] += _waste.DryGrams;
        }

        _waste.Clear();
    }

    // Trays that are empty, or whose seedlings have become too old to move, are cleared.
    private void Discard(double day, long seconds)
    {
        for (int t = Growing.Trays.Count - 1; t >= 0; t--)
        {
            NurseryTray tray = Growing.Trays[t];
            bool empty = tray.IsUp && tray.Lot.Plants < 0.5;
            bool tooOld = tray.AgeDays(day) > Parts.Practice.SeedlingsTooOld * Parts.CropPlans[tray.Crop].NurseryDays;
            if (!empty && !tooOld)
            {
                continue;
            }

            if (!tray.IsUp)
            {
                Log.Add(seconds, "poor germination", Parts.CropNames[tray.Crop], 0, "of the seed",
                    $"nothing came up: the seed bed was at {tray.Seeds.MeanCelsius:0.0} °C for {tray.Seeds.Days:0} days");
            }

            if (tray.Lot.Plants > 0)
            {
                if (!empty)
                {
                    Log.Add(seconds, "discard seedlings", Parts.CropNames[tray.Crop], tray.Lot.Plants, "plants", "too old to move: there was no room in the trough");
                }

                _plants.Settle();
                tray.Lot.MoveInto(_waste, tray.Lot.Plants);
                ToCompost(tray.Crop);
            }

            Growing.Trays.RemoveAt(t);
            Growing.Changed = true;
        }
    }
}
