using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>A question about gearing as somebody types it.</summary>
/// <param name="Unit">The unit's id; null for the unit in the car.</param>
/// <param name="Car">The car's id; null for the car that the unit is in.</param>
/// <param name="Venue">The venue's id.</param>
/// <param name="Pair">A drop pair to check, as <c>29/23</c>, driven/driver; null for none.</param>
/// <param name="Final">A final drive to check, as <c>35/11</c>, driven/driver; null for none.</param>
/// <param name="Temperature">Air temperature of the day, as <c>28 °C</c>; null for standard air.</param>
/// <param name="Wind">Wind of the day, as <c>18 km/h</c> against the car everywhere, or <c>18 km/h from 240°</c>; null for calm.</param>
public sealed record GearingQuery(string? Unit, string? Car, string Venue, string? Pair, string? Final, string? Temperature = null, string? Wind = null);

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
        var unit = query.Unit is null ? null : Find(book.Book.Units, query.Unit, "unit", mistakes);
        var car = query.Car is null ? null : Find(book.Book.Cars, query.Car, "car", mistakes);
        var venue = Find(book.Book.Venues, query.Venue, "venue", mistakes);
        var pair = Teeth(query.Pair, "--pair", "29/23", Book.Values.Teeth.Parse, mistakes);
        var final = Teeth(query.Final, "--final", "35/11", Book.Values.Teeth.ParseFinalDrive, mistakes);
        var day = DayOf(query, venue, mistakes);
        if (mistakes.Count > 0)
        {
            return (null, mistakes);
        }

        if (Subject(book.Book, unit, car, out var wrong) is not { } asked)
        {
            return (null, [wrong]);
        }

        if (pair is not null && book.Book.GearboxOf(asked).DropGears is null)
        {
            return (null, [$"The {book.Book.GearboxOf(asked).Name} {asked.Serial} has no drop gears. Remove --pair."]);
        }

        var problems = new ProblemList();
        if (book.Gearing.Case(asked, venue!, day, problems) is not { } made)
        {
            string[] reasons = [.. problems.InOrder().Select(p => p.ToString())];
            return (null, reasons.Length > 0 ? reasons : [$"The values of {book.Book.Cars[asked.Car!].Name} or its gearbox cannot be used. Run 'layshaft check' to see them."]);
        }

        // What is not asked about is taken from the unit as it is now.
        var fitted = FittedGears.Now(book.Book, made.Unit);
        made = made with { Fitted = fitted };
        var mine = pair is null && final is null ? null : new Eng.GearSet(
            pair is { } p ? GearboxStock.PairOf(p) : fitted.DropPair, final is { } f ? GearboxStock.FinalOf(f) : fitted.FinalDrive, fitted.Gears);
        var ranking = mine is null ? made.Rank() : made.Rank(mine);
        return ranking.Value is { } found
            ? (new GearingAnswer(made, found, Eng.GearingAdvice.Of(found, fitted), mine is null ? null : found.Find(mine)), [])
            : (null, [.. ranking.Faults.Select(fault => fault.Message)]);
    }

    // The unit as it is, in its car or in the one that is named.
    private static Unit? Subject(ShopBook book, Unit? unit, Car? car, out string wrong)
    {
        wrong = string.Empty;
        if (unit is null && car is null)
        {
            wrong = "Neither --unit nor --car is given. Write one of them.";
            return null;
        }

        if (unit is null)
        {
            wrong = $"No unit in the book is fitted to {car!.Name}. Add 'car: {car.Id}' to the file of its unit, or write --unit.";
            return book.Units.Values.FirstOrDefault(u => u.Car == car.Id);
        }

        wrong = $"The file of unit {unit.Id} names no car. Add 'car: …' to it, or write --car.";
        return car is not null ? unit with { Car = car.Id } : unit.Car is null ? null : unit;
    }

    private static EventPlan? DayOf(GearingQuery query, Venue? venue, List<string> mistakes)
    {
        if (venue is null || query is { Temperature: null, Wind: null })
        {
            return null;
        }

        string[] wind = query.Wind?.Split(" from ", 2, StringSplitOptions.TrimEntries) ?? [];
        var temperature = query.Temperature is null ? (Temperature?)null : Read(UnitWords.Temperature, query.Temperature, "--temperature", "28 °C", mistakes);
        var speed = wind.Length == 0 ? (Speed?)null : Read(UnitWords.Speed, wind[0], "--wind", "18 km/h", mistakes);
        var from = wind.Length < 2 ? (Angle?)null : Read(UnitWords.Angle, wind[1], "--wind", "\"18 km/h from 240°\"", mistakes);
        return new EventPlan(venue.Origin, venue.Id, null, null, 1, temperature, null, null, speed, from, [], null, null, null);
    }

    private static T Read<T>(QuantityText<T> words, string text, string option, string example, List<string> mistakes)
        where T : IQuantity
    {
        var parsed = words.Parse(text);
        if (parsed.Wrong is { } wrong)
        {
            mistakes.Add($"{option}: {wrong} {parsed.Remedy ?? $"Write, for example, {example}."}");
        }

        return parsed.Value!;
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
