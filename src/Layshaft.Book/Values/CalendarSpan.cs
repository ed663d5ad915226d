using Layshaft.Book.Shapes;

namespace Layshaft.Book.Values;

/// <summary>A span of the calendar.</summary>
/// <param name="Months">Whole months.</param>
/// <param name="Days">Whole days.</param>
public readonly record struct CalendarSpan(int Months, int Days)
{
    /// <summary>The day this long after another.</summary>
    public DateOnly After(DateOnly start) => start.AddMonths(Months).AddDays(Days);

    /// <summary>Reads "12 months", "21 days", "3 weeks" or "1 year".</summary>
    public static Parsed<CalendarSpan> Parse(string text)
    {
        var (number, unit) = QuantityParts.Split(text);
        var whole = Figure.ParseWhole(number);
        if (whole.Wrong is not null || whole.Value is <= 0 or > 1200)
        {
            return Bad(text);
        }

        return unit switch
        {
            "day" or "days" => Parsed.Good(new CalendarSpan(0, whole.Value)),
            "week" or "weeks" => Parsed.Good(new CalendarSpan(0, 7 * whole.Value)),
            "month" or "months" => Parsed.Good(new CalendarSpan(whole.Value, 0)),
            "year" or "years" => Parsed.Good(new CalendarSpan(12 * whole.Value, 0)),
            _ => Bad(text),
        };
    }

    private static Parsed<CalendarSpan> Bad(string text) =>
        Parsed.Bad<CalendarSpan>($"'{text}' is not a period.");
}
