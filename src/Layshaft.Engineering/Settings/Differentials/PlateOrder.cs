namespace Layshaft.Engineering.Settings.Differentials;

/// <summary>What a plate of a plate differential turns with.</summary>
public enum PlateTurning
{
    /// <summary>Outer plate: its tabs turn it with the case.</summary>
    WithCase,

    /// <summary>Inner plate: its splines turn it with the side gear.</summary>
    WithSideGear,
}

/// <summary>
/// The plates of one side of a plate differential in order, from the pressure ring to the cover. The pressure ring and the cover
/// turn with the case.
/// </summary>
/// <param name="Plates">The plates; at least one.</param>
public sealed record PlateOrder(IReadOnlyList<PlateTurning> Plates)
{
    /// <summary>
    /// Friction faces: the contacts between a surface that turns with the case and one that turns with the side gear. Two like
    /// plates side by side do not slide on each other, which is how one set of plates gives several degrees of locking.
    /// </summary>
    public int Faces
    {
        get
        {
            var faces = 0;
            var before = PlateTurning.WithCase;
            foreach (var plate in Plates.Append(PlateTurning.WithCase))
            {
                faces += plate == before ? 0 : 1;
                before = plate;
            }

            return faces;
        }
    }
}
