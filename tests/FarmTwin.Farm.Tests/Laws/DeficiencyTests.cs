using FarmTwin.Farm.Description;
using FarmTwin.Farm.Operations;
using FarmTwin.Farm.Seasons;
using Xunit.Abstractions;

namespace FarmTwin.Farm.Tests.Laws;

/// <summary>An established coupled farm of which the supplements are stopped: what runs short, and in which order.</summary>
public class DeficiencyTests(ITestOutputHelper output)
{
    private const double Stop = 120;

    [Fact]
    public void With_feed_alone_iron_runs_short_first_within_weeks()
    {
        // UVI practice and common practice: iron first, within weeks, seen on the young leaves; then potassium, on the old ones. The
        // farm starts from 1 mg/L of chelate and full leaves, so that the weeks are nine.
        Season season = Farms.Run(Unsupplemented(Farms.FirstSeason, keepIron: false), 365);
        Dictionary<string, double> first = FirstDays(season);
        Assert.InRange(first["iron"], Stop + 5, Stop + 75);
        Assert.True(first.Values.All(day => day >= first["iron"]));

        // By degrees, not all or nothing: the iron of feed alone keeps half of the growth and more (Nozzi et al. 2018, second hand: lettuce on fish
        // water alone 0.71 of hydroponic, 0.87 with iron and micronutrients).
        double[] lost = Farms.Days(season, "deficiency_lettuce_iron_share");
        Assert.InRange(lost[200..].Average(), 0.05, 0.5);
        Assert.DoesNotContain("phosphorus", first.Keys);
        Assert.DoesNotContain("calcium", first.Keys);
        Assert.DoesNotContain("magnesium", first.Keys);
        Assert.Contains(season.Log.Events, e => e.What == "deficiency" && e.Note.Contains("green veins", StringComparison.Ordinal));
    }

    [Fact]
    public void With_iron_kept_up_potassium_is_the_next_to_run_short_in_hard_water()
    {
        // Common practice: potassium next, on the edges of the old leaves. Calcium and magnesium of tap and feed suffice.
        Season season = Farms.Run(Unsupplemented(Farms.FirstSeason, keepIron: true), 365);
        Dictionary<string, double> first = FirstDays(season);
        Assert.DoesNotContain("iron", first.Keys);
        Assert.InRange(first["potassium"], Stop + 20, 365);
        Assert.True(first.Values.All(day => day >= first["potassium"]));
        Assert.Contains(season.Log.Events, e => e.What == "deficiency" && e.Note.Contains("old leaves scorched", StringComparison.Ordinal));
    }

    [Fact]
    public void A_supplemented_farm_shows_no_deficiency()
    {
        Season season = Farms.Run(Farms.FirstSeason with { Dosing = WithNurseryIron(Farms.FirstSeason) }, 365);
        Assert.Empty(FirstDays(season));
        double[] iron = Farms.Days(season, "deficiency_lettuce_iron_share");
        Assert.True(iron.Max() < 0.15, $"iron {iron.Max()}");
    }

    private Dictionary<string, double> FirstDays(Season season)
    {
        var first = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (LoggedEvent line in season.Log.Events.Where(e => e.What == "deficiency"))
        {
            output.WriteLine($"day {FarmWork.DayOf(line.Seconds):0} {line.Where} {line.Amount:0.00} {line.Note}");
            first.TryAdd(line.Note[..line.Note.IndexOf(':')], FarmWork.DayOf(line.Seconds));
        }

        return first;
    }

    // The chelate of the nursery's mix decays faster than seedlings ask for a new mix.
    private static Dictionary<string, DosingDescription> WithNurseryIron(FarmDescription farm) => new(farm.Dosing, StringComparer.Ordinal)
    {
        ["nursery-iron"] = new KeepElement
        {
            Element = KeptElement.Iron, Basin = "nursery-reservoir", With = ["iron-eddha"], EveryDays = 7, FromDay = 7, AtMilligramsPerLitre = 0.5, UpToMilligramsPerLitre = 1,
        },
    };

    // Supplements of the plants end on a day; the nursery keeps its own solution; bases from then on bring sodium alone.
    private static FarmDescription Unsupplemented(FarmDescription farm, bool keepIron)
    {
        var rules = new Dictionary<string, DosingDescription>(StringComparer.Ordinal);
        foreach ((string name, DosingDescription rule) in WithNurseryIron(farm))
        {
            bool nursery = rule.Basin == "nursery-reservoir";
            rules[name] = nursery || rule.UntilDay is not null || (keepIron && name == "iron") ? rule : rule with { UntilDay = Stop };
        }

        rules["sodium base"] = ((KeepAlkalinity)farm.Dosing["alkalinity-coupled"]) with { With = ["sodium-bicarbonate"], FromDay = Stop, ChosenBy = ChosenBy.Turn };
        return farm with { Dosing = rules };
    }
}
