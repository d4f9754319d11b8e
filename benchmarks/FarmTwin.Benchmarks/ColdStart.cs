using System.Diagnostics;

namespace FarmTwin.Benchmarks;

/// <summary>Times the built command line as a process of its own, from its start to its finished files.</summary>
public static class ColdStart
{
    private const string Program = "src/FarmTwin.Cli/bin/Release/net10.0/farmtwin.dll";

    /// <summary>Seconds of real time of <c>run</c> with plots and report, median of three; none where the program is not built.</summary>
    /// <param name="scenario">The scenario file.</param>
    public static double? Seconds(string scenario)
    {
        if (!File.Exists(Program))
        {
            return null;
        }

        var times = new List<double>();
        for (int run = 0; run < 3; run++)
        {
            string folder = Directory.CreateTempSubdirectory("farmtwin").FullName;
            long start = Stopwatch.GetTimestamp();
            using (var process = Process.Start(new ProcessStartInfo("dotnet", [Program, "run", scenario, "--out", folder]) { RedirectStandardOutput = true })!)
            {
                process.StandardOutput.ReadToEnd();
                process.WaitForExit();
                if (process.ExitCode != 0)
                {
                    throw new InvalidOperationException($"'run {scenario}' ended with {process.ExitCode}.");
                }
            }

            times.Add(Stopwatch.GetElapsedTime(start).TotalSeconds);
            Directory.Delete(folder, recursive: true);
        }

        times.Sort();
        return times[1];
    }
}
