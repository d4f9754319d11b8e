using FarmTwin.Engine;
using FarmTwin.Farm.Business;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Solids;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>The cycle of a mineralization tank: take sludge and aerate, stop the air, settle, decant, thick sludge to compost, air on.</summary>
/// <remarks>A decant is a gated transfer; while the tank settles, sludge goes to the holding tank or washes wait.</remarks>
public sealed class MineralizerCare : FarmWork
{
    // Decant and compost leave at least this much behind, L: nobody empties a tank to the last drop.
    private const double LeastMove = 1;

    /// <summary>Makes it.</summary>
    public MineralizerCare(FarmContext farm, FarmLog log)
        : base(farm, log)
    {
    }

    /// <summary>The basin that can take a filter's sludge now; −1 where none can.</summary>
    public int Receiver(BeadFilterDescription filter)
    {
        ArgumentNullException.ThrowIfNull(filter);
        if (filter.SludgeTo is not { } sludgeTo)
        {
            return -1;
        }

        int first = Parts.BasinIndex(sludgeTo);
        if (!Settles(first) && Room(first) >= filter.WashWaterLitres)
        {
            return first;
        }

        if (filter.MeanwhileTo is { } name)
        {
            int second = Parts.BasinIndex(name);
            if (!Settles(second) && Room(second) >= filter.WashWaterLitres)
            {
                return second;
            }
        }

        return -1;
    }

    /// <summary>Notes that a basin got sludge: a tank that waited for the first begins to aerate.</summary>
    public void Received(int basin, long seconds)
    {
        for (int m = 0; m < Parts.Mineralizers.Length; m++)
        {
            if (Parts.MineralizerBasin[m] == basin && State.Mineralizers[m].Phase == MineralizationPhase.Filling)
            {
                State.Mineralizers[m] = State.Mineralizers[m].Enter(MineralizationPhase.Aerating, Nitrate(basin));
                State.Basins.AirShare[basin] = 1;
                Log.Add(seconds, "air on", Parts.Mineralizers[m].Basin, 0, string.Empty, "first sludge: the tank is aerated");
            }
        }
    }

    /// <summary>Stops the air of tanks that are full and ripe.</summary>
    public void Check(long seconds, Simulation simulation)
    {
        ArgumentNullException.ThrowIfNull(simulation);
        for (int m = 0; m < Parts.Mineralizers.Length; m++)
        {
            MineralizerDescription tank = Parts.Mineralizers[m];
            int b = Parts.MineralizerBasin[m];
            if (State.Mineralizers[m].Phase != MineralizationPhase.Aerating)
            {
                continue;
            }

            Drain(m, seconds);
            bool full = State.Basins.Litres[b] >= tank.SettleAboveShare * Parts.Basins[b].VolumeLitres;
            if (!full || State.Mineralizers[m].HoursInPhase < tank.AerateDays * UnitConstants.HoursPerDay)
            {
                continue;
            }

            double tan = State.Basins.MilligramsPerLitre(b, Substance.Tan);
            double nitrite = State.Basins.MilligramsPerLitre(b, Substance.Nitrite);
            bool foul = tan > tank.DecantBelowTanMilligramsNPerLitre || nitrite > tank.DecantBelowNitriteMilligramsNPerLitre;
            double mixed = State.Basins.SolidsGrams(b) / State.Basins.Litres[b];
            bool haul = State.Mineralizers[m].HoursInPhase > 2 * tank.AerateDays * UnitConstants.HoursPerDay
                && mixed > tank.ThickenAboveGramsPerLitre;
            if (foul && !haul)
            {
                Log.Add(seconds, "settling put off", tank.Basin, tan, "mg N/L",
                    $"TAN {tan:0.0} and nitrite {nitrite:0.0} mg N/L: the air stays on until they are nitrified");
                continue;
            }

            if (foul)
            {
                Log.Add(seconds, "settle for hauling", tank.Basin, mixed, "g/L",
                    $"TAN {tan:0.0} mg N/L does not come down in twice its time: the sludge is settled and hauled to compost, nothing is decanted");
            }

            State.Basins.AirShare[b] = 0;
            State.Mineralizers[m] = State.Mineralizers[m].Enter(MineralizationPhase.Settling, Nitrate(b));
            simulation.Calendar.Schedule(
                seconds + (long)(tank.SettleHours * UnitConstants.SecondsPerHour), FarmPhase.Husbandry, (int)FarmEventKind.SettlingEnds, m);
            Log.Add(seconds, "air off", tank.Basin, State.Basins.SolidsGrams(b) / State.Basins.Litres[b], "g/L",
                $"{State.Basins.Litres[b]:0} L settle for {tank.SettleHours:0} h");
        }
    }

