using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using FarmTwin.Farm.Library;

namespace FarmTwin.Studies.Batch;

/// <summary>A short hash of every number of a library: results under another library are other results.</summary>
internal static class LibraryHash
{
    private const int Digits = 16;

    /// <summary>The hash, hexadecimal.</summary>
    public static string Of(FarmLibrary library)
    {
        var text = new StringBuilder();
        foreach ((string folder, ParameterSet set) in library.All.OrderBy(s => s.Folder, StringComparer.Ordinal).ThenBy(s => s.Set.Name, StringComparer.Ordinal))
        {
            foreach (Parameter parameter in set.All)
            {
                text.Append(CultureInfo.InvariantCulture, $"{folder}/{set.Name}/{parameter.Name} {parameter.Value:R} {parameter.Low:R} {parameter.High:R}\n");
            }
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..Digits];
    }
}
