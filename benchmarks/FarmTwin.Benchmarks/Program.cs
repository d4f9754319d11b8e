using FarmTwin.Benchmarks;
using FarmTwin.Farm.Description;

string path = args.Length > 0 ? args[0] : "scenarios/first-season.json";
FarmDescription farm = SeasonBenchmark.Read(path);
(double best, double median) = SeasonBenchmark.Milliseconds(farm, args.Length > 1 ? int.Parse(args[1]) : 9);
Console.WriteLine($"season of {farm.LengthDays:0} d, hourly, one thread, warm: best {best:0} ms, median {median:0} ms");
Console.WriteLine($"allocated a step: {SeasonBenchmark.BytesPerStep(farm):0} bytes");
return 0;
