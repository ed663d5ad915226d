namespace Layshaft.Site.Photos;

/// <summary>
/// How the stored rows and columns lie in the upright picture. Values and names are those of tag 274 in TIFF 6.0 and
/// Exif (JEITA CP-3451): the first word says where stored row 0 belongs, the second where stored column 0 belongs.
/// </summary>
public enum PhotoOrientation
{
    /// <summary>1: stored upright.</summary>
    TopLeft = 1,

    /// <summary>2: mirrored left to right.</summary>
    TopRight = 2,

    /// <summary>3: turned by half a turn.</summary>
    BottomRight = 3,

    /// <summary>4: mirrored top to bottom.</summary>
    BottomLeft = 4,

    /// <summary>5: rows and columns exchanged.</summary>
    LeftTop = 5,

    /// <summary>6: to be turned a quarter clockwise; a phone held upright often writes this.</summary>
    RightTop = 6,

    /// <summary>7: rows and columns exchanged, then turned by half a turn.</summary>
    RightBottom = 7,

    /// <summary>8: to be turned a quarter anticlockwise.</summary>
    LeftBottom = 8,
}
