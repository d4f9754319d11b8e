using FarmTwin.Farm.Description;

namespace FarmTwin.Reports.Network;

/// <summary>A point, px.</summary>
internal readonly record struct Spot(double X, double Y);

/// <summary>A basin's box.</summary>
internal sealed record Box(NetworkBasin Basin, int Row, int Column, double Left, double Top, double Width, double Height)
{
    public double Right => Left + Width;

    public double Bottom => Top + Height;
}

/// <summary>A pipe as it is drawn: corners in the direction of the flow.</summary>
internal sealed record Route(Net Net, NetworkLink Link, List<Spot> Corners, Spot Symbol, bool SymbolUpright, Spot? Label);

/// <summary>
/// Places of basins and ways of pipes. Fish loop above, plant loop below it, sludge and what stands apart at the foot; three columns a row:
/// the fish's water runs to the right, the plants' back to the left, so that the coupled farm reads as one round.
/// </summary>
/// <remarks>
/// Boxes stand in a grid with channels between its rows and columns. Pipes that leave or enter one box from or to boxes above each
/// other share a track in a channel, like a manifold. Every track has a place of its own in its channel, so pipes cross but never lie on each other.
/// </remarks>
internal sealed class NetworkLayout
{
    public const double Width = 760;
    public const double Header = 27;

    private const double Edge = 6;
    private const double BoxWidth = 142;
    private const double TrackGap = 12;
    private const double TrunkGap = 19;
    private const double SymbolZone = 86;
    private const double ValveWords = 22;
    private const double Margin = 10;
    private const int Columns = 3;
    private const int ManyInAStack = 6;

    private readonly Dictionary<string, Box> _boxes = new(StringComparer.Ordinal);
    private readonly List<Net> _nets = [];
    private readonly double[] _columnLeft = new double[Columns];
    private readonly double[] _rowTop;
    private readonly double[] _rowHeight;
    private readonly double[] _trunkTop;

    public NetworkLayout(FarmNetwork network)
    {
        foreach (NetworkBasin basin in network.Basins)
        {
            (int row, int column) = Place(basin.Use);
            _boxes.Add(basin.Name, new Box(basin, row, column, 0, 0, BoxWidth, 0));
        }

        DropEmptyRows();
        Rows = _boxes.Count == 0 ? 0 : _boxes.Values.Max(b => b.Row) + 1;
        _rowTop = new double[Rows];
        _rowHeight = new double[Rows];
        _trunkTop = new double[Rows + 1];
        Bundle(network.Links);
        foreach (Net net in _nets)
        {
            net.Choose(_boxes, Rows);
        }

        PlaceColumns();
        PlaceRows();
        foreach (Net net in _nets.OrderBy(n => n.IsStraight ? 0 : 1))
        {
            ChoosePorts(net);
        }

        Routes = [.. _nets.SelectMany(Draw)];
    }

    public IReadOnlyCollection<Box> Boxes => _boxes.Values;

    public IReadOnlyList<Route> Routes { get; }

    public int Rows { get; }

    public double Height { get; private set; }

    /// <summary>Top and height of a row's ground.</summary>
    public (double Top, double Height) Ground(int row) => (_rowTop[row], _rowHeight[row]);

    private static (int Row, int Column) Place(BasinUse? use) => use switch
    {
        BasinUse.FishSump => (0, 0),
        BasinUse.FishTank => (0, 1),
        BasinUse.Filter => (0, 2),
        BasinUse.PlantSump => (1, 2),
        BasinUse.Lane or BasinUse.Trough or BasinUse.MediaBed => (1, 1),
        BasinUse.NurseryReservoir or BasinUse.Quarantine => (2, 0),
        BasinUse.Mineralizer => (2, 2),
        _ => (2, 1),
    };

    private void DropEmptyRows()
    {
        int[] rows = [.. _boxes.Values.Select(b => b.Row).Distinct().Order()];
        foreach ((string name, Box box) in _boxes.ToArray())
        {
            _boxes[name] = box with { Row = Array.IndexOf(rows, box.Row) };
        }
    }

    // A pump feeds several boxes from one manifold; what overflows is gathered by one.
    private void Bundle(IReadOnlyList<NetworkLink> links)
    {
        foreach (IGrouping<(string Hub, bool Outwards, int Row, int Column, LinkKind Kind), NetworkLink> group in links.GroupBy(l =>
        {
            bool outwards = l.Pump is not null;
            Box member = _boxes[outwards ? l.To : l.From];
            return (outwards ? l.From : l.To, outwards, member.Row, member.Column, l.Kind);
        }))
        {
            _nets.Add(new Net(group.Key.Hub, group.Key.Outwards, [.. group]));
        }
    }

