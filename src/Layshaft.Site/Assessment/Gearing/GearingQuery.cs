using Layshaft.Book.Problems;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>A question about gearing as somebody types it.</summary>
/// <param name="Car">The car's id.</param>
/// <param name="Venue">The venue's id.</param>
/// <param name="Pair">A drop pair to check, as <c>29/23</c>, driven/driver; null for none.</param>
/// <param name="Final">A final drive to check, as <c>35/11</c>, driven/driver; null for none.</param>
public sealed record GearingQuery(string Car, string Venue, string? Pair, string? Final);

/// <summary>The answer to a <see cref="GearingQuery"/>.</summary>
/// <param name="Case">What it is worked out from.</param>
/// <param name="Ranking">Everything in stock, what is fitted and what was asked about, fastest first.</param>
/// <param name="Advice">The set to fit, and how what is fitted compares.</param>
/// <param name="Checked">The choice that was asked about; null when none was.</param>
public sealed record GearingAnswer(GearingCase Case, Eng.GearingRanking Ranking, Eng.GearingAdvice Advice, Eng.GearingCandidate? Checked);

/// <summary>Answers questions about gearing from a book.</summary>
public static class GearingQueries
{
    /// <summary>Answers, or says what to write instead.</summary>
    /// <param name="book">The book, worked out.</param>
    /// <param name="query">The question.</param>
    /// <returns>The answer with no mistakes, or no answer and every mistake.</returns>
    public static (GearingAnswer? Answer, IReadOnlyList<string> Mistakes) Answer(BookAssessment book, GearingQuery query)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(query);
        var mistakes = new List<string>();
        var car = Find(book.Book.Cars, query.Car, "car", mistakes);
        var venue = Find(book.Book.Venues, query.Venue, "venue", mistakes);
        var pair = Teeth(query.Pair, "--pair", "29/23", Book.Values.Teeth.Parse, mistakes);
        var final = Teeth(query.Final, "--final", "35/11", Book.Values.Teeth.ParseFinalDrive, mistakes);
        if (mistakes.Count > 0)
        {
            return (null, mistakes);
        }

        if (book.Book.Units.Values.FirstOrDefault(u => u.Car == car!.Id) is not { } unit)
        {
            return (null, [$"No unit in the book is fitted to {car!.Name}. Add 'car: {car.Id}' to the file of its unit."]);
        }

        if (pair is not null && book.Book.GearboxOf(unit).DropGears is null)
        {
            return (null, [$"The {book.Book.GearboxOf(unit).Name} in {car!.Name} has no drop gears. Remove --pair."]);
        }

        var problems = new ProblemList();
        if (book.Gearing.Case(unit, venue!, null, problems) is not { } made)
        {
            string[] reasons = [.. problems.InOrder().Select(p => p.ToString())];
            return (null, reasons.Length > 0 ? reasons : [$"The values of {car!.Name} or its gearbox cannot be used. Run 'layshaft check' to see them."]);
        }

        // What is not asked about is taken from the unit as it is now.
        var fitted = FittedGears.Now(book.Book, made.Unit);
        var asked = pair is null && final is null ? null : new Eng.GearSet(
            pair is { } p ? GearboxStock.PairOf(p) : fitted.DropPair, final is { } f ? GearboxStock.FinalOf(f) : fitted.FinalDrive);
        var ranking = asked is null ? made.Rank(fitted) : made.Rank(fitted, asked);
        return ranking.Value is { } found
            ? (new GearingAnswer(made, found, Eng.GearingAdvice.Of(found, fitted), asked is null ? null : found.Find(asked)), [])
            : (null, [.. ranking.Faults.Select(fault => fault.Message)]);
    }

    private static T? Find<T>(IReadOnlyDictionary<string, T> known, string id, string what, List<string> mistakes)
        where T : class
    {
        if (known.TryGetValue(id, out var found))
        {
            return found;
        }

        mistakes.Add($"The book has no {what} '{id}'. {NearestWord.Advice(id, [.. known.Keys])}".TrimEnd());
        return null;
    }

    private static Teeth? Teeth(string? text, string option, string example, Func<string, Parsed<Teeth>> parse, List<string> mistakes)
    {
        if (text is null)
        {
            return null;
        }

        var parsed = parse(text);
        if (parsed.Wrong is null)
        {
            return parsed.Value;
        }

        mistakes.Add($"{option}: {parsed.Wrong} {parsed.Remedy ?? $"Write driven/driver, such as {example}."}");
        return null;
    }
}
