using System.Globalization;

namespace Layshaft.Site.Photos;

/// <summary>Words the problems: what is wrong, and what to do.</summary>
internal static class PhotoProblems
{
    private const string CopyAgain = "Copy it from the phone or camera again.";

    public static PhotoInspection Refuse(PhotoProblem problem) => new(null, problem);

    public static PhotoProblem Empty(string file) =>
        new(PhotoProblemKind.CutShort, $"{file} is an empty file. {CopyAgain}");

    public static PhotoProblem CannotOpen(string file, Exception why) => new(PhotoProblemKind.Unreadable, why switch
    {
        FileNotFoundException or DirectoryNotFoundException => $"{file} does not exist. Add the photo, or correct its name in the job file.",
        UnauthorizedAccessException => $"{file} cannot be read. Check its permissions.",
        _ => $"{file} cannot be opened. Close it in other programs and try again.",
    });

    public static PhotoProblem NotAPhoto(string file, string instead) =>
        new(PhotoProblemKind.NotAPhoto, $"{file} is {instead}, not a photo. Use a JPEG, PNG, WebP, HEIC or AVIF image.");

    public static PhotoProblem CutShort(string file) =>
        new(PhotoProblemKind.CutShort, $"{file} is incomplete: the file ends before the image does. {CopyAgain}");

    public static PhotoProblem CutShort(string file, int rows, int of) => new(
        PhotoProblemKind.CutShort,
        string.Create(CultureInfo.InvariantCulture, $"{file} is incomplete: the image ends at {100L * rows / of} % of its height. {CopyAgain}"));

    public static PhotoProblem Damaged(string file, PhotoFormat format) =>
        new(PhotoProblemKind.Unreadable, $"{file} is a damaged {Word(format)} image. {CopyAgain}");

    public static PhotoProblem NoDecoder(string file, PhotoFormat format) =>
        new(PhotoProblemKind.Unreadable, $"{file} is a {Word(format)} image, which this system cannot read. Save it as JPEG.");

    public static PhotoProblem FileTooLarge(string file, long bytes, PhotoLimits limits) => new(
        PhotoProblemKind.TooLarge,
        string.Create(CultureInfo.InvariantCulture, $"{file} is too large: {bytes >> 20} MB, and the limit is {limits.MaxFileBytes >> 20} MB. Save a smaller version."));

    public static PhotoProblem TooManyPixels(string file, PhotoFacts facts, PhotoLimits limits) => new(
        PhotoProblemKind.TooLarge,
        string.Create(
            CultureInfo.InvariantCulture,
            $"{file} is too large: {facts.StoredWidth} × {facts.StoredHeight} pixels, and the limit is {limits.MaxPixels / 1e6:0.##} million. Save a smaller version."));

    public static PhotoProblem TooMuchMemory(string file, PhotoFacts facts) => new(
        PhotoProblemKind.TooLarge,
        string.Create(
            CultureInfo.InvariantCulture,
            $"{file} is too large: decoding {facts.StoredWidth} × {facts.StoredHeight} pixels of {Word(facts.Format)} takes about {facts.WorkingBytes >> 20} MB of memory. Save a smaller version, or a JPEG."));

    public static PhotoProblem? WrongExtension(string file, PhotoFormat format)
    {
        string[] fitting = format switch
        {
            PhotoFormat.Jpeg => [".jpg", ".jpeg", ".jpe", ".jfif"],
            PhotoFormat.Png => [".png"],
            PhotoFormat.WebP => [".webp"],
            PhotoFormat.Heic => [".heic", ".heif", ".hif"],
            _ => [".avif"],
        };
        return fitting.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase)
            ? null
            : new(PhotoProblemKind.WrongExtension, $"{file} contains a {Word(format)} image. Rename it to {Path.ChangeExtension(file, fitting[0])}.");
    }

    private static string Word(PhotoFormat format) => format switch
    {
        PhotoFormat.Jpeg => "JPEG",
        PhotoFormat.Png => "PNG",
        PhotoFormat.WebP => "WebP",
        PhotoFormat.Heic => "HEIC",
        _ => "AVIF",
    };
}
