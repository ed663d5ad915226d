namespace Layshaft.Site.Charts.Drawing;

/// <summary>Maps values from one range to places from another, linearly.</summary>
internal readonly record struct Scale
{
    /// <exception cref="ArgumentException">The value range is not finite or not above zero in length.</exception>
    public Scale(double from, double to, double start, double end)
    {
        if (!double.IsFinite(from) || !double.IsFinite(to) || !(to > from) || !double.IsFinite(to - from))
        {
            throw new ArgumentException("An axis needs a finite range whose end lies above its start.");
        }

        (From, To, Start, End) = (from, to, start, end);
    }

    public double From { get; }

    public double To { get; }

    public double Start { get; }

    public double End { get; }

    public double At(double value) => Start + ((value - From) / (To - From) * (End - Start));

    public bool Holds(double value) => value >= From && value <= To;
}
