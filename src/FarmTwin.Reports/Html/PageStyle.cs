namespace FarmTwin.Reports.Html;

/// <summary>The style sheet of every page: system fonts, lines of about 75 characters, dark on white, figures and tables whole on paper.</summary>
internal static class PageStyle
{
    /// <summary>Fonts of pages and of the words in their pictures: what the reader's machine has.</summary>
    public const string Fonts = "system-ui, 'Segoe UI', 'Helvetica Neue', Arial, 'DejaVu Sans', sans-serif";

    private const string Resource = "FarmTwin.Reports.Html.page.css";
    private static readonly Lazy<string> LazyText = new(Read);

    /// <summary>The style sheet.</summary>
    public static string Text => LazyText.Value;

    private static string Read()
    {
        using Stream stream = typeof(PageStyle).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"The style sheet {Resource} is not in the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().Replace("\r\n", "\n", StringComparison.Ordinal);
    }
}
