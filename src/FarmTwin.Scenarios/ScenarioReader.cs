using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Binding;
using FarmTwin.Scenarios.Json;
using FarmTwin.Scenarios.Library;
using FarmTwin.Scenarios.Weather;

namespace FarmTwin.Scenarios;

/// <summary>Reads scenario files strictly: all errors at once, each with its place, or a complete description.</summary>
public static class ScenarioReader
{
    /// <summary>Reads a scenario file and the files it extends, and binds it to a description.</summary>
    /// <typeparam name="T">The root record, declared with <c>Input</c> attributes.</typeparam>
    /// <param name="path">The file.</param>
    /// <param name="libraryNames">The names in a folder of the parameter library; left out, those of the shipped library.</param>
    /// <exception cref="ScenarioException">Something is wrong with a file; carries everything that is.</exception>
    /// <exception cref="InvalidOperationException">The description itself is declared wrongly (a fault of the program).</exception>
    public static Scenario<T> Read<T>(string path, Func<string, IReadOnlyList<string>>? libraryNames = null)
        where T : class
    {
        var errors = new List<ScenarioError>();
        ResolvedScenario resolved = Extends.Resolve(path, errors) ?? throw new ScenarioException(errors);
        return Bind<T>(resolved, errors, libraryNames);
    }

    /// <summary>Binds a merged scenario; adds what is wrong to <paramref name="errors"/> and throws where anything is.</summary>
    internal static Scenario<T> Bind<T>(
        ResolvedScenario resolved, List<ScenarioError> errors, Func<string, IReadOnlyList<string>>? libraryNames = null)
        where T : class
    {
        object value = Binder.Bind(typeof(T), resolved.Root, libraryNames ?? ParameterLibrary.Names, errors, out string? currency);
        if (errors.Count == 0 && value is FarmDescription farm)
        {
            value = WeatherFiles.Attach(farm, resolved, errors) with { Currency = currency ?? string.Empty };
        }

        return errors.Count == 0
            ? new Scenario<T>((T)value, resolved, currency)
            : throw new ScenarioException(InOrder(errors, resolved.Files));
    }

    /// <summary>Reads and merges without binding: for showing the result and where each value comes from.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="ScenarioException">A file cannot be read or merged.</exception>
    public static ResolvedScenario Resolve(string path)
    {
        var errors = new List<ScenarioError>();
        ResolvedScenario? resolved = Extends.Resolve(path, errors);
        return resolved is not null && errors.Count == 0
            ? resolved
            : throw new ScenarioException(resolved is null ? errors : InOrder(errors, resolved.Files));
    }

    // A file that is no scenario, such as weather, comes after them.
    private static List<ScenarioError> InOrder(List<ScenarioError> errors, IReadOnlyList<string> files) =>
        [.. errors.OrderBy(e => (uint)files.ToList().IndexOf(e.File)).ThenBy(e => e.Line).ThenBy(e => e.Column)];
}
