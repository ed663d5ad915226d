namespace Layshaft.Site.Publishing.Register;

/// <summary>
/// Every file of a site that we wrote, in order of path: what it was made from, what it holds, and its time when we last saw it
/// whole. Immutable.
/// </summary>
internal sealed class SiteRegister
{
    private readonly RegisterRow[] _rows;
    private readonly IReadOnlyList<ContentHash> _marks;

    /// <summary>A register.</summary>
    /// <param name="paths">The paths.</param>
    /// <param name="rows">What is known of each.</param>
    /// <param name="keys">The key of what each was made from; none where the next publish shall make it again.</param>
    /// <param name="marks">The marks of groups, by their number less one.</param>
    internal SiteRegister(PathTable paths, RegisterRow[] rows, HashColumn keys, IReadOnlyList<ContentHash> marks) =>
        (Paths, _rows, Keys, _marks) = (paths, rows, keys, marks);

    /// <summary>The register of nothing.</summary>
    internal static SiteRegister None { get; } = new(PathTable.None, [], HashColumn.None, []);

    /// <summary>The paths of the files.</summary>
    internal PathTable Paths { get; }

    /// <summary>The keys of what they were made from, see <see cref="PlannedOutput"/>; none where the next publish shall make a file again.</summary>
    internal HashColumn Keys { get; }

    /// <summary>How many files there are.</summary>
    internal int Count => _rows.Length;

    /// <summary>What is known of a file.</summary>
    /// <param name="index">Its place in the order.</param>
    internal RegisterRow this[int index] => _rows[index];

    /// <summary>The marks of groups, by their number less one.</summary>
    internal IReadOnlyList<ContentHash> Marks => _marks;

    /// <summary>When it was written, in ticks; 0 where it was not.</summary>
    internal long Noted { get; init; }

    /// <summary>A file of a time before this one that has the size and time that are noted is as it was: a later change would show.</summary>
    internal long TrustBefore => DiskClock.FreshFrom(Noted);

    /// <summary>The hash of it as it was read; null where it was not.</summary>
    internal ContentHash? Hash { get; init; }

    /// <summary>The hash of the list of files in the site that it is of; null where there is none.</summary>
    internal ContentHash? List { get; init; }

    /// <summary>The mark of a file's group, see <see cref="OutputGroup"/>; null where it has none.</summary>
    /// <param name="index">Which file.</param>
    internal ContentHash? MarkOf(int index) => _rows[index].Group is > 0 and var group ? _marks[group - 1] : null;

    /// <summary>What is known of the file at a path, if there is one.</summary>
    /// <param name="path">The path.</param>
    internal RegisterRow? Find(string path) => Paths.IndexOf(path) is >= 0 and var index ? _rows[index] : null;

    /// <summary>The register of a site whose list is another than that which was recorded.</summary>
    /// <param name="manifest">The site's list.</param>
    /// <param name="list">The list's hash.</param>
    /// <param name="recorded">What was recorded: of files with the same bytes the rest is known.</param>
    internal static SiteRegister Of(SiteManifest manifest, ContentHash list, SiteRegister recorded)
    {
        var paths = PathTable.Of(manifest.Entries.Select(e => e.Path), out _);
        int[] known = [.. manifest.Entries.Select(e => recorded.Paths.IndexOf(e.Path) is >= 0 and var place && recorded[place] is var row && row.Sha256 == e.Sha256 && row.Size == e.Size ? place : -1)];
        RegisterRow[] rows = [.. manifest.Entries.Select((e, i) => known[i] >= 0 ? recorded[known[i]] : new RegisterRow { Sha256 = e.Sha256, Size = e.Size })];
        var keys = HashColumn.Of(rows.Length, i => known[i] >= 0 ? recorded.Keys[known[i]] : null);
        return new(paths, rows, keys, recorded._marks) { Noted = recorded.Noted, Hash = recorded.Hash, List = list };
    }
}
