using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Engineering.Traces;
using Layshaft.Site.Assessment.Gearing;
using UnitsNet;
using Eng = Layshaft.Engineering.Gearing;

namespace Layshaft.Site.Assessment.Traces;

/// <summary>What a unit's trace shows, beside what the book says of the unit.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Setup">The car that it is in.</param>
/// <param name="Box">Its gears and what is stocked for it.</param>
/// <param name="Fitted">Drop pair and final drive by the book.</param>
/// <param name="Check">Whether the trace was made with them.</param>
/// <param name="Figures">What the trace shows.</param>
/// <param name="Places">Where on the venue its corners are; null when that is not known.</param>
public sealed record TraceReading(
    Unit Unit, CarSetup Setup, GearboxStock Box, Eng.GearSet Fitted, FittedGearCheck Check, TraceFigures Figures, VenuePlaces? Places)
{
    /// <summary>Shifts by their gears.</summary>
    public IReadOnlyList<ShiftSummary> Shifts { get; } = ShiftSummary.Of(Figures.Shifts);

    /// <summary>Corners over all whole laps.</summary>
    public IReadOnlyList<CornerSummary> Corners { get; } = CornerSummary.Of(Figures);

    /// <summary>Reads a trace of a unit.</summary>
    /// <param name="gearing">The book's gearing.</param>
    /// <param name="unit">The unit, which names its car.</param>
    /// <param name="fitted">What should have been fitted.</param>
    /// <param name="venue">The venue; null when it is not known.</param>
    /// <param name="stream">The trace.</param>
    /// <param name="file">Its name for problems.</param>
    /// <param name="problems">Receives mistakes in the trace, and a car that does not say how it is laid out.</param>
    /// <returns>What it shows; null when it cannot be read.</returns>
    public static TraceReading? Of(
        BookGearing gearing, Unit unit, Eng.GearSet fitted, Venue? venue, Stream stream, string file, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(gearing);
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(fitted);
        ArgumentNullException.ThrowIfNull(problems);
        if (unit.Car is not { } id || !gearing.Cars.TryGetValue(id, out var setup) || unit.RatioSet is not { } ratios || !gearing.Boxes.TryGetValue((unit.Gearbox, ratios), out var box))
        {
            problems.Add("trace-car", unit.Origin.Place, "A trace needs the unit's car and gears, and their values cannot be used.", "Add 'car: …' to the unit's file, and run 'layshaft check'.");
            return null;
        }

        if (setup.Car.TraceColumns is not { } columns)
        {
            problems.Add("trace-columns", setup.Car.Origin.Place, $"The layout of the traces of {setup.Car.Name} is missing.", "Add 'trace_columns: …' with at least time, speed and engine_speed.");
            return null;
        }

        var car = Eng.Car.Create(
            setup.Vehicle, setup.Engine, box.Drivetrain.With(fitted.DropPair, fitted.FinalDrive), setup.Tyre, new Eng.Conditions(Eng.AirState.Standard(Length.Zero).Require())).Require();
        var inertias = setup.Car.Engine.Inertia is { } engine ? new Eng.DogInertias(engine + (box.Gearbox.InputInertia ?? default)) : null;
        var analyser = new TraceAnalyser(new TraceQuestion(car, SourceOf(columns.SpeedFrom), venue?.Length, inertias));
        if (!TraceFile.Read(stream, file, columns, analyser, problems))
        {
            return null;
        }

        var figures = analyser.Finish();
        return new TraceReading(unit, setup, box, fitted, FittedGearCheck.Of(figures.GearFit, car, box.Stock), figures, venue is null ? null : VenuePlaces.Of(CornerSummary.Of(figures), [.. venue.Straights.Select(v => (v.Name, v.Length))]));
    }

    private static SpeedSource SourceOf(TraceSpeedSource source) => source switch
    {
        TraceSpeedSource.DrivenWheels => SpeedSource.DrivenWheels,
        TraceSpeedSource.FreeWheels => SpeedSource.FreeWheels,
        TraceSpeedSource.Satellite => SpeedSource.Satellite,
        _ => SpeedSource.NotKnown,
    };
}
