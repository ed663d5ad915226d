using UnitsNet;

namespace Layshaft.Engineering.Gearing;

/// <summary>One point of a torque curve.</summary>
/// <param name="EngineSpeed">Engine speed.</param>
/// <param name="Torque">Torque at the crankshaft at full throttle.</param>
public sealed record TorquePoint(RotationalSpeed EngineSpeed, Torque Torque);
