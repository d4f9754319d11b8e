using System.Globalization;
using FarmTwin.Farm.Description;
using FarmTwin.Reports.Html;

namespace FarmTwin.Reports.Network;

/// <summary>The drawing of a farm's water network.</summary>
public static class NetworkPicture
{
    private const string Ink = "#1a1a1a";
    private const string Water = "#0060a0";
    private const string Joined = "#b34700";
    private const string Sludge = "#5a4632";
    private const string Halo = "stroke=\"#f3f5f6\" stroke-width=\"4\" paint-order=\"stroke\" stroke-linejoin=\"round\"";
    private const string WhiteHalo = "stroke=\"#ffffff\" stroke-width=\"4\" paint-order=\"stroke\" stroke-linejoin=\"round\"";
    private const double LegendHeight = 50;

    /// <summary>The drawing as a figure of a page.</summary>
    /// <param name="network">The network.</param>
    /// <param name="name">Name of the picture, the only one of its kind on the page.</param>
    public static HtmlFigure Of(FarmNetwork network, string name = "network")
    {
        ArgumentNullException.ThrowIfNull(network);
        var layout = new NetworkLayout(network);
        string title = "How the water runs: fish loop above, plant loop below";
        string words = InWords(network);
        var picture = new SvgPicture(name, NetworkLayout.Width, layout.Height + LegendHeight, title, words);
        Grounds(picture, layout);
        foreach (IGrouping<Net, Route> net in layout.Routes.GroupBy(r => r.Net))
        {
            Pipes(picture, [.. net]);
        }

        Headings(picture, layout);
        foreach (Box box in layout.Boxes)
        {
            Basin(picture, box);
        }

        foreach (Route route in layout.Routes)
        {
            Symbol(picture, route);
            Words(picture, route);
        }

        Legend(picture, layout.Height + 14);
        return new HtmlFigure(picture.ToString(), title, "Volumes at the normal level; flows in litres an hour with clean filters. The numbers are those of the tables below.", words, null);
    }

    private static void Grounds(SvgPicture picture, NetworkLayout layout)
    {
        for (int row = 0; row < layout.Rows; row++)
        {
            (double top, double height) = layout.Ground(row);
            picture.Rect(1, top, NetworkLayout.Width - 2, height, "rx=\"6\" fill=\"#f3f5f6\" stroke=\"#c9ced2\"");
        }
    }

    private static void Headings(SvgPicture picture, NetworkLayout layout)
    {
        for (int row = 0; row < layout.Rows; row++)
        {
            Box[] boxes = [.. layout.Boxes.Where(b => b.Row == row)];
            string litres = $", {Amount(boxes.Sum(b => b.Basin.Litres))} L";
            string what = boxes.Any(b => b.Basin.Use is { } use && LoopUses.Fish.Contains(use)) ? "Fish loop" + litres
                : boxes.Any(b => b.Basin.Use is { } use && LoopUses.Plant.Contains(use)) ? "Plant loop" + litres : "Sludge, and what stands apart";
            picture.Text(what, 10, layout.Ground(row).Top + 15, 12.5, "start", $"font-weight=\"600\" fill=\"{Ink}\" {Halo}");
        }
    }

