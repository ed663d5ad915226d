namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>The basic rack that a gear is made from, as multiples of the module.</summary>
/// <param name="Addendum">Addendum of the gear, h*a.</param>
/// <param name="Dedendum">Dedendum of the gear, h*f.</param>
/// <param name="StraightDepth">Depth below the reference line to which the cutting rack's flank is straight; beyond it the tip is rounded.</param>
public sealed record BasicRack(double Addendum, double Dedendum, double StraightDepth)
{
    /// <summary>Type A of ISO 53:1998: addendum 1, dedendum 1.25, straight to a depth of 1 with a fillet radius of 0.38.</summary>
    public static BasicRack Iso53TypeA { get; } = new(1, 1.25, 1);
}
