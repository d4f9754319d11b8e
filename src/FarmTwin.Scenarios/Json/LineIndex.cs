using System.Text;

namespace FarmTwin.Scenarios.Json;

/// <summary>Turns byte offsets of a file into lines and columns.</summary>
internal sealed class LineIndex
{
    private readonly string _file;
    private readonly List<int> _starts = [0];

    public LineIndex(string file, ReadOnlySpan<byte> utf8)
    {
        _file = file;
        for (int i = 0; i < utf8.Length; i++)
        {
            if (utf8[i] == (byte)'\n')
            {
                _starts.Add(i + 1);
            }
        }
    }

    /// <summary>The place of a byte offset.</summary>
    public Place At(ReadOnlySpan<byte> utf8, long offset)
    {
        int found = _starts.BinarySearch((int)offset);
        int line = found >= 0 ? found : ~found - 1;
        return At(utf8, line, (int)offset - _starts[line]);
    }

    /// <summary>The place of a byte in a line, both from 0.</summary>
    public Place At(ReadOnlySpan<byte> utf8, int line, int byteInLine)
    {
        line = Math.Clamp(line, 0, _starts.Count - 1);
        int start = _starts[line];
        int length = Math.Clamp(byteInLine, 0, utf8.Length - start);
        return new Place(_file, line + 1, Encoding.UTF8.GetCharCount(utf8.Slice(start, length)) + 1);
    }
}
