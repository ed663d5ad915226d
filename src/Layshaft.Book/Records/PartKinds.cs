using UnitsNet;

namespace Layshaft.Book.Records;

/// <summary>What a kind of part may be described with: the damage terms of its findings and the quantities of its measures.</summary>
public static class PartKinds
{
    private static readonly TermFamily[] Every = Enum.GetValues<TermFamily>();

    /// <summary>The families of damage terms that apply to a kind of part.</summary>
    public static IReadOnlyList<TermFamily> TermsOf(PartKind kind) => kind switch
    {
        PartKind.Gear or PartKind.DropGear or PartKind.Idler => [TermFamily.GearTooth, TermFamily.Engagement, TermFamily.Bearing],
        PartKind.DogRing or PartKind.Hub or PartKind.Selector => [TermFamily.Engagement, TermFamily.GearTooth],
        PartKind.Bearing => [TermFamily.Bearing],
        PartKind.Shaft => [TermFamily.GearTooth, TermFamily.Bearing, TermFamily.Engagement],
        PartKind.FinalDrive or PartKind.DifferentialGear => [TermFamily.GearTooth, TermFamily.Engagement],
        PartKind.FrictionPlate or PartKind.Spring or PartKind.Clutch => [TermFamily.Friction],
        PartKind.RampRing => [TermFamily.Friction, TermFamily.GearTooth],
        PartKind.SynchroRing or PartKind.Chain or PartKind.Sensor => [TermFamily.Mechanism],
        PartKind.Drum or PartKind.Ratchet or PartKind.Interlock => [TermFamily.Mechanism, TermFamily.Engagement],
        PartKind.Pump => [TermFamily.Mechanism, TermFamily.GearTooth],
        _ => Every,
    };

    /// <summary>Whether a measure of a kind of part may be this kind of quantity.</summary>
    public static bool Measures(PartKind kind, IQuantity quantity) => kind switch
    {
        PartKind.FrictionPlate or PartKind.SynchroRing or PartKind.Pump or PartKind.Chain or PartKind.Sensor => quantity is Length,
        PartKind.RampRing or PartKind.DifferentialGear or PartKind.Drum or PartKind.Ratchet or PartKind.Interlock or PartKind.Idler => quantity is Length or Angle,
        PartKind.Spring => quantity is Length or Force,
        PartKind.Clutch => quantity is Length or Force or Mass,
        _ => true,
    };

    /// <summary>The quantities that a measure of a kind of part may be, in words.</summary>
    public static string QuantitiesOf(PartKind kind) => kind switch
    {
        PartKind.FrictionPlate or PartKind.SynchroRing or PartKind.Pump or PartKind.Chain or PartKind.Sensor => "a length",
        PartKind.Spring => "a length or a force",
        PartKind.Clutch => "a length, a force or a mass",
        PartKind.RampRing or PartKind.DifferentialGear or PartKind.Drum or PartKind.Ratchet or PartKind.Interlock or PartKind.Idler => "a length or an angle",
        _ => "a length, an angle, a force, a torque or a mass",
    };
}
