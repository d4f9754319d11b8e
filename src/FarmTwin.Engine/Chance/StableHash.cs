namespace FarmTwin.Engine.Chance;

/// <summary>FNV-1a, 32 bit: the same text gives the same number in every process and on every machine.</summary>
/// <remarks>Not for security, and not <see cref="object.GetHashCode"/>, which differs between processes.</remarks>
public static class StableHash
{
    private const uint OffsetBasis = 2166136261;
    private const uint Prime = 16777619;

    /// <summary>Hashes the UTF-16 code units of <paramref name="text"/>, low byte first.</summary>
    public static uint Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        uint hash = OffsetBasis;
        foreach (char c in text)
        {
            hash = unchecked((hash ^ (byte)c) * Prime);
            hash = unchecked((hash ^ (byte)(c >> 8)) * Prime);
        }

        return hash;
    }
}
