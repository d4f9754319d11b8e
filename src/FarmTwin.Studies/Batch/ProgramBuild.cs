using System.Security.Cryptography;
using FarmTwin.Engine;
using FarmTwin.Farm.Seasons;
using FarmTwin.Scenarios;

namespace FarmTwin.Studies.Batch;

/// <summary>Which build of the program computes: results of another build are other results, even under the same version.</summary>
internal static class ProgramBuild
{
    private const int Digits = 16;

    /// <summary>A hash over the module versions of everything that determines a season; builds are deterministic, so the same code gives the same.</summary>
    public static string Hash { get; } = Convert.ToHexStringLower(SHA256.HashData(
        [.. new[] { typeof(Simulation), typeof(Season), typeof(ScenarioReader), typeof(ProgramBuild) }.SelectMany(t => t.Module.ModuleVersionId.ToByteArray())]))[..Digits];
}
