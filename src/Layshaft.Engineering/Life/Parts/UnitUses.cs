namespace Layshaft.Engineering.Life;

/// <summary>The last known use of each unit, and what does not fit when a new one arrives.</summary>
internal sealed class UnitUses(List<LedgerContradiction> contradictions)
{
    private readonly Dictionary<string, (DateOnly Date, Use Use, int Event)> known = [];

    public (DateOnly Date, Use Use)? Last(string unit) =>
        known.TryGetValue(unit, out var last) ? (last.Date, last.Use) : null;

    /// <summary>Takes note of a unit's use at an event.</summary>
    /// <returns>The use to count with, or <c>null</c> when the event cannot be counted.</returns>
    public Use? Note(string unit, DateOnly date, Use use, int at)
    {
        if (!(use.Amount >= 0 && double.IsFinite(use.Amount)))
        {
            Add(LedgerContradictionKind.UseUnusable, [at], $"The usage of unit {unit} is not a number of 0 or more. Write the value of its counter.");
            return null;
        }

        if (!known.TryGetValue(unit, out var last))
        {
            known[unit] = (date, use, at);
            return use;
        }

        if (last.Use.Measure != use.Measure)
        {
            Add(
                LedgerContradictionKind.MeasureChanged,
                [last.Event, at],
                $"Unit {unit} had {last.Use} before and has {use} now. Count the usage of a unit in one way throughout.");
            return null;
        }

        if (use.Amount < last.Use.Amount)
        {
            Add(
                LedgerContradictionKind.UseWentBack,
                [last.Event, at],
                $"Unit {unit} had {last.Use} before and has {use} now. Correct the wrong value (after a counter change, write the sum of both counters).");
            return last.Use;
        }

        known[unit] = (date > last.Date ? date : last.Date, use, at);
        return use;
    }

    private void Add(LedgerContradictionKind kind, int[] events, string words) =>
        contradictions.Add(new LedgerContradiction(kind, events, words));
}
