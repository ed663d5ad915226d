using Layshaft.Book.Records;

namespace Layshaft.Site.Pages.Estimates;

/// <summary>How pages and letters name an offer: the estimate, or one of its supplements.</summary>
internal static class OfferWords
{
    /// <summary>The offers that wait for an answer, earliest first.</summary>
    public static IReadOnlyList<Offer> Waiting(Job job) => [.. job.Offers.Where(o => o.Waits)];

    /// <summary>Its name with its day: "Supplement 1 of 14 June 2026".</summary>
    public static string Name(Offer offer, Composition composition) =>
        Say("offer.name", offer, composition, ("date", composition.Figures.Date(offer.Sent)));

    /// <summary>A sentence that has a form of its own for a supplement, with its number as {supplement}.</summary>
    /// <param name="key">Key of the sentence for the estimate; that for a supplement ends in <c>.supplement</c>.</param>
    /// <param name="offer">The offer.</param>
    /// <param name="composition">What pages are composed from.</param>
    /// <param name="values">What the sentence names.</param>
    public static string Say(string key, Offer offer, Composition composition, params (string Name, object Value)[] values) =>
        offer.Number == 0 ? composition.Say(key, values) : composition.Say(key + ".supplement", [.. values, ("supplement", offer.Number)]);

    /// <summary>How a line of an offer was answered.</summary>
    public static string Answer(Offer offer, EstimateLine line, Composition composition) =>
        composition.Say(offer.Waits ? "offer.waits" : offer.Approves(line) ? "offer.approved" : "offer.declined");
}
