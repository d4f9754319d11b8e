using FarmTwin.Farm.Plants;

namespace FarmTwin.Farm.Tests.Plants;

/// <summary>A stand of a fruiting crop under steady days, in a rich solution, picked every day.</summary>
internal sealed class FruitingStand
{
    private readonly CropParameters _crop;
    private readonly PlantParameters _common;

    public FruitingStand(CropParameters crop, PlantParameters common, double plantsPerSquareMetre)
    {
        _crop = crop;
        _common = common;
        Lot = Crops.Seedlings(crop, plantsPerSquareMetre, crop.NurseryPlantsPerSquareMetre);
    }

    public PlantLot Lot { get; }

    /// <summary>Days from setting out to the first fruit; NaN before.</summary>
    public double FirstPickDay { get; private set; } = double.NaN;

    public double DaysOut { get; private set; }

    public double PickedDryGrams { get; private set; }

    public ElementGrams Picked { get; private set; }

    public double PrunedDryGrams { get; private set; }

    public double PickedKilogramsPerSquareMetre => _crop.Fruit!.FreshGrams(PickedDryGrams) / 1000 / Lot.AreaSquareMetres;

    /// <summary>Sows and raises seedlings; days from sowing, the days in the ground included, then one square metre of stand.</summary>
    public FruitingStand Raise(double days, double dli = 11.5, double day = 23, double night = 20)
    {
        DayLight light = Crops.Day(_crop, dli, 16, day, night);
        int ground = (int)_crop.EmergenceDaysAtTwentyCelsius;
        for (int d = 0; d < ground; d++)
        {
            Fruiting.Advance(Lot, _crop, light.MeanCelsius);
        }

        Crops.Grow(Lot, _crop, light, Crops.Rich, _common, (int)days - ground);
        Lot.AreaSquareMetres = 1;
        return this;
    }

    public FruitingStand Run(int days, DayLight light, RootZone? root = null)
    {
        for (int d = 0; d < days; d++)
        {
            Crops.Grow(Lot, _crop, light, root ?? Crops.Rich, _common, 1);
            double excess = Fruiting.ToPrune(Lot, _crop);
            Lot.Prune(excess);
            PrunedDryGrams += excess;
            DaysOut++;
            while (Lot.Fruit is { Count: > 0 } fruit && Lot.DegreeDays - fruit[0].SetSum >= _crop.Fruit!.GrowthSum)
            {
                FirstPickDay = double.IsNaN(FirstPickDay) ? DaysOut : FirstPickDay;
                FruitCohort ripe = fruit.TakeOldest();
                PickedDryGrams += ripe.DryGrams;
                Picked += ripe.Elements;
            }
        }

        return this;
    }
}