    private void PlaceColumns()
    {
        double[] zone = [0, SymbolZone, SymbolZone, _nets.Exists(n => n.Channel == Columns && n.Links.Any(l => l.Valve is not null)) ? ValveWords : 0];
        var channel = new double[Columns + 1];
        for (int v = 0; v <= Columns; v++)
        {
            int tracks = SpreadTracks([.. _nets.Where(n => n.Channel == v)]);
            channel[v] = tracks == 0 ? Margin : zone[v] + (2 * Margin) + ((tracks - 1) * TrackGap);
        }

        double used = (2 * Edge) + channel.Sum() + (Columns * BoxWidth);
        double spare = Math.Max(0, Width - used) / 2;
        double x = Edge + channel[0];
        for (int c = 0; c < Columns; c++)
        {
            _columnLeft[c] = x;
            x += BoxWidth + channel[c + 1] + (c + 1 < Columns ? spare : 0);
        }
    }

    // Tracks of one channel may share a place where they run beside different rows.
    private static int SpreadTracks(Net[] nets)
    {
        int most = 0;
        for (int i = 0; i < nets.Length; i++)
        {
            int track = 0;
            while (nets.Take(i).Any(n => n.Track == track && n.FirstRow <= nets[i].LastRow && n.LastRow >= nets[i].FirstRow))
            {
                track++;
            }

            nets[i].Track = track;
            most = Math.Max(most, track + 1);
        }

        return most;
    }

    private void PlaceRows()
    {
        double y = 0;
        for (int row = 0; row <= Rows; row++)
        {
            Net[] trunks = [.. _nets.Where(n => n.Trunk == row)];
            for (int t = 0; t < trunks.Length; t++)
            {
                trunks[t].TrunkTrack = t;
            }

            _trunkTop[row] = y + TrunkGap;
            y += trunks.Length == 0 ? (row is 0 ? 2 : row < Rows ? TrunkGap : 2) : (trunks.Length * TrunkGap) + Margin;
            if (row < Rows)
            {
                _rowTop[row] = y;
                int most = Enumerable.Range(0, Columns).Max(c => Stack(row, c).Length);
                double height = most > ManyInAStack ? 34 : 38;
                double gap = most > ManyInAStack ? 7 : 12;
                double inner = (most * (height + gap)) - gap;
                for (int c = 0; c < Columns; c++)
                {
                    Box[] stack = Stack(row, c);
                    double top = y + Header + ((inner - ((stack.Length * (height + gap)) - gap)) / 2);
                    for (int i = 0; i < stack.Length; i++)
                    {
                        _boxes[stack[i].Basin.Name] = stack[i] with { Left = _columnLeft[c], Top = top + (i * (height + gap)), Height = height };
                    }
                }

                _rowHeight[row] = Header + inner + 10;
                y += _rowHeight[row];
            }
        }

        Height = y;
    }

    private Box[] Stack(int row, int column) => [.. _boxes.Values.Where(b => b.Row == row && b.Column == column)];

    // Ports of a box's top and bottom: where the pipe comes from, as far as it is free.
    private void ChoosePorts(Net net)
    {
        const int Slots = 7;
        if (net.IsStraight)
        {
            double x = Free(true, net.Hub, net.HubSide, net.Member, net.MemberSide, Slots - 2);
            (net.HubPort, net.MemberPort) = (x, x);
            return;
        }

        if (net.HubSide is Side.Top or Side.Bottom)
        {
            net.HubPort = Free(false, net.Hub, net.HubSide, string.Empty, Side.Top, Wanted(net.Hub, net.ComesFrom(_boxes)));
        }

        if (net.MemberSide is Side.Top or Side.Bottom)
        {
            net.MemberPort = Free(false, net.Member, net.MemberSide, string.Empty, Side.Top, Wanted(net.Member, _boxes[net.Hub].Column));
        }

        int Wanted(string box, int from) => from < _boxes[box].Column ? 1 : from > _boxes[box].Column ? Slots - 2 : Slots / 2;

        double Free(bool both, string first, Side firstSide, string second, Side secondSide, int wanted)
        {
            double Of(int slot) => _boxes[first].Left + (BoxWidth * (slot + 0.5) / Slots);
            bool Taken(string box, Side side, double x) => _nets.Exists(n =>
                (n.Hub == box && n.HubSide == side && n.HubPort == x) || (n.Member == box && n.MemberSide == side && n.MemberPort == x));
            int slot = Enumerable.Range(0, Slots).OrderBy(s => Math.Abs(s - wanted))
                .First(s => s == Slots - 1 || (!Taken(first, firstSide, Of(s)) && (!both || !Taken(second, secondSide, Of(s)))));
            return Of(slot);
        }
    }

