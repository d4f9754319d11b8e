using System.Globalization;
using FarmTwin.Farm.Description;
using FarmTwin.Scenarios.Json;
using FarmTwin.Scenarios.Units;

namespace FarmTwin.Scenarios.Binding;

/// <summary>Reads single values: quantities, words, dates, times, flags, texts.</summary>
internal sealed class ValueReader(ErrorList errors)
{
    // Conversion leaves an error of some units in the last place: 32 °F must not fall below a lowest value of 0 °C.
    private const double Rounding = 1e-9;

    private static readonly DateShape Date = new();

    private Place _currencyPlace;

    /// <summary>The currency of the prices read so far.</summary>
    public string? Currency { get; private set; }

    /// <summary>Reads a value, or reports what is wrong and returns null.</summary>
    public object? Read(TreeNode node, ValueShape shape, InputAttribute input) => shape switch
    {
        QuantityShape quantity => ReadQuantity(node, quantity, input),
        FlagShape => node is TreeFlag flag ? flag.Value : Refuse(node, "true or false"),
        TextShape => node is TreeText text ? text.Value : Refuse(node, "a text"),
        WordShape words => ReadWord(node, words),
        DateShape or TimeShape => ReadMoment(node, shape),
        _ => throw new InvalidOperationException($"No single value has the shape {shape}."),
    };

    private object? ReadQuantity(TreeNode node, QuantityShape shape, InputAttribute input)
    {
        double value;
        switch (node)
        {
            case TreeNumber number when shape.Target.IsPureNumber:
                value = number.Value;
                break;
            case TreeNumber number:
                string unit = shape.Target.Spelling;
                return Refuse(node, $"the number {number.Written} has no unit", QuantityText.Expected(shape.Target),
                    $"{number.Written}{(unit.StartsWith('/') || unit == "°" ? string.Empty : " ")}{unit}");
            case TreeText text:
                QuantityReading reading = QuantityText.Read(text.Value, shape.Target);
                if (!reading.IsRead)
                {
                    return Refuse(node, reading.Problem!, reading.Expected, reading.Suggestion);
                }

                value = reading.Value;
                if (reading.Currency is string currency && !IsTheCurrency(node, currency))
                {
                    return null;
                }

                break;
            default:
                return Refuse(node, QuantityText.Expected(shape.Target));
        }

        return InRange(node, value, shape, input);
    }

    private object? InRange(TreeNode node, double value, QuantityShape shape, InputAttribute input)
    {
        double slack = Rounding * Math.Max(1, Math.Abs(value));
        if (!double.IsFinite(value) || value < input.Low - slack || value > input.High + slack)
        {
            return Refuse(node, $"{Written(node)} is out of range", Range(input));
        }

        value = Math.Clamp(value, input.Low, input.High);
        if (!shape.IsWhole)
        {
            return value;
        }

        double whole = Math.Round(value);
        return Math.Abs(value - whole) <= slack && Math.Abs(whole) <= int.MaxValue
            ? (int)whole
            : Refuse(node, $"{Written(node)} is not a whole number", $"a whole number{InUnit(input)}");
    }

    /// <summary>The allowed range, in words.</summary>
    public static string Range(InputAttribute input)
    {
        bool low = !double.IsNegativeInfinity(input.Low);
        bool high = !double.IsPositiveInfinity(input.High);
        string number = low && high ? $"{Number(input.Low)} to {Number(input.High)}"
            : low ? $"at least {Number(input.Low)}"
            : high ? $"at most {Number(input.High)}" : "a finite number";
        return number + InUnit(input);
    }

    /// <summary>A number in its shortest exact form.</summary>
    public static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    private static string InUnit(InputAttribute input) => input.Unit is null or "1" ? string.Empty : " " + input.Unit;

    private bool IsTheCurrency(TreeNode node, string currency)
    {
        if (Currency is null)
        {
            Currency = currency;
            _currencyPlace = node.Place;
        }

        if (Currency == currency)
        {
            return true;
        }

        errors.Add(node, $"prices are written in two currencies: {currency} here, {Currency} at {_currencyPlace}",
            $"one currency, {Currency}");
        return false;
    }

    private object? ReadWord(TreeNode node, WordShape shape)
    {
        string[] words = [.. shape.Words.Select(w => w.Word)];
        if (node is not TreeText text)
        {
            return Refuse(node, "one of " + NameCheck.Listed(words));
        }

        object? value = shape.Words.Where(w => w.Word == text.Value).Select(w => w.Value).FirstOrDefault();
        return value ?? Refuse(node, $"\"{text.Value}\" is not a known word", "one of " + NameCheck.Listed(words),
            NearestName.Of(text.Value, words));
    }

    private object? ReadMoment(TreeNode node, ValueShape shape)
    {
        bool isDate = shape == Date;
        string expected = isDate ? "a date as year-month-day, \"2027-03-01\"" : "a time of day in 24 hours, \"06:30\"";
        if (node is not TreeText text)
        {
            return Refuse(node, expected);
        }

        if (isDate)
        {
            return DateOnly.TryParseExact(text.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date)
                ? date
                : Refuse(node, $"\"{text.Value}\" is no date", expected);
        }

        return TimeOnly.TryParseExact(text.Value, ["HH:mm", "H:mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out TimeOnly time)
            ? time
            : Refuse(node, $"\"{text.Value}\" is no time of day", expected);
    }

    private static string Written(TreeNode node) =>
        node is TreeText text ? $"\"{text.Value}\"" : ((TreeNumber)node).Written;

    private object? Refuse(TreeNode node, string expected) => Refuse(node, $"{node.Sort} stands here", expected, null);

    private object? Refuse(TreeNode node, string problem, string? expected, string? suggestion = null)
    {
        errors.Add(node, problem, expected, suggestion);
        return null;
    }
}
