using FarmTwin.Engine;
using FarmTwin.Farm.Energy;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Orders and deliveries of fuel, and the hour in which a tank is found empty.</summary>
public sealed class FuelWork : FarmWork
{
    private const double DeliveryHour = 10;
    private const double EmptyLitres = 1e-6;

    /// <summary>Makes it.</summary>
    public FuelWork(FarmContext farm, FarmLog log)
        : base(farm, log)
    {
    }

    /// <summary>Looks at the gauges and orders.</summary>
    public void MorningRound(long seconds, Simulation simulation)
    {
        ArgumentNullException.ThrowIfNull(simulation);
        FuelTanks fuel = State.Fuel;
        for (int t = 0; t < Parts.FuelTanks.Length; t++)
        {
            FuelTank tank = Parts.FuelTanks[t];
            if (!fuel.IsOrdered[t] && fuel.Litres[t] < tank.Description.OrderBelowShare * tank.Description.CapacityLitres)
            {
                fuel.IsOrdered[t] = true;
                long comes = Math.Max(At(DayOf(seconds) + tank.Description.LeadDays, DeliveryHour), seconds + (long)UnitConstants.SecondsPerHour);
                simulation.Calendar.Schedule(comes, FarmPhase.Husbandry, (int)FarmEventKind.FuelDelivery, t);
                Log.Add(seconds, "order fuel", tank.Name, fuel.Litres[t], "L",
                    $"{fuel.Litres[t] / tank.Description.CapacityLitres:0%} left, {Days(fuel, t)}; delivery in {tank.Description.LeadDays:0.#} days");
            }
        }
    }

    /// <summary>A delivery comes, or does not.</summary>
    public void Deliver(int tank, long seconds)
    {
        FuelTanks fuel = State.Fuel;
        FuelTank of = Parts.FuelTanks[tank];
        fuel.IsOrdered[tank] = false;
        if (fuel.StayAway[tank] > 0)
        {
            fuel.StayAway[tank]--;
            fuel.MissedDeliveries[tank]++;
            Log.Add(seconds, "delivery missed", of.Name, fuel.Litres[tank], "L", $"the fuel did not come, {Days(fuel, tank)}; it is ordered again on the next morning");
            return;
        }

        double litres = Math.Max(0, (of.Description.FillToShare * of.Description.CapacityLitres) - fuel.Litres[tank]);
        fuel.Litres[tank] += litres;
        fuel.DeliveredLitres[tank] += litres;
        fuel.Deliveries[tank]++;
        Log.Add(seconds, "fuel delivered", of.Name, litres, "L", of.Description.Fuel);
    }

    /// <summary>Looks at the tanks once an hour.</summary>
    public void Check(long seconds)
    {
        FuelTanks fuel = State.Fuel;
        for (int t = 0; t < Parts.FuelTanks.Length; t++)
        {
            fuel.Note(t, Math.Floor(DayOf(seconds)));
            bool empty = fuel.Litres[t] < EmptyLitres;
            fuel.HoursEmpty[t] += empty ? 1 : 0;
            if (empty != fuel.IsEmpty[t])
            {
                fuel.IsEmpty[t] = empty;
                Log.Add(seconds, empty ? "fuel runs out" : "fuel again", Parts.FuelTanks[t].Name, fuel.Litres[t], "L", empty
                    ? "its heaters are out: stop feeding, cover the water, close the coupling valves; a licensed fitter relights"
                    : "its heaters burn again");
            }
        }
    }

    private static string Days(FuelTanks fuel, int tank) =>
        double.IsNaN(fuel.DaysLeft(tank)) ? "none used in the last week" : $"{fuel.DaysLeft(tank):0.#} days at the last week's use";
}
