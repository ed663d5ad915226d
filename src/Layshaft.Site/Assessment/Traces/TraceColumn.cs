using System.Buffers.Text;
using System.Globalization;
using System.Text;
using CsvHelper;

namespace Layshaft.Site.Assessment.Traces;

/// <summary>One column of a trace, found in its header.</summary>
/// <param name="key">The field of the book that names it.</param>
/// <param name="units">The units that it may have.</param>
/// <param name="hasComma">Whether numbers have a decimal comma.</param>
internal sealed class TraceColumn(string key, TraceUnits units, bool hasComma)
{
    private const int LongestNumber = 40;

    private double _factor = units.Usual;
    private bool _isUnitGiven;

    /// <summary>The field of the book that names it.</summary>
    public string Key => key;

    /// <summary>The units that it may have.</summary>
    public TraceUnits Units => units;

    /// <summary>Its place in a row, from 0; −1 when the trace has none.</summary>
    public int Index { get; private set; } = -1;

    /// <summary>Finds it: by its whole name, by its name before <c> in UNIT</c>, or by its number.</summary>
    /// <param name="csv">The reader, before its first row.</param>
    /// <param name="text">What the book names it.</param>
    /// <returns>Whether the header has it.</returns>
    public bool Find(CsvReader csv, string text)
    {
        var name = text;
        if (!csv.TryGetFieldIndex(name, out var index))
        {
            var cut = text.LastIndexOf(" in ", StringComparison.Ordinal);
            if (cut > 0 && units.FactorOf(text[(cut + 4)..].Trim()) is { } given)
            {
                (name, _factor, _isUnitGiven) = (text[..cut].Trim(), given, true);
            }

            if (!csv.TryGetFieldIndex(name, out index))
            {
                if (!int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1 || number > csv.Headers.Count)
                {
                    return false;
                }

                index = number - 1;
            }
        }

        Index = index;
        if (!_isUnitGiven && InBrackets(csv.Headers[index]) is { } bracketed && units.FactorOf(bracketed) is { } factor)
        {
            (_factor, _isUnitGiven) = (factor, true);
        }

        return true;
    }

    /// <summary>Takes the unit from a row of units, unless it was given.</summary>
    public void TakeUnit(CsvReader csv)
    {
        if (Index >= 0 && !_isUnitGiven && units.FactorOf(Encoding.UTF8.GetString(csv.GetSpan(Index)).Trim().Trim('[', ']', '(', ')')) is { } factor)
        {
            (_factor, _isUnitGiven) = (factor, true);
        }
    }

    /// <summary>Reads the current row's value in SI.</summary>
    /// <returns>The value; NaN when the field is empty or the trace has no such column; null when it is not a number.</returns>
    public double? Read(CsvReader csv)
    {
        if (Index < 0)
        {
            return double.NaN;
        }

        var field = Trimmed(csv.GetSpan(Index));
        if (field.IsEmpty)
        {
            return double.NaN;
        }

        if (field.Length > LongestNumber)
        {
            return null;
        }

        if (hasComma && field.IndexOf((byte)',') is >= 0 and var comma)
        {
            Span<byte> point = stackalloc byte[LongestNumber];
            field.CopyTo(point);
            point[comma] = (byte)'.';
            return Number(point[..field.Length]);
        }

        return Number(field);
    }

    private double? Number(ReadOnlySpan<byte> field) =>
        Utf8Parser.TryParse(field, out double value, out var used) && used == field.Length && double.IsFinite(value) ? value * _factor : null;

    private static ReadOnlySpan<byte> Trimmed(ReadOnlySpan<byte> field)
    {
        while (!field.IsEmpty && field[0] is (byte)' ' or (byte)'\t')
        {
            field = field[1..];
        }

        while (!field.IsEmpty && field[^1] is (byte)' ' or (byte)'\t')
        {
            field = field[..^1];
        }

        return field;
    }

    private static string? InBrackets(string header)
    {
        var text = header.Trim();
        var open = text.LastIndexOfAny(['[', '(']);
        return open > 0 && text[^1] is ']' or ')' ? text[(open + 1)..^1].Trim() : null;
    }
}
