using FarmTwin.Studies.Batch;
using Spectre.Console;

namespace FarmTwin.Cli;

/// <summary>Progress of a batch: a bar with the time left and a count of farms in trouble where a person watches, else a plain line each tenth.</summary>
internal static class BatchProgressBar
{
    private const int Tenths = 10;

    /// <summary>Does the work and shows how far it is.</summary>
    /// <param name="output">Where it shows; a bar where a person watches, else plain lines.</param>
    /// <param name="what">What is counted.</param>
    /// <param name="work">The work; given what to tell of its progress.</param>
    public static T Show<T>(CommandOutput output, string what, Func<Action<BatchProgress>, T> work)
    {
        if (!output.IsInteractive)
        {
            int tenth = 0;
            return work(now =>
            {
                if (now.Done < now.Of && now.Done * Tenths / Math.Max(1, now.Of) is var reached && reached > tenth)
                {
                    tenth = reached;
                    output.Error.WriteLine($"{now.Done} of {now.Of} {what}, {now.InTrouble} in trouble");
                }
            });
        }

        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output.Error) });
        return console.Progress().AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn(), new RemainingTimeColumn())
            .Start(progress =>
            {
                ProgressTask bar = progress.AddTask(what);
                bool begun = false;
                return work(now =>
                {
                    // The time left is that of what is still to play, not of what an earlier start left.
                    bar.MaxValue = Math.Max(1, now.Of - now.Earlier);
                    bar.Value = now.Done - now.Earlier;
                    begun = begun || now.Done > now.Earlier;
                    string before = now.Earlier > 0 ? $", {now.Earlier} from before" : string.Empty;
                    bar.Description = $"{now.Done} of {now.Of} {what}{before}, {now.InTrouble} in trouble";
                });
            });
    }
}
