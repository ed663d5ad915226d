using System.Text;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Publishing;

/// <summary>What a book and its site looked like after a publish, and what that publish had to say.</summary>
/// <param name="Inputs">The number of everything that the site is made from, see <see cref="TreeDigest"/>.</param>
/// <param name="Site">The number of the site itself.</param>
/// <param name="Fresh">Files whose times are too young to be trusted, with the hash of their content.</param>
/// <param name="Words">What the publish had to say.</param>
internal sealed record SiteStamp(QuickHash Inputs, QuickHash Site, IReadOnlyList<(string Path, string Sha256)> Fresh, IReadOnlyList<string> Words)
{
    private const string Format = "layshaft stamp 3";

    /// <summary>Reads a stamp; null when there is none that can be used.</summary>
    public static SiteStamp? Read(string path)
    {
        try
        {
            using var reader = new BinaryReader(new MemoryStream(RegularFile.ReadAll(path)), Encoding.UTF8);
            if (reader.ReadString() != Format)
            {
                return null;
            }

            var (inputs, site) = (new QuickHash(reader.ReadUInt64(), reader.ReadUInt64()), new QuickHash(reader.ReadUInt64(), reader.ReadUInt64()));
            var fresh = reader.ReadTexts().Zip(reader.ReadTexts());
            return new SiteStamp(inputs, site, [.. fresh], reader.ReadTexts());
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or FormatException or ArgumentException or OverflowException)
        {
            return null;
        }
    }

    /// <summary>Writes the stamp.</summary>
    /// <param name="to">Where to.</param>
    public void Write(Stream to)
    {
        using var writer = new BinaryWriter(to, Encoding.UTF8, leaveOpen: true);
        writer.Write(Format);
        foreach (var number in new[] { Inputs.High, Inputs.Low, Site.High, Site.Low })
        {
            writer.Write(number);
        }

        writer.WriteTexts([.. Fresh.Select(f => f.Path)]);
        writer.WriteTexts([.. Fresh.Select(f => f.Sha256)]);
        writer.WriteTexts(Words);
    }
}

/// <summary>
/// What <see cref="TreeDigest"/> would see of a site as a publish left it, worked out from what was written: what somebody does to the
/// site in the meantime then shows at the next look.
/// </summary>
/// <param name="Number">The number of the site.</param>
/// <param name="Fresh">Files whose times are too young to be trusted, with the hash of their content.</param>
internal sealed record SiteAfterPublish(QuickHash Number, IReadOnlyList<(string Path, string Sha256)> Fresh)
{
    /// <summary>Works it out.</summary>
    /// <param name="root">The site's folder.</param>
    /// <param name="ours">The files that we wrote, with their times.</param>
    /// <param name="foreign">What is not ours in it.</param>
    /// <param name="manifestPath">Where the list of our files is.</param>
    /// <param name="list">That list's hash.</param>
    /// <param name="freshFrom">From this time on (UTC ticks) a file is fresh.</param>
    /// <returns>Null where only a look can tell.</returns>
    internal static SiteAfterPublish? Of(string root, PathIndex<Trace> ours, ForeignFiles foreign, string manifestPath, ContentHash list, long freshFrom)
    {
        // Of a link, what it is known by is its own; what is young and not ours would have to be read.
        var manifest = new FileInfo(StateFolder.Place(root, manifestPath));
        if (!manifest.Exists || foreign.Entries.Any(e => e.Kind == TreeKind.Link || (e.Kind == TreeKind.File && e.Modified >= freshFrom)))
        {
            return null;
        }

        var fresh = new List<(string, string)>();
        var number = TreeDigest.NumberOf(manifestPath, manifest.Length, manifest.LastWriteTimeUtc.Ticks);
        if (manifest.LastWriteTimeUtc.Ticks >= freshFrom)
        {
            fresh.Add((manifest.FullName, list.ToString()));
        }

        foreach (var file in ours)
        {
            number += TreeDigest.NumberOf(file.Path, file.Size, file.Modified);
            if (file.Modified >= freshFrom)
            {
                fresh.Add((StateFolder.Place(root, file.Path), file.Sha256.ToString()));
            }
        }

        foreach (var file in foreign.Entries.Where(e => e.Kind == TreeKind.File))
        {
            number += TreeDigest.NumberOf(file.Path, file.Size, file.Modified);
        }

        foreach (var folder in foreign.FoldersWith(ours, manifestPath))
        {
            number += TreeDigest.NumberOfFolder(folder);
        }

        return new(number, fresh);
    }
}
