namespace FarmTwin.Studies.Batch;

/// <summary>Plays whole seasons at once on several threads: a season is the unit of work, each result goes to its own slot.</summary>
public static class ParallelRuns
{
    /// <summary>Does <paramref name="count"/> pieces of work and returns their results in order, whatever the threads.</summary>
    /// <typeparam name="T">The result of a piece.</typeparam>
    /// <param name="count">How many pieces.</param>
    /// <param name="threads">How many at once, from 1.</param>
    /// <param name="work">The piece with an index; called once for each, on any thread.</param>
    /// <param name="done">Told of each finished piece, one at a time, in the order in which they finish.</param>
    /// <param name="cancellation">Stops before the next piece; those begun are finished.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static T[] Play<T>(int count, int threads, Func<int, T> work, Action<int, T>? done = null, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        ArgumentNullException.ThrowIfNull(work);
        var results = new T[count];
        Each(count, threads, i => results[i] = work(i), i => done?.Invoke(i, results[i]), cancellation);
        return results;
    }

    /// <summary>The same without keeping results.</summary>
    /// <inheritdoc cref="Play{T}"/>
    public static void Each(int count, int threads, Action<int> work, Action<int>? done = null, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        ArgumentNullException.ThrowIfNull(work);
        var telling = new Lock();
        int next = -1;
        var errors = new System.Collections.Concurrent.ConcurrentDictionary<int, Exception>();
        var workers = new Thread[Math.Min(threads, Math.Max(1, count))];
        for (int t = 0; t < workers.Length; t++)
        {
            workers[t] = new Thread(Work) { IsBackground = true, Name = $"seasons {t + 1}" };
            workers[t].Start();
        }

        foreach (Thread worker in workers)
        {
            worker.Join();
        }

        // The error of the first piece in order, so that the message does not depend on who was quicker.
        if (!errors.IsEmpty)
        {
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(errors.MinBy(e => e.Key).Value);
        }

        cancellation.ThrowIfCancellationRequested();

        void Work()
        {
            while (errors.IsEmpty && !cancellation.IsCancellationRequested && Interlocked.Increment(ref next) is var i && i < count)
            {
                try
                {
                    work(i);
                    lock (telling)
                    {
                        done?.Invoke(i);
                    }
                }
#pragma warning disable CA1031 // Carried to the caller's thread and thrown there.
                catch (Exception e)
#pragma warning restore CA1031
                {
                    errors[i] = e;
                }
            }
        }
    }
}
