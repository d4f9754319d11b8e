using FarmTwin.Farm;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Studies.Compare;

/// <summary>What a farm can still change on a day, so as to go on as another has it from the start.</summary>
/// <remarks>
/// Ground stays: site, house, basins, pipes, blowers, beads and beds are the farm's own. What is bought, set, sown, dosed, fed and stocked from
/// then on is the reference's. What is in the water, in the tanks and on the rafts is as it has come to be.
/// </remarks>
internal static class ActingFarm
{
    /// <summary>The farm's ground under the reference's plan.</summary>
    public static FarmDescription GoingOnAs(FarmDescription reference, FarmDescription farm) => reference with
    {
        Title = farm.Title,
        About = farm.About,
        Site = farm.Site,
        LengthDays = farm.LengthDays,
        StepMinutes = farm.StepMinutes,
        House = reference.House with
        {
            Cover = farm.House.Cover,
            FloorSquareMetres = farm.House.FloorSquareMetres,
            CoverSquareMetres = farm.House.CoverSquareMetres,
            AirCubicMetres = farm.House.AirCubicMetres,
            PerimeterMetres = farm.House.PerimeterMetres,
            InfiltrationPerHour = farm.House.InfiltrationPerHour,
        },
        Basins = farm.Basins,
        Pipes = farm.Pipes,
        Blowers = farm.Blowers,
        Filters = farm.Filters.ToDictionary(f => f.Key, f => reference.Filters.TryGetValue(f.Key, out BeadFilterDescription? other)
            ? other with { Basin = f.Value.Basin, BeadsLitres = f.Value.BeadsLitres, Medium = f.Value.Medium }
            : f.Value, StringComparer.Ordinal),
        Parameters = farm.Parameters,
        Prices = farm.Prices,
    };

    /// <summary>What is set by hand on that day: everything broken put right, and valves, heaters, ration, air and shade as the reference then has them.</summary>
    public static IReadOnlyList<PlannedEvent> SetAs(Season reference, Season farm)
    {
        FarmParts parts = farm.Parts;
        double day = FarmWork.DayOf(farm.NowSeconds);
        var events = new List<PlannedEvent> { new PutRight { Day = day } };
        string? coupling = reference.Parts.Farm.Coupling?.Valve;
        for (int v = 0; v < farm.Network.ValveNames.Length; v++)
        {
            string valve = farm.Network.ValveNames[v];
            double wanted = reference.State.ValveFlow[v];
            if (wanted == farm.State.ValveFlow[v])
            {
                continue;
            }

            // A ramp or gates of the reference take the valve up again; a valve of the plan alone is set.
            events.Add(valve == coupling && wanted <= 0 ? new Decouple { Day = day } : new SetValve { Day = day, Valve = valve, FlowLitresPerHour = wanted });
        }

        string[] heaters = [.. parts.Farm.WaterHeaters.Keys];
        for (int h = 0; h < heaters.Length; h++)
        {
            if (reference.State.HeaterHold[h] != farm.State.HeaterHold[h])
            {
                events.Add(new SetHeater { Day = day, Heater = heaters[h], HoldCelsius = reference.State.HeaterHold[h] });
            }
        }

        if (reference.State.Operations.RationShare != farm.State.Operations.RationShare)
        {
            events.Add(new SetRation { Day = day, RationShare = reference.State.Operations.RationShare });
        }

        if (reference.State.House.ShadeShare != farm.State.House.ShadeShare)
        {
            events.Add(new SetShade { Day = day, Share = reference.State.House.ShadeShare });
        }

        for (int b = 0; b < parts.Basins.Length; b++)
        {
            // A mineralization tank's air goes by its own rhythm.
            if (parts.Basins[b].Use is not BasinUse.Mineralizer && reference.State.Basins.AirShare[b] != farm.State.Basins.AirShare[b])
            {
                events.Add(new SetAir { Day = day, Basin = parts.BasinNames[b], Share = reference.State.Basins.AirShare[b] });
            }
        }

        return events;
    }

