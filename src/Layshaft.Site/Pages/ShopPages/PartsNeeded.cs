using Layshaft.Book.Records;

namespace Layshaft.Site.Pages.ShopPages;

/// <summary>How many of one part the open jobs need.</summary>
/// <param name="Gearbox">The gearbox that it belongs to.</param>
/// <param name="Part">The part.</param>
/// <param name="Agreed">Pieces that customers have agreed to.</param>
/// <param name="Open">Further pieces in estimates that wait for an answer.</param>
/// <param name="Jobs">Numbers of the jobs.</param>
internal sealed record PartsNeeded(Gearbox Gearbox, Part Part, int Agreed, int Open, IReadOnlyList<string> Jobs)
{
    /// <summary>Pieces that stock does not cover, if all answers are yes; 0 when the stock is not counted.</summary>
    public int ToOrder => Part.Stock is { } stock ? Math.Max(0, Agreed + Open - stock) : 0;

    /// <summary>Over all open jobs, those to order first. Parts that a job has renewed already are out of the stock.</summary>
    public static IReadOnlyList<PartsNeeded> Of(ShopContext shop)
    {
        var lines = shop.OpenJobs
            .SelectMany(j => Lines(j).Where(l => l.Line.Part is not null && !j.Renewed.Any(r => r.Part == l.Line.Part)).Select(l => (Job: j, l.Line, l.Agreed)))
            .GroupBy(l => (Gearbox: shop.Book.Units[l.Job.Unit].Gearbox, Part: l.Line.Part!));
        return
        [
            .. lines.Select(g => new PartsNeeded(
                    shop.Book.Gearboxes[g.Key.Gearbox],
                    shop.Book.Gearboxes[g.Key.Gearbox].PartOf(g.Key.Part)!,
                    g.Where(l => l.Agreed).Sum(l => l.Line.Quantity),
                    g.Where(l => !l.Agreed).Sum(l => l.Line.Quantity),
                    [.. g.Select(l => l.Job.Number).Distinct()]))
                .OrderByDescending(n => n.ToOrder > 0).ThenBy(n => n.Gearbox.Id, StringComparer.Ordinal).ThenBy(n => n.Part.Id, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<(EstimateLine Line, bool Agreed)> Lines(Job job) => job.Offers.SelectMany(o => o.Lines.Where(l => o.Waits || o.Approves(l)).Select(l => (l, !o.Waits)));
}
