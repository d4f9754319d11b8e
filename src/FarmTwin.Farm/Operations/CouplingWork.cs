using FarmTwin.Farm.Description;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Joining the loops: gates looked at every morning, and a ramp capped by degrees an hour and by the heater.</summary>
public sealed class CouplingWork : FarmWork
{
    private const double NothingDifferent = 0.1;
    private const double WithinFlow = 0.5;

    private readonly CouplingDescription? _plan;
    private readonly int _valve;
    private readonly double _steadyFeed;
    private readonly bool[] _fishLoop;
    private readonly int _plantSump;
    private readonly int[] _heaters;

    /// <summary>Makes it.</summary>
    public CouplingWork(FarmContext farm, FarmLog log, FishTrade trade)
        : base(farm, log)
    {
        ArgumentNullException.ThrowIfNull(trade);
        _plan = Parts.Farm.Coupling;
        _valve = _plan is null ? -1 : Array.IndexOf(farm.Network.ValveNames, _plan.Valve);
        _fishLoop = [.. Parts.Basins.Select(b => LoopUses.Fish.Contains(b.Use))];
        _plantSump = Array.FindIndex(Parts.Basins, b => b.Use == BasinUse.PlantSump);
        _heaters = [.. Enumerable.Range(0, Parts.Heaters.Length).Where(h => _fishLoop[Parts.HeaterBasin[h]])];
        double hold = _heaters.Length > 0 ? Parts.Heaters[_heaters[0]].HoldCelsius : 26;
        _steadyFeed = trade.SteadyFeedGramsPerDay(hold);
    }

    /// <summary>Feed that the plan settles to, g/d.</summary>
    public double SteadyFeedGramsPerDay => _steadyFeed;

    /// <summary>Looks at the gates; opens the valves or takes the next step of the ramp.</summary>
    /// <param name="seconds">Now.</param>
    /// <param name="heaterLimitWatts">What each water heater can give through its exchanger, W; those of the fish loop count.</param>
    public void MorningRound(long seconds, ReadOnlySpan<double> heaterLimitWatts)
    {
        if (_plan is null || _plantSump < 0)
        {
            return;
        }

        OperationsState state = State.Operations;
        double day = DayOf(seconds);
        CouplingGates refused = Gates(seconds);
        state.Refused = refused;
        if (state.RampStep < 0 && double.IsNaN(state.CoupledDay))
        {
            if (State.Totals.FeedGrams > 0)
            {
                for (int bit = 0; bit < CouplingGateNames.Count; bit++)
                {
                    state.DaysRefused[bit] += ((int)refused & (1 << bit)) != 0 ? 1 : 0;
                }
            }

            if (_plan.Way != CouplingWay.Never && (_plan.OnDay is { } fixedDay ? day >= fixedDay : refused == CouplingGates.None))
            {
                Open(seconds, refused);
            }
        }

        double given = 0;
        double limitWatts = 0;
        foreach (int h in _heaters)
        {
            given += state.HeaterMegajoules[h];
            limitWatts += heaterLimitWatts[h];
        }

        double megajoules = given - state.HeaterMegajoulesMark;
        if (State.Alarms.ClosedSinceSeconds >= 0)
        {
            // The alarm box holds the valve closed.
        }
        else if (state.RampStep >= 0 && (state.RampsAgain || double.IsNaN(state.CoupledDay)))
        {
            Ramp(seconds, limitWatts - (megajoules * 1e6 / UnitConstants.SecondsPerDay));
        }
        else if (double.IsNaN(state.CoupledDay) && State.ValveFlow[_valve] >= _plan.FullFlowLitresPerHour - WithinFlow)
        {
            // Opened by hand: from here on the farm is run as one water.
            state.OpenedDay = double.IsNaN(state.OpenedDay) ? day : state.OpenedDay;
            state.CoupledDay = day;
            Log.Add(seconds, "fully coupled", _plan.Valve, State.ValveFlow[_valve], "L/h", "the valve was opened by hand");
        }

        state.FishCelsiusYesterday = FishCelsius();
        state.HeaterMegajoulesMark = given;
    }

