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
            journal.Find(folder, "farmtwin runs 1; " + engine + "; " + string.Join(' ', Headlines.All.Select(h => h.Key)));
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

    /// <summary>Writes a finished run down; when this returns, it is on the disk.</summary>
    public void Add(string planHash, ulong seed, uint replicate, SeasonOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        string key = Key(planHash, seed, replicate);
        byte[] line = Line(Serialize(key, outcome));
        lock (_writing)
        {
            long at = _file.Seek(0, SeekOrigin.End);
            _file.Write(line);
            _file.Flush(flushToDisk: true);
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
        byte[] bytes = new byte[_file.Length];
        _file.ReadExactly(bytes);
        int at = 0;
        bool first = true;
        while (at < bytes.Length)
        {
            int end = Array.IndexOf(bytes, (byte)'\n', at);
            string? text = end < 0 ? null : Checked(Encoding.UTF8.GetString(bytes, at, end - at));
            if (text is null)
            {
                if (end >= 0 && end + 1 < bytes.Length)
                {
                    throw new BatchFolderException($"{Path.Combine(folder, FileName)}: a line in its midst is damaged, at byte {at}. Take another folder with --out, or delete this one.");
                }

                break;
            }

            if (first && text != header)
            {
                throw new BatchFolderException($"{folder}: its runs were made by another version of the program or another library, and would not be like new ones. "
                    + "Take another folder with --out, or delete this one.");
            }

            if (!first)
            {
                using JsonDocument run = JsonDocument.Parse(text);
                _places[run.RootElement.GetProperty("run").GetString()!] = at;
            }

            first = false;
            at = end + 1;
        }

        // What was torn off in the writing is no run.
        _file.SetLength(at);
        if (at == 0)
        {
            _file.Write(Line(header));
            _file.Flush(flushToDisk: true);
        }
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
