namespace Layshaft.Engineering.Gearing;

/// <summary>Efficiency of a drivetrain mesh by mesh.</summary>
/// <remarks>
/// The tooth loss factor of spur gears is H_V = π·(1/z₁ + 1/z₂)·(1 − ε_α + ε₁² + ε₂²) (Niemann and Winter, Maschinenelemente II, from
/// memory). The contact ratios of drop gears of one cut are nearly the same, so the loss of a pair is scaled by 1/z₁ + 1/z₂ alone.
/// </remarks>
internal static class MeshLoss
{
    private const double ReferenceTeeth = 25;

    /// <summary>Efficiency from the clutch to the wheels in a gear; that of the whole driveline where it is not known mesh by mesh.</summary>
    internal static double Efficiency(VehicleSpec spec, Drivetrain train, int gear)
    {
        if (spec is not { MeshEfficiency: { } mesh, AxleEfficiency: { } axle })
        {
            return spec.DrivelineEfficiency;
        }

        IReadOnlyList<ToothPair> pairs = train.Gears[gear - 1].Pairs;
        double efficiency = axle * (pairs.Count == 0 ? mesh : 1);
        foreach (ToothPair pair in pairs)
        {
            efficiency *= Of(pair, mesh);
        }

        return train.DropPair is { } drop ? efficiency * Of(drop, mesh) : efficiency;
    }

    /// <summary>Efficiency of one pair.</summary>
    internal static double Of(ToothPair pair, double reference) =>
        1 - ((1 - reference) * ReferenceTeeth / 2 * ((1.0 / pair.Driver) + (1.0 / pair.Driven)));
}
