using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Checks;

/// <summary>Everything that must hold between the values of a book.</summary>
internal static class BookChecks
{
    /// <summary>Checks a whole book.</summary>
    public static void Run(Draft draft, ProblemList problems)
    {
        Standing(draft, problems);
        Jobs(draft, problems);
    }

    /// <summary>Checks all but the jobs.</summary>
    public static void Standing(Draft draft, ProblemList problems)
    {
        var checker = new Checker(draft, problems);
        if (draft.Shop is { } shop)
        {
            ShopChecks.Run(checker, shop);
            EmailChecks.Run(checker, shop);
        }

        foreach (var customer in draft.Customers.Records.Values)
        {
            EmailChecks.Run(checker, customer);
        }

        foreach (var gearbox in draft.Gearboxes.Records.Values)
        {
            GearboxChecks.Run(checker, gearbox);
        }

        foreach (var car in draft.Cars.Records.Values)
        {
            CarChecks.Run(checker, car);
        }

        foreach (var venue in draft.Venues.Records.Values)
        {
            VenueChecks.Run(checker, venue);
        }

        foreach (var unit in draft.Units.Records.Values)
        {
            UnitChecks.Run(checker, unit);
        }

        UnitChecks.Serials(checker);
        DateChecks.Standing(checker);
    }

    /// <summary>Checks the jobs: all of a book, or all of the units that are of interest.</summary>
    public static void Jobs(Draft draft, ProblemList problems)
    {
        var checker = new Checker(draft, problems);
        JobSequenceChecks.Run(checker);
        foreach (var job in draft.Jobs)
        {
            JobChecks.Run(checker, job);
        }
    }
}
