namespace FarmTwin.Reports.Screen;

/// <summary>Text in lines no longer than the page is wide.</summary>
internal static class WrappedText
{
    /// <summary>Adds a text, broken between words.</summary>
    /// <param name="lines">The lines it is added to.</param>
    /// <param name="text">The text.</param>
    /// <param name="indent">Blanks before its first line.</param>
    /// <param name="hanging">Blanks before the lines after it; as the first when left out.</param>
    public static void Add(List<string> lines, string text, int indent, int? hanging = null)
    {
        string line = new(' ', indent);
        bool empty = true;
        foreach (string word in text.Split(' '))
        {
            if (!empty && line.Length + 1 + word.Length > ScreenPage.Width)
            {
                lines.Add(line.TrimEnd());
                line = new string(' ', hanging ?? indent);
                empty = true;
            }

            line += empty ? word : $" {word}";
            empty = false;
        }

        lines.Add(line.TrimEnd());
    }
}
