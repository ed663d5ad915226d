using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Checks;

/// <summary>Everything that must hold between the values of a book.</summary>
internal static class BookChecks
{
    public static void Run(Draft draft, ProblemList problems)
    {
        var checker = new Checker(draft, problems);
        if (draft.Shop is { } shop)
        {
            ShopChecks.Run(checker, shop);
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

        JobSequenceChecks.Run(checker);
        foreach (var job in draft.Jobs)
        {
            JobChecks.Run(checker, job);
        }
    }
}