    /// <summary>Decants a settled tank, takes thick sludge to compost where it is too thick, turns the air on.</summary>
    public void EndSettling(int m, long seconds)
    {
        MineralizerDescription tank = Parts.Mineralizers[m];
        int b = Parts.MineralizerBasin[m];
        int to = Parts.BasinIndex(tank.DecantTo);
        MineralizationState state = State.Mineralizers[m];
        double litres = State.Basins.Litres[b];
        double mixed = litres > 0 ? State.Basins.SolidsGrams(b) / litres : 0;
        Spend(Chore.Decant, 1);
        double clear = MineralizationTank.DecantableLitres(
            Parts.Mineralization, litres, Parts.Basins[b].SurfaceSquareMetres, mixed, state.AirOffHours);
        double residual = MineralizationTank.ResidualGramsPerLitre(Parts.Mineralization, mixed, state.AirOffHours);
        double volume = Math.Min(clear, Room(to));
        SulphideRisk sulphide = MineralizationTank.SulphideRisk(
            Parts.Mineralization, state.AirOffHours, state.NitrateGoneHours, State.Basins.Celsius[b]);
        DecantRefusals refusals = MineralizationTank.Refusals(
            Parts.Mineralization, state.AirOffHours, volume, residual,
            Mixed(b, to, volume, Substance.Tan), Mixed(b, to, volume, Substance.Nitrite), sulphide);
        if (refusals == DecantRefusals.None && volume > LeastMove)
        {
            Decant(m, b, to, volume, residual, seconds);
        }
        else
        {
            Log.Add(seconds, "decant refused", tank.Basin, volume, "L", $"{refusals} ({clear:0} L stand clear, room for {Room(to):0} L)");
        }

        if (mixed > tank.ThickenAboveGramsPerLitre)
        {
            Compost(m, b, mixed, seconds);
        }

        State.Mineralizers[m] = State.Mineralizers[m].Enter(MineralizationPhase.Decanting, Nitrate(b)).Enter(MineralizationPhase.Aerating, Nitrate(b));
        State.Basins.AirShare[b] = 1;
        if (sulphide == SulphideRisk.Danger)
        {
            Log.Add(seconds, "sulphide warning", tank.Basin, state.AirOffHours, "h", "air was off too long: ventilate before the air is turned on, do not lean over the tank");
        }

        Log.Add(seconds, "air on", tank.Basin, State.Basins.Litres[b], "L", "the rest is carried over and aerated");
        Drain(m, seconds);
    }

    /// <summary>Lets a share of a tank's water out as it stands, against every gate.</summary>
    public void DecantEarly(int m, double share, long seconds)
    {
        int b = Parts.MineralizerBasin[m];
        int to = Parts.BasinIndex(Parts.Mineralizers[m].DecantTo);
        double litres = Math.Min(share * State.Basins.Litres[b], Room(to));
        if (litres <= LeastMove)
        {
            Log.Add(seconds, "decant early", Parts.Mineralizers[m].Basin, 0, "L", "nothing done: no water, or no room for it");
            return;
        }

        double hours = State.Mineralizers[m].AirOffHours;
        double mixed = State.Basins.SolidsGrams(b) / State.Basins.Litres[b];
        double residual = MineralizationTank.ResidualGramsPerLitre(Parts.Mineralization, mixed, hours);
        SulphideRisk sulphide = MineralizationTank.SulphideRisk(
            Parts.Mineralization, hours, State.Mineralizers[m].NitrateGoneHours, State.Basins.Celsius[b]);
        string smell = sulphide == SulphideRisk.None ? string.Empty : ", and sulphide";
        Log.Add(seconds, "decant early", Parts.Mineralizers[m].Basin, litres, "L",
            $"{hours:0.#} h after the air stopped: {residual:0.0} g/L of solids, TAN {State.Basins.MilligramsPerLitre(b, Substance.Tan):0.0}, "
            + $"nitrite {State.Basins.MilligramsPerLitre(b, Substance.Nitrite):0.0} mg N/L{smell} go to {Parts.BasinNames[to]}");
        Decant(m, b, to, litres, residual, seconds);
    }

    // The holding tank is emptied into its mineralization tank as far as there is room.
    private void Drain(int m, long seconds)
    {
        if (Parts.Mineralizers[m].Holding is not { } name)
        {
            return;
        }

        int from = Parts.BasinIndex(name);
        int to = Parts.MineralizerBasin[m];
        double moved = State.Basins.Move(from, to, Math.Min(State.Basins.Litres[from], Room(to)));
        if (moved > LeastMove)
        {
            Spend(Chore.EmptyHolding, 1);
            Log.Add(seconds, "empty holding tank", name, moved, "L", $"to {Parts.BasinNames[to]}");
        }
    }

