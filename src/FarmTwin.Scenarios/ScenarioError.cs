namespace FarmTwin.Scenarios;

/// <summary>One thing wrong with a scenario file: where it is, what it is, what would be right.</summary>
/// <param name="File">The file, as the user named it (or as the scenario that extends it leads to it).</param>
/// <param name="Line">Line, from 1; 0 where the whole file is meant.</param>
/// <param name="Column">Column, from 1, in UTF-16 code units as editors count; 0 where the whole file is meant.</param>
/// <param name="Path">Path in the scenario ("basins.tank.volume"); empty for the root.</param>
/// <param name="Problem">What is wrong, in a clause.</param>
/// <param name="Expected">What would be right; null where the problem says it.</param>
/// <param name="Suggestion">The nearest valid name or spelling; null where none is near.</param>
public sealed record ScenarioError(
    string File, int Line, int Column, string Path, string Problem, string? Expected = null, string? Suggestion = null)
{
    /// <summary>The error as one line: <c>file:line:column: path: problem. Expected …. Did you mean …?</c></summary>
    public override string ToString()
    {
        string place = Line > 0 ? $"{File}:{Line}:{Column}" : File;
        string path = Path.Length > 0 ? $" {Path}:" : string.Empty;
        string expected = Expected is null ? string.Empty : $" Expected {Expected}.";
        string suggestion = Suggestion is null ? string.Empty : $" Did you mean \"{Suggestion}\"?";
        return $"{place}:{path} {Problem}.{expected}{suggestion}";
    }
}
