using Layshaft.Book.Records;

namespace Layshaft.Site.Assessment;

/// <summary>What one offer comes to.</summary>
/// <param name="Offer">The estimate or supplement.</param>
/// <param name="Offered">All of its lines.</param>
/// <param name="Approved">The lines that the customer approved.</param>
/// <param name="Declined">The lines that the customer declined; none while it waits.</param>
public sealed record OfferMoney(Offer Offer, Account Offered, Account Approved, Account Declined);

/// <summary>What a job comes to: each offer with its answer, everything approved, and what is invoiced.</summary>
/// <param name="Offers">The estimate and its supplements.</param>
/// <param name="Approved">Everything approved, taxed as one.</param>
/// <param name="Invoiced">The final account, or what was approved.</param>
public sealed record JobMoney(IReadOnlyList<OfferMoney> Offers, Account Approved, Account Invoiced)
{
    /// <summary>Works out the money of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="gearbox">Its gearbox, for prices of parts.</param>
    /// <param name="shop">The shop, for the labour rate and the tax.</param>
    public static JobMoney Of(Job job, Gearbox gearbox, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(job);
        return new JobMoney(
            [.. job.Offers.Select(o => new OfferMoney(o, Account.Of(o.Lines, gearbox, shop), Account.Of(o.Approved, gearbox, shop), Account.Of(o.Declined, gearbox, shop)))],
            Account.Of(job.Approved, gearbox, shop),
            Account.Of(job.Charged, gearbox, shop));
    }
}
