using FarmTwin.Farm.Alarms;

namespace FarmTwin.Farm.Seasons.Records;

/// <summary>Columns of what each probe reads, beside what is there to be read; of the day and of the hour.</summary>
internal static class ProbeColumns
{
    /// <summary>Adds them.</summary>
    public static void Add(ColumnList columns, FarmContext farm)
    {
        AlarmParts parts = farm.Parts.Alarms;
        ProbeState probes = farm.State.Probes;
        for (int p = 0; p < parts.ProbeNames.Length; p++)
        {
            int probe = p;
            string name = parts.ProbeNames[p];
            string ending = ProbeQuantities.ColumnEnding(parts.Quantities[p]);
            string unit = ProbeQuantities.Unit(parts.Quantities[p]);
            columns.Mean($"probe_{name}_{ending}", unit, () => probes.Reading[probe]);
            columns.Mean($"true_{name}_{ending}", unit, () => probes.Truth[probe]);
            columns.Hour($"probe_{name}_{ending}", unit, () => probes.Reading[probe]);
            columns.Hour($"true_{name}_{ending}", unit, () => probes.Truth[probe]);
        }
    }
}
