using Layshaft.Book.Records;
using Layshaft.Engineering.Life;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>The life of one part as the shop counts it over all its units, in words that outlive the jobs that tell of it.</summary>
/// <param name="Part">Which part of its gearbox.</param>
/// <param name="Serial">Its serial number; null for a part without one.</param>
/// <param name="Units">The ids of the units that it sat in, in order.</param>
/// <param name="Life">What it comes to.</param>
/// <param name="Source">What tells why it ended.</param>
/// <param name="Driver">The experience of the driver when it was last seen; null when no job says it.</param>
/// <param name="Since">The day on which the book first knows of it.</param>
/// <param name="FirstJob">The number of the job that first tells of it; null for what the unit's file says.</param>
public sealed record LifeTally(
    string Part,
    string? Serial,
    IReadOnlyList<string> Units,
    LifeTotal Life,
    ReasonSource Source,
    DriverExperience? Driver,
    DateOnly Since,
    string? FirstJob)
{
    /// <summary>The unit that it sits in, or sat in last.</summary>
    public string LastUnit => Units[^1];

    /// <summary>The lives of a book or a part of one, in the order in which they first appear.</summary>
    /// <param name="lives">The lives.</param>
    public static IReadOnlyList<LifeTally> Of(LifeAssessment lives)
    {
        ArgumentNullException.ThrowIfNull(lives);
        return [.. lives.Ledger.Lives.Select(l => Of(l, lives))];
    }

    /// <summary>Puts the lives of several parts of a book in the order in which the whole book has them.</summary>
    /// <param name="parts">The lives of each part, in order.</param>
    public static IEnumerable<LifeTally> Together(IEnumerable<IReadOnlyList<LifeTally>> parts) =>
        parts.SelectMany(l => l)
            .OrderBy(l => l.Since)
            .ThenBy(l => l.FirstJob is not null)
            .ThenBy(l => l.FirstJob ?? l.Units[0], StringComparer.Ordinal);

    /// <summary>The part's kind and what else its gearbox says of it.</summary>
    /// <param name="book">The book, or as much of it as knows its units and gearboxes.</param>
    public Part PartIn(ShopBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return book.GearboxOf(book.Units[LastUnit]).PartOf(Part)!;
    }

    private static LifeTally Of(PartLife life, LifeAssessment lives)
    {
        var first = lives.Entries[life.Events[0]];
        return new LifeTally(
            life.Part.Part,
            life.Part.Serial,
            [.. life.Spans.Select(s => s.Unit)],
            LifeTotal.Of(life, lives.InspectionsOf(life)),
            lives.SourceOf(life),
            life.Events.Select(e => lives.Entries[e].Job?.Driver).LastOrDefault(d => d is not null),
            first.Event.Date,
            first.Job?.Number);
    }
}
