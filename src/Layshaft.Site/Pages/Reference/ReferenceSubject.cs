using Layshaft.Book.Records;
using Layshaft.Site.Assessment.Gearing;
using Layshaft.Site.Pages.Gearing;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.Reference;

/// <summary>A tyre that a reference page offers.</summary>
/// <param name="Words">What to call it.</param>
/// <param name="Tyre">The tyre.</param>
public sealed record ReferenceTyre(string Words, Eng.RollingTyre Tyre);

/// <summary>What a reference page is about: a type of gearbox, or a car whose owner agrees to it.</summary>
/// <param name="Id">The end of its pages' names, such as <c>gearbox-NAME</c>.</param>
/// <param name="Name">Its name.</param>
/// <param name="Description">What it is; null for nothing.</param>
/// <param name="Boxes">Its ratio sets, each with what is stocked.</param>
/// <param name="Tyres">The tyres to choose from; none where no car is known.</param>
/// <param name="Limit">The engine speed up to which speeds are shown.</param>
public sealed record ReferenceSubject(
    string Id, string Name, string? Description, IReadOnlyList<GearboxStock> Boxes, IReadOnlyList<ReferenceTyre> Tyres, RotationalSpeed Limit)
{
    // A round figure above every engine's limit that the shop knows, so that nobody's own figure stands on a public page.
    private const double RoundRpm = 500;
    private static readonly RotationalSpeed s_usualLimit = RotationalSpeed.FromRevolutionsPerMinute(8000);

    /// <summary>Every subject that may be shown, gearboxes first, by id.</summary>
    public static IReadOnlyList<ReferenceSubject> All(Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        return
        [
            .. composition.Book.Gearboxes.Values.Select(b => OfGearbox(b, composition)).OfType<ReferenceSubject>(),
            .. composition.Book.Units.Values.Select(u => OfCar(u, composition)).OfType<ReferenceSubject>().DistinctBy(s => s.Id),
        ];
    }

    private static ReferenceSubject? OfGearbox(Gearbox box, Composition composition)
    {
        var gearing = composition.Assessment.Gearing;
        GearboxStock[] boxes = [.. box.RatioSets.Select(s => gearing.Boxes.GetValueOrDefault((box.Id, s.Id))).OfType<GearboxStock>()];
        CarSetup[] cars = [.. composition.Book.Units.Values.Where(u => u.Gearbox == box.Id && u.Car is not null).Select(u => gearing.Cars.GetValueOrDefault(u.Car!)).OfType<CarSetup>()];
        var tyres = cars
            .Select(c => c.Car.Tyre.Size)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal)
            .Select(size => (size, Eng.TyreSize.Parse(size).Value is { } read ? Eng.RollingTyre.FromSize(read).Value : null))
            .Where(t => t.Item2 is not null)
            .Select(t => new ReferenceTyre(Words(t.size, t.Item2!, composition), t.Item2!));
        var limit = cars.Length == 0
            ? s_usualLimit
            : RotationalSpeed.FromRevolutionsPerMinute(Math.Ceiling(cars.Max(c => c.Car.Engine.Limit.RevolutionsPerMinute) / RoundRpm) * RoundRpm);
        return boxes.Length == 0 ? null : new ReferenceSubject($"gearbox-{box.Id}", box.Name, box.Description, boxes, [.. tyres], limit);
    }

    private static ReferenceSubject? OfCar(Unit unit, Composition composition)
    {
        var gearing = composition.Assessment.Gearing;
        if (unit.Car is not { } id || !composition.Book.Cars[id].Public || !gearing.Cars.TryGetValue(id, out var car)
            || unit.RatioSet is not { } ratios || !gearing.Boxes.TryGetValue((unit.Gearbox, ratios), out var box))
        {
            return null;
        }

        var size = car.Car.Tyre.Size;
        var tyres = new List<ReferenceTyre> { new(composition.Say("reference.tyre_new", ("tyre", Words(size, car.Tyre, composition))), car.Tyre) };
        if (car.Car.Tyre.Wear is { } wear && car.Tyre.With(car.Tyre.State with { Wear = wear }).Value is { } worn)
        {
            tyres.Add(new ReferenceTyre(composition.Say("reference.tyre_worn", ("tyre", Words(size, worn, composition))), worn));
        }

        return new ReferenceSubject($"car-{id}", car.Car.Name, null, [box], tyres, car.Car.Engine.Limit);
    }

    private static string Words(string size, Eng.RollingTyre tyre, Composition composition) => composition.Say(
        "reference.tyre",
        ("size", size),
        ("circumference", composition.Figures.Length(tyre.Circumference, 0).Both),
        ("basis", GearingWords.TyreBasis(tyre, composition)));
}
