using Layshaft.Book.Records;
using Layshaft.Engineering.Life;
using EngineUse = Layshaft.Engineering.Life.Use;

namespace Layshaft.Site.Assessment.Lives;

/// <summary>One measurement on the way of a part's wear.</summary>
/// <param name="Job">The job that measured it.</param>
/// <param name="PartUse">What the part had run by then, in the measure of its unit.</param>
/// <param name="Measured">The measurement.</param>
public sealed record TrendReading(Job Job, double PartUse, MeasureAssessment Measured);

/// <summary>How one size of a part in a unit wears.</summary>
/// <param name="Part">The part.</param>
/// <param name="Measure">What is measured.</param>
/// <param name="Life">The life of the part that is in the unit now.</param>
/// <param name="Readings">The measurements in that life, earliest first.</param>
/// <param name="UseNow">What the part has run at the last day that the book knows.</param>
/// <param name="Since">That day.</param>
/// <param name="Result">The trend in SI units, or why there is none; null when the part's history does not add up.</param>
/// <param name="LookAgain">When to look again; null without a trend.</param>
public sealed record TrendAssessment(
    Part Part,
    Measure Measure,
    PartLife Life,
    IReadOnlyList<TrendReading> Readings,
    EngineUse UseNow,
    DateOnly Since,
    WearTrendResult? Result,
    LookAgain? LookAgain)
{
    /// <summary>How fast the part wears against other customers' gearboxes of the type; null if that is not known, or no clear difference.</summary>
    public RelativeRate? Relative { get; init; }

    /// <summary>How many other gearboxes <see cref="Relative"/> rests on.</summary>
    public int Others { get; init; }

    /// <summary>The trend; null when nothing can be said.</summary>
    public WearTrendLine? Line => Result as WearTrendLine;
}