    // A manifold passes as a whole over the pipes drawn before it; what its pipes share is drawn once, or dashes would fill each other's gaps.
    private static void Pipes(SvgPicture picture, Route[] manifold)
    {
        (string colour, string dash, double width) = Style(manifold[0].Link.Kind);
        string path = string.Concat(Stretches(manifold).Select(s =>
            $"M{SvgPicture.Number(s.From.X)} {SvgPicture.Number(s.From.Y)}L{SvgPicture.Number(s.To.X)} {SvgPicture.Number(s.To.Y)}"));
        picture.Path(path, "fill=\"none\" stroke=\"#f3f5f6\" stroke-width=\"6\"");
        picture.Path(path, $"fill=\"none\" stroke=\"{colour}\" stroke-width=\"{SvgPicture.Number(width)}\"{(dash.Length > 0 ? dash : " stroke-linecap=\"square\"")}");
        foreach (Route route in manifold)
        {
            Arrow(picture, route, colour);
        }
    }

    private static List<(Spot From, Spot To)> Stretches(Route[] manifold)
    {
        var stretches = new List<(Spot From, Spot To)>();
        IEnumerable<(Spot First, Spot Second)> pieces = manifold.SelectMany(r => r.Corners.Zip(r.Corners.Skip(1)));
        foreach (IGrouping<(bool Upright, double At), (Spot First, Spot Second)> line in pieces.GroupBy(p => p.First.X == p.Second.X ? (true, p.First.X) : (false, p.First.Y)))
        {
            bool upright = line.Key.Upright;
            double from = double.NaN;
            double to = double.NaN;
            foreach ((double low, double high) in line.Select(p => upright
                ? (Math.Min(p.First.Y, p.Second.Y), Math.Max(p.First.Y, p.Second.Y)) : (Math.Min(p.First.X, p.Second.X), Math.Max(p.First.X, p.Second.X))).Order())
            {
                if (low > to || double.IsNaN(from))
                {
                    Close();
                    (from, to) = (low, high);
                }

                to = Math.Max(to, high);
            }

            Close();

            void Close()
            {
                if (!double.IsNaN(from))
                {
                    stretches.Add(upright ? (new Spot(line.Key.At, from), new Spot(line.Key.At, to)) : (new Spot(from, line.Key.At), new Spot(to, line.Key.At)));
                }
            }
        }

        return stretches;
    }

    private static void Arrow(SvgPicture picture, Route route, string colour)
    {
        Spot end = route.Corners[^1];
        Spot before = route.Corners[^2];
        double dx = Math.Sign(end.X - before.X);
        double dy = Math.Sign(end.Y - before.Y);
        picture.Path($"M{SvgPicture.Number(end.X)} {SvgPicture.Number(end.Y)}"
            + $"L{SvgPicture.Number(end.X - (dx * 8) - (dy * 4))} {SvgPicture.Number(end.Y - (dy * 8) - (dx * 4))}"
            + $"L{SvgPicture.Number(end.X - (dx * 8) + (dy * 4))} {SvgPicture.Number(end.Y - (dy * 8) + (dx * 4))}Z", $"fill=\"{colour}\"");
    }

    private static (string Colour, string Dash, double Width) Style(LinkKind kind) => kind switch
    {
        LinkKind.Always => (Water, string.Empty, 2),
        LinkKind.WhenCoupled => (Joined, " stroke-dasharray=\"8 4\"", 2),
        LinkKind.NowAndThen => (Sludge, " stroke-dasharray=\"2 3\"", 2),
        _ => ("#555555", " stroke-dasharray=\"1 5\" stroke-linecap=\"round\"", 2),
    };

    private static void Basin(SvgPicture picture, Box box)
    {
        (double radius, string fill) = box.Basin.Use switch
        {
            BasinUse.FishTank or BasinUse.Quarantine => (12.0, "#dcebf5"),
            BasinUse.Lane or BasinUse.Trough or BasinUse.MediaBed => (2.0, "#e0efe0"),
            BasinUse.Filter => (2.0, "#efe6d8"),
            BasinUse.Mineralizer or BasinUse.HoldingTank => (8.0, "#e8e0d8"),
            null => (0.0, "#ffffff"),
            _ => (4.0, "#e6f0f2"),
        };
        picture.Rect(box.Left, box.Top, box.Width, box.Height, $"rx=\"{SvgPicture.Number(radius)}\" fill=\"{fill}\" stroke=\"{Ink}\" stroke-width=\"1.3\"");
        double middle = box.Left + (box.Width / 2);
        double line = box.Top + (box.Height / 2);
        double size = SvgPicture.Measure(box.Basin.Name, 12.5, true) > box.Width - 8 ? 11 : 12.5;
        picture.Text(Cut(box.Basin.Name, size, box.Width - 6, true), middle, line - 3, size, "middle", $"font-weight=\"600\" fill=\"{Ink}\"");
        string detail = string.Join(", ", new[] { box.Basin.Litres > 0 ? $"{Amount(box.Basin.Litres)} L" : string.Empty, box.Basin.Detail }.Where(t => t.Length > 0));
        picture.Text(Cut(detail, 11, box.Width - 4, false), middle, line + 11, 11, "middle", $"fill=\"{Ink}\"");
        if (box.Basin.FloatValve is { } tap)
        {
            // The float valve: a tap at the upper corner.
            double x = box.Left + 13;
            picture.Rect(box.Left + 2, box.Top - 8, 23, 14, $"rx=\"7\" fill=\"#ffffff\" stroke=\"{Water}\" stroke-width=\"1.3\"");
            picture.Text(tap, x + 0.5, box.Top + 3, 11, "middle", $"fill=\"{Ink}\"");
        }
    }

    private static void Symbol(SvgPicture picture, Route route)
    {
        (string colour, string _, double _) = Style(route.Link.Kind);
        if (route.Link.Pump is { } pump)
        {
            bool leftwards = route.Corners[^1].X < route.Corners[0].X;
            PumpSign(picture, route.Symbol, leftwards, colour);
            double text = leftwards ? route.Symbol.X - 12 : route.Symbol.X + 12;
            picture.Text(pump, route.Symbol.X + (leftwards ? 8 : -8), route.Symbol.Y - 11, 11, leftwards ? "end" : "start", $"font-weight=\"600\" fill=\"{Ink}\"");
            picture.Text($"{Amount(route.Link.ApartLitresPerHour)} L/h", text, route.Symbol.Y - 4, 11, leftwards ? "end" : "start", $"fill=\"{Ink}\"");
        }

        if (route.Link.Valve is { } valve)
        {
            ValveSign(picture, route.Symbol, route.SymbolUpright, colour);
            if (route.SymbolUpright)
            {
                picture.Text(valve, route.Symbol.X + 9, route.Symbol.Y + 4, 11, "start", $"font-weight=\"600\" fill=\"{Ink}\" {Halo}");
                if (route.Label is null && route.Link.CoupledLitresPerHour >= 1)
                {
                    picture.Text($"{Amount(route.Link.CoupledLitresPerHour)} L/h", route.Symbol.X - 10, route.Symbol.Y + 4, 11, "end", $"fill=\"{Ink}\" {Halo}");
                }
            }
            else
            {
                picture.Text(valve, route.Symbol.X, route.Symbol.Y - 7, 11, "middle", $"font-weight=\"600\" fill=\"{Ink}\"");
            }
        }
    }

    private static void Words(SvgPicture picture, Route route)
    {
        if (route.Label is not { } spot)
        {
            return;
        }

        NetworkLink link = route.Link;
        double apart = route.Net.Links.Sum(l => l.ApartLitresPerHour);
        double coupled = route.Net.Links.Sum(l => l.CoupledLitresPerHour);
        string text = link.Kind switch
        {
            LinkKind.ByHand => $"{link.Label}, by hand",
            LinkKind.NowAndThen => link.Label,
            LinkKind.WhenCoupled => coupled >= 1 ? $"{Amount(coupled)} L/h to {link.To}" : "level line",
            _ => $"{Amount(apart)} L/h to {link.To}" + (Math.Abs(coupled - apart) >= 1 ? $", {Amount(coupled)} when coupled" : string.Empty),
        };
        bool besideValve = link.Valve is not null && !route.SymbolUpright && route.Symbol.Y == spot.Y + 4;
        picture.Text(text, besideValve ? spot.X + 14 : spot.X, spot.Y, 11, besideValve ? "start" : "middle", $"fill=\"{Ink}\" {WhiteHalo}");
    }

    private static void PumpSign(SvgPicture picture, Spot at, bool leftwards, string colour)
    {
        double sign = leftwards ? -1 : 1;
        picture.Circle(at.X, at.Y, 7.5, $"fill=\"#ffffff\" stroke=\"{colour}\" stroke-width=\"1.6\"");
        picture.Path($"M{SvgPicture.Number(at.X + (sign * 6))} {SvgPicture.Number(at.Y)}L{SvgPicture.Number(at.X - (sign * 4))} {SvgPicture.Number(at.Y - 5)}"
            + $"L{SvgPicture.Number(at.X - (sign * 4))} {SvgPicture.Number(at.Y + 5)}Z", $"fill=\"{colour}\"");
    }

    private static void ValveSign(SvgPicture picture, Spot at, bool upright, string colour)
    {
        (double a, double b) = upright ? (4.5, 7.0) : (7.0, 4.5);
        string path = upright
            ? $"M{SvgPicture.Number(at.X - a)} {SvgPicture.Number(at.Y - b)}h{SvgPicture.Number(2 * a)}L{SvgPicture.Number(at.X - a)} {SvgPicture.Number(at.Y + b)}h{SvgPicture.Number(2 * a)}Z"
            : $"M{SvgPicture.Number(at.X - a)} {SvgPicture.Number(at.Y - b)}v{SvgPicture.Number(2 * b)}L{SvgPicture.Number(at.X + a)} {SvgPicture.Number(at.Y - b)}v{SvgPicture.Number(2 * b)}Z";
        picture.Path(path, $"fill=\"{colour}\" stroke=\"#ffffff\" stroke-width=\"3\" paint-order=\"stroke\"");
    }

    private static void Legend(SvgPicture picture, double y)
    {
        (LinkKind Kind, string Text)[] lines =
        [
            (LinkKind.Always, "runs always"), (LinkKind.WhenCoupled, "only when coupled"), (LinkKind.NowAndThen, "washing, decanting, sludge"), (LinkKind.ByHand, "carried by hand"),
        ];
        double x = 10;
        foreach ((LinkKind kind, string text) in lines)
        {
            (string colour, string dash, double width) = Style(kind);
            picture.Line(x, y, x + 30, y, $"stroke=\"{colour}\" stroke-width=\"{SvgPicture.Number(width)}\"{dash}");
            picture.Text(text, x + 36, y + 4, 11.5, "start", $"fill=\"{Ink}\"");
            x += 36 + SvgPicture.Measure(text, 11.5) + 26;
        }

        y += 24;
        PumpSign(picture, new Spot(18, y), false, Water);
        ValveSign(picture, new Spot(96, y), false, Joined);
        ValveSign(picture, new Spot(294, y), false, Sludge);
        picture.Rect(500, y - 7, 23, 14, $"rx=\"7\" fill=\"#ffffff\" stroke=\"{Water}\" stroke-width=\"1.3\"");
        picture.Text("F1", 511.5, y + 4, 11, "middle", $"fill=\"{Ink}\"");
        foreach ((double at, string text) in new[] { (32.0, "pump"), (109.0, "valve, closed until coupled"), (307.0, "valve, opened for the work"), (529.0, "float valve, source water") })
        {
            picture.Text(text, at, y + 4, 11.5, "start", $"fill=\"{Ink}\"");
        }
    }

    private static string InWords(FarmNetwork network)
    {
        IEnumerable<string> lines = network.Links.Where(l => l.Kind is LinkKind.Always).GroupBy(l => l.Pump is null ? (l.To, false) : (l.From, true))
            .Select(g => g.Key.Item2
                ? $"{g.Key.Item1} is pumped to {And(g.Select(l => l.To))}"
                : $"{And(g.Select(l => l.From))} {(g.Count() > 1 ? "overflow" : "overflows")} to {g.Key.Item1}");
        string[] joined = [.. network.Links.Where(l => l.Kind == LinkKind.WhenCoupled).Select(l => $"{l.Valve} from {l.From} to {l.To}")];
        return string.Join("; ", lines) + "." + (joined.Length > 0 ? $" Valves that join the loops: {string.Join(", ", joined)}." : string.Empty);
    }

    private static string And(IEnumerable<string> names)
    {
        string[] all = [.. names];
        return all.Length == 1 ? all[0] : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }

    private static string Amount(double litres) => litres.ToString("#,0", CultureInfo.InvariantCulture);

    private static string Cut(string text, double size, double width, bool bold)
    {
        while (text.Length > 3 && SvgPicture.Measure(text, size, bold) > width)
        {
            text = text[..^2].TrimEnd('…', ' ') + "…";
        }

        return text;
    }
}
