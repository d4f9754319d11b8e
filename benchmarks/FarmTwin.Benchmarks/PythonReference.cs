using System.Diagnostics;
using System.Text.Json;

namespace FarmTwin.Benchmarks;

/// <summary>Runs reference/one_loop.py beside <see cref="OneLoop"/>: the same season of the same loop, to the same figures, or there is no ratio.</summary>
public static class PythonReference
{
    private const string Python = "/usr/bin/python3";
    private const string Script = "benchmarks/reference/one_loop.py";

    /// <summary>Largest difference of a day's TAN or oxygen, relative to the season's largest, at which the two count as the same model.</summary>
    public const double Tolerance = 1e-9;

    private static readonly JsonSerializerOptions Camel = new(JsonSerializerDefaults.Web);

    /// <summary>Compares them; none where Python, SciPy or SimPy is missing.</summary>
    /// <exception cref="InvalidOperationException">The two differ by more than <see cref="Tolerance"/>.</exception>
    public static Comparison? Compare(OneLoopParameters loop, int runs)
    {
        ArgumentNullException.ThrowIfNull(loop);
        if (Run(loop) is not { } first)
        {
            return null;
        }

        double python = first.Seconds;
        double own = double.PositiveInfinity;
        for (int run = -2; run < runs; run++)
        {
            TimeSpan start = Environment.CpuUsage.UserTime;
            OneLoop season = OneLoop.Run(loop);
            double seconds = (Environment.CpuUsage.UserTime - start).TotalSeconds;
            own = run < 0 ? own : Math.Min(own, seconds);
            double differs = Math.Max(Difference(season.Tan, first.Tan), Difference(season.Oxygen, first.Oxygen));
            if (!(differs <= Tolerance))
            {
                throw new InvalidOperationException($"Script and kernels differ by {differs:0.0e+0} of the largest value; {Tolerance:0e+0} is allowed.");
            }

            if (run >= 0 && run < 2 && Run(loop) is { } again)
            {
                python = Math.Min(python, again.Seconds);
            }
        }

        OneLoop last = OneLoop.Run(loop);
        return new Comparison(python, own, Math.Max(Difference(last.Tan, first.Tan), Difference(last.Oxygen, first.Oxygen)), last.Tan.Max(), last.Oxygen.Min());
    }

    private static double Difference(double[] own, double[] python) =>
        own.Zip(python, (a, b) => Math.Abs(a - b)).Max() / own.Max();

    private static Output? Run(OneLoopParameters loop)
    {
        if (!File.Exists(Python) || !File.Exists(Script))
        {
            return null;
        }

        using var process = Process.Start(new ProcessStartInfo(Python, Script)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        process.StandardInput.Write(JsonSerializer.Serialize(loop, Camel));
        process.StandardInput.Close();
        string output = process.StandardOutput.ReadToEnd();
        string error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? JsonSerializer.Deserialize<Output>(output, Camel)
            : error.Contains("ModuleNotFoundError", StringComparison.Ordinal) ? null
            : throw new InvalidOperationException($"{Script} ended with {process.ExitCode}: {error}");
    }

    /// <summary>Processor seconds of a season in each, how far they differ, and the loop's highest TAN and lowest oxygen at midnight, mg/L.</summary>
    public sealed record Comparison(double PythonSeconds, double OwnSeconds, double Difference, double HighestTan, double LowestOxygen);

    private sealed record Output(double Seconds, double[] Tan, double[] Oxygen);
}
