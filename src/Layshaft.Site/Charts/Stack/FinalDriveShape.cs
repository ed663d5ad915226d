namespace Layshaft.Site.Charts.Stack;

/// <summary>
/// Bevel pinion and crown wheel in side view, mm: the wheel's axis stands upright on the sheet, so the wheel is a
/// ring about a centre on the pinion's axis, of which the part near the pinion is shown.
/// </summary>
internal sealed record FinalDriveShape(string ShaftId, double Axis, double Back, int Direction, double PinionRadius, double CrownRadius, double Face, int CrownTeeth)
{
    /// <summary>Half the angle of the crown wheel that is shown, radians.</summary>
    public const double HalfAngle = 0.62;

    /// <summary>Along the shaft, the centre of the crown wheel.</summary>
    public double Centre => Back + (Direction * CrownRadius);

    public double Front => Back + (Direction * Face);

    public double Left => Math.Min(Reach, Back);

    public double Right => Math.Max(Reach, Back);

    public double High => Axis + (CrownRadius * Math.Sin(HalfAngle));

    public double Low => Axis - (CrownRadius * Math.Sin(HalfAngle));

    /// <summary>How far the shown part reaches along the shaft: the inner corners of the ring's piece, or the pinion's front.</summary>
    private double Reach => Direction < 0
        ? Math.Min(Front, Centre + ((CrownRadius - Face) * Math.Cos(HalfAngle))) - 3
        : Math.Max(Front, Centre - ((CrownRadius - Face) * Math.Cos(HalfAngle))) + 3;

    /// <exception cref="ArgumentException">Teeth or module not above 0, or a crown wheel no larger than its pinion.</exception>
    public static FinalDriveShape Of(StackFinalDrive drive, StackShaft shaft, IEnumerable<StackPart> others)
    {
        if (drive.PinionTeeth <= 0 || drive.CrownTeeth <= drive.PinionTeeth || !(drive.Module > 0) || !double.IsFinite(drive.Module) || !double.IsFinite(drive.PinionBack))
        {
            throw new ArgumentException("A final drive needs a pinion, a larger crown wheel and a module above 0.", nameof(drive));
        }

        var crown = drive.CrownTeeth * drive.Module / 2;
        var pinion = drive.PinionTeeth * drive.Module / 2;
        var middle = others.Select(p => p.Middle).DefaultIfEmpty(drive.PinionBack + 1).Average();

        // A face of three tenths of the cone distance is the usual most for bevel gears.
        var face = 0.3 * Math.Sqrt((crown * crown) + (pinion * pinion));
        return new FinalDriveShape(drive.ShaftId, shaft.Height, drive.PinionBack, drive.PinionBack <= middle ? -1 : 1, pinion, crown, face, drive.CrownTeeth);
    }
}
