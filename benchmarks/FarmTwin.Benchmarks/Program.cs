using System.Globalization;
using FarmTwin.Benchmarks;
using FarmTwin.Farm.Description;

// Arguments: scenario file, seasons to time, file for the table. Call it at the root of the checkout.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
string path = args.Length > 0 ? args[0] : "scenarios/first-season.json";
int runs = args.Length > 1 ? int.Parse(args[1]) : 9;
FarmDescription farm = SeasonBenchmark.Read(path);
var rows = new List<(string What, string Figure)>();

(double best, double median) = SeasonBenchmark.Milliseconds(farm, runs);
Row($"season of {farm.LengthDays:0} d, hourly, one thread, warm", $"best {best:0} ms, median {median:0} ms of processor time");
Row("allocated a step, without the events that close the day or write to the log", $"{SeasonBenchmark.BytesPerStep(farm):0} bytes");
Row("event calendar, M/M/1", $"{CalendarBenchmark.MeasureEventsPerSecond(5_000_000) / 1e6:0.0} million events/s");
double[] days = [90, 180, 365, 730];
Row("cost of 90, 180, 365, 730 days, each by that of 365 days and its length", Ratios(days.Select(d => Best(GrownFarm.OfLength(farm, d)) * 365 / d), 2));
int[] times = [1, 2, 4];
FarmDescription[] wider = [.. times.Select(t => GrownFarm.WithMoreBasins(farm, t))];
Row($"cost with 1, 2, 4 times the tanks and lanes ({string.Join(", ", wider.Select(w => w.Basins.Count))} basins)", Ratios(wider.Select(Best), 0));
Row("cost with 1, 2, 4 times the crop lots", Ratios(times.Select(t => Best(GrownFarm.WithMoreLots(farm, t))), 0));
double? cold = ColdStart.Seconds(path);
Row("cold start of `run` to finished plots and report", cold is { } seconds ? $"{seconds:0.0} s of real time" : "not measured: build src/FarmTwin.Cli in Release first");

if (args.Length > 2)
{
    File.WriteAllLines(args[2],
    [
        "# Benchmarks",
        string.Empty,
        "Printed by `benchmarks/FarmTwin.Benchmarks` on a shared machine with two x64 cores. Watch the ratios and the bytes: times move by",
        "a fifth with what else runs there. The cost of calendar, guards, recording and ledgers around the bare season is not measured:",
        "a season cannot be run without them.",
        string.Empty,
        "| what | measured |",
        "|---|---|",
        .. rows.Select(r => $"| {r.What} | {r.Figure} |"),
    ]);
}

return 0;

void Row(string what, string figure)
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
