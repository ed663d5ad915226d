namespace Layshaft.Site.Photos;

/// <summary>What is wrong with a photo's file.</summary>
public enum PhotoProblemKind
{
    /// <summary>The content is something else: an SVG drawing, a PDF, a web page, a video.</summary>
    NotAPhoto,

    /// <summary>A photo of another format than its file name says. The photo can be used.</summary>
    WrongExtension,

    /// <summary>The file ends before the picture does.</summary>
    CutShort,

    /// <summary>More pixels, bytes or memory than the limits allow.</summary>
    TooLarge,

    /// <summary>The file cannot be opened, or its content is damaged.</summary>
    Unreadable,
}

/// <summary>A reason that the technician can act on, why a photo cannot be used, or what is odd about it.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Message">One or two sentences: what is wrong, and what to do.</param>
public sealed record PhotoProblem(PhotoProblemKind Kind, string Message);
