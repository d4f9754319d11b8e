using ScottPlot;
using SkiaSharp;

namespace FarmTwin.Reports.Plots;

/// <summary>The fonts that ship with the program, so that text shows on a server without any.</summary>
public static class ShippedFonts
{
    /// <summary>Family of the fonts.</summary>
    public const string Family = "DejaVu Sans";

    private static readonly Lazy<SKTypeface> LazyRegular = new(() => Load("DejaVuSans.ttf"));
    private static readonly Lazy<SKTypeface> LazyBold = new(() => Load("DejaVuSans-Bold.ttf"));
    private static readonly Lazy<bool> Registered = new(Register);

    /// <summary>Upright.</summary>
    public static SKTypeface Regular => LazyRegular.Value;

    /// <summary>Bold.</summary>
    public static SKTypeface Bold => LazyBold.Value;

    /// <summary>Makes the plotting library use these fonts and no font of the system.</summary>
    public static void Use() => _ = Registered.Value;

    private static bool Register()
    {
        Fonts.FontResolvers.Clear();
        Fonts.FontResolvers.Add(new Resolver());
        Fonts.Default = Family;
        Fonts.Sans = Family;
        return true;
    }

    private static SKTypeface Load(string file)
    {
        using Stream stream = typeof(ShippedFonts).Assembly.GetManifestResourceStream($"FarmTwin.Reports.Fonts.{file}")
            ?? throw new InvalidOperationException($"The font {file} is not in the program.");
        using SKData data = SKData.Create(stream);
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The font {file} cannot be read.");
    }

    private sealed class Resolver : IFontResolver
    {
        public SKTypeface? CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) =>
            weight >= FontWeight.SemiBold ? Bold : Regular;

        public SKTypeface? CreateTypeface(string fontName, bool bold, bool italic) => bold ? Bold : Regular;
    }
}
