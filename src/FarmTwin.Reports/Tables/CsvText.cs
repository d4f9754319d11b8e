using System.Globalization;
using System.Text;

namespace FarmTwin.Reports.Tables;

/// <summary>Comma-separated text by RFC 4180, but with a bare line feed: the same bytes on every machine.</summary>
/// <remarks>Numbers are invariant with six significant digits and never in exponent form; what is not a number is an empty field.</remarks>
public sealed class CsvText
{
    private const int SignificantDigits = 6;
    private readonly StringBuilder _text = new();
    private bool _lineBegun;

    /// <summary>Adds a field, quoted where it must be.</summary>
    public CsvText Field(string value)
    {
        ArgumentNullException.ThrowIfNull(value);
        Separate();
        if (value.AsSpan().IndexOfAny(",\"\r\n") >= 0 || (value.Length > 0 && (value[0] == ' ' || value[^1] == ' ')))
        {
            _text.Append('"').Append(value.Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"');
        }
        else
        {
            _text.Append(value);
        }

        return this;
    }

    /// <summary>Adds a number.</summary>
    public CsvText Field(double value)
    {
        Separate();
        _text.Append(Number(value));
        return this;
    }

    /// <summary>Ends the line.</summary>
    public CsvText EndLine()
    {
        _text.Append('\n');
        _lineBegun = false;
        return this;
    }

    /// <summary>The text so far.</summary>
    public override string ToString() => _text.ToString();

    /// <summary>A number as it stands in a table; empty for what is not a number.</summary>
    public static string Number(double value)
    {
        if (!double.IsFinite(value))
        {
            return string.Empty;
        }

        if (value == 0)
        {
            return "0";
        }

        int digits = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        int decimals = Math.Clamp(SignificantDigits - 1 - digits, 0, 12);
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return rounded == 0 ? "0" : rounded.ToString("0.############", CultureInfo.InvariantCulture);
    }

    private void Separate()
    {
        if (_lineBegun)
        {
            _text.Append(',');
        }

        _lineBegun = true;
    }
}
