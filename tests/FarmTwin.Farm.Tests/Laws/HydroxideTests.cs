using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Tests.Laws;

/// <summary>Hydroxides are dripped by the hour or refused, and the record says so.</summary>
public class HydroxideTests
{
    [Fact]
    public void A_season_on_hydroxides_drips_them_and_keeps_ammonia_harmless()
    {
        var rules = new Dictionary<string, DosingDescription>(StringComparer.Ordinal);
        foreach ((string name, DosingDescription rule) in Farms.FirstSeason.Dosing)
        {
            rules[name] = rule is KeepAlkalinity keep ? keep with { With = ["potassium-hydroxide", "calcium-hydroxide"] } : rule;
        }

        Season season = Farms.Run(Farms.FirstSeason with { Dosing = rules }, 120);
        LedgerLawTests.AssertClosed(season);
        Assert.Contains(season.Log.Events, e => e.What == "dose" && e.Note.Contains("by the hydroxide rule (", StringComparison.Ordinal));
        double[] toxic = Farms.Days(season, "ammonia_unionized_tanks_highest_mgN_per_L");

        // From day 20 on there are fish; 0.05 mg/L of NH3-N is where harm begins (extension sheets, common practice).
        Assert.True(toxic[20..].Max() < 0.05, $"{toxic[20..].Max()}");
    }

    [Fact]
    public void A_base_poured_at_once_breaks_the_rule_and_the_record_says_what_it_does()
    {
        Season season = Farms.Start(Farms.FirstSeason, 3);
        season.Advance(86_400);
        season.Apply(new Dose { Day = 1, Basin = "fish-sump", Supplement = "potassium-hydroxide", Grams = 200 });
        LoggedEvent line = Assert.Single(season.Log.Events, e => e.What == "hydroxide rule broken");
        Assert.Contains("NH3-N", line.Note, StringComparison.Ordinal);
        season.Apply(new Dose { Day = 1, Basin = "fish-sump", Supplement = "potassium-bicarbonate", Grams = 200 });
        Assert.Single(season.Log.Events, e => e.What == "hydroxide rule broken");
    }
}
