using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Gearing;

/// <summary>What the air of an event rests on.</summary>
public enum AirSource
{
    /// <summary>The standard atmosphere at the venue's altitude: nothing was written of the day.</summary>
    Altitude,

    /// <summary>The temperature that was written, with the standard pressure of the altitude.</summary>
    Temperature,

    /// <summary>Pressure at the venue as written, with the temperature as written or of the standard atmosphere.</summary>
    Pressure,
}

/// <summary>The air of an event.</summary>
/// <param name="Air">The air.</param>
/// <param name="Source">What it rests on.</param>
public sealed record EventAir(Eng.AirState Air, AirSource Source)
{
    /// <summary>The air of an event at a venue; null when a figure cannot be used, which the problems then tell.</summary>
    /// <param name="venue">The venue, for its altitude.</param>
    /// <param name="plan">The event; null for standard air.</param>
    /// <param name="problems">Receives what is wrong, at its place.</param>
    public static EventAir? Of(Venue venue, EventPlan? plan, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(venue);
        ArgumentNullException.ThrowIfNull(problems);
        Place At(string subject) => subject == "altitude" || plan is null ? venue.Origin.At("altitude") : plan.Origin.At(subject);
        var faults = new FaultPlaces(problems);
        if (faults.Take(Eng.AirState.Standard(venue.Altitude), At) is not { } standard)
        {
            return null;
        }

        if (plan is null or { Temperature: null, Pressure: null, Humidity: null })
        {
            return new EventAir(standard, AirSource.Altitude);
        }

        var temperature = plan.Temperature ?? standard.Temperature;
        var air = faults.Take(Eng.AirState.FromReadings(plan.Pressure ?? standard.Pressure, temperature, plan.Humidity ?? 0), At);
        return air is null ? null : new EventAir(air, plan.Pressure is null ? AirSource.Temperature : AirSource.Pressure);
    }
}
