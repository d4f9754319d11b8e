using FarmTwin.Farm.Description;

namespace FarmTwin.Farm.Summaries.Findings.Proposals;

/// <summary>Changes of house, heat, sludge tank and doses.</summary>
internal static class HouseProposals
{
    // Steps that a planner would take first; own choice.
    private const double ShadeStep = 0.2;
    private const double MostShade = 0.8;
    private const double WarmestMonths = 92;
    private const double Insulated = 0.6;
    private const double SoonerDecant = 0.7;
    private const double LongerAir = 1.4;
    private const double MoreNutrient = 1.5;
    private const double DaysAhead = 14;

    /// <summary>More shade around the hottest day.</summary>
    public static Proposal MoreShade(FindingList list, double hottestDay) => new(
        $"{ShadeStep:0%} more of the light kept out for three months around the hottest day",
        farm =>
        {
            double from = Math.Max(0, hottestDay - (WarmestMonths / 2));
            double to = hottestDay + (WarmestMonths / 2);
            double before = ShadeOn(farm, from);
            double after = ShadeOn(farm, to);
            var plan = farm.Plan.ToDictionary(p => p.Key, p => p.Value is SetShade s && s.Day >= from && s.Day <= to ? s with { Share = More(s.Share) } : p.Value, StringComparer.Ordinal);
            plan["trial: shade on"] = new SetShade { Day = from, Share = More(before) };
            plan["trial: shade off"] = new SetShade { Day = to, Share = after };
            return farm with { Plan = plan };
        },
        [
            new("hours too hot", string.Empty, true, s => s.House.HoursTooHot), ProposalFigures.HeadsOfAllCrops, ProposalFigures.Margin(list),
        ]);

    /// <summary>Insulated plant basins.</summary>
    public static Proposal Insulation(FindingList list) => new(
        "troughs, lanes and sumps of the plant loop insulated to three fifths of their loss",
        farm => farm with
        {
            Basins = farm.Basins.ToDictionary(b => b.Key, b => LoopUses.Plant.Contains(b.Value.Use)
                ? b.Value with { WallWattsPerKelvin = b.Value.WallWattsPerKelvin * Insulated } : b.Value, StringComparer.Ordinal),
        },
        [ProposalFigures.Fuel(list), ProposalFigures.Margin(list)]);

    /// <summary>The sludge tank settled and decanted sooner.</summary>
    public static Proposal DecantedSooner() => new(
        "the sludge tank settled after seven tenths of the planned time under air",
        farm => Aerated(farm, SoonerDecant),
        [new("washes put off", string.Empty, true, s => s.Solids.WashesPutOff), new("decants refused", string.Empty, true, s => s.Solids.DecantsRefused)]);

    /// <summary>The sludge tank aerated longer.</summary>
    public static Proposal AeratedLonger() => new(
        "the sludge tank aerated two fifths longer before it settles",
        farm => Aerated(farm, LongerAir),
        [new("decants refused", string.Empty, true, s => s.Solids.DecantsRefused), new("washes put off", string.Empty, true, s => s.Solids.WashesPutOff)]);

    /// <summary>The farm's own rule for an element keeps half as much again; null where the farm doses none of it in the plant loop.</summary>
    public static Proposal? MoreOf(FindingList list, KeptElement kept, string name, double shortDay)
    {
        FarmDescription described = list.Season.Parts.Farm;
        string[] rules = [.. described.Dosing.Where(d => d.Value is KeepElement rule && rule.Element == kept && described.Basins[rule.Basin].Use == BasinUse.PlantSump).Select(d => d.Key)];
        return rules.Length == 0 ? null : new(
            $"{name} kept half as high again, looked at twice as often, and from two weeks before it was short",
            farm => farm with
            {
                Dosing = farm.Dosing.ToDictionary(d => d.Key, d => rules.Contains(d.Key) && d.Value is KeepElement rule
                    ? rule with
                    {
                        AtMilligramsPerLitre = rule.AtMilligramsPerLitre * MoreNutrient, UpToMilligramsPerLitre = rule.UpToMilligramsPerLitre * MoreNutrient,
                        EveryDays = Math.Max(1, rule.EveryDays / 2), BeginsWhenCoupled = false, FromDay = Math.Min(rule.FromDay, Math.Max(0, shortDay - DaysAhead)),
                    }
                    : d.Value, StringComparer.Ordinal),
            },
            [new($"days short of {name}", string.Empty, true, s => s.Nutrients.Elements[name].DaysShort), ProposalFigures.HeadsOfAllCrops, ProposalFigures.Margin(list)]);
    }

    private static FarmDescription Aerated(FarmDescription farm, double factor) => farm with
    {
        Mineralizers = farm.Mineralizers.ToDictionary(m => m.Key, m => m.Value with { AerateDays = m.Value.AerateDays * factor }, StringComparer.Ordinal),
    };

    private static double ShadeOn(FarmDescription farm, double day) =>
        farm.Plan.Values.OfType<SetShade>().Where(s => s.Day <= day).OrderBy(s => s.Day).Select(s => s.Share).LastOrDefault(farm.House.ShadeShare);

    private static double More(double share) => Math.Min(Math.Max(share, MostShade), share + ShadeStep);
}
