namespace FarmTwin.Scenarios.Weather;

/// <summary>Collects what is wrong with a weather file; a file of 8,760 faulty lines does not bury the reader.</summary>
internal sealed class WeatherErrors(string file, List<ScenarioError> errors)
{
    private const int Most = 20;
    private int _count;

    /// <summary>Whether anything is wrong.</summary>
    public bool Any => _count > 0;

    /// <summary>The file, as the scenario leads to it.</summary>
    public string File => file;

    /// <summary>Adds an error at a line and a column, both from 1; 0 where the whole file is meant.</summary>
    public void Add(int line, int column, string problem, string? expected = null, string? suggestion = null)
    {
        _count++;
        if (_count <= Most)
        {
            errors.Add(new ScenarioError(file, line, column, string.Empty, problem, expected, suggestion));
        }
        else if (_count == Most + 1)
        {
            errors.Add(new ScenarioError(file, line, column, string.Empty, "more is wrong from here on"));
        }
    }
}
