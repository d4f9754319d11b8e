namespace FarmTwin.Engine.Chance;

/// <summary>Philox4x32-10: a random number that is a pure function of a counter and a key.</summary>
/// <remarks>
/// Salmon, Moraes, Dror &amp; Shaw (2011), "Parallel random numbers: as easy as 1, 2, 3", SC'11. Having no state, it gives the
/// same draw for the same key whatever was drawn before, by whom, and on which thread.
/// </remarks>
public static class Philox
{
    private const uint Multiplier0 = 0xD2511F53;
    private const uint Multiplier1 = 0xCD9E8D57;
    private const uint Weyl0 = 0x9E3779B9;
    private const uint Weyl1 = 0xBB67AE85;
    private const int Rounds = 10;

    /// <summary>Four 32-bit words for the 128-bit counter (<paramref name="c0"/>..<paramref name="c3"/>) and the 64-bit key.</summary>
    public static (uint W0, uint W1, uint W2, uint W3) Block(uint c0, uint c1, uint c2, uint c3, uint k0, uint k1)
    {
        for (int round = 0; round < Rounds; round++)
        {
            ulong product0 = (ulong)Multiplier0 * c0;
            ulong product1 = (ulong)Multiplier1 * c2;
            (c0, c1, c2, c3) = (
                (uint)(product1 >> 32) ^ c1 ^ k0,
                (uint)product1,
                (uint)(product0 >> 32) ^ c3 ^ k1,
                (uint)product0);
            k0 = unchecked(k0 + Weyl0);
            k1 = unchecked(k1 + Weyl1);
        }

        return (c0, c1, c2, c3);
    }
}
