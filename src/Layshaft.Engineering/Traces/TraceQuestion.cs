using Layshaft.Engineering.Gearing;
using UnitsNet;

namespace Layshaft.Engineering.Traces;

/// <summary>What is known of the car beside its trace.</summary>
/// <param name="Car">The car with the gears that should be in it.</param>
/// <param name="SpeedSource">What the road speed was taken from.</param>
/// <param name="LapLength">Length of a lap or run; null when the venue is not known.</param>
/// <param name="Inertias">The inertias on the two sides of the dogs; null for no energies.</param>
public sealed record TraceQuestion(Car Car, SpeedSource SpeedSource = SpeedSource.NotKnown, Length? LapLength = null, DogInertias? Inertias = null);

/// <summary>What the road speed of a trace was taken from.</summary>
public enum SpeedSource
{
    /// <summary>Not known: slip cannot be told from the rolling circumference.</summary>
    NotKnown,

    /// <summary>The driven wheels: their slip cannot be seen.</summary>
    DrivenWheels,

    /// <summary>Wheels that are not driven.</summary>
    FreeWheels,

    /// <summary>Satellite positions.</summary>
    Satellite,
}
