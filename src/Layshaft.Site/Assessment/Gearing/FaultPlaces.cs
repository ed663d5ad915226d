using System.Globalization;
using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>Turns what the gearing calculation refuses into problems of the book, at the value's place.</summary>
/// <param name="problems">Receives them.</param>
internal sealed class FaultPlaces(ProblemList problems)
{
    /// <summary>The value; or null, with a problem for each fault.</summary>
    /// <param name="outcome">Value or faults.</param>
    /// <param name="place">The place of the figure that a fault names.</param>
    /// <param name="severity">Whether a fault stops the publish.</param>
    public T? Take<T>(Eng.Outcome<T> outcome, Func<string, Place> place, Severity severity = Severity.Stops)
        where T : class
    {
        foreach (var fault in outcome.Faults)
        {
            problems.Add(new Problem("gearing", place(fault.Subject), fault.Message, string.Empty, severity));
        }

        return outcome.Value;
    }

    /// <summary>The number in brackets, as in <c>torque_curve[3].rpm</c>; null when there is none.</summary>
    public static int? Index(string subject)
    {
        var open = subject.IndexOf('[', StringComparison.Ordinal);
        var close = subject.IndexOf(']', StringComparison.Ordinal);
        return open >= 0 && close > open && int.TryParse(subject.AsSpan(open + 1, close - open - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var index)
            ? index
            : null;
    }
}
