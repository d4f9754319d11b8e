using FarmTwin.Farm.Summaries.Findings.Proposals;

namespace FarmTwin.Farm.Summaries.Findings;

/// <summary>Fuel that ran out, what the coupling costs, which heat is the cheapest.</summary>
internal static class EnergyFindings
{
    private const double WorthTellingShare = 0.1;
    private const double FewDays = 7;
    private const int HoursWorthTelling = 48;
    private const double FewestDaysToCompare = 30;

    public static void Add(FindingList list)
    {
        foreach ((string name, FuelTankSummary tank) in list.Summary.Energy.FuelTanks)
        {
            Tank(list, name, tank);
        }

        House(list);
        Coupling(list);
        Comparison(list);
    }

    private static void Tank(FindingList list, string name, FuelTankSummary tank)
    {
        if (tank.HoursEmpty > 0)
        {
            (double first, _, int count) = list.Span("fuel runs out", name);
            string why = tank.MissedDeliveries > 0 ? $"{tank.MissedDeliveries} {(tank.MissedDeliveries == 1 ? "delivery" : "deliveries")} did not come" : "it was ordered too late or too little";
            list.Add(91, $"The fuel tank {name} ran out {(count == 1 ? "once" : $"{count} times")}, first on {list.Day(first)}, and its heaters were out for {tank.HoursEmpty:0} hours: {why}. "
                + "Order at a higher share, keep a second supplier and a cylinder that lasts a night.");
        }
        else if (tank.DaysFullOnHardestDay is { } days && days < FewDays)
        {
            list.Add(62, $"A full tank {name} lasts {days:0.0} days of the hardest day's use, and the lowest content was {tank.LowestL.Value:0} L on {list.Day(tank.LowestL.Day)}: "
                + "a storm that keeps the delivery away for a week empties it; a larger tank, or an order at a higher share.");
        }
    }

    private static void House(FindingList list)
    {
        HouseSummary house = list.Summary.House;
        if (house.HoursTooHot > HoursWorthTelling && house.AirC.Highest is { } hottest)
        {
            Description.HouseDescription described = list.Season.Parts.Farm.House;
            string cure = described.EvaporativePad is null
                ? "more shade from May on, more air, or fans with a wet pad"
                : $"the pad was wet for {house.PadHours:0} hours and used {house.PadL:0} L: more shade, or a larger pad with more air";
            list.Add(58, $"The house was above {house.TooHotC:0} °C for {house.HoursTooHot} hours, hottest on {list.Day(hottest.Day)} at {hottest.Value:0.0} °C: {cure}.",
                HouseProposals.MoreShade(list, hottest.Day));
        }

        if (house.PadHours > HoursWorthTelling && house.HoursTooHot <= HoursWorthTelling && house.AirC.Highest is { } highest)
        {
            double topUp = list.Summary.Water.TopUpL;
            string share = topUp > 0 ? $", {house.PadL / topUp:0%} of what the farm itself was topped up with" : string.Empty;
            list.Add(44, $"The wet pad ran {house.PadHours:0} hours and held the house at {highest.Value:0.0} °C or below (hottest on {list.Day(highest.Day)}), for {house.FanKWh:0} kWh of fans and "
                + $"{house.PadL / UnitConstants.LitresPerCubicMetre:0.0} m³ of water{share}: count it in the well and the bill.");
        }

        if (house.HoursTooHumid > HoursWorthTelling)
        {
            string purge = house.PurgeHours > 0
                ? $" Airing against it ran {house.PurgeHours:0} hours and cost {house.PurgeFuel:0.#} units of the air heater's fuel."
                : " Airing with heat on humid nights dries it, at the cost of fuel (\"humidityPurge\").";
            list.Add(48, $"The air of the house was above {house.TooHumidPercent:0} % humidity for {house.HoursTooHumid} hours in {list.Summary.Days:0} days: grey mould and mildew spread.{purge}");
        }
    }

    private static void Coupling(FindingList list)
    {
        if (list.Summary.Energy.Coupling is { } coupling && coupling.HeaterMJ > 0 && coupling.SpentMJ > WorthTellingShare * coupling.HeaterMJ)
        {
            string cost = coupling.Cost is { } money ? $" ({money:0} in the scenario's currency)" : string.Empty;
            string opened = list.Summary.Water.OpenedDay is { } day ? $"Since the valves opened on {list.Day(day)}" : $"Over the {coupling.Hours / UnitConstants.HoursPerDay:0} days in which the loops exchanged water";
            list.Add(57, $"{opened}, {coupling.SpentMJ / coupling.HeaterMJ:0%} of the water heater's heat went with the water to the plants: {coupling.Fuel:0} {coupling.Unit} of fuel{cost}. "
                + "Cover and insulate troughs and lanes first; then less exchange on cold nights.", HouseProposals.Insulation(list));
        }
    }

    private static void Comparison(FindingList list)
    {
        EnergySummary energy = list.Summary.Energy;
        string? now = energy.Heaters.Count > 0 && energy.Heaters.Values.All(h => h.FuelName == HeatingComparison.Propane) ? "propane" : null;
        (string way, HeatingWay figures)[] priced = [.. energy.Comparison.Where(w => w.Value.Cost is not null).Select(w => (w.Key, w.Value)).OrderBy(w => w.Value.Cost)];
        if (list.Summary.Days < FewestDaysToCompare || now is null || priced.Length < 2 || energy.Comparison[now].Cost is not { } cost || priced[0].way == now || cost <= 0)
        {
            return;
        }

        (string best, HeatingWay cheapest) = priced[0];
        list.Add(45, $"At the stated prices the heat of these {list.Summary.Days:0} days costs {cost:0} by propane and {cheapest.Cost:0} by {Words(best)} ({cheapest.Water + cheapest.Air:0} {cheapest.Unit}), "
            + $"with {energy.Comparison[now].CarbonDioxideKg:0} against {cheapest.CarbonDioxideKg:0} kg of carbon dioxide; machine and service are not in it.");
    }

    private static string Words(string way) => way switch
    {
        "naturalGas" => "natural gas",
        "element" => "an electric element",
        "heatPump" => "a heat pump",
        _ => way,
    };
}
