using FarmTwin.Farm.Description;
using FarmTwin.Farm.Ledgers;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios;
using FarmTwin.Scenarios.Library;

try
{
    var scenario = ScenarioReader.Read<FarmDescription>(args[0]);
    var watch = System.Diagnostics.Stopwatch.StartNew();
    var season = new Season(scenario.Value, ShippedLibrary.Library, 1);
    Console.WriteLine($"assembled {watch.ElapsedMilliseconds} ms");
    watch.Restart();
    season.AdvanceToEnd();
    Console.WriteLine($"ran {watch.ElapsedMilliseconds} ms");
    var rec = season.Record.Days;
    Console.WriteLine(string.Join(",", rec.Columns.ToArray().Select(c => c.Name)));
    for (int i = 0; i < rec.RowCount; i++) Console.WriteLine(string.Join(",", rec.Row(i).ToArray().Select(v => v.ToString("0.###"))));
    using var ev = new StreamWriter("/tmp/events.txt");
    foreach (var e in season.Log.Events) ev.WriteLine($"{e.Seconds / 86400.0,8:0.00} {e.What,-22} {e.Where,-16} {e.Amount,10:0.##} {e.Unit,-8} {e.Note}");
    var st = season.ClosingStocks();
    for (int l = 0; l < FarmBooks.Count; l++) { var led = season.State.Books[l]; Console.Error.WriteLine($"{FarmBooks.Names[l],-16} open {led.OpeningStock:0.##} in {led.TotalIn:0.##} out {led.TotalOut:0.##} close {st[l]:0.##} error {led.ClosureError(st[l]):0.0e0}"); 
      for (int d = 0; d < Door.Names.Length; d++) if (led.TotalInBy(d) != 0 || led.TotalOutBy(d) != 0) Console.Error.WriteLine($"      {Door.Names[d],-18} in {led.TotalInBy(d):0.##} out {led.TotalOutBy(d):0.##}"); }
    Console.Error.WriteLine(System.Text.Json.JsonSerializer.Serialize(season.State.Totals, new System.Text.Json.JsonSerializerOptions { WriteIndented = true }));
}
catch (ScenarioException e) { Console.WriteLine(e); return 2; }
return 0;
