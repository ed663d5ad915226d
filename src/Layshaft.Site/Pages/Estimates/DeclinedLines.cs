using Layshaft.Book.Records;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Estimates;

/// <summary>Work that was offered and declined: what, when, and what happens if it is left. For the customer of the job only.</summary>
internal static class DeclinedLines
{
    /// <summary>The caution for a gearbox that goes back without these lines; null if none of them is essential.</summary>
    public static string? Caution(IEnumerable<EstimateLine> declined, Composition composition) =>
        declined.Any(l => l.Need == Need.Must) ? composition.Say("estimate.declined") : null;

    /// <summary>A sentence for each declined line.</summary>
    public static IEnumerable<string> Of(Job job, Gearbox gearbox, Composition composition)
    {
        foreach (var offer in job.Offers)
        {
            foreach (var line in offer.Declined)
            {
                var declined = composition.Say("offer.line_declined", ("what", MoneyTable.Name(line, gearbox)), ("date", composition.Figures.Date(offer.GoAhead!.On)));
                yield return IfLeftWords.Say(line.IfLeft, composition) is { } ifLeft ? $"{declined} {ifLeft}" : declined;
            }
        }
    }
}
