namespace FarmTwin.Studies.Faults;

/// <summary>A backup that was tried, at the smallest size that saves everything.</summary>
/// <param name="Kind">What it is ("battery air", "oxygen", "generator", "standby blower", "standby pump", "standby heater").</param>
/// <param name="Saves">Whether any size saves: no fish dead, no tank at gasping, no plant lost.</param>
/// <param name="Size">The size: W, g/h a tank, kW, share of the air, L/h; not a number where none saves.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Stored">What must be stored for as long as it must run; not a number where nothing is.</param>
/// <param name="StoredUnit">Its unit ("Wh", "kg", "min" within which a generator must carry the load).</param>
/// <param name="InWords">The same as a client would ask for it.</param>
public sealed record BackupOption(string Kind, bool Saves, double Size, string Unit, double Stored, string StoredUnit, string InWords);
