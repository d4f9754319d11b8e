using System.ComponentModel;
using FarmTwin.Reports;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Library;
using FarmTwin.Scenarios.Library;
using FarmTwin.Scenarios.Schema;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>What <c>explain</c> takes.</summary>
public sealed class ExplainSettings : CommandSettings
{
    /// <summary>Part of a name.</summary>
    [CommandArgument(0, "[NAME]")]
    [Description("An input (filters.*.washEvery), a parameter (processes/plants/siteFactor), or a part of such a name; all when left out")]
    public string? Name { get; init; }
}

/// <summary>Says what an input of a scenario or a parameter of the library is.</summary>
public sealed class ExplainCommand(CommandOutput output) : Command<ExplainSettings>
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, ExplainSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        string name = settings.Name ?? string.Empty;
        int inputs = Inputs(name);
        int parameters = Parameters(name);
        if (inputs + parameters == 0)
        {
            output.Error.WriteLine($"Nothing is called '{name}'. 'farmtwin explain' without a name lists everything.");
            return CommandLine.BadInput;
        }

        return CommandLine.Done;
    }

    private int Inputs(string name)
    {
        ExplainedInput[] found = [.. Explanation.Of(typeof(FarmDescription)).Where(i => Matches(i.Path, name))];
        if (found.Length > 0)
        {
            output.Out.WriteLine("Inputs of a scenario");
        }

        foreach (ExplainedInput input in found)
        {
            string range = input.Range.Length > 0 ? $"; {input.Range}" : string.Empty;
            string given = input.IsRequired ? "; must be given" : input.Default.Length > 0 ? $"; {input.Default} when left out" : "; may be left out";
            output.Out.WriteLine($"  {input.Path}");
            string unit = input.Unit is "" or "1" ? string.Empty : $" ({input.Unit})";
            output.Out.WriteLine($"      {input.About.TrimEnd('.')}. Written as {input.Sort}{unit}{range}{given}.");
        }

        return found.Length;
    }

    private int Parameters(string name)
    {
        int found = 0;
        IReadOnlyDictionary<string, string> sources = SourceList.Citations;
        IReadOnlyList<ExplainedInput> inputs = Explanation.Of(typeof(FarmDescription));
        foreach ((string folder, ParameterSet set) in ShippedLibrary.Library.All)
        {
            foreach (Parameter parameter in set.All)
            {
                string path = $"{folder}/{set.Name}/{parameter.Name}";
                if (!Matches(path, name))
                {
                    continue;
                }

                if (found++ == 0)
                {
                    output.Out.WriteLine("Parameters of the library; a scenario changes one by \"parameters\": { \"folder/set/name\": value }");
                }

                string unit = parameter.Unit == "1" ? string.Empty : $" {parameter.Unit}";
                output.Out.WriteLine($"  {path} = {parameter.Value}{unit}   ({parameter.Low} to {parameter.High}{unit}, {parameter.Basis})");
                output.Out.WriteLine($"      {parameter.About.TrimEnd('.')}. {Used(folder, set.Name, inputs)}.");
                output.Out.WriteLine($"      [{parameter.Source}] {sources.GetValueOrDefault(parameter.Source, "this source is not in the list of sources")}");
            }
        }

        return found;
    }

    /// <summary>Where a set of the library is used.</summary>
    internal static string Used(string folder, string set, IReadOnlyList<ExplainedInput> inputs)
    {
        string[] chosen = [.. inputs.Where(i => i.LibraryFolder == folder).Select(i => i.Path)];
        return folder switch
        {
            "processes" => "Used in every run",
            "media" when set is "wall" or "raft" or "roots" => "Used in every run, for the film that grows there",
            "grades" => $"Used where a crop of the kind {set} is cut",
            _ when chosen.Length > 0 => $"Used where {string.Join(", ", chosen)} names {set}",
            _ => throw new InvalidOperationException($"Nothing says where {folder} of the library are used."),
        };
    }

    private static bool Matches(string path, string name) => path.Contains(name, StringComparison.OrdinalIgnoreCase);
}
