namespace FarmTwin.Scenarios.Json;

/// <summary>A place in a text file.</summary>
/// <param name="File">The file, as the user named it.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column, from 1, in UTF-16 code units.</param>
public readonly record struct Place(string File, int Line, int Column)
{
    /// <summary><c>file:line:column</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}";
}
