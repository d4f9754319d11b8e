using FarmTwin.Studies.Batch;
using Spectre.Console;

namespace FarmTwin.Cli;

/// <summary>Progress of a batch: a bar with the time left and a count of farms in trouble, where a person watches.</summary>
internal static class BatchProgressBar
{
    /// <summary>Does the work and shows how far it is.</summary>
    /// <param name="output">Where it shows; nothing where nobody watches.</param>
    /// <param name="what">What is counted.</param>
    /// <param name="work">The work; given what to tell of its progress.</param>
    public static T Show<T>(CommandOutput output, string what, Func<Action<BatchProgress>?, T> work)
    {
        if (!output.IsInteractive)
        {
            return work(null);
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
