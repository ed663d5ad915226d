using System.Globalization;
using Layshaft.Book.Places;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Defaults;

/// <summary>
/// Photos in the job's folder that are named after a part, such as <c>ring-12.jpg</c>, <c>ring-12-before.jpg</c> or
/// <c>ring-12-2.jpg</c>, with the name of the part as their caption. Other photos are published only if the job lists them.
/// </summary>
internal static class PhotoDefaults
{
    public static Job Complete(Job job, Gearbox box, IBookFiles files)
    {
        var folder = $"{job.Folder}/photos/";
        List<Photo>? added = null;
        foreach (var path in files.Below(folder).Select(f => f.Path))
        {
            var file = path[folder.Length..];
            if (!job.Photos.Any(p => p.File == file) && Named(file, box) is { } named && Scalars.IsFileName(file))
            {
                (added ??= []).Add(new Photo(Origin.Of(Place.WholeFile(path)), file, named.Part.Name, named.Moment, null, false, false, []));
            }
        }

        if (added is null)
        {
            return job;
        }

        var before = added.Where(p => p.Moment == PhotoMoment.Before).ToDictionary(p => Path.GetFileNameWithoutExtension(p.File)[..^"before".Length], p => p.File, StringComparer.Ordinal);
        Photo[] photos = [.. added.Select(p => p.Moment == PhotoMoment.After && before.TryGetValue(Path.GetFileNameWithoutExtension(p.File)[..^"after".Length], out var pair) ? p with { PairedWith = pair } : p)];
        var ofPart = photos.ToLookup(p => Named(p.File, box)!.Value.Part.Id, p => p.File, StringComparer.Ordinal);
        return job with
        {
            Photos = [.. job.Photos, .. Numbered(photos)],
            Findings = [.. job.Findings.Select((f, i) => ofPart.Contains(f.Part) && job.Findings.Take(i).All(e => e.Part != f.Part) ? f with { Photos = [.. f.Photos, .. ofPart[f.Part]] } : f)],
        };
    }

    // Captions are read aloud in place of the photos, so no two may be the same.
    private static IEnumerable<Photo> Numbered(IReadOnlyList<Photo> photos) => photos
        .GroupBy(p => (p.Caption, p.Moment))
        .SelectMany(g => g.Select((p, i) => i == 0 ? p : p with { Caption = string.Create(CultureInfo.InvariantCulture, $"{p.Caption} ({i + 1})") }));

    // The longest id of a part that the name begins with: ring-1 is not meant by ring-12.jpg.
    private static (Part Part, PhotoMoment? Moment)? Named(string file, Gearbox box)
    {
        var name = Path.GetFileNameWithoutExtension(file);
        var part = box.Parts.Where(p => name.StartsWith(p.Id, StringComparison.Ordinal) && (name.Length == p.Id.Length || !char.IsAsciiLetterOrDigit(name[p.Id.Length]))).MaxBy(p => p.Id.Length);
        return part is null || file.Contains('/', StringComparison.Ordinal)
            ? null
            : (part, name.EndsWith("-before", StringComparison.Ordinal) ? PhotoMoment.Before : name.EndsWith("-after", StringComparison.Ordinal) ? PhotoMoment.After : null);
    }
}
