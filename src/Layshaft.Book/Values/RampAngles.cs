using System.Globalization;
using System.Text.RegularExpressions;
using Layshaft.Book.Shapes;
using UnitsNet;

namespace Layshaft.Book.Values;

/// <summary>The ramps of a plate differential, drive/coast, each the angle to the plane of rotation in whole degrees: <c>45°/60°</c>.</summary>
/// <param name="DriveDegrees">Ramp that works under power.</param>
/// <param name="CoastDegrees">Ramp that works on the overrun.</param>
public readonly partial record struct RampAngles(int DriveDegrees, int CoastDegrees)
{
    /// <summary>A flatter ramp would jam.</summary>
    public const int Least = 15;

    /// <summary>At this angle a ramp does not push.</summary>
    public const int Most = 90;

    /// <summary>What to write.</summary>
    public const string What = "two ramp angles as drive/coast";

    /// <summary>How it is written.</summary>
    public const string Example = "45°/60°";

    /// <summary>Angle of the ramp that works under power.</summary>
    public Angle Drive => Angle.FromDegrees(DriveDegrees);

    /// <summary>Angle of the ramp that works on the overrun.</summary>
    public Angle Coast => Angle.FromDegrees(CoastDegrees);

    /// <summary>Reads <c>45°/60°</c>.</summary>
    public static Parsed<RampAngles> Parse(string text)
    {
        if (Form().Match(text) is not { Success: true } form)
        {
            return Parsed.Bad<RampAngles>($"'{text[..Math.Min(text.Length, 60)]}' is not a pair of ramp angles.");
        }

        var angles = new RampAngles(Degrees(form, "drive"), Degrees(form, "coast"));
        return !form.Groups["sign"].Success
            ? Parsed.Bad<RampAngles>($"'{text}' has no degree sign.", $"Did you mean {angles}?")
            : angles is { DriveDegrees: >= Least and <= Most, CoastDegrees: >= Least and <= Most }
                ? Parsed.Good(angles)
                : Parsed.Bad<RampAngles>("A ramp angle must be from 15° to 90°.", "Write the angle to the plane of rotation: 90° does not push, a smaller angle locks more.");
    }

    /// <summary>The ramps as the book writes them, drive/coast.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{DriveDegrees}°/{CoastDegrees}°");

    private static int Degrees(Match form, string name) => int.Parse(form.Groups[name].ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^\s*(?<drive>[1-9][0-9]{0,2})(?:(?<sign>[ \u00A0\u202F]*°)\s*/\s*(?<coast>[1-9][0-9]{0,2})[ \u00A0\u202F]*°|\s*/\s*(?<coast>[1-9][0-9]{0,2}))\s*\z", RegexOptions.ExplicitCapture)]
    private static partial Regex Form();
}
