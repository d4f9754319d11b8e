using System.Text.RegularExpressions;
using System.Xml.Linq;
using FarmTwin.Farm.Seasons;
using FarmTwin.Farm.Tests.Laws;

namespace FarmTwin.Farm.Tests.Library;

/// <summary>Engine ← Farm ← Scenarios ← Studies ← Reports ← Cli; the twin knows no files, no text of files, no threads, no console.</summary>
public partial class LayerTests
{
    private static readonly string[] Layers = ["Engine", "Farm", "Scenarios", "Studies", "Reports", "Cli"];

    [Fact]
    public void Each_layer_refers_to_layers_below_it_only()
    {
        for (int layer = 0; layer < Layers.Length; layer++)
        {
            string project = Path.Combine(Farms.Root, "src", $"FarmTwin.{Layers[layer]}", $"FarmTwin.{Layers[layer]}.csproj");
            foreach (XElement reference in XDocument.Load(project).Descendants("ProjectReference"))
            {
                string name = Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value.Replace('\\', '/')).Replace("FarmTwin.", string.Empty, StringComparison.Ordinal);
                Assert.InRange(Array.IndexOf(Layers, name), 0, layer - 1);
            }
        }
    }

    [Fact]
    public void The_engine_stands_on_the_base_library_alone_and_the_farm_on_the_engine()
    {
        string[] farm = [.. typeof(Season).Assembly.GetReferencedAssemblies().Select(a => a.Name!)];
        string[] engine = [.. typeof(Engine.Simulation).Assembly.GetReferencedAssemblies().Select(a => a.Name!)];
        Assert.All(engine, a => Assert.StartsWith("System.", a, StringComparison.Ordinal));
        Assert.All(farm, a => Assert.True(a == "FarmTwin.Engine" || a.StartsWith("System.", StringComparison.Ordinal), a));
        Assert.DoesNotContain("System.Text.Json", farm.Concat(engine));
        Assert.DoesNotContain("System.Console", farm.Concat(engine));
        Assert.DoesNotContain("System.Threading.Thread", farm.Concat(engine));
        Assert.DoesNotContain("System.Net.Http", farm.Concat(engine));
    }

    [Theory]
    [InlineData("Engine")]
    [InlineData("Farm")]
    public void No_source_of_the_twin_touches_files_threads_clocks_or_reflection(string layer)
    {
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Farms.Root, "src", $"FarmTwin.{layer}"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)))
        {
            string code = Comments().Replace(File.ReadAllText(file), string.Empty);
            Match found = Outside().Match(code);
            Assert.False(found.Success, $"{file} uses {found.Value}");
        }
    }

    [GeneratedRegex(@"//[^\n]*")]
    private static partial Regex Comments();

    [GeneratedRegex(@"\b(System\.IO|System\.Reflection|System\.Net|System\.Diagnostics\.Process|Thread|Task|Parallel|Stopwatch|Environment)\s*[.;]|\b(File|Directory|Path|Console)\.\w|\bDateTime\.(Now|UtcNow)|\bnew Random\b")]
    private static partial Regex Outside();
}
