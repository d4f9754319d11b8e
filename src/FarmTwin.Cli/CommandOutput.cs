namespace FarmTwin.Cli;

/// <summary>Where a command writes.</summary>
/// <param name="Out">Answers.</param>
/// <param name="Error">What is wrong.</param>
/// <param name="IsInteractive">Whether a person watches: only then is progress shown.</param>
public sealed record CommandOutput(TextWriter Out, TextWriter Error, bool IsInteractive);
