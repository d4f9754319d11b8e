namespace FarmTwin.Farm.Tests.Validation;

/// <summary>What a comparison proves.</summary>
internal enum Standing
{
    /// <summary>Nothing was fitted to it: a test.</summary>
    Test,

    /// <summary>Our own calculation or an identity: it tests the program, not nature.</summary>
    Arithmetic,

    /// <summary>A parameter was fitted to it: agreement proves nothing but the fit.</summary>
    Calibrated,

    /// <summary>The twin does not reproduce it, and says so.</summary>
    Gap,
}

/// <summary>One comparison with the outside world: a line of docs/validation.md and a test at once.</summary>
/// <param name="Subject">The section it stands in.</param>
/// <param name="Claim">What is compared, with its conditions.</param>
/// <param name="Source">Who published the figure.</param>
/// <param name="Basis">How the source was read, or what else the figure rests on.</param>
/// <param name="Expected">The published figure as the page shows it.</param>
/// <param name="Low">The least that agrees.</param>
/// <param name="High">The most that agrees.</param>
/// <param name="Unit">Unit of all of them.</param>
/// <param name="Standing">What it proves.</param>
/// <param name="Value">The twin's figure, computed when first asked for.</param>
internal sealed record ValidationCase(
    string Subject, string Claim, string Source, string Basis, double? Expected, double Low, double High, string Unit, Standing Standing, Lazy<double> Value)
{
    /// <summary>Whether the twin's figure lies where the source says.</summary>
    public bool Agrees => Value.Value >= Low && Value.Value <= High;

    /// <summary>Why a gap is one.</summary>
    public string Why { get; init; } = string.Empty;
}
