using Layshaft.Book.Reading;

namespace Layshaft.Site.Photos;

/// <summary>Looks at a photo's file without decoding it.</summary>
public static class PhotoFile
{
    /// <summary>Looks at a file on disk; a file that cannot be opened is a problem, not an exception.</summary>
    /// <param name="path">The file.</param>
    /// <param name="limits">How large it may be; <see cref="PhotoLimits.Default"/> if null.</param>
    /// <exception cref="ArgumentException">The path is null or blank.</exception>
    public static PhotoInspection Inspect(string path, PhotoLimits? limits = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        try
        {
            using var content = RegularFile.Open(path);
            return Inspect(content, Path.GetFileName(path), limits);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return PhotoProblems.Refuse(PhotoProblems.CannotOpen(Path.GetFileName(path), e));
        }
    }

    /// <summary>Looks at an open file. Reads its header and leaves the position anywhere.</summary>
    /// <remarks>
    /// That a JPEG's data end too early shows only when it is decoded, so <see cref="PhotoRenditions.Make(string, RenditionSettings?, PhotoLimits?)"/> tells it.
    /// </remarks>
    /// <param name="content">A stream that can seek.</param>
    /// <param name="fileName">The name to speak of in messages; its extension is compared with the content.</param>
    /// <param name="limits">How large it may be; <see cref="PhotoLimits.Default"/> if null.</param>
    /// <exception cref="ArgumentException">The stream cannot seek, or the name is null or blank.</exception>
    public static PhotoInspection Inspect(Stream content, string fileName, PhotoLimits? limits = null) => Inspect(content, fileName, limits, withDecoder: true);

    /// <summary>Looks at an open file as <see cref="Inspect(Stream, string, PhotoLimits?)"/> does, without loading a picture library for what only that can tell.</summary>
    /// <param name="content">A stream that can seek.</param>
    /// <param name="fileName">The name to speak of.</param>
    /// <returns>What the header tells; its turn and colours may be others.</returns>
    /// <exception cref="ArgumentException">The stream cannot seek, or the name is null or blank.</exception>
    public static PhotoInspection InspectHead(Stream content, string fileName) => Inspect(content, fileName, null, withDecoder: false);

    private static PhotoInspection Inspect(Stream content, string fileName, PhotoLimits? limits, bool withDecoder)
    {
        ArgumentNullException.ThrowIfNull(content);
        ArgumentException.ThrowIfNullOrWhiteSpace(fileName);
        if (!content.CanSeek)
        {
            throw new ArgumentException("The stream must be able to seek.", nameof(content));
        }

        limits ??= PhotoLimits.Default;
        if (content.Length == 0)
        {
            return PhotoProblems.Refuse(PhotoProblems.Empty(fileName));
        }

        if (content.Length > limits.MaxFileBytes)
        {
            return PhotoProblems.Refuse(PhotoProblems.FileTooLarge(fileName, content.Length, limits));
        }

        content.Position = 0;
        var head = new byte[(int)Math.Min(PhotoContent.HeadLength, content.Length)];
        content.ReadExactly(head);
        var (format, instead) = PhotoContent.Tell(head);
        if (format is not { } known)
        {
            return PhotoProblems.Refuse(PhotoProblems.NotAPhoto(fileName, instead));
        }

        var (outcome, facts) = PhotoHeader.Read(content, known, limits, withDecoder);
        return outcome switch
        {
            HeaderOutcome.CutShort => PhotoProblems.Refuse(PhotoProblems.CutShort(fileName)),
            HeaderOutcome.Damaged => PhotoProblems.Refuse(PhotoProblems.Damaged(fileName, known)),
            _ when withDecoder && known is PhotoFormat.Heic or PhotoFormat.Avif && !MagickLibrary.IsHere => PhotoProblems.Refuse(PhotoProblems.NoDecoder(fileName, known)),
            _ when facts!.Pixels > limits.MaxPixels => PhotoProblems.Refuse(PhotoProblems.TooManyPixels(fileName, facts, limits)),
            _ when facts!.WorkingBytes > limits.MaxWorkingBytes => PhotoProblems.Refuse(PhotoProblems.TooMuchMemory(fileName, facts)),
            _ => new(facts, PhotoProblems.WrongExtension(fileName, known)),
        };
    }
}
