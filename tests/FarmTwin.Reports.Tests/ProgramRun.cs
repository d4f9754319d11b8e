using FarmTwin.Cli;

namespace FarmTwin.Reports.Tests;

/// <summary>The program as a user meets it: arguments in; exit code, answer and complaints out.</summary>
internal sealed record ProgramRun(int ExitCode, string Out, string Error)
{
    public static ProgramRun Of(params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int code = Cli.CommandLine.Run(args, new CommandOutput(output, error, IsInteractive: false));
        return new ProgramRun(code, output.ToString(), error.ToString());
    }
}
