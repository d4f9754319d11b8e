namespace FarmTwin.Cli;

/// <summary>The program <c>farmtwin</c>.</summary>
internal static class Program
{
    public static int Main(string[] args)
    {
        // Unit signs must survive a console that was set up for something older.
        Console.OutputEncoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return CommandLine.Run(args, new CommandOutput(Console.Out, Console.Error, IsInteractive: !Console.IsErrorRedirected && !Console.IsOutputRedirected));
    }
}