    /// <summary>The farm with a stated remedy that begins on a day: what the remedy plans is moved so that its first event falls on it, and its doses begin by then.</summary>
    /// <param name="farm">The farm.</param>
    /// <param name="remedied">The same farm with the remedy.</param>
    /// <param name="seconds">When it begins, seconds of the season.</param>
    public static FarmDescription Remedied(FarmDescription farm, FarmDescription remedied, long seconds)
    {
        double day = Math.Floor(FarmWork.DayOf(seconds));
        double next = Math.Round((seconds % UnitConstants.SecondsPerDay / UnitConstants.SecondsPerHour) + (1.0 / UnitConstants.SecondsPerMinute), 3);
        KeyValuePair<string, PlannedEvent>[] own = [.. remedied.Plan.Where(p => !farm.Plan.TryGetValue(p.Key, out PlannedEvent? usual) || usual != p.Value)];
        double first = own.Length > 0 ? own.Min(p => p.Value.Day) : day;
        var plan = new Dictionary<string, PlannedEvent>(remedied.Plan, StringComparer.Ordinal);
        foreach ((string name, PlannedEvent planned) in own)
        {
            double moved = planned.Day - first + day;
            plan[name] = planned with { Day = moved, Hour = moved <= day ? Math.Max(next, planned.Hour) : planned.Hour };
        }

        return remedied with
        {
            Plan = plan,
            Dosing = remedied.Dosing.ToDictionary(
                d => d.Key,
                d => farm.Dosing.TryGetValue(d.Key, out DosingDescription? usual) && usual.FromDay != d.Value.FromDay && d.Value.FromDay > day ? d.Value with { FromDay = day + 1 } : d.Value,
                StringComparer.Ordinal),
        };
    }

    /// <summary>The emergency's care: no feed, more air, part of the water changed every day, chloride against nitrite, loops apart; then back to what was.</summary>
    /// <param name="farm">The farm at that hour.</param>
    /// <param name="library">The library.</param>
    public static IReadOnlyDictionary<string, PlannedEvent> Care(Season farm, FarmLibrary library)
    {
        DailySheetParameters care = DailySheetParameters.From(library);
        FarmParts parts = farm.Parts;
        double day = Math.Floor(FarmWork.DayOf(farm.NowSeconds));
        double hour = (farm.NowSeconds % UnitConstants.SecondsPerDay / UnitConstants.SecondsPerHour) + (1.0 / 60);
        var plan = new Dictionary<string, PlannedEvent>(StringComparer.Ordinal);
        double ration = farm.State.Operations.RationShare;
        plan["care-no-feed"] = new SetRation { Day = day, Hour = hour, RationShare = 0 };
        plan["care-half-feed"] = new SetRation { Day = day + (care.CareDays / 2), Hour = hour, RationShare = ration / 2 };
        plan["care-feed"] = new SetRation { Day = day + care.CareDays, Hour = hour, RationShare = ration };
        for (int v = 0; v < farm.Network.ValveNames.Length; v++)
        {
            if (farm.State.ValveFlow[v] > 0)
            {
                plan[$"care-shut-{v}"] = new SetValve { Day = day, Hour = hour, Valve = farm.Network.ValveNames[v], FlowLitresPerHour = 0 };
                plan[$"care-open-{v}"] = new SetValve { Day = day + care.CareDays, Hour = hour, Valve = farm.Network.ValveNames[v], FlowLitresPerHour = farm.State.ValveFlow[v] };
            }
        }

        double nitrite = 0;
        double litres = 0;
        double chloride = 0;
        int sump = -1;
        for (int b = 0; b < parts.Basins.Length; b++)
        {
            if (parts.Basins[b].Use is BasinUse.FishTank or BasinUse.FishSump or BasinUse.Filter)
            {
                litres += farm.State.Basins.Litres[b];
                chloride += farm.State.Basins.Grams[WaterStep.At(b, Substance.Chloride)];
                sump = parts.Basins[b].Use == BasinUse.FishSump || sump < 0 ? b : sump;
            }

            if (farm.State.Cohorts[b].Count == 0)
            {
                continue;
            }

            nitrite = Math.Max(nitrite, farm.State.Basins.MilligramsPerLitre(b, Substance.Nitrite));
            string name = parts.BasinNames[b];
            plan[$"care-air-{b}"] = new SetAir { Day = day, Hour = hour, Basin = name, Share = care["careAirShare"] };
            plan[$"care-air-{b}-back"] = new SetAir { Day = day + care.CareDays, Hour = hour, Basin = name, Share = farm.State.Basins.AirShare[b] };
            for (int d = 0; d < care.CareDays; d++)
            {
                plan[$"care-water-{b}-{d}"] = new ChangeWater { Day = day + d, Hour = hour, Basin = name, Litres = care["careWaterShare"] * farm.State.Basins.Litres[b] };
            }
        }

        // Nitrite goes on rising for days after its cause: chloride is given for twice what is there.
        double wanted = 2 * care["chloridePerNitrite"] * nitrite * litres / UnitConstants.GramsPerKilogram;
        if (sump >= 0 && wanted > chloride)
        {
            double perKilogram = parts.Supplements["calcium-chloride"].ChlorideGramsPerKilogram;
            plan["care-chloride"] = new Dose
            {
                Day = day, Hour = hour, Basin = parts.BasinNames[sump], Supplement = "calcium-chloride", Grams = (wanted - chloride) * UnitConstants.GramsPerKilogram / perKilogram,
            };
        }

        return plan;
    }
}
