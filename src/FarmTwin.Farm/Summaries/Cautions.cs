using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Seasons;

namespace FarmTwin.Farm.Summaries;

/// <summary>What the figures of a season must not be taken for: law, welfare, and what no mass balance computes.</summary>
internal static class Cautions
{
    public static IReadOnlyList<string> Of(Season season)
    {
        var cautions = new List<string>();
        if (season.Parts.Stocking.Length == 0)
        {
            return cautions;
        }

        string fish = string.Join(", ", season.Parts.SpeciesSets.Select(s => s.Title).Distinct());
        cautions.Add($"Permit: state agency, not verified. Whether {fish} may be kept, carried and sold here, and how dead fish are disposed of, this program does not know.");
        cautions.Add("Slaughter: stun by a firm blow or by current, then bleed; never ice slurry or air for conscious fish. Net few at a time.");
        cautions.Add("Not computed: imported disease, parasites, breeding, predators, theft. Quarantine lowers the risk of disease, it does not measure it; no medicine belongs in water that plants share.");
        cautions.AddRange(season.Parts.SpeciesSets.Where(s => s.About.Length > 0).Select(s => $"{s.Title}: {s.About}").Distinct());
        if (season.Parts.Farm.Plan.Values.Any(e => e is Pesticide or TreatWithSalt))
        {
            cautions.Add("Doses of sprays and treatments are assumptions to show the chain of effects: follow the label and the veterinarian.");
        }

        return cautions;
    }
}
