using FarmTwin.Cli.Commands;
using FarmTwin.Farm.Description;
using FarmTwin.Scenarios;
using FarmTwin.Studies.Batch;
using Spectre.Console;
using Spectre.Console.Cli;

namespace FarmTwin.Cli;

/// <summary>The commands, and the exit codes: 0 done, 1 unexpected, 2 bad input.</summary>
public static class CommandLine
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Unexpected.</summary>
    public const int Unexpected = 1;

    /// <summary>Bad input: nothing was written.</summary>
    public const int BadInput = 2;

    /// <summary>Runs a command line.</summary>
    /// <param name="args">The arguments.</param>
    /// <param name="output">Where it writes.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args, CommandOutput output)
    {
        ArgumentNullException.ThrowIfNull(args);
        ArgumentNullException.ThrowIfNull(output);
        var app = new CommandApp();
        app.Configure(config =>
        {
            config.PropagateExceptions();
            config.SetApplicationName("farmtwin");
            config.SetApplicationVersion(ProgramVersion.Text);
            config.UseStrictParsing();
            config.Settings.Registrar.RegisterInstance(output);
            config.ConfigureConsole(AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output.Out) }));
            config.AddCommand<RunCommand>("run").WithDescription("Runs one season: a page on the screen, files in a folder.")
                .WithExample("run", "scenarios/first-season.json").WithExample("run", "scenarios/first-season.json", "--days", "90", "--units", "us");
            config.AddCommand<BatchCommand>("batch").WithDescription("Plays several plans again and again, with other weather and other unknowns, and compares them.")
                .WithExample("batch", "scenarios/two-plans-staggered.json", "scenarios/two-plans-batch.json", "--replicates", "20");
            config.AddCommand<StudyCommand>("study").WithDescription("Plays a study: a base scenario with values that are varied, and says what moves what.")
                .WithExample("study", "studies/stocking.json");
            config.AddCommand<CoupleCommand>("couple").WithDescription("Tries days and ways to open the valves between the loops, and says when, how and why.")
                .WithExample("couple", "scenarios/first-season.json", "--replicates", "20");
            config.AddCommand<StartUpCommand>("startup").WithDescription("Says how long it takes to bring the filter to life, fishless or with fish, and what mature media buys.")
                .WithExample("startup", "scenarios/first-season.json");
            config.AddCommand<CheckCommand>("check")
                .WithDescription("Reads a scenario and prints its design sheet: each figure with its band, source and verdict. No season is run.")
                .WithExample("check", "scenarios/first-season.json").WithExample("check", "scenarios/first-season.json", "--resolved");
            config.AddCommand<CompareCommand>("compare")
                .WithDescription("Plays two or more scenarios under one seed: where they part, the first sign that a person would see, and what acting on it would have saved.")
                .WithExample("compare", "scenarios/first-season.json", "scenarios/overstocked.json");
            config.AddCommand<FaultsCommand>("faults")
                .WithDescription("Lets every pump, blower, heater, valve, lamp and the mains fail in turn, each at its worst hour: what is lost, and what would save it.")
                .WithExample("faults", "scenarios/whole-farm.json").WithExample("faults", "scenarios/first-season.json", "--outage", "5");
            config.AddCommand<SchemaCommand>("schema").WithDescription("Prints the JSON Schema of scenario files.");
            config.AddCommand<ExplainCommand>("explain").WithDescription("Says what an input or a parameter is: value, unit, range and source.")
                .WithExample("explain", "washEvery").WithExample("explain", "fish/nile-tilapia");
        });
        try
        {
            return app.Run(args);
        }
        catch (Exception e) when (e is ScenarioException or DescriptionException or BatchFolderException or KeyNotFoundException or CommandAppException)
        {
            output.Error.WriteLine(e.Message);
            return BadInput;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            output.Error.WriteLine(e.Message);
            return Unexpected;
        }
#pragma warning disable CA1031 // The last line of defence: whatever it is, a message and the exit code, not a dump of the machine.
        catch (Exception e)
#pragma warning restore CA1031
        {
            output.Error.WriteLine($"Unexpected: {e}");
            return Unexpected;
        }
    }
}
