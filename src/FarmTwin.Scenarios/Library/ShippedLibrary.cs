using FarmTwin.Farm.Library;

namespace FarmTwin.Scenarios.Library;

/// <summary>Every parameter set that ships with the program, read once.</summary>
public static class ShippedLibrary
{
    /// <summary>Folders of the library.</summary>
    public static readonly string[] Folders =
        ["processes", "fish", "feeds", "crops", "supplements", "covers", "fuels", "media", "probes", "microgreens", "grades"];

    private static readonly Lazy<FarmLibrary> Shared = new(() => new FarmLibrary(
        Folders.SelectMany(folder => ParameterLibrary.Names(folder).Select(name => (folder, ParameterLibrary.Load(folder, name))))));

    /// <summary>The library.</summary>
    public static FarmLibrary Library => Shared.Value;
}
