using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>What is known of a car, unchecked; <see cref="Vehicle.Create"/> checks it.</summary>
public sealed record VehicleSpec
{
    /// <summary>Mass on the road, driver and fuel included, 50 to 50 000 kg.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Drag coefficient × frontal area, 0 to 10 m².</summary>
    public required Area DragArea { get; init; }

    /// <summary>Lift coefficient × area, downward positive, 0 to 10 m².</summary>
    public Area DownforceArea { get; init; }

    /// <summary>Share of the downforce on the driven axle, 0 to 1.</summary>
    public double DownforceDrivenShare { get; init; } = 0.5;

    /// <summary>Rolling resistance coefficient at rest f₀, 0 to 0.2.</summary>
    public double RollingCoefficient { get; init; } = 0.013;

    /// <summary>
    /// The speed v₀ at which the rolling coefficient has doubled, f = f₀·(1 + v/v₀); 44.73 m/s in a common course formula;
    /// null for a constant coefficient.
    /// </summary>
    public Speed? RollingDoublesAt { get; init; }

    /// <summary>Share of the engine's power that comes to the wheels, 0.3 to 1. An assumption unless measured: print it.</summary>
    public required double DrivelineEfficiency { get; init; }

    /// <summary>
    /// Efficiency of a pair of straight-cut gears of 25 teeth each, 0.9 to 1; null if it is not known. With <see cref="AxleEfficiency"/>
    /// it replaces <see cref="DrivelineEfficiency"/>.
    /// </summary>
    public double? MeshEfficiency { get; init; }

    /// <summary>Efficiency of the final drive alone, 0.5 to 1; null if it is not known.</summary>
    public double? AxleEfficiency { get; init; }

    /// <summary>Moment of inertia of all wheels, hubs and drive shafts about their axles, 0 to 200 kg·m².</summary>
    public MassMomentOfInertia WheelInertia { get; init; }

    /// <summary>Moment of inertia of crankshaft, flywheel, clutch and input shaft, 0 to 20 kg·m².</summary>
    public MassMomentOfInertia EngineInertia { get; init; }

    /// <summary>Which wheels are driven.</summary>
    public required DrivenAxle DrivenAxle { get; init; }

    /// <summary>Share of the weight on the driven axle at rest, 0.1 to 0.9; not used with all wheels driven.</summary>
    public double DrivenShare { get; init; } = 0.5;

    /// <summary>Height of the centre of gravity, 0 to 3 m.</summary>
    public required Length CentreOfGravityHeight { get; init; }

    /// <summary>Wheelbase, 0.8 to 10 m.</summary>
    public required Length Wheelbase { get; init; }

    /// <summary>Longitudinal grip coefficient of the driven tyres on this road, 0.05 to 5.</summary>
    public required double Grip { get; init; }

    /// <summary>Time without drive at each shift, 0 to 3 s.</summary>
    public Duration ShiftTime { get; init; }
}