    /// <summary>Closes the valve by hand; the plan's day or the gates open it again.</summary>
    /// <exception cref="DescriptionException">The farm has no coupling.</exception>
    public void Decouple(long seconds)
    {
        if (_plan is null)
        {
            throw new DescriptionException("plan: 'decouple' needs a coupling; describe one under 'coupling', or set the valve by 'set-valve'.");
        }

        Log.Add(seconds, "decouple", _plan.Valve, State.ValveFlow[_valve], "L/h stopped", "closed by hand; the loops run apart");
        State.ValveFlow[_valve] = 0;
        OperationsState state = State.Operations;
        state.RampStep = -1;
        state.RampsAgain = false;
        state.CoupledDay = double.NaN;
        state.GateDays = 0;
    }

    /// <summary>Closes the valve because of an alarm; the alarm box then holds it.</summary>
    public void CloseForAlarm(long seconds, string alarm)
    {
        if (_plan is null || State.Alarms.ClosedSinceSeconds >= 0 || State.ValveFlow[_valve] <= 0)
        {
            return;
        }

        Log.Add(seconds, "decouple", _plan.Valve, State.ValveFlow[_valve], "L/h stopped", $"the alarm box closed the valve: {alarm}");
        State.ValveFlow[_valve] = 0;
        State.Alarms.ClosedSinceSeconds = seconds;
        State.Alarms.Closings++;
    }

    /// <summary>Opens the valve again by the ramp, from a share of the fish loop's water a day on.</summary>
    public void ReopenAfterAlarm(long seconds, double fromSharePerDay)
    {
        OperationsState state = State.Operations;
        double days = DayOf(seconds - State.Alarms.ClosedSinceSeconds);
        State.Alarms.ClosedSinceSeconds = -1;
        int from = 0;
        while (from < _plan!.RampShares.Count && _plan.RampShares[from] < fromSharePerDay)
        {
            from++;
        }

        state.RampStep = double.IsNaN(state.CoupledDay) ? Math.Min(state.RampStep, from) : from;
        state.RampsAgain = true;
        Log.Add(seconds, "couple again", _plan.Valve, days, "days closed", "all alarms were acknowledged and have been normal long enough; the ramp takes up again");
    }

    private void Open(long seconds, CouplingGates refused)
    {
        OperationsState state = State.Operations;
        state.OpenedDay = double.IsNaN(state.OpenedDay) ? DayOf(seconds) : state.OpenedDay;
        string against = refused == CouplingGates.None ? "all gates hold" : $"on the planned day, although these gates do not hold: {CouplingGateNames.Describe(refused)}";
        if (_plan!.Way == CouplingWay.AtOnce)
        {
            State.ValveFlow[_valve] = _plan.FullFlowLitresPerHour;
            state.CoupledDay = DayOf(seconds);
            Log.Add(seconds, "couple at once", _plan.Valve, _plan.FullFlowLitresPerHour, "L/h", against);
        }
        else
        {
            state.RampStep = 0;
            Log.Add(seconds, "begin coupling ramp", _plan.Valve, 0, "L/h", against);
        }
    }

    private void Ramp(long seconds, double spareWatts)
    {
        OperationsState state = State.Operations;
        double day = DayOf(seconds);
        if (day < state.RampResumeDay)
        {
            return;
        }

        if (Abort() is { } reason)
        {
            state.RampAborts++;
            state.RampResumeDay = day + _plan!.HoldDays;
            state.RampStep = Math.Max(0, state.RampStep - 2);
            State.ValveFlow[_valve] /= 2;
            Log.Add(seconds, "coupling ramp held", _plan!.Valve, State.ValveFlow[_valve], "L/h", reason);
            return;
        }

        double fishLitres = FishLitres();
        double wanted = state.RampStep < _plan!.RampShares.Count
            ? Math.Min(_plan.FullFlowLitresPerHour, _plan.RampShares[state.RampStep] * fishLitres / UnitConstants.HoursPerDay)
            : _plan.FullFlowLitresPerHour;
        var waters = new LoopPair(FishCelsius(), State.Basins.Celsius[_plantSump]);
        double colder = waters.FishLoop - waters.PlantLoop;
        double byShock = Math.Abs(colder) > NothingDifferent
            ? TwoLoopExchange.LargestFlowByHourLitresPerHour(waters, fishLitres, _plan.FastestKelvinPerHour)
            : double.PositiveInfinity;

        // The heater already carries what now flows; what it has to spare carries more.
        double byHeater = _heaters.Length > 0 && colder > NothingDifferent
            ? State.ValveFlow[_valve] + TwoLoopExchange.LargestFlowByHeatLitresPerHour(
                Math.Max(0, spareWatts) / UnitConstants.GramsPerKilogram, waters)
            : double.PositiveInfinity;
        double flow = Math.Min(wanted, Math.Min(byShock, byHeater));
        State.ValveFlow[_valve] = flow;
        bool capped = flow < wanted - WithinFlow;
        string cap = !capped ? string.Empty : byHeater <= byShock ? "; capped by the heater" : "; capped by degrees an hour";
        Log.Add(seconds, "coupling step", _plan.Valve, flow, "L/h", $"plant water is {colder:0.0} K colder{cap}");
        if (!capped)
        {
            state.RampStep++;
        }

        if (flow >= _plan.FullFlowLitresPerHour - WithinFlow)
        {
            state.CoupledDay = double.IsNaN(state.CoupledDay) ? day : state.CoupledDay;
            state.RampsAgain = false;
            Log.Add(seconds, "fully coupled", _plan.Valve, flow, "L/h", $"{day - Math.Floor(state.OpenedDay):0} days after the first opening");
        }
    }

