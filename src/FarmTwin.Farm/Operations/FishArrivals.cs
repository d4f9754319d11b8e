using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Operations;

/// <summary>Fish delivered, in one part or several, straight into their tank or first into quarantine; and fish moved between tanks.</summary>
public sealed class FishArrivals : FarmWork
{
    private readonly int[] _tank;
    private readonly int[] _quarantine;

    /// <summary>Makes it.</summary>
    /// <exception cref="DescriptionException">A quarantine stands in a basin that is none, or has no description.</exception>
    public FishArrivals(FarmContext farm, FarmLog log)
        : base(farm, log)
    {
        _tank = [.. Parts.Stocking.Select(s => Parts.BasinIndex(s.Tank))];
        for (int q = 0; q < Parts.Quarantines.Length; q++)
        {
            if (Parts.Basins[Parts.QuarantineBasin[q]].Use != BasinUse.Quarantine)
            {
                throw new DescriptionException(
                    $"quarantines.{Parts.QuarantineNames[q]}: '{Parts.Quarantines[q].Basin}' is not a basin of the use 'quarantine'; give it that use, or name one that has it.");
            }
        }

        _quarantine = [.. Parts.Stocking.Select(s => s.Quarantine is { } stay ? QuarantineOf(stay.In) : -1)];
    }

    /// <summary>Delivers what is due this morning, and lets go what has been watched long enough.</summary>
    public void MorningRound(long seconds)
    {
        double day = Math.Floor(DayOf(seconds));
        for (int s = 0; s < Parts.Stocking.Length; s++)
        {
            StockingDescription stocking = Parts.Stocking[s];
            OperationsState state = State.Operations;
            if (state.Delivered[s] == 0 && double.IsNaN(state.DueDay[s]))
            {
                if (!stocking.WaitForCycle)
                {
                    state.DueDay[s] = stocking.AfterDays;
                }
                else if (!double.IsNaN(state.CycledDay))
                {
                    state.DueDay[s] = Math.Floor(state.CycledDay) + stocking.AfterDays;
                }
            }

            if (state.DueDay[s] <= day)
            {
                Deliver(s, seconds);
                bool last = state.Delivered[s] % stocking.Deliveries == 0;
                state.DueDay[s] = last ? double.NaN : day + stocking.DeliveriesEveryDays;
            }
        }

        foreach (int basin in Parts.QuarantineBasin)
        {
            Watch(basin, seconds);
        }
    }

    /// <summary>Moves a share of the fish of a tank to another, average in size.</summary>
    public void Move(int from, int to, double share, double temperKelvinPerHour, long seconds)
    {
        Spend(Chore.MoveFish, State.Cohorts[from].Count > 0 ? 1 : 0);
        foreach (Cohort cohort in State.Cohorts[from].ToArray())
        {
            FishParameters species = Parts.Species[cohort.SpeciesIndex];
            Cohort moved = cohort;
            if (share < 1 && SizeSpread.Split(cohort, species, share * cohort.Number, cohort.Name + " moved") is { } part)
            {
                moved = part;
                Survival.Handle(cohort, species);
            }
            else
            {
                State.Cohorts[from].Remove(cohort);
            }

            PutInto(to, moved, from, temperKelvinPerHour, seconds, "move fish");
        }
    }

    private void Deliver(int s, long seconds)
    {
        StockingDescription stocking = Parts.Stocking[s];
        int species = Parts.SpeciesOfStocking[s];
        int part = State.Operations.Delivered[s]++;
        int number = (stocking.Number / stocking.Deliveries) + (part % stocking.Deliveries < stocking.Number % stocking.Deliveries ? 1 : 0);
        if (number == 0)
        {
            return;
        }

        int basin = _quarantine[s] >= 0 ? _quarantine[s] : _tank[s];
        var cohort = new Cohort(
            part == 0 ? Parts.StockingNames[s] : $"{Parts.StockingNames[s]} {part + 1}",
            species, number, stocking.MeanGrams, stocking.CoefficientOfVariation, seconds)
        {
            Batch = s,
            LeavesQuarantineDay = stocking.Quarantine is { } stay ? Math.Floor(DayOf(seconds)) + stay.Days : double.NaN,
        };
        Spend(Chore.ReceiveFish, 1, Parts.ProductOfSpecies[species]);
        State.Operations.LastDeliveryDay = Math.Floor(DayOf(seconds));
        double shock = Shock(basin, stocking.Transport, out string note);
        Survival.Handle(cohort, Parts.Species[species], shock);
        State.Cohorts[basin].Add(cohort);
        State.Books.PostElements(Door.FishDelivered, cohort.Elements(Parts.Species[species]), 1);
        State.Totals.FishDelivered += cohort.Number;
        State.Totals.FishDeliveredGrams += cohort.BiomassGrams;
        Log.Add(seconds, "deliver fish", Parts.BasinNames[basin], number, "fish", $"{cohort.Name}: {number} fish of {stocking.MeanGrams:0} g{note}");
    }

