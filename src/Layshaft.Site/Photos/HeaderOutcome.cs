namespace Layshaft.Site.Photos;

/// <summary>What reading a header came to.</summary>
internal enum HeaderOutcome
{
    /// <summary>All that was needed is there.</summary>
    Read,

    /// <summary>The file ends too early.</summary>
    CutShort,

    /// <summary>The bytes make no sense.</summary>
    Damaged,
}
