namespace FarmTwin.Scenarios.Schema;

/// <summary>What an input is, for a user who asks.</summary>
/// <param name="Path">Where it stands; a name that the user chooses is <c>*</c>, a kind stands in brackets ("plan.*(stock).number").</param>
/// <param name="About">What it is.</param>
/// <param name="Sort">How it is written: "a volume", "a date", "one of nile-tilapia, red-tilapia".</param>
/// <param name="Unit">The unit in which it is held; empty for what is no quantity.</param>
/// <param name="Range">The allowed range with its unit; empty where there is none.</param>
/// <param name="Default">What it is when left out; empty where it must be given or is then absent.</param>
/// <param name="IsRequired">Whether it must be given.</param>
/// <param name="LibraryFolder">The folder of the library in which a name is chosen; empty where none is.</param>
public sealed record ExplainedInput(
    string Path, string About, string Sort, string Unit, string Range, string Default, bool IsRequired, string LibraryFolder = "");
