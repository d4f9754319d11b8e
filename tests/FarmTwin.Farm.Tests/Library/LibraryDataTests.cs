using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FarmTwin.Farm.Biofilter;
using FarmTwin.Farm.Climate;
using FarmTwin.Farm.Fish;
using FarmTwin.Farm.Library;
using FarmTwin.Farm.Plants;
using FarmTwin.Farm.Tests.Laws;
using FarmTwin.Farm.Water;
using FarmTwin.Scenarios.Library;

namespace FarmTwin.Farm.Tests.Library;

/// <summary>House rules of the data: every number has a range and a source, every source is used, every published table is checked.</summary>
public partial class LibraryDataTests
{
    private static readonly FarmLibrary Library = ShippedLibrary.Library;
    private static readonly string[] Readings = ["text", "abstract", "second hand", "from memory", "own calculation", "common practice"];
    private static readonly Dictionary<string, string> Sources = ReadSources();

    public static TheoryData<string, string> Sets
    {
        get
        {
            var sets = new TheoryData<string, string>();
            foreach ((string folder, ParameterSet set) in Library.All)
            {
                sets.Add(folder, set.Name);
            }

            return sets;
        }
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void Every_parameter_lies_in_its_range_and_names_a_known_source(string folder, string name)
    {
        foreach (Parameter parameter in Library.Set(folder, name).All)
        {
            string place = $"{folder}/{name}/{parameter.Name}";
            Assert.True(parameter.Low <= parameter.Value && parameter.Value <= parameter.High, $"{place}: {parameter.Value} is not in {parameter.Low}..{parameter.High}");
            Assert.True(double.IsFinite(parameter.Low) && double.IsFinite(parameter.High), place);
            Assert.True(Sources.ContainsKey(parameter.Source), $"{place}: no source '{parameter.Source}' in docs/sources.json");
            Assert.True(parameter.About.Length > 5 && parameter.Unit.Length > 0, place);
        }
    }

    [Fact]
    public void Every_source_is_used_by_a_parameter_a_published_table_or_a_page()
    {
        var used = Library.All.SelectMany(s => s.Set.All).Select(p => p.Source).ToHashSet(StringComparer.Ordinal);
        string text = string.Join('\n', Files("tests", "*.csv").Concat(Files("docs/model", "*.md")).Select(File.ReadAllText));
        string[] unused = [.. Sources.Where(s => !used.Contains(s.Key) && !text.Contains(s.Key, StringComparison.Ordinal) && !Cites(text, s.Value)).Select(s => s.Key)];
        Assert.Empty(unused);
    }

    [Fact]
    public void Every_published_table_is_used_by_a_test()
    {
        string code = string.Join('\n', Files("tests", "*.cs").Select(File.ReadAllText));
        string[] unused = [.. Files("tests", "*.csv").Select(f => Path.GetFileNameWithoutExtension(f)!).Where(n => !code.Contains($"\"{n}\"", StringComparison.Ordinal))];
        Assert.Empty(unused);
    }

    [Fact]
    public void Every_file_of_the_library_stands_in_a_known_folder_and_was_loaded()
    {
        foreach (string file in Files("src/FarmTwin.Scenarios/Library", "*.json"))
        {
            string folder = Path.GetFileName(Path.GetDirectoryName(file))!;
            Assert.Contains(folder, ShippedLibrary.Folders);
            Assert.NotEmpty(Library.Set(folder, Path.GetFileNameWithoutExtension(file)).All);
        }
    }

    [Theory]
    [InlineData("fish")]
    [InlineData("feeds")]
    [InlineData("covers")]
    [InlineData("microgreens")]
    [InlineData("grades")]
    public void Sets_of_a_kind_have_the_same_parameters_in_the_same_units(string folder)
    {
        string[] names = [.. Library.Names(folder)];
        string[] first = [.. Library.Set(folder, names[0]).All.Select(p => $"{p.Name} [{p.Unit}]").Order(StringComparer.Ordinal)];
        foreach (string name in names)
        {
            Assert.Equal(first, Library.Set(folder, name).All.Select(p => $"{p.Name} [{p.Unit}]").Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void Crops_have_the_same_parameters_and_fruiting_crops_the_whole_fruiting_set_besides()
    {
        string[] Names(string crop, bool fruit) => [.. Library.Set("crops", crop).All.Where(p => p.Name.StartsWith("fruit", StringComparison.Ordinal) == fruit)
            .Select(p => $"{p.Name} [{p.Unit}]").Order(StringComparer.Ordinal)];
        Assert.NotEmpty(Names("tomato", fruit: true));
        foreach (string crop in Library.Names("crops"))
        {
            Assert.Equal(Names("lettuce", fruit: false), Names(crop, fruit: false));
            Assert.True(Names(crop, fruit: true) is { Length: 0 } || Names(crop, fruit: true).SequenceEqual(Names("tomato", fruit: true)), crop);
        }
    }

    [Fact]
    public void Fuels_have_the_same_parameters_each_by_its_own_sale_unit()
    {
        string[] names = [.. Library.Names("fuels")];
        Assert.All(names, n => Assert.Equal(
            Library.Set("fuels", names[0]).All.Select(p => p.Name).Order(StringComparer.Ordinal),
            Library.Set("fuels", n).All.Select(p => p.Name).Order(StringComparer.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void Every_set_of_a_part_can_be_read_by_the_process_that_uses_it(string folder, string name)
    {
        ParameterSet set = Library.Set(folder, name);
        object? read = folder switch
        {
            "fish" => FishParameters.From(set),
            "feeds" => FeedComposition.From(set),
            "crops" => CropParameters.From(set),
            "microgreens" => MicrogreenParameters.From(set),
            "grades" => CropGrades.From(set),
            "covers" => CoverParameters.From(set),
            "fuels" => FuelProperties.From(set),
            "media" => SurfaceMedium.From(set),
            "supplements" => Supplement.From(set),
            _ => set,
        };
        Assert.NotNull(read);
    }

    private static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Farms.Root, folder), pattern, SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
                && !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    private static Dictionary<string, string> ReadSources()
    {
        var sources = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach ((string key, JsonNode? source) in JsonNode.Parse(File.ReadAllText(Path.Combine(Farms.Root, "docs", "sources.json")))!.AsObject())
        {
            sources.Add(key, (string)source!["citation"]!);
            string read = (string)source["read"]!;
            Assert.True(Readings.Any(r => read.StartsWith(r, StringComparison.Ordinal)), $"{key} was read as '{read}'");
            bool printed = read.StartsWith("text", StringComparison.Ordinal) || read.StartsWith("abstract", StringComparison.Ordinal)
                || read.StartsWith("from memory", StringComparison.Ordinal);
            Assert.False(printed && string.IsNullOrWhiteSpace((string?)source["locator"]), $"{key} has no locator");
        }

        return sources;
    }

    private static bool Cites(string text, string citation)
    {
        Match author = Author().Match(citation);
        Match year = Year().Match(citation);
        return author.Success && year.Success && text.Contains(author.Value, StringComparison.Ordinal) && text.Contains(year.Value, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^\p{Lu}[\p{L}'’\-]+")]
    private static partial Regex Author();

    [GeneratedRegex(@"\b(19|20)\d\d\b")]
    private static partial Regex Year();
}
