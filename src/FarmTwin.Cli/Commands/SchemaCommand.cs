using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Library;
using FarmTwin.Scenarios.Schema;
using Spectre.Console.Cli;

namespace FarmTwin.Cli.Commands;

/// <summary>Prints the JSON Schema of scenario files.</summary>
public sealed class SchemaCommand(CommandOutput output) : Command
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, CancellationToken cancellationToken)
    {
        output.Out.Write(SchemaWriter.Write(typeof(FarmDescription), ParameterLibrary.Names));
        return CommandLine.Done;
    }
}
