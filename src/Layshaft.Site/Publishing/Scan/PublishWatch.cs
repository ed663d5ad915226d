using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Publishing;

/// <summary>
/// Tells whether anything changed since the last publish by looking at names, sizes and times alone, as version control
/// does: no file of the book is opened. Files so young that a change within one tick of the disk's clock could hide in
/// their time are compared by content.
/// </summary>
public sealed class PublishWatch
{
    private const int MostFresh = 5000;

    private readonly StateFolder _state;
    private readonly string _book;
    private readonly QuickHash _inputs;
    private TreeDigest? _seen;
    private readonly IReadOnlyList<(string Path, string Sha256)>? _fresh;

    private PublishWatch(StateFolder state, string book, QuickHash inputs, IReadOnlyList<(string Path, string Sha256)>? fresh, TreeDigest seen) =>
        (_state, _book, _inputs, _fresh, _seen) = (state, book, inputs, fresh, seen);

    /// <summary>Looks at everything that a site is made from; before anything of it is read.</summary>
    /// <param name="book">The book's folder.</param>
    /// <param name="output">The site's folder.</param>
    /// <param name="templates">The program's own templates; a shop's own are in its book.</param>
    /// <returns>The watch; null where it cannot look, and everything has to be gone through.</returns>
    public static PublishWatch? Begin(string book, string output, TemplateFolders templates)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(templates);
        try
        {
            var state = new StateFolder(OutputFolder.RealPath(output));
            var from = DiskClock.FreshFrom();
            var root = OutputFolder.RealPath(book);
            var ofBook = TreeDigest.Of(root, state.Output, hidden: false, from, keepsFiles: true);
            var ofTemplates = TreeDigest.Of(templates.Ours, null, hidden: true, from);
            var inputs = ofBook.Value + QuickHash.Of(string.Create(
                CultureInfo.InvariantCulture, $"{ProgramFingerprint.Value}\n{root}\n{ofTemplates.Value.High:x16}{ofTemplates.Value.Low:x16}"));
            return new PublishWatch(state, root, inputs, Contents([.. ofBook.Fresh, .. ofTemplates.Fresh]), ofBook);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or AggregateException)
        {
            return null;
        }
    }

    /// <summary>
    /// The book's files as the watch saw them, once; null where the book has to be looked through once more, because something in it is worth a word.
    /// </summary>
    public FolderBookFiles? BookFiles()
    {
        // A site within its book was left out of the look.
        var isApart = !_state.Output.StartsWith(_book + Path.DirectorySeparatorChar, StringComparison.OrdinalIgnoreCase);
        var seen = Interlocked.Exchange(ref _seen, null);
        return isApart && seen is { HasLinks: false, Depth: < FolderBookFiles.DeepestFolder } ? FolderBookFiles.Of(_book, seen.Files) : null;
    }

    /// <summary>What the last publish had to say, if nothing at all has changed since; null otherwise.</summary>
    public IReadOnlyList<string>? Unchanged()
    {
        try
        {
            if (_fresh is null || SiteStamp.Read(_state.Stamp) is not { } stamp || stamp.Inputs != Inputs()
                || Path.Exists(_state.Made) || !File.Exists(_state.Changes))
            {
                return null;
            }

            // While another publish is at work, nothing can be said.
            using var held = new FileStream(_state.Lock, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
            var site = TreeDigest.Of(_state.Output, null, hidden: true, DiskClock.FreshFrom());
            if (site.Value != stamp.Site || stamp.Fresh.Any(f => !File.Exists(f.Path) || OldSite.HashOf(f.Path).ToString() != f.Sha256))
            {
                return null;
            }

            if (stamp.Fresh.Count > 0 && Contents(site.Fresh) is { } young)
            {
                // Their times have come of age: the next look need not open them.
                new DiskWork().Replace(_state.Stamp, stream => (stamp with { Fresh = [.. _fresh, .. YoungSecret(), .. young] }).Write(stream));
            }

            return stamp.Words;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or AggregateException)
        {
            return null;
        }
    }

    /// <summary>Notes what the book looked like when the watch began, and the site as the publish left it.</summary>
    /// <param name="result">What the publish did.</param>
    /// <param name="words">What it had to say.</param>
    public void Note(PublishResult result, IReadOnlyList<string> words)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(words);
        try
        {
            if (_fresh is not null && (result.Site ?? Look()) is { Fresh.Count: <= MostFresh } site)
            {
                var stamp = new SiteStamp(Inputs(), site.Number, [.. _fresh, .. YoungSecret(), .. site.Fresh], words);
                new DiskWork().Replace(_state.Stamp, stamp.Write);
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or AggregateException)
        {
            // Without a stamp the next publish goes through everything, which is slower and as right.
        }
    }

    private SiteAfterPublish? Look()
    {
        var site = TreeDigest.Of(_state.Output, null, hidden: true, DiskClock.FreshFrom());
        return Contents(site.Fresh) is { } fresh ? new(site.Value, fresh) : null;
    }

    // The secret is made by the first publish, so it is looked at when it is needed. Its file is hidden and so no part of the walk;
    // who may read it is worth a warning, so that counts too.
    private QuickHash Inputs()
    {
        var path = Path.Combine(_book, ShopSecret.FileName);
        var file = new FileInfo(path);
        var (size, time) = file.Exists ? (file.Length, file.LastWriteTimeUtc.Ticks) : (-1, 0);
        var rights = file.Exists && !OperatingSystem.IsWindows() ? ((int)file.UnixFileMode).ToString(CultureInfo.InvariantCulture) : string.Empty;
        var given = Environment.GetEnvironmentVariable(ShopSecret.VariableName) is { } text
            ? Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))
            : string.Empty;
        return _inputs + QuickHash.Of($"{rights}\n{given}", size, time);
    }

    private (string Path, string Sha256)[] YoungSecret()
    {
        var path = Path.Combine(_book, ShopSecret.FileName);
        return File.Exists(path) && File.GetLastWriteTimeUtc(path).Ticks >= DiskClock.FreshFrom() ? [(path, OldSite.HashOf(path).ToString())] : [];
    }

    // Null when there are too many to compare each time, or one has no content of its own, such as a pipe or a link.
    private static (string Path, string Sha256)[]? Contents(IReadOnlyList<string> paths)
    {
        try
        {
            return paths.Count > MostFresh ? null : [.. paths.Select(p => (p, OldSite.HashOf(p).ToString()))];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
