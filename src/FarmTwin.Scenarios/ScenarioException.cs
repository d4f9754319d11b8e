namespace FarmTwin.Scenarios;

/// <summary>A scenario that cannot be used: carries every error that was found, not just the first.</summary>
public sealed class ScenarioException : Exception
{
    /// <summary>Makes an exception of the errors found.</summary>
    /// <param name="errors">At least one error, in the order of the files and lines.</param>
    public ScenarioException(IReadOnlyList<ScenarioError> errors)
        : base(string.Join('\n', errors.Select(e => e.ToString()))) => Errors = errors;

    /// <summary>Every error found.</summary>
    public IReadOnlyList<ScenarioError> Errors { get; }

    /// <summary>The errors, one a line, without a stack trace: it is the user's file that is wrong, not the program.</summary>
    public override string ToString() => Message;
}
