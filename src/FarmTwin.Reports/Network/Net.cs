namespace FarmTwin.Reports.Network;

/// <summary>A side of a box.</summary>
internal enum Side
{
    Left,
    Right,
    Top,
    Bottom,
}

/// <summary>Pipes drawn as one: from or to one box (the hub), to or from boxes above each other (the members).</summary>
/// <param name="hub">The hub.</param>
/// <param name="outwards">Whether water runs from the hub to the members.</param>
/// <param name="links">The pipes.</param>
internal sealed class Net(string hub, bool outwards, IReadOnlyList<NetworkLink> links)
{
    public string Hub => hub;

    public bool Outwards => outwards;

    public IReadOnlyList<NetworkLink> Links => links;

    /// <summary>The first member.</summary>
    public string Member => outwards ? links[0].To : links[0].From;

    public Side HubSide { get; private set; }

    public Side MemberSide { get; private set; }

    /// <summary>Channel between columns in which the track runs; −1 for none.</summary>
    public int Channel { get; private set; } = -1;

    /// <summary>Place in that channel.</summary>
    public int Track { get; set; }

    public int FirstRow { get; private set; }

    public int LastRow { get; private set; }

    /// <summary>Channel above a row in which the trunk runs; −1 for none.</summary>
    public int Trunk { get; private set; } = -1;

    public int TrunkTrack { get; set; }

    /// <summary>Whether it runs straight from box to box across the channel.</summary>
    public bool IsStraight { get; private set; }

    public double HubPort { get; set; } = double.NaN;

    public double MemberPort { get; set; } = double.NaN;

    /// <summary>Column from which the pipe reaches its hub.</summary>
    public int ComesFrom(IReadOnlyDictionary<string, Box> boxes) =>
        Channel < 0 ? boxes[Member].Column : Channel <= boxes[hub].Column ? -1 : int.MaxValue;

    /// <summary>Chooses sides and channels.</summary>
    /// <param name="boxes">The boxes, with rows and columns.</param>
    /// <param name="rows">Number of rows.</param>
    public void Choose(IReadOnlyDictionary<string, Box> boxes, int rows)
    {
        Box to = boxes[hub];
        Box from = boxes[Member];
        int apart = to.Column - from.Column;
        (FirstRow, LastRow) = (Math.Min(to.Row, from.Row), Math.Max(to.Row, from.Row));
        Box[] stack = [.. boxes.Values.Where(b => b.Row == from.Row && b.Column == from.Column)];
        bool isTop = stack[0] == from;
        bool isBottom = stack[^1] == from;
        if (to.Row == from.Row && Math.Abs(apart) == 1)
        {
            // Neighbours: across the channel between them.
            Channel = Math.Max(to.Column, from.Column);
            (MemberSide, HubSide) = apart > 0 ? (Side.Right, Side.Left) : (Side.Left, Side.Right);
        }
        else if (to.Row == from.Row && apart == 0)
        {
            Channel = from.Column;
            (MemberSide, HubSide) = (Side.Left, Side.Left);
        }
        else if (links.Count == 1 && to.Row == from.Row && isTop)
        {
            // Over the heads of the row.
            Trunk = from.Row;
            (MemberSide, HubSide) = (Side.Top, Side.Top);
        }
        else if (links.Count == 1 && to.Row - from.Row == 1 && isBottom)
        {
            Trunk = to.Row;
            (MemberSide, HubSide) = (Side.Bottom, Side.Top);
            IsStraight = apart == 0;
        }
        else if (links.Count == 1 && to.Row - from.Row == -1 && isTop)
        {
            Trunk = from.Row;
            (MemberSide, HubSide) = (Side.Top, Side.Bottom);
            IsStraight = apart == 0;
        }
        else
        {
            AroundTheSide(from, to, apart);
        }

        IsStraight &= Trunk >= 0;
        Trunk = Math.Min(Trunk, rows);
    }

    private void AroundTheSide(Box from, Box to, int apart)
    {
        MemberSide = from.Column switch { 0 => Side.Left, 1 => Side.Left, _ => Side.Right };
        Channel = MemberSide == Side.Left ? from.Column : from.Column + 1;
        bool borders = Channel == to.Column || Channel == to.Column + 1;
        if (borders && (apart == 0 || to.Row == from.Row))
        {
            HubSide = Channel == to.Column ? Side.Left : Side.Right;
        }
        else if (to.Row < from.Row)
        {
            HubSide = Side.Bottom;
            Trunk = to.Row + 1;
        }
        else if (to.Row > from.Row)
        {
            HubSide = Side.Top;
            Trunk = to.Row;
        }
        else
        {
            // The same row and far apart: below the row.
            HubSide = Side.Bottom;
            Trunk = to.Row + 1;
        }
    }
}
