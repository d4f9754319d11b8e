namespace FarmTwin.Engine.Transport;

/// <summary>Values of the nodes of a network laid side by side, four to a vector: room is rounded up to whole vectors.</summary>
/// <remarks>
/// A law that every node follows is worked out for four nodes at once (<see cref="System.Runtime.Intrinsics.Vector256{T}"/>); the arithmetic
/// of a node does not depend on its neighbours. The places behind the last node must hold values for which the law is defined.
/// </remarks>
public static class Fours
{
    /// <summary>Nodes in a vector.</summary>
    public const int Width = 4;

    /// <summary>Room for a count of nodes in whole vectors.</summary>
    public static int Room(int count) => (count + Width - 1) / Width * Width;

    /// <summary>Zeros for a count of nodes, with the room of whole vectors.</summary>
    public static double[] Zeros(int count) => new double[Room(count)];
}
