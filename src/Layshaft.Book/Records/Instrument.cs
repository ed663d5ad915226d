using Layshaft.Book.Places;
using Layshaft.Book.Shapes;
using Layshaft.Book.Values;
using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>Something to measure with.</summary>
/// <param name="Origin">Where it stands.</param>
/// <param name="Id">Short name used in jobs.</param>
/// <param name="Name">Name on the pages.</param>
/// <param name="Resolution">Smallest step that it shows.</param>
/// <param name="ErrorLimit">Largest error that its certificate allows, plus or minus; null if <paramref name="Class"/> states it.</param>
/// <param name="Class">Largest deviation of a torque tool as a share of the torque, plus or minus (ISO 6789-1); null if <paramref name="ErrorLimit"/> states it.</param>
/// <param name="Repeatability">Standard deviation of repeated readings, where the shop knows it.</param>
/// <param name="Calibrated">Day of the last calibration.</param>
/// <param name="Interval">How long a calibration holds.</param>
public sealed record Instrument(
    Origin Origin,
    string Id,
    string Name,
    IQuantity Resolution,
    IQuantity? ErrorLimit,
    double? Class,
    IQuantity? Repeatability,
    DateOnly Calibrated,
    CalendarSpan Interval) : IPlaced
{
    /// <summary>The last day on which the calibration holds.</summary>
    public DateOnly Due => Interval.After(Calibrated);

    /// <summary>What is known of it, for the uncertainty of what it measures.</summary>
    public Engineering.Measurement.Instrument Figures => new() { ErrorLimit = ErrorLimit, RelativeErrorLimit = Class ?? 0, Resolution = Resolution, Repeatability = Repeatability };

    /// <summary>Whether it measures quantities of a kind, with figures that make sense for it.</summary>
    /// <param name="model">A quantity of the kind.</param>
    public bool Measures(IQuantity model) => IsFigure(Resolution, model) && IsFigure(ErrorLimit ?? model, model) && IsFigure(Repeatability ?? model, model);

    private static bool IsFigure(IQuantity figure, IQuantity model) => figure.IsLike(model) && (ReferenceEquals(figure, model) || figure.InSi() >= 0);

    /// <summary>How it is written.</summary>
    public static RecordShape<Instrument> Shape { get; } = new("an instrument", "A measuring instrument.", f => new Instrument(
        f.Origin,
        f.Required("id", Scalars.Id.Like("mic-25"), "Short name used in jobs."),
        f.Required("name", Scalars.Text, "Name on the pages."),
        f.Required("resolution", Quantities.Measured.Like("0.001 mm"), "Resolution: the smallest step it shows."),
        f.Optional("error_limit", Quantities.Measured.Like("0.002 mm"), "Error limit on its certificate, plus or minus. Write this or 'class'."),
        f.OptionalValue("class", Scalars.Part.Like("4 %"), "For a torque wrench: largest deviation as a share of the set torque, plus or minus."),
        f.Optional("repeatability", Quantities.Measured.Like("0.001 mm"), "Standard deviation of repeated readings, if known."),
        f.Required("calibrated", Scalars.Date, "Date of the last calibration."),
        f.Or("calibrate_every", Scalars.Span, new CalendarSpan(12, 0), "Calibration interval. Default: 12 months.")));
}
