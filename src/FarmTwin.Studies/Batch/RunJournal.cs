using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using FarmTwin.Studies.Outcomes;

namespace FarmTwin.Studies.Batch;

/// <summary>The finished runs of a batch, a line each, written as they finish and never changed.</summary>
/// <remarks>
/// Every line carries a checksum and is on the disk before the run counts as finished: whatever kills the program loses at most the runs that
/// were being played, and a line that it tore is cut off when the batch goes on. A run is found again by what determines it: the plan's hash,
/// seed and replicate under one version of the program, one library and one list of figures. Holds an exclusive lock on its folder
/// while it is open; the lock falls with the process.
/// </remarks>
public sealed class RunJournal : IDisposable
{
    /// <summary>The file's name.</summary>
    public const string FileName = "runs.journal";

    private const string LockName = "runs.lock";
    private const int ChecksumDigits = 16;
    private readonly FileStream _lock;
    private readonly FileStream _file;
    private readonly Lock _writing = new();
    private readonly Dictionary<string, long> _places = new(StringComparer.Ordinal);

    private RunJournal(FileStream hold, FileStream file)
    {
        _lock = hold;
        _file = file;
    }

    /// <summary>Finished runs.</summary>
    public int Count => _places.Count;

    /// <summary>Opens a folder's journal, or begins one.</summary>
    /// <param name="folder">The folder, made if need be.</param>
    /// <param name="engine">What determines results besides the runs themselves: program version, library. One line.</param>
    /// <exception cref="BatchFolderException">Another batch works there, or the folder's runs were made by another engine, or its journal is damaged.</exception>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static RunJournal Open(string folder, string engine)
    {
        Directory.CreateDirectory(folder);
        FileStream hold;
        try
        {
            hold = new FileStream(Path.Combine(folder, LockName), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException e)
        {
            throw new BatchFolderException($"{folder}: another batch is working in this folder. Wait for it, or name another folder with --out.", e);
        }

        try
        {
            var file = new FileStream(Path.Combine(folder, FileName), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.Read);
            var journal = new RunJournal(hold, file);
            journal.Find(folder, "farmtwin runs 1; " + engine + "; figures " + string.Join(' ', Headlines.All.Select(h => h.Key)));
            return journal;
        }
        catch
        {
            hold.Dispose();
            throw;
        }
    }

    /// <summary>Whether a run is there.</summary>
    public bool Has(string planHash, ulong seed, uint replicate)
    {
        lock (_writing)
        {
            return _places.ContainsKey(Key(planHash, seed, replicate));
        }
    }

    /// <summary>Writes a finished run down; when this returns, it is on the disk. One that is there already is left as it is.</summary>
    public void Add(string planHash, ulong seed, uint replicate, SeasonOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        string key = Key(planHash, seed, replicate);
        byte[] line = Line(Serialize(key, outcome));
        lock (_writing)
        {
            if (_places.ContainsKey(key))
            {
                return;
            }

            long at = _file.Seek(0, SeekOrigin.End);
            try
            {
                _file.Write(line);
                _file.Flush(flushToDisk: true);
            }
            catch
            {
                // A full disk may take half a line: what other threads write next must not stand behind it.
                _file.SetLength(at);
                throw;
            }

            _places.Add(key, at);
        }
    }

    /// <summary>Reads a finished run.</summary>
    /// <exception cref="KeyNotFoundException">It is not there.</exception>
    public SeasonOutcome Read(string planHash, ulong seed, uint replicate)
    {
        lock (_writing)
        {
            _file.Seek(_places[Key(planHash, seed, replicate)], SeekOrigin.Begin);
            using var reader = new StreamReader(_file, Encoding.UTF8, false, 1 << 14, leaveOpen: true);
            return Parse(Checked(reader.ReadLine()!)!);
        }
    }

    /// <summary>Closes the file and lets the folder go.</summary>
    public void Dispose()
    {
        _file.Dispose();
        _lock.Dispose();
    }

    private static string Key(string planHash, ulong seed, uint replicate) => string.Create(CultureInfo.InvariantCulture, $"{planHash}|{seed}|{replicate}");

    private void Find(string folder, string header)
    {
        long end = 0;
        foreach ((long at, byte[] line, bool isWhole) in Lines())
        {
            string? text = isWhole ? Checked(Encoding.UTF8.GetString(line)) : null;
            if (text is null)
            {
                if (isWhole && at + line.Length + 1 < _file.Length)
                {
                    throw new BatchFolderException($"{Path.Combine(folder, FileName)}: a line in its midst is damaged, at byte {at}. Take another folder with --out, or delete this one.");
                }

                break;
            }

            if (at == 0)
            {
                RefuseOthers(folder, text, header);
            }
            else
            {
                using JsonDocument run = JsonDocument.Parse(text);
                _places[run.RootElement.GetProperty("run").GetString()!] = at;
            }

            end = at + line.Length + 1;
        }

        // What was torn off in the writing is no run.
        _file.SetLength(end);
        if (end == 0)
        {
            _file.Seek(0, SeekOrigin.Begin);
            _file.Write(Line(header));
            _file.Flush(flushToDisk: true);
        }
    }

    // Line by line, never the whole file: a batch of a hundred thousand runs holds half a gigabyte.
    private IEnumerable<(long At, byte[] Line, bool IsWhole)> Lines()
    {
        const int ChunkBytes = 1 << 16;
        byte[] chunk = new byte[ChunkBytes];
        using var line = new MemoryStream();
        long begun = 0;
        _file.Seek(0, SeekOrigin.Begin);
        for (int read; (read = _file.Read(chunk)) > 0;)
        {
            for (int from = 0; from < read;)
            {
                int end = Array.IndexOf(chunk, (byte)'\n', from, read - from);
                line.Write(chunk, from, (end < 0 ? read : end) - from);
                if (end < 0)
                {
                    break;
                }

                yield return (begun, line.ToArray(), true);
                begun += line.Length + 1;
                line.SetLength(0);
                from = end + 1;
            }
        }

        if (line.Length > 0)
        {
            yield return (begun, line.ToArray(), false);
        }
    }

    // Both are "what; what; ...": the message names the parts that differ.
    private static void RefuseOthers(string folder, string there, string ours)
    {
        if (there == ours)
        {
            return;
        }

        string[] theirs = there.Split("; ");
        string[] mine = ours.Split("; ");
        IEnumerable<string> different = mine.Length != theirs.Length ? ["the journal's form"] : mine.Zip(theirs).Where(p => p.First != p.Second)
            .Select(p => p.First.Split(' ')[0] is var what && what == "figures" ? "the list of figures" : $"{p.Second}, here {p.First}");
        throw new BatchFolderException($"{folder}: its runs were made by another program and would not be like new ones ({string.Join("; ", different)}). "
            + "Take another folder with --out, or delete this one.");
    }

    private static byte[] Line(string text) => Encoding.UTF8.GetBytes($"{Checksum(text)} {text}\n");

    private static string? Checked(string line) =>
        line.Length > ChecksumDigits && line[ChecksumDigits] == ' ' && line[(ChecksumDigits + 1)..] is var text && Checksum(text) == line[..ChecksumDigits] ? text : null;

    private static string Checksum(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..ChecksumDigits];

    private static string Serialize(string key, SeasonOutcome outcome)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream))
        {
            writer.WriteStartObject();
            writer.WriteString("run", key);
            Numbers(writer, "figures", outcome.Figures);
            writer.WriteStartArray("weeks");
            foreach (double[] curve in outcome.Weeks)
            {
                Numbers(writer, null, curve);
            }

            writer.WriteEndArray();
            writer.WriteNumber("closure", outcome.WorstClosure);
            writer.WriteString("trouble", outcome.Trouble);
            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    // Numbers are written so that they read back bit for bit; what is not a number is null.
    private static void Numbers(Utf8JsonWriter writer, string? name, double[] values)
    {
        if (name is null)
        {
            writer.WriteStartArray();
        }
        else
        {
            writer.WriteStartArray(name);
        }

        foreach (double value in values)
        {
            if (double.IsFinite(value))
            {
                writer.WriteNumberValue(value);
            }
            else
            {
                writer.WriteNullValue();
            }
        }

        writer.WriteEndArray();
    }

    private static SeasonOutcome Parse(string text)
    {
        using JsonDocument run = JsonDocument.Parse(text);
        JsonElement root = run.RootElement;
        return new SeasonOutcome(
            Numbers(root.GetProperty("figures")), [.. root.GetProperty("weeks").EnumerateArray().Select(Numbers)],
            root.GetProperty("closure").GetDouble(), root.GetProperty("trouble").GetString());
    }

    private static double[] Numbers(JsonElement array) => [.. array.EnumerateArray().Select(v => v.ValueKind == JsonValueKind.Null ? double.NaN : v.GetDouble())];
}
