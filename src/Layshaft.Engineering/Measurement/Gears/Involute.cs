using UnitsNet;

namespace Layshaft.Engineering.Measurement.Gears;

/// <summary>The involute function inv α = tan α - α and its inverse (ISO 21771:2007, 4.3.2).</summary>
public static class Involute
{
    /// <summary>Below this angle in radians the difference tan α - α loses digits and its series is used.</summary>
    private const double SeriesBelowRad = 0.05;

    /// <summary>inv α.</summary>
    /// <param name="angle">Pressure angle, 0° or more and below 90°.</param>
    /// <returns>inv α in radians, 0 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    public static double Function(Angle angle) => Function(angle.Radians);

    /// <summary>The angle whose involute function has a given value.</summary>
    /// <param name="involute">inv α in radians, finite, 0 or more.</param>
    /// <returns>The pressure angle, 0° or more and below 90°.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static Angle Inverse(double involute) => Angle.FromRadians(InverseRad(involute));

    /// <summary>inv α of an angle in radians.</summary>
    internal static double Function(double angleRad)
    {
        if (!(angleRad >= 0 && angleRad < Math.PI / 2))
        {
            throw new ArgumentOutOfRangeException(nameof(angleRad), angleRad, "a pressure angle is 0° or more and below 90°");
        }

        if (angleRad >= SeriesBelowRad)
        {
            return Math.Tan(angleRad) - angleRad;
        }

        var square = angleRad * angleRad;
        return angleRad * square
            * ((1 / 3.0) + (square * ((2 / 15.0) + (square * ((17 / 315.0) + (square * ((62 / 2835.0) + (square * 1382 / 155925))))))));
    }

    /// <summary>The angle in radians whose involute function has a given value.</summary>
    internal static double InverseRad(double involute)
    {
        if (!double.IsFinite(involute) || involute < 0)
        {
            throw new ArgumentOutOfRangeException(nameof(involute), involute, "an involute function value is finite and 0 or more");
        }

        if (involute == 0)
        {
            return 0;
        }

        // Both starts lie at or above the answer (tan α - α ≥ α³/3, and tan α ≤ inv α + π/2). The function is convex, so
        // Newton's steps come down to the answer from there and cannot run away.
        var angle = Math.Min(Math.Cbrt(3 * involute), Math.Atan(involute + (Math.PI / 2)));
        for (var step = 0; step < 60; step++)
        {
            var tangent = Math.Tan(angle);
            var next = angle - ((Function(angle) - involute) / (tangent * tangent));
            if (!(next < angle) || next <= 0)
            {
                break;
            }

            angle = next;
        }

        return angle;
    }
}
