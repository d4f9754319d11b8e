using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>The work that comes by the calendar: rounds, water tests, sample weighing, calibration, office.</summary>
public sealed class Rounds : FarmWork
{
    private readonly bool _growsCrops;
    private readonly bool _hasFishLoop;

    /// <summary>Makes it.</summary>
    public Rounds(FarmContext farm, FarmLog log)
        : base(farm, log)
    {
        _growsCrops = Parts.Crops.Length > 0;
        _hasFishLoop = Parts.Basins.Any(b => b.Use is BasinUse.FishTank or BasinUse.Filter);
    }

    /// <summary>Does the round of a morning.</summary>
    public void Morning(long seconds)
    {
        int day = (int)(seconds / UnitConstants.SecondsPerDay);
        Spend(Chore.DailyRound, 1);
        Spend(Chore.ScoutCrops, _growsCrops ? 1 : 0);
        RoundsDone done = State.Operations.Rounds;
        if (_hasFishLoop && (TestsDaily(day) || day >= done.TestDay + UnitConstants.DaysPerWeek))
        {
            done.TestDay = day;
            Spend(Chore.TestWater, 1);
        }

        // A round that fell on a day off is made up for on the next morning on which somebody is there.
        if (day >= done.WeeklyDay + UnitConstants.DaysPerWeek)
        {
            done.WeeklyDay = day;
            Spend(Chore.WeeklyRound, 1);
            Spend(Chore.CheckMeters, 1);
            Spend(Chore.Office, 1);
            TrainFruitingPlants();
        }

        if (day >= done.WeighDay + Parts.Practice.WeighEveryDays)
        {
            done.WeighDay = day;
            int tanks = 0;
            foreach (List<Fish.Cohort> tank in State.Cohorts)
            {
                tanks += tank.Count > 0 ? 1 : 0;
            }

            Spend(Chore.WeighFish, tanks);
        }
    }

    private void TrainFruitingPlants()
    {
        for (int b = 0; b < State.Growing.Beds.Length; b++)
        {
            Spend(Chore.TrainPlant, State.Growing.Beds[b].Plants.Plants, Parts.Products.OfCrop(Parts.BedCrop[b]));
        }
    }

    // Daily until the filter is cycled, after every delivery of fish, and while the valves are being opened; weekly otherwise.
    private bool TestsDaily(int day)
    {
        OperationsState work = State.Operations;
        bool ramp = !double.IsNaN(work.OpenedDay) && (double.IsNaN(work.CoupledDay) || day < work.CoupledDay + Parts.Practice.TestDailyDays);
        return double.IsNaN(work.CycledDay) || ramp || day < work.LastDeliveryDay + Parts.Practice.TestDailyDays;
    }
}
