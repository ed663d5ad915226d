using System.Globalization;

namespace Layshaft.Engineering.Gearing;

/// <summary>Puts a <see cref="GearingFault"/> into words.</summary>
internal static class GearingFaultText
{
    internal static string Of(GearingFault fault) => fault.Kind switch
    {
        GearingFaultKind.OutOfRange => $"{fault.Subject}: {Number(fault.Figure, fault.Unit)} is outside {Range(fault)}.",
        GearingFaultKind.TyreSizeNotRead => $"Tyre size '{fault.Subject}' cannot be read: {fault.Detail}",
        GearingFaultKind.NoGears => $"{fault.Subject}: there is no gear. Write at least one.",
        GearingFaultKind.GearsNotFalling =>
            $"{fault.Subject}: ratio {Number(fault.Figure, "")} does not fall below {Number(fault.High, "")} of the gear before it. "
            + "Write the gears from first to top, each ratio as driven/driver.",
        GearingFaultKind.CurveTooShort => $"{fault.Subject}: a torque curve needs at least two points.",
        GearingFaultKind.CurveTurnsBack =>
            $"{fault.Subject}: {Number(fault.Figure, "rpm")} follows {Number(fault.Low, "rpm")}. Write the points lowest engine speed first.",
        GearingFaultKind.CurveEndsBelowLimiter =>
            $"{fault.Subject}: the curve ends at {Number(fault.Figure, "rpm")}, below the limiter at {Number(fault.Low, "rpm")}. "
            + "Add a point at the limiter.",
        GearingFaultKind.GrowthTooSteep =>
            $"{fault.Subject}: this much growth must be stated at {Number(fault.Low, "m/s")} or more, not at {Number(fault.Figure, "m/s")}.",
        GearingFaultKind.VapourAbovePressure =>
            $"{fault.Subject}: {Number(fault.Figure, "Pa")} of water vapour in air of {Number(fault.High, "Pa")}. Check temperature and humidity.",
        GearingFaultKind.NoDropPair => "No drop pair is in stock. List the pairs to choose from.",
        GearingFaultKind.NoFinalDrive => "No final drive is in stock. List the final drives to choose from.",
        GearingFaultKind.NoStraights => $"{fault.Subject}: the venue has no straight. Write at least one.",
        GearingFaultKind.StraightTooShortToBrake =>
            $"{fault.Subject}: braking needs {Number(fault.Low, "m")}, but the straight has {Number(fault.Figure, "m")}. "
            + "Check its speeds, its length and the braking.",
        GearingFaultKind.CornerUnreachable =>
            $"{fault.Subject}: the corner speed is {Number(fault.Low, "m/s")}, but the car reaches only {Number(fault.Figure, "m/s")}.",
        GearingFaultKind.StartAboveTopGear =>
            $"{fault.Subject}: it begins at {Number(fault.Figure, "m/s")}, above {Number(fault.High, "m/s")} at the limiter in top gear.",
        GearingFaultKind.CannotPull => $"{fault.Subject}: the car's drive does not overcome its resistance; it stops after {Number(fault.Figure, "m")}.",
        GearingFaultKind.NotFinished => $"{fault.Subject}: not finished after {Number(fault.Figure, "s")}.",
        GearingFaultKind.RingsDoNotFit => $"{fault.Subject}: {fault.Detail}",
        _ => fault.Subject,
    };

    private static string Range(GearingFault fault) => (fault.Low, fault.High) switch
    {
        (null, { } high) => "the possible range: at most " + Number(high, fault.Unit),
        ({ } low, null) => "the possible range: at least " + Number(low, fault.Unit),
        _ => Number(fault.Low, "") + " to " + Number(fault.High, fault.Unit),
    };

    private static string Number(double? value, string unit)
    {
        string text = value is { } number ? number.ToString("0.####", CultureInfo.InvariantCulture) : "?";
        return unit.Length == 0 ? text : text + " " + unit;
    }
}
