namespace Layshaft.Site.Charts.Stack;

/// <summary>
/// Radii of parts, mm. A gear's follow from its teeth and module (addendum 1 m, dedendum 1.25 m: ISO 53, profile A);
/// those of other parts are usual proportions to their shaft, good for an outline, unless the caller gave one.
/// </summary>
internal static class StackRadii
{
    /// <exception cref="ArgumentException">A gear without teeth or module.</exception>
    public static double Outer(StackPart part, StackShaft shaft)
    {
        var bore = shaft.Diameter / 2;
        return part.Kind switch
        {
            StackPartKind.Gear => Pitch(part) + part.Module!.Value,
            StackPartKind.DogRing => part.OuterDiameter / 2 ?? (bore * 2.15),
            StackPartKind.Hub => part.OuterDiameter / 2 ?? (bore * 1.6),
            StackPartKind.Bearing => part.OuterDiameter / 2 ?? (bore * 2.0),
            StackPartKind.Seal => part.OuterDiameter / 2 ?? (bore * 1.5),
            _ => throw new ArgumentException("A part of the drawing is of an unknown kind.", nameof(part)),
        };
    }

    public static double Pitch(StackPart gear) =>
        gear is { Teeth: > 0, Module: > 0 } && double.IsFinite(gear.Module.Value)
            ? gear.Teeth.Value * gear.Module.Value / 2
            : throw new ArgumentException("A gear in the drawing needs teeth and module above 0.", nameof(gear));

    public static double Root(StackPart gear) => Pitch(gear) - (1.25 * gear.Module!.Value);
}
