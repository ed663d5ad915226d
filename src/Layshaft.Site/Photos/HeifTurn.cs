namespace Layshaft.Site.Photos;

/// <summary>Puts rotations and mirrors after one another and gives the one orientation that they amount to.</summary>
internal static class HeifTurn
{
    // A quarter anticlockwise after each orientation, in the order of their values
    private static readonly int[] QuarterLeft = [0, 8, 5, 6, 7, 4, 1, 2, 3];

    // Left and right exchanged after each orientation
    private static readonly int[] MirrorLeftRight = [0, 2, 1, 4, 3, 6, 5, 8, 7];

    /// <summary>The rotation property: quarter turns anticlockwise (ISO/IEC 23008-12, 6.5.10).</summary>
    public static PhotoOrientation Then(PhotoOrientation first, int quarterTurnsLeft)
    {
        var value = (int)first;
        for (; quarterTurnsLeft > 0; quarterTurnsLeft--)
        {
            value = QuarterLeft[value];
        }

        return (PhotoOrientation)value;
    }

    /// <summary>The mirror property: top and bottom exchanged, or left and right (ISO/IEC 23008-12, 6.5.12).</summary>
    public static PhotoOrientation ThenMirror(PhotoOrientation first, bool leftAndRight)
    {
        var mirrored = (PhotoOrientation)MirrorLeftRight[(int)first];
        return leftAndRight ? mirrored : Then(mirrored, quarterTurnsLeft: 2); // Top-bottom is left-right and half a turn
    }
}
