namespace Layshaft.Engineering.Life;

/// <summary>An inspection of an open unit, or of one part in it.</summary>
/// <param name="Unit">Serial number of the unit.</param>
/// <param name="UnitUse">The unit's usage at the inspection.</param>
/// <param name="IsWorn">Whether the part was found worn, damaged or broken.</param>
public readonly record struct Sighting(string Unit, Use UnitUse, bool IsWorn);
