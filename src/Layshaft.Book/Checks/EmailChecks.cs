using Layshaft.Book.Records;
using Layshaft.Book.Values;

namespace Layshaft.Book.Checks;

/// <summary>Email addresses that no mail can go to.</summary>
internal static class EmailChecks
{
    /// <summary>The shop's own goes into every page and every answer to an estimate.</summary>
    public static void Run(Checker check, Shop shop)
    {
        // Null where the field could not be read, which was reported.
        if (shop.Email is { } email && !EmailAddress.IsUsable(email))
        {
            check.Problems.Add("bad-email", shop.Origin.At("email"), $"'{email}' is not an email address, so customers could not answer an estimate.", $"Write {EmailAddress.Words}.");
        }
    }

    /// <summary>A customer's is needed only for the draft of a mail.</summary>
    public static void Run(Checker check, Customer customer)
    {
        foreach (var email in customer.Emails.Where(e => !EmailAddress.IsUsable(e)))
        {
            check.Problems.Note("bad-email", customer.Origin.At("email"), $"'{email}' is not an email address, so an email draft omits it.", $"Write {EmailAddress.Words}, or a list of addresses.");
        }
    }
}
