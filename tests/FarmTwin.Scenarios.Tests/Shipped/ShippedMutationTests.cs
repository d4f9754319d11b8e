using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Tests.Sample;
using Xunit.Abstractions;

namespace FarmTwin.Scenarios.Tests.Shipped;

/// <summary>A shipped scenario with something wrong in it is refused with a place, or it runs.</summary>
public class ShippedMutationTests(ITestOutputHelper output)
{
    // The same mutations every time, so that a build that passed passes again. FARMTWIN_MUTATIONS=12000 looks further.
    private static readonly int Iterations =
        int.Parse(Environment.GetEnvironmentVariable("FARMTWIN_MUTATIONS") ?? "300", CultureInfo.InvariantCulture);

    private static readonly JsonDocumentOptions Options = new() { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
    private static readonly string[] Values =
    [
        "\"5 m2\"", "\"3 mg N/L\"", "\"-5 °C\"", "\"0 L\"", "\"1e9 L\"", "\"tank-1\"", "\"fish-sump\"", "\"lettuce\"", "7", "-1", "0", "true", "null", "[]",
        "{}", "\"\"", "\"0\"", "\"40 %\"", "\"1 L/h\"", "\"1 d\"", "\"0.01 m2\"", "\"1000 W\"", "\"30 °C\"",
    ];

    private static readonly string[] Kinds = ["stock", "keep-element", "sell-by-head", "watch-oxygen", "fail-power", "nothing"];

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    [Theory]
    [InlineData("first-season.json", 20270301)]
    [InlineData("whole-farm.json", 20270302)]
    public async Task A_mutated_scenario_is_refused_with_a_place_or_runs_three_days(string name, int seed)
    {
        // Merged with what it extends, so that every part of the farm may be hit.
        Scenario<FarmDescription> whole = ShippedScenarios.Read(ShippedScenarios.PathOf(name));
        string text = whole.Resolved.ToJson();
        IReadOnlyList<string> withoutNumber = ShippedScenarios.RunSanely(whole.Value, 3);
        using var folder = new TemporaryFolder();
        int refused = 0;
        int refusedAsFarm = 0;
        int ran = 0;
        List<string> faults = [];
        var random = new Random(seed);
        for (int i = 0; i < Iterations; i++)
        {
            (int What, int Where, int Other, int Value)[] mutations =
                [.. Enumerable.Range(0, random.Next(1, 3)).Select(_ => (random.Next(8), random.Next(), random.Next(), random.Next(Values.Length)))];
            JsonNode root = JsonNode.Parse(text, documentOptions: Options)!;
            string[] done = [.. mutations.Select(m => Mutate(root, m.What, m.Where, m.Other, m.Value))];

            FarmDescription farm;
            try
            {
                farm = ShippedScenarios.Read(folder.Write("mutated.json", root.ToJsonString())).Value;
            }
            catch (ScenarioException e)
            {
                refused++;
                Assert.All(e.Errors, x => Assert.True(x.Line >= 1 && x.Column >= 1 && x.Problem.Length > 0, x.ToString()));
                continue;
            }

            try
            {
                Task<IReadOnlyList<string>> run = Task.Run(() => ShippedScenarios.RunSanely(farm, Math.Min(3, farm.LengthDays)));
                IReadOnlyList<string> missing = await run.WaitAsync(Patience);
                ran++;
                Assert.DoesNotContain(missing.Except(withoutNumber), c => !MayBeAbsent(c));
            }
            catch (DescriptionException refusal)
            {
                refusedAsFarm++;
                Assert.True(refusal.Message.Length > 20, refusal.Message);
            }
            catch (Exception e)
            {
                faults.Add($"Mutation {i}, {string.Join(' ', done)}: {e}");
            }
        }

        output.WriteLine($"{refused} refused by the reader, {refusedAsFarm} as no farm, {ran} ran");
        Assert.True(faults.Count == 0, $"{faults.Count} faults{Environment.NewLine}{string.Join(Environment.NewLine, faults)}");
        Assert.True(refused > 100 && ran > 15, $"{refused} refused, {ran} ran");
    }

    // What has no value in a farm of its kind: growth where nothing grows, saturation with calcite where there is no calcium.
    private static bool MayBeAbsent(string column) =>
        column.StartsWith("growth_factor_", StringComparison.Ordinal) || column.Contains("calcite", StringComparison.Ordinal);

    /// <summary>Changes one member and says which.</summary>
    private static string Mutate(JsonNode root, int what, int where, int other, int value)
    {
        List<(JsonObject Parent, string Key)> members = [];
        Collect(root, members);
        (JsonObject parent, string key) = members[where % members.Count];
        (JsonObject otherParent, string otherKey) = members[other % members.Count];
        switch (what)
        {
            case 0:
                parent.Remove(key);
                break;
            case 1:
                JsonNode? renamed = parent[key]?.DeepClone();
                parent.Remove(key);
                parent[key + "s"] = renamed;
                break;
            case 2:
                parent[key] = otherParent[otherKey]?.DeepClone();
                break;
            case 3:
                parent[key] = JsonValue.Create(parent[key]?.ToJsonString() ?? "null");
                break;
            case 4:
                parent[key] = Scaled(parent[key], other % 2 == 0 ? 0 : other % 3 == 0 ? -1 : 1000);
                break;
            case 5:
                parent[key] = Scaled(parent[key], other % 2 == 0 ? 0.5 : 1.7);
                break;
            case 6 when parent[key] is JsonObject part && part.ContainsKey("do"):
                part["do"] = Kinds[value % Kinds.Length];
                break;
            default:
                parent[key] = JsonNode.Parse(Values[value]);
                break;
        }

        return $"{parent.GetPath()}.{key} ({what}) = {parent[key]?.ToJsonString()}";
    }

    private static JsonNode? Scaled(JsonNode? node, double factor)
    {
        if (node is not JsonValue value)
        {
            return node?.DeepClone();
        }

        if (value.TryGetValue(out double number))
        {
            return JsonValue.Create(number * factor);
        }

        string text = value.ToString();
        int end = text.IndexOf(' ', StringComparison.Ordinal);
        return end > 0 && double.TryParse(text[..end], System.Globalization.CultureInfo.InvariantCulture, out double quantity)
            ? JsonValue.Create(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{quantity * factor:R}{text[end..]}"))
            : JsonValue.Create(text + "x");
    }

    private static void Collect(JsonNode? node, List<(JsonObject, string)> members)
    {
        if (node is JsonObject parts)
        {
            foreach ((string key, JsonNode? value) in parts)
            {
                if (key != "$schema")
                {
                    members.Add((parts, key));
                }

                Collect(value, members);
            }
        }
        else if (node is JsonArray list)
        {
            foreach (JsonNode? item in list)
            {
                Collect(item, members);
            }
        }
    }
}
