namespace FarmTwin.Reports.Tables;

/// <summary>Writes a file whole or not at all: a program that is killed leaves the old one or the new one.</summary>
public static class WholeFile
{
    /// <summary>Writes it.</summary>
    public static void Write(string path, byte[] bytes)
    {
        string part = path + ".part";
        File.WriteAllBytes(part, bytes);
        File.Move(part, path, overwrite: true);
    }

    /// <summary>Writes a text.</summary>
    public static void Write(string path, string text) => Write(path, System.Text.Encoding.UTF8.GetBytes(text));
}
