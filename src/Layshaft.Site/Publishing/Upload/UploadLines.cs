using System.Text;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Publishing.Upload;

/// <summary>
/// The list of what the host does not have yet, one file a line: first what to delete, then what to upload, each by path. Read and
/// written as a stream, since it may name every file of a large site.
/// </summary>
internal static class UploadLines
{
    /// <summary>What a list says, in its order; nothing where there is no list. Lines that are none of ours count for nothing.</summary>
    /// <param name="list">Where the list is.</param>
    internal static IEnumerable<UploadChange> In(string list)
    {
        // Opened anew each time that it is gone through: several may go through it side by side.
        using var text = File.Exists(list) ? new StreamReader(RegularFile.Open(list)) : StreamReader.Null;
        while (text.ReadLine() is { } line)
        {
            if (UploadChange.Parse(line) is { } change)
            {
                yield return change;
            }
        }
    }

    /// <summary>Writes what is to be done after a publish.</summary>
    /// <param name="stream">Where to.</param>
    /// <param name="list">What was to be done before.</param>
    /// <param name="now">What the publish did, each in order of path.</param>
    internal static void Write(Stream stream, string list, IReadOnlyList<IEnumerable<UploadChange>> now)
    {
        var before = IsInOrder(list) ? In(list) : [.. In(list).GroupBy(c => c.Path, StringComparer.Ordinal).Select(Together).Order(Order)];
        using var text = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\n" };
        foreach (var isRemoved in new[] { true, false })
        {
            foreach (var change in Merged([before.Where(c => c.Sign == UploadChange.Removed), before.Where(c => c.Sign != UploadChange.Removed), .. now]))
            {
                if (change.Sign == UploadChange.Removed == isRemoved)
                {
                    text.WriteLine(change);
                }
            }
        }
    }

    private static Comparer<UploadChange> Order { get; } = Comparer<UploadChange>.Create((one, other) =>
        (one.Sign != UploadChange.Removed).CompareTo(other.Sign != UploadChange.Removed) is var bySign and not 0 ? bySign : string.CompareOrdinal(one.Path, other.Path));

    private static UploadChange Together(IEnumerable<UploadChange> ofOnePath) => ofOnePath.Aggregate((before, now) => new(UploadChange.Merge(before.Sign, now.Sign), now.Path));

    // A list that somebody edited may be in any order.
    private static bool IsInOrder(string list)
    {
        UploadChange? last = null;
        foreach (var change in In(list))
        {
            if (last is { } before && Order.Compare(before, change) >= 0)
            {
                return false;
            }

            last = change;
        }

        return true;
    }

    // Several lists, each in order of path: what an earlier one says of a path came before what a later one says.
    private static IEnumerable<UploadChange> Merged(IReadOnlyList<IEnumerable<UploadChange>> lists)
    {
        var heads = lists.Select(l => l.GetEnumerator()).ToList();
        try
        {
            heads.RemoveAll(h => !h.MoveNext());
            while (heads.Count > 0)
            {
                var first = heads.MinBy(h => h.Current.Path, StringComparer.Ordinal)!.Current.Path;
                var same = heads.Where(h => h.Current.Path == first).ToArray();
                yield return Together(same.Select(h => h.Current).ToArray());
                heads.RemoveAll(h => same.Contains(h) && !h.MoveNext());
            }
        }
        finally
        {
            heads.ForEach(h => h.Dispose());
        }
    }
}

/// <summary>What has to be done with a file at the host.</summary>
/// <param name="Sign"><c>-</c> delete it; <c>+</c> (new), <c>*</c> (changed) and <c>=</c> (put back as it was) upload it.</param>
/// <param name="Path">Its path in the site.</param>
internal readonly record struct UploadChange(char Sign, string Path)
{
    internal const char Added = '+';
    internal const char Changed = '*';
    internal const char Restored = '=';
    internal const char Removed = '-';

    /// <summary>Reads a line of a list; null for anything else.</summary>
    internal static UploadChange? Parse(string line) =>
        line is [Added or Changed or Restored or Removed, ' ', ..] && OutputPath.ProblemWith(line[2..]) is null ? new(line[0], line[2..]) : null;

    /// <summary>
    /// What is to be done after another change came before the upload was confirmed. The host may be as it was at any moment since the
    /// last confirmed upload: for all we know, some of this was done already.
    /// </summary>
    /// <param name="before">What waits already.</param>
    /// <param name="now">What came.</param>
    internal static char Merge(char before, char now) => (before, now) switch
    {
        (Added, not Removed) => Added,
        (Removed, not Removed) => Changed,
        (Changed, not Removed) => Changed,
        _ => now,
    };

    /// <inheritdoc/>
    public override string ToString() => $"{Sign} {Path}";
}