    /// <summary>Every gate as it stands now: what is read, what it is held against, whether it holds.</summary>
    /// <remarks>The days on end are those of the last morning round. Empty where the farm has no coupling or no plant sump.</remarks>
    public IReadOnlyList<GateReading> Readings(long seconds)
    {
        if (_plan is null || _plantSump < 0)
        {
            return [];
        }

        CouplingGatesDescription gates = _plan.Gates;
        OperationsState state = State.Operations;
        double day = DayOf(seconds);
        bool anyFish = State.Cohorts.Any(c => c.Count > 0);
        return
        [
            GateReading.Below(CouplingGates.Tan, WorstTank(Substance.Tan), gates.TanMilligramsNPerLitre, "mg N/L"),
            GateReading.Below(CouplingGates.Nitrite, WorstTank(Substance.Nitrite), gates.NitriteMilligramsNPerLitre, "mg N/L"),
            GateReading.AtLeast(CouplingGates.Feed, anyFish && _steadyFeed > 0 ? State.Totals.FeedYesterdayGrams / _steadyFeed : 0, gates.FeedShare, "of steady feed"),
            GateReading.AtLeast(CouplingGates.Days, state.GateDays, gates.Days, "days on end"),
            GateReading.AtLeast(CouplingGates.Deaths, state.DaysWithoutDeaths, gates.QuietDays, "quiet days"),
            GateReading.AtLeast(CouplingGates.MixedNitrate, MixedMilligramsPerLitre(Substance.Nitrate), gates.MixedNitrateMilligramsNPerLitre, "mg N/L"),
            GateReading.AtLeast(CouplingGates.MixedAlkalinity, MixedAlkalinity(), gates.MixedAlkalinityMilligramsPerLitre, "mg/L as CaCO3"),
            GateReading.Below(CouplingGates.PlantTan, State.Basins.MilligramsPerLitre(_plantSump, Substance.Tan), gates.PlantTanMilligramsNPerLitre, "mg N/L"),
            GateReading.AtLeast(CouplingGates.Oxygen, LowestOxygen(), gates.OxygenMilligramsPerLitre, "mg/L"),
            GateReading.Below(CouplingGates.Sodium, State.Basins.MilligramsPerLitre(_plantSump, Substance.Sodium), gates.SodiumMilligramsPerLitre, "mg/L"),
            new GateReading(CouplingGates.Weekday, WeekdayOf(seconds), Parts.Practice.LastStartWeekday, "day of the week", !gates.EarlyInWeek || WeekdayOf(seconds) <= Parts.Practice.LastStartWeekday),
            GateReading.AtLeast(CouplingGates.NotBefore, day, _plan.NotBeforeDay, "day"),
            new GateReading(CouplingGates.Treatment, LoopIsTreated(day) ? 1 : 0, 0, "loops treated", !LoopIsTreated(day)),
            GateReading.AtLeast(CouplingGates.Pesticide, day - State.Husbandry.SprayedDay, gates.SprayDays, "days since a spray"),
        ];
    }

