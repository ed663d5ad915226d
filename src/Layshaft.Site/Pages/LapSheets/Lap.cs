using Layshaft.Site.Assessment.Gearing;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Pages.LapSheets;

/// <summary>A lap with the recommended gears. Gears past a limit get none: a sheet for the driver would invite their use.</summary>
/// <param name="Gearing">The gearing for the event.</param>
/// <param name="Driven">The gears.</param>
/// <param name="Car">The car with them.</param>
/// <param name="Run">The lap.</param>
/// <param name="Tow">The same lap in a tow; null if it cannot be worked out.</param>
/// <param name="Dogs">The engagements of each gear; null if they cannot be worked out.</param>
/// <param name="Speeds">Engine speed by road speed in each gear.</param>
internal sealed record Lap(EventGearing Gearing, Eng.GearingCandidate Driven, Eng.Car Car, Eng.VenueRun Run, Eng.VenueRun? Tow, DogLoad? Dogs, Eng.SpeedTable Speeds)
{
    public static Lap? Of(EventGearing gearing, Composition composition)
    {
        ArgumentNullException.ThrowIfNull(composition);
        if (gearing.Advice.Recommended is not { IsFinished: true } driven)
        {
            return null;
        }

        var (made, car) = (gearing.Case, gearing.Case.With(driven.Set));
        var tow = made.Changes.FirstOrDefault(c => c.DragFactor < 1)?.Apply(car).Value;
        return new Lap(
            gearing,
            driven,
            car,
            Eng.VenueRun.For(car, made.Course),
            tow is null ? null : Eng.VenueRun.For(tow, made.Course),
            DogLoad.Of(made, driven.Set, isFromLastEvent: false),
            Eng.SpeedTable.For(car));
    }
}
