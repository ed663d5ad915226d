using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Checks;

/// <summary>What every check needs, and the questions that most of them ask.</summary>
internal sealed class Checker(Draft draft, ProblemList problems)
{
    public Draft Draft { get; } = draft;

    public ProblemList Problems { get; } = problems;

    /// <summary>No two items may share an id.</summary>
    public void Unique<T>(IEnumerable<T> items, Func<T, string> id, string what, string key = "id")
        where T : IPlaced
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var item in items)
        {
            if (!seen.Add(id(item)))
            {
                Problems.Add("duplicate-id", item.Origin.At(key), $"Two {what} have the {key} '{id(item)}'.", "Change or remove one of them.");
            }
        }
    }

    /// <summary>A reference to a file of another kind. A file that exists but could not be read counts as there.</summary>
    public bool Refers<T>(string? name, Shelf<T> shelf, Place place, string what)
        where T : class
    {
        if (name is null || shelf.Names.Contains(name))
        {
            return true;
        }

        Problems.Add("missing-reference", place, $"There is no {what} '{name}' in {shelf.Folder}/.", NearestWord.Advice(name, [.. shelf.Names]));
        return false;
    }

    /// <summary>A reference to something inside a file that could be read.</summary>
    // With the file it is in: an item that was left out there because of a mistake in it is not reported as missing too.
    public bool Names(string? name, IEnumerable<string> known, Place place, string what, string where, string? file = null)
    {
        if (name is null)
        {
            return true;
        }

        string[] names = [.. known];
        if (names.Contains(name))
        {
            return true;
        }

        if (file is null || !Problems.HasLost(file, name))
        {
            Problems.Add("missing-reference", place, $"{where} has no {what} '{name}'.", NearestWord.Advice(name, names));
        }

        return false;
    }

    /// <summary>Two days in order; equal days are fine.</summary>
    public void InOrder(DateOnly? first, DateOnly? second, Place place, string message)
    {
        if (first is { } a && second is { } b && b < a)
        {
            Problems.Add("dates-out-of-order", place, $"{message} ({Day(b)} is before {Day(a)}).", "Correct one of the dates.");
        }
    }

    /// <summary>A quantity of the kind that is wanted.</summary>
    public bool Like(IQuantity value, IQuantity model, Place place, string what, string subject = "This")
    {
        if (value.IsLike(model))
        {
            return true;
        }

        Problems.Add("wrong-quantity", place, $"{subject} is {QuantityKind.Of(value).Name}, but {what} is {QuantityKind.Of(model).Name}.", subject == "This" ? "Check the unit." : "Check both.");
        return false;
    }

    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
