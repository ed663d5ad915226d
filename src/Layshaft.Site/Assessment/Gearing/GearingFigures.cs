using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>The figures of cars and gearboxes that gearing can be worked out with. Immutable.</summary>
/// <param name="Cars">The cars whose figures can be used, by id.</param>
/// <param name="Boxes">The ratio sets whose gears can be used, by gearbox and set.</param>
internal sealed record GearingFigures(IReadOnlyDictionary<string, CarSetup> Cars, IReadOnlyDictionary<(string Gearbox, string Set), GearboxStock> Boxes)
{
    /// <summary>Takes over and checks every figure of a book's cars and gearboxes.</summary>
    /// <param name="book">The book.</param>
    /// <param name="files">Its files, for torque curves.</param>
    /// <param name="problems">Receives what is wrong, at its place.</param>
    public static GearingFigures Of(ShopBook book, IBookFiles files, ProblemList problems)
    {
        var cars = new Dictionary<string, CarSetup>(StringComparer.Ordinal);
        foreach (var car in book.Cars.Values)
        {
            if (CarSetup.Of(car, files, problems) is { } setup)
            {
                cars[car.Id] = setup;
            }
        }

        var boxes = new Dictionary<(string Gearbox, string Set), GearboxStock>();
        foreach (var (box, set) in book.Gearboxes.Values.SelectMany(b => b.RatioSets.Select(s => (b, s))))
        {
            if (GearboxStock.Of(box, set, problems) is { } stock)
            {
                boxes[(box.Id, set.Id)] = stock;
            }
        }

        return new GearingFigures(cars, boxes);
    }

    /// <summary>Those of a part of the book.</summary>
    /// <param name="part">The part.</param>
    public GearingFigures Within(ShopBook part) => new(
        part.Cars.Keys.Where(Cars.ContainsKey).ToDictionary(id => id, id => Cars[id], StringComparer.Ordinal),
        Boxes.Where(b => part.Gearboxes.ContainsKey(b.Key.Gearbox)).ToDictionary());
}
