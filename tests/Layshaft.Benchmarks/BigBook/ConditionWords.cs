using Layshaft.Book.Records;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>The damage that is usual on a kind of part.</summary>
internal static class ConditionWords
{
    /// <summary>A word for it; null on a part that shows none.</summary>
    public static string? Of(PartKind kind, double wear) => kind switch
    {
        _ when wear < 0.2 => null,
        PartKind.Gear or PartKind.DropGear or PartKind.FinalDrive => wear > 0.8 ? "progressive pitting" : wear > 0.5 ? "micropitting" : "polishing",
        PartKind.DogRing => wear > 0.8 ? "rounded dogs" : "dog corner radius",
        PartKind.Hub => "worn hub splines",
        PartKind.Selector => "worn fork pads",
        PartKind.Bearing => wear > 0.8 ? "surface fatigue" : "debris dents",
        _ => null,
    };
}
