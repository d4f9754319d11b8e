using System.Text;
using CsCheck;
using FarmTwin.Scenarios.Tests.Sample;

namespace FarmTwin.Scenarios.Tests.Binding;

public class MutationTests
{
    private static readonly string[] Fragments =
    [
        "null", "true", "3", "-1e308", "1e999", "\"\"", "\"5 gal\"", "\"5 m2\"", "\"-5 °C\"", "\"99999999999 L\"", "\"1,000 L\"", "[]", "{}",
        "[[[1]]]", "{\"do\":\"sow\"}", "\"2027-13-40\"", "\"\\ud800\"", "\"tank\"", "\"5 USD/EUR\"", "\"5 / / m\"", "\"5 (\"", "\"\\u0000\"",
        "{\"a.b\":{\"\":1}}", "\"½ L\"", "\"5 mg N/L as N\"", "\"5 m m m m m m m m m m\"",
    ];

    // Where values and keys of the good scenario start and end, found by its quotes.
    private static readonly (int Start, int End)[] Quoted = FindQuoted();

    private static readonly Gen<Func<string, string>> Mutation = Gen.Select(
        Gen.Int[0, 6], Gen.Int[0, Quoted.Length - 1], Gen.Int[0, Fragments.Length - 1], Gen.Int[0, 10_000], Gen.Char[' ', '~'],
        (what, where, fragment, offset, letter) => (Func<string, string>)(text => Mutate(text, what, where, fragment, offset, letter)));

    [Fact]
    public void A_mutated_scenario_is_read_or_refused_with_a_place()
    {
        using var folder = new TemporaryFolder();
        int refused = 0;
        Mutation.Array[1, 3].Sample(
            mutations =>
            {
                string text = mutations.Aggregate(Reading.Good, (t, m) => m(t));
                string path = folder.Write("farm.json", text);
                try
                {
                    Scenario<SampleFarm> scenario = Reading.Read(path);
                    return scenario.Value.Basins is not null && scenario.Hash.Length == 64;
                }
                catch (ScenarioException e)
                {
                    refused++;
                    int lines = text.Count(c => c == '\n') + 1;
                    return e.Errors.Count > 0 && e.Errors.All(x => x.Line >= 1 && x.Line <= lines && x.Column >= 1 && x.Problem.Length > 0);
                }
            },
            iter: 1500, threads: 1);
        Assert.True(refused > 750, $"only {refused} of 1500 were refused");
    }

    [Fact]
    public void A_change_to_a_scenario_is_merged_or_refused_with_a_place()
    {
        using var folder = new TemporaryFolder();
        folder.Write("first.json", Reading.Good);
        Gen.Select(Gen.Int[0, Quoted.Length - 1], Gen.Int[0, Fragments.Length - 1]).Sample(
            (where, fragment) =>
            {
                string key = Reading.Good[Quoted[where].Start..Quoted[where].End];
                string path = folder.Write("second.json", $"{{ \"extends\": \"first.json\", {key}: {Fragments[fragment]} }}");
                try
                {
                    return Reading.Read(path).Files.Count == 2;
                }
                catch (ScenarioException e)
                {
                    return e.Errors.All(x => x.Line >= 1 && x.Column >= 1);
                }
            },
            iter: 1000, threads: 1);
    }

    [Fact]
    public void Any_text_as_a_quantity_is_read_or_refused()
    {
        string[] units = ["L", "°C", "K", "1", "mg N/L", "plants/m2", "money/L", "W/m2K", "°"];
        Gen.Select(Gen.String[0, 40], Gen.Double, Gen.Int[0, units.Length - 1]).Sample(
            (text, number, unit) =>
                Sane(FarmTwin.Scenarios.Units.QuantityText.Read(text, units[unit]))
                && Sane(FarmTwin.Scenarios.Units.QuantityText.Read($"{number:R} {text}", units[unit])),
            iter: 2000, threads: 1);
    }

    private static bool Sane(FarmTwin.Scenarios.Units.QuantityReading reading) =>
        reading.IsRead ? double.IsFinite(reading.Value) : reading.Problem!.Length > 0;

    private static string Mutate(string text, int what, int where, int fragment, int offset, char letter)
    {
        (int start, int end) = Quoted[where];
        if (end > text.Length)
        {
            return text;
        }

        string token = text[start..end];
        offset %= Math.Max(text.Length, 1);
        return what switch
        {
            0 => text.Remove(start, end - start),
            1 => text[..start] + Fragments[fragment] + text[end..],
            2 => text[..start] + token + ": 1, " + text[start..],
            3 => text[..(start + 1)] + letter + text[(start + 1)..],
            4 => text.Length > 0 ? text.Remove(offset, 1) : text,
            5 => text.Insert(offset, letter.ToString()),
            _ => new StringBuilder(text).Replace(token, token.ToUpperInvariant(), start, end - start).ToString(),
        };
    }

    private static (int Start, int End)[] FindQuoted()
    {
        var found = new List<(int, int)>();
        for (int start = Reading.Good.IndexOf('"'); start >= 0;)
        {
            int end = Reading.Good.IndexOf('"', start + 1) + 1;
            found.Add((start, end));
            start = Reading.Good.IndexOf('"', end);
        }

        return [.. found];
    }
}
