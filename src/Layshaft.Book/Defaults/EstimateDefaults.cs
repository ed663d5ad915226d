using Layshaft.Book.Places;
using Layshaft.Book.Records;
using Layshaft.Engineering.Measurement;

namespace Layshaft.Book.Defaults;

/// <summary>The lines of an estimate that has none: the usual work of the gearbox, and the parts graded renew in the gearbox's order.</summary>
internal static class EstimateDefaults
{
    public static Job Complete(Job job, Gearbox box, Shop? shop)
    {
        if (shop is null || job.Offers is not [{ Number: 0, Lines.Count: 0 } estimate, ..])
        {
            return job;
        }

        var origin = Origin.Of(estimate.Origin.Place);
        var renew = job.Findings.Where(f => box.PartOf(f.Part) is { } part && (f.Grade ?? part.GradeByReadings(f, shop)) == Grade.Renew).ToLookup(f => f.Part, StringComparer.Ordinal);
        EstimateLine[] lines =
        [
            .. box.UsualWork.Select(w => new EstimateLine(origin, null, null, w.Work, 1, w.Price, w.Hours, Need.Must, null, null)),
            .. box.Parts.Where(p => renew.Contains(p.Id)).Select(p => new EstimateLine(
                origin, null, p.Id, null, 1, null, null, Need.Must, renew[p.Id].Select(f => f.IfLeft).OfType<string>().FirstOrDefault(), null)),
        ];
        return job with { Offers = [estimate with { Lines = lines }, .. job.Offers.Skip(1)] };
    }
}