    private IEnumerable<Route> Draw(Net net)
    {
        Box hub = _boxes[net.Hub];
        double track = net.Channel < 0 ? 0 : TrackX(net);
        double trunk = net.Trunk < 0 ? 0 : _trunkTop[net.Trunk] + (net.TrunkTrack * TrunkGap);
        bool labelled = false;
        foreach (NetworkLink link in net.Links)
        {
            Box member = _boxes[net.Outwards ? link.To : link.From];
            var corners = new List<Spot>();
            if (net.MemberSide is Side.Left or Side.Right)
            {
                double y = SideY(net, member);
                corners.Add(new Spot(net.MemberSide == Side.Left ? member.Left : member.Right, y));
                corners.Add(new Spot(track, y));
            }
            else
            {
                corners.Add(new Spot(net.MemberPort, net.MemberSide == Side.Top ? member.Top : member.Bottom));
            }

            if (net.Trunk >= 0 && !net.IsStraight)
            {
                corners.Add(corners[^1] with { Y = trunk });
            }

            if (net.HubSide is Side.Left or Side.Right)
            {
                double y = HubY(net, hub);
                if (net.Channel >= 0)
                {
                    corners.Add(new Spot(track, y));
                }

                corners.Add(new Spot(net.HubSide == Side.Left ? hub.Left : hub.Right, y));
            }
            else
            {
                corners.Add(new Spot(net.HubPort, trunk == 0 ? corners[^1].Y : trunk));
                corners.Add(new Spot(net.HubPort, net.HubSide == Side.Top ? hub.Top : hub.Bottom));
            }

            (Spot symbol, bool upright) = Symbol(net, corners);
            Spot? label = net.Trunk >= 0 && !net.IsStraight && !labelled
                ? new Spot((corners[^2].X + corners[^3].X) / 2, trunk - 4) : null;
            labelled = true;
            if (net.Outwards)
            {
                corners.Reverse();
            }

            yield return new Route(net, link, Straighten(corners), symbol, upright, label);
        }
    }

    private double TrackX(Net net)
    {
        // The zone for pumps and valves lies beside the boxes of the stack: left of the middle column, right of it on the other side.
        double left = net.Channel == 0 ? _columnLeft[0] : _columnLeft[net.Channel - 1] + BoxWidth;
        return net.Channel switch
        {
            0 => left - Margin - (net.Track * TrackGap),
            1 => _columnLeft[1] - SymbolZone - (net.Track * TrackGap),
            2 => left + SymbolZone + (net.Track * TrackGap),
            _ => left + Margin + (net.Track * TrackGap),
        };
    }

    // Several pipes on one side of a box stand below each other, those of the trunk above the box highest.
    private double SideY(Net net, Box box)
    {
        Net[] here = [.. _nets.Where(n => n.MemberSide == net.MemberSide && n.Links.Any(l => (n.Outwards ? l.To : l.From) == box.Basin.Name))
            .OrderBy(n => n.Trunk >= 0 && n.Trunk <= box.Row ? 0 : 1)];
        int others = _nets.Count(n => n.Hub == box.Basin.Name && n.HubSide == net.MemberSide);
        return box.Top + (box.Height * (Array.IndexOf(here, net) + 1.0) / (here.Length + others + 1));
    }

    private double HubY(Net net, Box box)
    {
        Net[] here = [.. _nets.Where(n => n.Hub == box.Basin.Name && n.HubSide == net.HubSide)];
        int members = _nets.Count(n => n.MemberSide == net.HubSide && n.Links.Any(l => (n.Outwards ? l.To : l.From) == box.Basin.Name));
        return box.Top + (box.Height * (members + Array.IndexOf(here, net) + 1.0) / (here.Length + members + 1));
    }

    // Beside its box where several hang on a manifold; else in the middle of the longest stretch.
    private static (Spot At, bool Upright) Symbol(Net net, List<Spot> corners)
    {
        if (net.Links.Count > 1 || net.Links[0].Pump is not null)
        {
            double direction = Math.Sign(corners[1].X - corners[0].X);
            if (direction != 0)
            {
                return (corners[0] with { X = corners[0].X + (direction * (net.Links[0].Pump is not null ? SymbolZone - 12 : 26)) }, false);
            }
        }

        (Spot from, Spot to) = corners.Zip(corners.Skip(1)).MaxBy(p => Math.Abs(p.First.X - p.Second.X) + Math.Abs(p.First.Y - p.Second.Y));
        return (new Spot((from.X + to.X) / 2, (from.Y + to.Y) / 2), from.X == to.X);
    }

    private static List<Spot> Straighten(List<Spot> corners)
    {
        var kept = new List<Spot>();
        foreach (Spot spot in corners)
        {
            if (kept.Count > 0 && kept[^1] == spot)
            {
                continue;
            }

            bool onLine = kept.Count > 1 && ((kept[^1].X == spot.X && kept[^2].X == spot.X) || (kept[^1].Y == spot.Y && kept[^2].Y == spot.Y));
            if (onLine)
            {
                kept.RemoveAt(kept.Count - 1);
            }

            kept.Add(spot);
        }

        return kept;
    }
}