    // The bags' water against the tank's, and the hours that tempering takes.
    private double Shock(int basin, TransportDescription? transport, out string note)
    {
        note = string.Empty;
        if (transport is null)
        {
            return 0;
        }

        double kelvin = State.Basins.Celsius[basin] - transport.Celsius;
        double pH = transport.PH is { } value ? State.Basins.PH[basin] - value : 0;
        double shock = TransferShock.Share(Parts.Husbandry, kelvin, pH, transport.TemperKelvinPerHour);
        double lost = 1 - ((1 - shock) * (1 - transport.LossShare));
        note = $"; tempered over {Math.Abs(kelvin) / transport.TemperKelvinPerHour:0.0} h from {transport.Celsius:0.0} to {State.Basins.Celsius[basin]:0.0} °C"
            + (lost > 0.001 ? $", {lost:0.0%} will die of the journey and the change" : string.Empty);
        return lost;
    }

    // Whoever watches counts the dead each morning: unexplained ones prolong the stay.
    private void Watch(int basin, long seconds)
    {
        double day = Math.Floor(DayOf(seconds));
        for (int c = State.Cohorts[basin].Count - 1; c >= 0; c--)
        {
            Cohort cohort = State.Cohorts[basin][c];
            if (double.IsNaN(cohort.LeavesQuarantineDay))
            {
                continue;
            }

            if (cohort.UnexplainedNumber - cohort.UnexplainedSeen > Parts.Husbandry.QuarantineDeathShare * cohort.StockedNumber)
            {
                double until = day + Parts.Husbandry.QuarantineQuietDays;
                if (until > cohort.LeavesQuarantineDay)
                {
                    State.Husbandry.QuarantinesProlonged++;
                    Log.Add(seconds, "quarantine prolonged", Parts.BasinNames[basin], until - cohort.LeavesQuarantineDay, "d",
                        $"{cohort.Name}: {cohort.UnexplainedNumber - cohort.UnexplainedSeen:0.0} fish died unexplained since yesterday");
                    cohort.LeavesQuarantineDay = until;
                }
            }

            cohort.UnexplainedSeen = cohort.UnexplainedNumber;
            if (cohort.LeavesQuarantineDay <= day)
            {
                cohort.LeavesQuarantineDay = double.NaN;
                State.Cohorts[basin].RemoveAt(c);
                State.Husbandry.QuarantinesEnded++;
                StockingDescription stocking = Parts.Stocking[cohort.Batch];
                Spend(Chore.MoveFish, 1, Parts.ProductOfSpecies[cohort.SpeciesIndex]);
                PutInto(_tank[cohort.Batch], cohort, basin, stocking.Quarantine!.TemperKelvinPerHour, seconds, "end quarantine");
            }
        }
    }

    private void PutInto(int to, Cohort cohort, int from, double temperKelvinPerHour, long seconds, string what)
    {
        double kelvin = State.Basins.Celsius[to] - State.Basins.Celsius[from];
        double pH = State.Basins.PH[to] - State.Basins.PH[from];
        double shock = TransferShock.Share(Parts.Husbandry, kelvin, pH, temperKelvinPerHour);
        Survival.Handle(cohort, Parts.Species[cohort.SpeciesIndex], shock);
        State.Cohorts[to].Add(cohort);
        string lost = shock > 0.001 ? $", {shock:0.0%} will die of the change" : string.Empty;
        Log.Add(seconds, what, Parts.BasinNames[from], cohort.Number, "fish",
            $"{cohort.Name}: {cohort.Number:0} fish of {cohort.MeanGrams:0} g to {Parts.BasinNames[to]}, {kelvin:+0.0;-0.0;0.0} K and {pH:+0.0;-0.0;0.0} of pH at {temperKelvinPerHour:0.#} K/h{lost}");
    }

    private int QuarantineOf(string name) => Parts.QuarantineBasin[Array.IndexOf(Parts.QuarantineNames, name) is >= 0 and var q
        ? q
        : throw new DescriptionException($"There is no quarantine '{name}'. There are: {string.Join(", ", Parts.QuarantineNames)}.")];
}
