using System.Globalization;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using FarmTwin.Benchmarks;
using FarmTwin.Farm.Description;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios.Library;

// Arguments: scenario file, seasons to time, file for the table. Or: dotnet, for BenchmarkDotNet. Call it at the root of the checkout.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
if (args is [BatchBenchmark.Argument, var scenario, var count])
{
    return BatchBenchmark.Play(scenario, int.Parse(count));
}

if (args is ["dotnet"])
{
    BenchmarkRunner.Run<Benchmarks>(DefaultConfig.Instance.AddJob(Job.MediumRun.WithToolchain(InProcessEmitToolchain.Instance)));
    return 0;
}

string path = args.Length > 0 ? args[0] : "scenarios/first-season.json";
int runs = args.Length > 1 ? int.Parse(args[1]) : 9;
FarmDescription farm = SeasonBenchmark.Read(path);
var ratios = new List<(string What, string Figure)>();
var times = new List<(string What, string Figure)>();

(double best, double median) = SeasonBenchmark.Milliseconds(farm, runs);
Time($"season of {farm.LengthDays:0} d, hourly, one thread, warm", $"best {best:0} ms, median {median:0} ms of processor time");
foreach (string file in new[] { path, "scenarios/whole-farm.json" })
{
    Ratio($"allocated a step, by night, when no event falls ({Path.GetFileNameWithoutExtension(file)})",
        $"{SeasonBenchmark.BytesPerStep(SeasonBenchmark.Read(file)):0} bytes");
}

(double clock, double record, double ledgers) = Overhead.Milliseconds(farm, runs);
Ratio("clock, calendar and guards / record / ledgers, each alone, of the season's time", $"{clock / best:0.0%} / {record / best:0.0%} / {ledgers / best:0.0%}");
Ratio("all of them over the bare season, which is what is left", $"{(clock + record + ledgers) / (best - clock - record - ledgers):0.0%}");
if (PythonReference.Compare(new OneLoopParameters(new Season(farm, ShippedLibrary.Library, 1).Parts), runs) is { } python)
{
    Ratio("one loop (tank, filter, sump; TAN, nitrite, oxygen, films), script on SciPy and SimPy : the twin's clock and kernels",
        $"{python.PythonSeconds / python.OwnSeconds:0} : 1");
    Ratio("largest difference of a day's TAN or oxygen between the two, of the largest", $"{python.Difference:0e+0} (allowed {PythonReference.Tolerance:0e+0})");
    Ratio("that script's one loop : the whole example farm", $"{python.PythonSeconds * 1000 / best:0.0} : 1");
    Time("one loop of 365 d, script / twin's kernels", $"{python.PythonSeconds:0.0} s / {python.OwnSeconds * 1000:0.0} ms of processor time");
}
else
{
    Ratio("one loop on SciPy and SimPy", "not measured: python3-scipy and python3-simpy are not installed");
}

double[] days = [90, 180, 365, 730];
Ratio("cost of 90, 180, 365, 730 days, each by that of 365 days and its length", Ratios(days.Select(d => Best(GrownFarm.OfLength(farm, d)) * 365 / d), 2));
int[] multiples = [1, 2, 4];
FarmDescription[] wider = [.. multiples.Select(t => GrownFarm.WithMoreBasins(farm, t))];
Ratio($"cost with 1, 2, 4 times the tanks and lanes ({string.Join(", ", wider.Select(w => w.Basins.Count))} basins)", Ratios(wider.Select(Best), 0));
Ratio("cost with 1, 2, 4 times the crop lots", Ratios(multiples.Select(t => Best(GrownFarm.WithMoreLots(farm, t))), 0));
Time("event calendar, M/M/1", $"{CalendarBenchmark.MeasureEventsPerSecond(5_000_000) / 1e6:0.0} million events/s");
const int few = 25;
const int many = 100;
(double fewProcessor, _, double fewMemory) = BatchBenchmark.Measure(path, few);
(double manyProcessor, double manyReal, double manyMemory) = BatchBenchmark.Measure(path, many);
double seasonOfBatch = (manyProcessor - fewProcessor) / (many - few);
Ratio("a season within a batch, with its assembly, summary and journal : a season alone", $"{seasonOfBatch * 1000 / best:0.00} : 1");
Ratio($"peak memory of a batch of {many} seasons : of {few}", $"{manyMemory / fewMemory:0.00} : 1");
Time($"batch of {few} and of {many} seasons, two threads, peak memory", $"{fewMemory:0} MB and {manyMemory:0} MB");
Time("1,000 seasons through a batch, two threads", $"{seasonOfBatch * 1000 / 2:0} s of processor time on each of two cores (of {many}: {manyReal:0} s of real time)");
double? cold = ColdStart.Seconds(path);
Time("cold start of `run` to finished plots and report", cold is { } seconds ? $"{seconds:0.0} s of real time" : "not measured: build src/FarmTwin.Cli in Release first");

if (args.Length > 2)
{
    File.WriteAllLines(args[2],
    [
        "# Benchmarks",
        string.Empty,
        "Printed by `dotnet run --project benchmarks/FarmTwin.Benchmarks -c Release -- scenarios/first-season.json 9 benchmarks/results.md` at the",
        "root of the checkout; `-- dotnet` runs the pieces under BenchmarkDotNet. The script that it is compared with needs `python3-scipy` and",
        "`python3-simpy`.",
        string.Empty,
        "## What holds on any machine",
        string.Empty,
        "| what | measured |",
        "|---|---|",
        .. ratios.Select(r => $"| {r.What} | {r.Figure} |"),
        string.Empty,
        "The script (`benchmarks/reference/one_loop.py`) and the twin's kernels solve the same equations by the same passes, so that their days agree;",
        "the twin's whole farm has four times the basins, twelve times the substances, plants, a house, people and money beside. What clock, record and",
        "ledgers cost is measured with each run alone as often as a season runs it.",
        string.Empty,
        "## Times of one machine",
        string.Empty,
        "A shared virtual machine with two x64 cores at about 2.4 GHz; they move by a quarter with what else runs there.",
        string.Empty,
        "| what | measured |",
        "|---|---|",
        .. times.Select(r => $"| {r.What} | {r.Figure} |"),
    ]);
}

return 0;

void Ratio(string what, string figure) => Row(ratios, what, figure);

void Time(string what, string figure) => Row(times, what, figure);

static void Row(List<(string What, string Figure)> rows, string what, string figure)
{
    rows.Add((what, figure));
    Console.WriteLine($"{what}: {figure}");
}

double Best(FarmDescription other) => SeasonBenchmark.Milliseconds(other, Math.Min(runs, 7)).Best;

static string Ratios(IEnumerable<double> costs, int one)
{
    double[] all = [.. costs];
    return string.Join(", ", all.Select(c => $"{c / all[one]:0.00}"));
}