    private void Decant(int m, int from, int to, double litres, double residualGramsPerLitre, long seconds)
    {
        Basins basins = State.Basins;
        double share = litres / basins.Litres[from];
        double solids = basins.SolidsGrams(from);
        double solidsShare = solids > 0 ? Math.Min(share, residualGramsPerLitre * litres / solids) : 0;
        double nitrateShare = ClearNitrateShare(m, from, litres);
        basins.Warm(to, litres, basins.Celsius[from]);
        double nitrogen = 0;
        for (int column = 0; column < Substance.Columns; column++)
        {
            double part = column >= Substance.FirstSolidsClass ? solidsShare : column == Substance.Nitrate ? nitrateShare : share;
            double grams = basins.Grams[WaterStep.At(from, column)] * part;
            basins.Grams[WaterStep.At(from, column)] -= grams;
            basins.Grams[WaterStep.At(to, column)] += grams;
            nitrogen += column is Substance.Tan or Substance.Nitrite or Substance.Nitrate ? grams : 0;
            State.Totals.DecantedPhosphorusGrams += column == Substance.Phosphorus ? grams : 0;
            State.Totals.DecantedPotassiumGrams += column == Substance.Potassium ? grams : 0;
        }

        basins.Litres[from] -= litres;
        basins.Litres[to] += litres;
        State.Totals.Decants++;
        State.Totals.DecantedLitres += litres;
        State.Totals.DecantedNitrogenGrams += nitrogen;
        Log.Add(seconds, "decant", Parts.BasinNames[from], litres, "L",
            $"{litres:0} L of clear water with {nitrogen:0} g N to {Parts.BasinNames[to]}");
    }

    // Above the blanket nitrate is higher than in the tank's mean: the blanket has lost it.
    private double ClearNitrateShare(int m, int basin, double litres)
    {
        Basins basins = State.Basins;
        double total = basins.Grams[WaterStep.At(basin, Substance.Nitrate)];
        if (total <= 0)
        {
            return 0;
        }

        double mixed = basins.SolidsGrams(basin) / basins.Litres[basin];
        double blanket = MineralizationTank.BlanketShare(Parts.Mineralization, mixed, State.Mineralizers[m].AirOffHours) * basins.Litres[basin];
        double inBlanket = Math.Min(
            total, State.Mineralizers[m].BlanketNitrateMilligramsNPerLitre * blanket / UnitConstants.GramsPerKilogram);
        double clearLitres = basins.Litres[basin] - blanket;
        return clearLitres > 0 ? Math.Min(1, (total - inBlanket) / clearLitres * litres / total) : litres / basins.Litres[basin];
    }

    private void Compost(int m, int basin, double mixed, long seconds)
    {
        Basins basins = State.Basins;
        double solids = basins.SolidsGrams(basin);
        double blanket = MineralizationTank.BlanketGramsPerLitre(Parts.Mineralization, State.Mineralizers[m].AirOffHours);
        double solidsShare = Parts.Mineralizers[m].CompostShare;
        double litres = Math.Min(basins.Litres[basin] - LeastMove, solids * solidsShare / blanket);
        if (litres <= 0)
        {
            return;
        }

        LedOut.Take(State, basin, litres, solidsShare, Door.SludgeCompost);
        Spend(Chore.CarrySludge, 1);
        State.Totals.CompostedSolidsGrams += solids * solidsShare;
        Log.Add(seconds, "sludge to compost", Parts.BasinNames[basin], solids * solidsShare / UnitConstants.GramsPerKilogram, "kg DM",
            $"{litres:0} L of thick sludge; the tank held {mixed:0.0} g/L");
    }

    private bool Settles(int basin)
    {
        int m = Array.IndexOf(Parts.MineralizerBasin, basin);
        return m >= 0 && State.Mineralizers[m].Phase is MineralizationPhase.Settling or MineralizationPhase.Decanting;
    }

    private double Room(int basin) =>
        (Parts.Basins[basin].BrimLitres ?? (Parts.Basins[basin].VolumeLitres * 1.1)) - State.Basins.Litres[basin];

    private double Nitrate(int basin) => State.Basins.MilligramsPerLitre(basin, Substance.Nitrate);

    private double Mixed(int from, int to, double litres, int substance)
    {
        double loop = Loops.Litres(to);
        return ((Loops.MilligramsPerLitre(to, substance) * loop) + (State.Basins.MilligramsPerLitre(from, substance) * litres)) / (loop + litres);
    }
}
