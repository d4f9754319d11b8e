using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Water;

namespace FarmTwin.Farm.Operations;

/// <summary>Bringing the filter to life: ammonium dosed until a challenge is nitrified within a day, twice; or judged with fish in it.</summary>
public sealed class StartUpWork : FarmWork
{
    private readonly DosingWork _dosing;

    /// <summary>Makes it.</summary>
    public StartUpWork(FarmContext farm, FarmLog log, DosingWork dosing)
        : base(farm, log) => _dosing = dosing;

    /// <summary>Looks at the water and doses.</summary>
    public void MorningRound(long seconds)
    {
        if (!double.IsNaN(State.Operations.CycledDay))
        {
            return;
        }

        if (Parts.Farm.FishlessStart is { } start)
        {
            if (DayOf(seconds) <= start.LongestDays)
            {
                Fishless(start, seconds);
            }
            else if (DayOf(seconds) <= start.LongestDays + 1)
            {
                Log.Add(seconds, "fishless start given up", start.Basin, start.LongestDays, "d",
                    "the filter never nitrified its challenge within a day: look for cold, pH, air, chlorine; batches that wait for it are not delivered");
            }
            else
            {
                WithFish(seconds);
            }
        }
        else
        {
            WithFish(seconds);
        }
    }

    private void Fishless(FishlessStartDescription start, long seconds)
    {
        int basin = Parts.BasinIndex(start.Basin);
        double tan = Loops.MilligramsPerLitre(basin, Substance.Tan);
        double nitrite = Loops.MilligramsPerLitre(basin, Substance.Nitrite);
        OperationsState state = State.Operations;
        bool clear = tan < start.ChallengeClearMilligramsNPerLitre && nitrite < start.ChallengeClearMilligramsNPerLitre;
        if (state.ChallengeRuns)
        {
            state.ChallengeRuns = false;
            state.ChallengesPassed = clear ? state.ChallengesPassed + 1 : 0;
            Log.Add(seconds, clear ? "challenge passed" : "challenge failed", start.Basin, state.ChallengesPassed, "times",
                $"a day after the dose TAN is {tan:0.00} and nitrite {nitrite:0.00} mg N/L");
            if (state.ChallengesPassed >= 2)
            {
                state.CycledDay = DayOf(seconds);
                Log.Add(seconds, "filter cycled", start.Basin, state.CycledDay, "d", "two challenges on end were nitrified within a day");
                return;
            }
        }

        // The round comes once a day, so a first dose of an untouched loop has nothing to be clear of.
        bool begun = state.DosedGrams.Length > 0 && State.Totals.NitrifiedGrams > 0;
        if (clear && begun)
        {
            DoseTo(basin, start.With, start.ChallengeMilligramsNPerLitre, tan, seconds, "challenge");
            state.ChallengeRuns = true;
        }
        else if (tan < start.RedoseBelowTan && nitrite < start.RedoseBelowNitrite)
        {
            DoseTo(basin, start.With, start.DoseMilligramsNPerLitre, tan, seconds, "ammonium dose");
        }
    }

    private void WithFish(long seconds)
    {
        OperationsState state = State.Operations;
        double worst = 0;
        bool fish = false;
        for (int b = 0; b < State.Cohorts.Length; b++)
        {
            if (State.Cohorts[b].Count > 0 && Parts.Basins[b].Use != BasinUse.Quarantine)
            {
                fish = true;
                worst = Math.Max(worst, Math.Max(
                    State.Basins.MilligramsPerLitre(b, Substance.Tan), State.Basins.MilligramsPerLitre(b, Substance.Nitrite)));
            }
        }

        state.FedDays += fish && State.Totals.FeedYesterdayGrams > 0 ? 1 : 0;
        state.QuietFeedDays = fish && worst < Parts.Practice.CycledQuietLevel && State.Totals.FeedYesterdayGrams > 0 ? state.QuietFeedDays + 1 : 0;
        if (state.FedDays >= Parts.Practice.CycledLeastFedDays && state.QuietFeedDays >= Parts.Practice.CycledQuietDays)
        {
            state.CycledDay = DayOf(seconds);
            Log.Add(seconds, "filter cycled", "fish loop", state.CycledDay, "d",
                $"TAN and nitrite below {Parts.Practice.CycledQuietLevel:0.##} mg N/L on {Parts.Practice.CycledQuietDays:0} fed days on end");
        }
    }

    private void DoseTo(int basin, string name, double target, double now, long seconds, string what)
    {
        // Reckoned over the dosed loop by itself: through an open valve the same grams are simply thinner.
        double litres = Loops.LitresApart(basin);
        Supplement supplement = Parts.Supplements[name];
        double grams = Math.Max(0, target - now) * litres / supplement.TanGramsNPerKilogram;
        if (grams > 0)
        {
            _dosing.Pour(basin, supplement, grams, seconds);
            Log.Add(seconds, what, Parts.BasinNames[basin], grams, "g", $"{supplement.Title} to {target:0.#} mg N/L over {litres:0} L");
        }
    }
}
