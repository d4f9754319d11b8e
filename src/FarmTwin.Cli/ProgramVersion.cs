namespace FarmTwin.Cli;

/// <summary>The version of the program.</summary>
internal static class ProgramVersion
{
    /// <summary>As major.minor.patch.</summary>
    public static string Text { get; } = typeof(ProgramVersion).Assembly.GetName().Version?.ToString(3) ?? "0.0.0";
}
