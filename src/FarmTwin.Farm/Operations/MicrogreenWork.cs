using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Sowing and cutting microgreens, and watering the nursery by the clock.</summary>
public sealed class MicrogreenWork : FarmWork
{
    private const double LatestOverPlan = 2;

    private readonly PlantProcess _plants;
    private readonly Market _market;
    private readonly FishWater _fishWater;

    /// <summary>Makes it.</summary>
    public MicrogreenWork(FarmContext farm, FarmLog log, PlantProcess plants, Market market)
        : base(farm, log)
    {
        ArgumentNullException.ThrowIfNull(farm);
        _plants = plants;
        _market = market;
        _fishWater = new FishWater(farm);
        foreach ((string name, MicrogreenPlanDescription plan) in farm.Parts.Farm.Microgreens)
        {
            if (farm.Parts.Farm.Nursery is null)
            {
                throw new DescriptionException($"microgreens.{name}: they grow on tiers of a nursery; describe one under 'nursery', or sow nothing.");
            }

            if (farm.Parts.CropNames.Contains(name, StringComparer.Ordinal))
            {
                throw new DescriptionException($"microgreens.{name}: a crop is called '{name}' too; tables and prices go by these names, so give it another, for example '{name}-shoots'.");
            }

            foreach (double tier in plan.Tiers)
            {
                if (tier > farm.Parts.Tiers.Count)
                {
                    throw new DescriptionException($"microgreens.{name}.tiers: there is no tier {tier:0}; the nursery has {farm.Parts.Tiers.Count}.");
                }
            }

            if (!farm.Parts.Tiers.EverGrowMicrogreens)
            {
                throw new DescriptionException(
                    $"microgreens.{name}: no tier of the nursery is ever for them; say so, for example: \"nursery\": {{ \"tier\": {{ \"2\": {{ \"use\": \"microgreens\" }} }} }}.");
            }
        }
    }

    private NurseryState Nursery => State.Growing.Nursery;

    /// <summary>Sows a kind on the tiers that are for it now, as far as there are places.</summary>
    public void Sow(int kind, long seconds)
    {
        MicrogreenPlanDescription plan = Parts.MicrogreenPlans[kind];
        NurseryDescription nursery = Parts.Farm.Nursery!;
        double day = DayOf(seconds);
        if (day < plan.FirstSowingDay || day > (plan.LastSowingDay ?? double.PositiveInfinity) + 1)
        {
            return;
        }

        double seed = plan.SeedGramsPerTray ?? (Parts.Microgreens[kind].SeedGramsPerSquareMetre * nursery.TraySquareMetres);
        int wanted = plan.TraysPerSowing;
        for (int t = 0; t < Parts.Tiers.Count && wanted > 0; t++)
        {
            if (Parts.Tiers.UseOf(t, day) != TierUse.Microgreens || (plan.Tiers.Count > 0 && !plan.Tiers.Contains(t + 1)))
            {
                continue;
            }

            int trays = Math.Min(wanted, NurserySpace.FreePlaces(State.Growing, nursery, t));
            if (trays > 0)
            {
                Nursery.Microgreens.Add(new MicrogreenTrays(
                    kind, Parts.CropNames.Length + kind, t, trays, trays * nursery.TraySquareMetres, trays * seed, day));
                Spend(Chore.SowMicrogreens, trays, Parts.Products.OfCrop(Parts.CropNames.Length + kind));
                Nursery.TraysSown[kind] += trays;
                Nursery.SeedGrams[kind] += trays * seed;
                wanted -= trays;
                Log.Add(seconds, "sow microgreens", Parts.MicrogreenNames[kind], trays, "trays", $"tier {t + 1}, {seed:0} g of seed a tray");
            }
        }

        if (wanted > 0)
        {
            Nursery.TraysRefused[kind] += wanted;
            Log.Add(seconds, "nursery full", Parts.MicrogreenNames[kind], wanted, "trays", "no place is free on a tier for microgreens");
        }

        State.Growing.Changed = true;
    }

    /// <summary>Cuts what has had its days in the light; clears trays on which nothing came up.</summary>
    public void Cut(long seconds)
    {
        double day = DayOf(seconds);
        if (Nursery.Microgreens.Count > 0 && _fishWater.Feeds(Parts.BasinIndex(Parts.Farm.Nursery!.Water)))
        {
            Nursery.FishWaterDays++;
        }

        bool settled = false;
        for (int i = 0; i < Nursery.Microgreens.Count;)
        {
            MicrogreenTrays trays = Nursery.Microgreens[i];
            MicrogreenPlanDescription plan = Parts.MicrogreenPlans[trays.Kind];
            double lit = plan.LitDays ?? Parts.Microgreens[trays.Kind].LitDays;
            double covered = plan.BlackoutDays ?? Parts.Microgreens[trays.Kind].BlackoutDays;
            bool ready = trays.LitDays >= lit;
            bool failed = !ready && trays.AgeDays(day) > LatestOverPlan * (lit + covered + 1);
            if (!ready && !failed)
            {
                i++;
                continue;
            }

            if (!settled)
            {
                _plants.Settle();
                settled = true;
            }

            Take(trays, failed, seconds);
            Nursery.Microgreens.RemoveAt(i);
            State.Growing.Changed = true;
        }
    }

    /// <summary>Floods the trays: they hold as much as was given; what was not drunk before runs back.</summary>
    public void Water(long seconds)
    {
        WateringDescription watering = Parts.Farm.Nursery!.Watering!;
        int basin = Parts.BasinIndex(Parts.Farm.Nursery.Water);
        double litres = Math.Min(watering.Litres, State.Basins.Litres[basin]);
        Nursery.TrayLitres = litres;
        if (litres < watering.Litres)
        {
            Log.Add(seconds, "nursery not watered", Parts.Farm.Nursery.Water, watering.Litres - litres, "L", "the basin that waters the nursery is dry");
        }
    }

    private void Take(MicrogreenTrays trays, bool failed, long seconds)
    {
        int kind = trays.Kind;
        CropParameters crop = Parts.Crops[trays.Crop];
        double grams = trays.Lot.FreshShootGrams(crop);
        double saleable = failed ? 0 : 1 - crop.UnsaleableShare;
        double water = trays.Lot.WaterLitres(crop);
        ElementGrams sold = trays.Lot.Pools * saleable;
        if (!failed)
        {
            Spend(Chore.CutMicrogreens, trays.Trays, Parts.Products.OfCrop(trays.Crop));
            _market.Trip(seconds);
            _market.Offer(Parts.Products.OfCrop(trays.Crop), trays.Trays, grams * saleable, sold, water * saleable, seconds);
        }

        _plants.PostPlants(Door.CropCompost, trays.Lot.Pools - sold + trays.Mat, water * (1 - saleable), -1);
        if (failed)
        {
            Nursery.TraysFailed[kind] += trays.Trays;
            Log.Add(seconds, "microgreens failed", Parts.MicrogreenNames[kind], trays.Trays, "trays",
                $"not ready at twice the planned age ({trays.GerminatedShare:0%} came up): to compost");
            return;
        }

        Nursery.TraysCut[kind] += trays.Trays;
        Nursery.CutGrams[kind] += grams;
        Nursery.SoldGrams[kind] += grams * saleable;
        Nursery.LastTrayGrams[kind] = grams / trays.Trays;
        Log.Add(seconds, "cut microgreens", Parts.MicrogreenNames[kind], trays.Trays, "trays",
            $"{grams / trays.Trays:0} g a tray at {trays.AgeDays(DayOf(seconds)):0} days; mats to compost");
    }
}
