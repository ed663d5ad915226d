namespace Layshaft.Engineering.Gearing;

/// <summary>A car whose figures have been checked. Immutable.</summary>
public sealed class Vehicle
{
    private Vehicle(VehicleSpec spec) => Spec = spec;

    /// <summary>The figures.</summary>
    public VehicleSpec Spec { get; }

    /// <summary>Checks the figures.</summary>
    /// <param name="spec">The figures.</param>
    /// <returns>The car, or a fault for each figure outside its range.</returns>
    public static Outcome<Vehicle> Create(VehicleSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var faults = new FaultList();
        faults.Range("mass", spec.Mass.Kilograms, 50, 50_000, "kg");
        faults.Range("drag_area", spec.DragArea.SquareMeters, 0, 10, "m²");
        faults.Range("downforce_area", spec.DownforceArea.SquareMeters, 0, 10, "m²");
        faults.Range("downforce_driven_share", spec.DownforceDrivenShare, 0, 1);
        faults.Range("rolling_coefficient", spec.RollingCoefficient, 0, 0.2);
        if (spec.RollingDoublesAt is { } doubles)
        {
            faults.Range("rolling_doubles_at", doubles.MetersPerSecond, 5, 1000, "m/s");
        }

        faults.Range("driveline_efficiency", spec.DrivelineEfficiency, 0.3, 1);
        faults.Range("mesh_efficiency", spec.MeshEfficiency ?? 1, 0.9, 1);
        faults.Range("axle_efficiency", spec.AxleEfficiency ?? 1, 0.5, 1);
        faults.Range("wheel_inertia", spec.WheelInertia.KilogramSquareMeters, 0, 200, "kg·m²");
        faults.Range("engine_inertia", spec.EngineInertia.KilogramSquareMeters, 0, 20, "kg·m²");
        faults.Range("driven_share", spec.DrivenShare, 0.1, 0.9);
        faults.Range("centre_of_gravity_height", spec.CentreOfGravityHeight.Meters, 0, 3, "m");
        faults.Range("wheelbase", spec.Wheelbase.Meters, 0.8, 10, "m");
        faults.Range("grip", spec.Grip, 0.05, 5);
        faults.Range("shift_time", spec.ShiftTime.Seconds, 0, 3, "s");
        return faults.Finish(() => new Vehicle(spec));
    }
}
