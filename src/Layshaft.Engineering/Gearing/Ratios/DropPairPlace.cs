namespace Layshaft.Engineering.Gearing;

/// <summary>Where in the line the drop pair sits: it tells how fast the shafts and the dog rings turn.</summary>
public enum DropPairPlace
{
    /// <summary>Between the mainshaft and the propeller shaft, at the back of the gearbox.</summary>
    GearboxOutput,

    /// <summary>Between the clutch and the gears.</summary>
    GearboxInput,

    /// <summary>Behind the propeller shaft, at the axle.</summary>
    Axle,
}
