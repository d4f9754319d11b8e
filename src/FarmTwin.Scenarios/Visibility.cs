using System.Runtime.CompilerServices;

// The tests check the table of units and the patterns, which nobody else needs to see.
[assembly: InternalsVisibleTo("FarmTwin.Scenarios.Tests")]
