using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Checks;

/// <summary>Names that are written as people say them: 'Fork 3-4' for the part 'fork-34'.</summary>
internal static class KnownNames
{
    private const string After = "' is not a short name.";

    /// <summary>Offers the known name for each that differs from it only in case, spaces and punctuation.</summary>
    public static void Suggest(Draft draft, ProblemList problems)
    {
        if (!problems.All.Any(IsName))
        {
            return;
        }

        var boxes = draft.Gearboxes.Records.Values.ToArray();
        string[] known =
        [
            .. boxes.SelectMany(b => b.Parts).SelectMany(p => p.Measures.Select(m => m.Id).Prepend(p.Id)),
            .. boxes.SelectMany(b => b.Settings.Select(s => s.Id).Concat(b.Strip.Concat(b.Build).Select(s => s.Id)).Concat(b.RatioSets.Select(r => r.Id))),
            .. draft.Shop is { } shop ? shop.Instruments.Select(i => i.Id).Concat(shop.Technicians.Select(t => t.Id)) : [],
            .. draft.Units.Names, .. draft.Customers.Names, .. draft.Gearboxes.Names, .. draft.Cars.Names, .. draft.Venues.Names,
        ];
        problems.Revise(p => IsName(p) && NearestWord.Same(p.Message[1..^After.Length], known) is { } name ? p with { Remedy = $"Did you mean '{name}'?" } : p);
    }

    private static bool IsName(Problem problem) => problem.Code == "bad-name" && problem.Message.EndsWith(After, StringComparison.Ordinal);
}