    private CouplingGates Gates(long seconds)
    {
        const CouplingGates Water = CouplingGates.Tan | CouplingGates.Nitrite | CouplingGates.Feed;
        OperationsState state = State.Operations;
        state.DaysWithoutDeaths = State.Totals.UnexplainedDeathsToday + State.Totals.UnexplainedDeathsYesterday < 0.5 ? state.DaysWithoutDeaths + 1 : 0;
        CouplingGates refused = Refused(Readings(seconds));
        state.GateDays = (refused & Water) == CouplingGates.None ? state.GateDays + 1 : 0;
        return Refused(Readings(seconds));
    }

    private static CouplingGates Refused(IReadOnlyList<GateReading> readings)
    {
        CouplingGates refused = CouplingGates.None;
        foreach (GateReading reading in readings)
        {
            refused |= reading.Holds ? CouplingGates.None : reading.Gate;
        }

        return refused;
    }

    private bool LoopIsTreated(double day)
    {
        for (int b = 0; b < Parts.Basins.Length; b++)
        {
            if (TakesPart(b) && QuarantineCare.IsTreated(Farm, b, day))
            {
                return true;
            }
        }

        return false;
    }

    private string? Abort()
    {
        double tan = WorstTank(Substance.Tan);
        double nitrite = WorstTank(Substance.Nitrite);
        double fallen = State.Operations.FishCelsiusYesterday - FishCelsius();
        return tan > Parts.Practice.RampStopsTan ? $"TAN of the tanks is {tan:0.0} mg N/L"
            : nitrite > Parts.Practice.RampStopsNitrite ? $"nitrite of the tanks is {nitrite:0.0} mg N/L"
            : LowestOxygen() < Parts.Practice.RampStopsOxygen ? $"oxygen is below {Parts.Practice.RampStopsOxygen:0.#} mg/L"
            : fallen > Parts.Practice.RampStopsCooling ? $"the fish's water fell {fallen:0.0} K in a day"
            : null;
    }

    private double WorstTank(int substance)
    {
        double worst = 0;
        for (int b = 0; b < Parts.Basins.Length; b++)
        {
            if (Parts.Basins[b].Use == BasinUse.FishTank)
            {
                worst = Math.Max(worst, State.Basins.MilligramsPerLitre(b, substance));
            }
        }

        return worst;
    }

    private double LowestOxygen()
    {
        double lowest = double.PositiveInfinity;
        for (int b = 0; b < Parts.Basins.Length; b++)
        {
            if (Parts.Basins[b].Use is BasinUse.FishTank or BasinUse.Lane or BasinUse.PlantSump)
            {
                lowest = Math.Min(lowest, State.Basins.MilligramsPerLitre(b, Substance.Oxygen));
            }
        }

        return lowest;
    }

    private double FishCelsius()
    {
        double sum = 0;
        int tanks = 0;
        for (int b = 0; b < Parts.Basins.Length; b++)
        {
            if (Parts.Basins[b].Use == BasinUse.FishTank)
            {
                sum += State.Basins.Celsius[b];
                tanks++;
            }
        }

        return tanks > 0 ? sum / tanks : double.NaN;
    }

    private double FishLitres()
    {
        double litres = 0;
        for (int b = 0; b < Parts.Basins.Length; b++)
        {
            litres += _fishLoop[b] ? State.Basins.Litres[b] : 0;
        }

        return litres;
    }

    private double MixedMilligramsPerLitre(int substance)
    {
        double grams = 0;
        double litres = 0;
        for (int b = 0; b < Parts.Basins.Length; b++)
        {
            if (TakesPart(b))
            {
                grams += State.Basins.Grams[WaterStep.At(b, substance)];
                litres += State.Basins.Litres[b];
            }
        }

        return litres > 0 ? grams * UnitConstants.GramsPerKilogram / litres : 0;
    }

    private double MixedAlkalinity()
    {
        double equivalents = 0;
        double litres = 0;
        for (int b = 0; b < Parts.Basins.Length; b++)
        {
            if (TakesPart(b))
            {
                equivalents += State.Basins.Alkalinity[b] * State.Basins.Litres[b];
                litres += State.Basins.Litres[b];
            }
        }

        return litres > 0 ? Alkalinity.MilligramsCalciumCarbonatePerLitre(equivalents / litres) : 0;
    }

    private bool TakesPart(int b) => _fishLoop[b] || LoopUses.Plant.Contains(Parts.Basins[b].Use);
}
