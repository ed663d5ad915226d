using System.Text;
using Layshaft.Book.Values;

namespace Layshaft.Site.Sending;

/// <summary>A report with everything inside one file.</summary>
/// <param name="Content">The file; null when it cannot be made as small as asked.</param>
/// <param name="Size">How large it is; when it cannot be made, how large it is at least.</param>
/// <param name="Reduced">By how many steps the pictures were reduced; 0 when they are as on the site.</param>
/// <param name="Missing">What the page names and could not be put inside, such as a shop's own import of a stylesheet.</param>
public sealed record OneFileReport(ReadOnlyMemory<byte>? Content, FileSize Size, int Reduced, IReadOnlyList<string> Missing)
{
    /// <summary>Makes a page stand alone within a size.</summary>
    /// <param name="path">Path of the page in the site.</param>
    /// <param name="html">The page.</param>
    /// <param name="read">Reads a stylesheet, font or logo of the site; null when there is none.</param>
    /// <param name="pictures">Each picture of the page by its path in the site, largest first; each step takes the next of all of them.</param>
    /// <param name="site">Where the site is; null drops the links to its other pages.</param>
    /// <param name="limit">The most that the file may weigh.</param>
    public static OneFileReport Make(
        string path,
        string html,
        Func<string, ReadOnlyMemory<byte>?> read,
        IReadOnlyDictionary<string, IReadOnlyList<ReadOnlyMemory<byte>>> pictures,
        WebAddress? site,
        FileSize limit)
    {
        ArgumentNullException.ThrowIfNull(pictures);
        var page = OneFilePage.Of(path, html, read, site);
        IReadOnlyList<ReadOnlyMemory<byte>>[] shown = [.. page.Pictures.Select(p => SizesOf(p, read, pictures))];
        var missing = page.Missing.Concat(page.Pictures.Where((_, i) => shown[i] is [{ IsEmpty: true }])).ToArray();
        var steps = shown.Length == 0 ? 1 : shown.Max(s => s.Count);
        var bare = (long)Encoding.UTF8.GetByteCount(page.Html) - page.Pictures.Select((_, i) => (long)OneFilePage.MarkOf(i).Length).Sum();
        var least = long.MaxValue;
        for (var step = 0; step < steps; step++)
        {
            ReadOnlyMemory<byte>[] chosen = [.. shown.Select(s => s[Math.Min(step, s.Count - 1)])];
            var size = bare + chosen.Sum(c => (long)Address(c).Length);
            least = Math.Min(least, size);
            if (size <= limit.Bytes)
            {
                return new OneFileReport(Fill(page, chosen), new FileSize(size), step, missing);
            }
        }

        return new OneFileReport(null, new FileSize(least), steps - 1, missing);
    }

    // A picture that comes in one size only, such as the shop's logo, is a file of the site like a stylesheet.
    private static IReadOnlyList<ReadOnlyMemory<byte>> SizesOf(
        string path,
        Func<string, ReadOnlyMemory<byte>?> read,
        IReadOnlyDictionary<string, IReadOnlyList<ReadOnlyMemory<byte>>> pictures) =>
        pictures.TryGetValue(path, out var sizes) && sizes.Count > 0 ? sizes : [read(path) ?? ReadOnlyMemory<byte>.Empty];

    private static byte[] Fill(OneFilePage page, ReadOnlyMemory<byte>[] chosen)
    {
        var html = new StringBuilder(page.Html);
        for (var i = 0; i < chosen.Length; i++)
        {
            html.Replace(OneFilePage.MarkOf(i), Address(chosen[i]));
        }

        return Encoding.UTF8.GetBytes(html.ToString());
    }

    private static string Address(ReadOnlyMemory<byte> jpeg) => InlineStyles.DataAddress("picture.jpg", jpeg);
}
