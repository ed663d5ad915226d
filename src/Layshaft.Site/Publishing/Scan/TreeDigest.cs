using System.Buffers.Binary;
using System.IO.Enumeration;
using System.Numerics;
using System.Runtime.InteropServices;
using Layshaft.Book.Reading;

namespace Layshaft.Site.Publishing;

/// <summary>
/// One number over the names, sizes and times of everything below a folder: two scans that give the same number saw the same
/// files. Nothing is opened, and the order in which the disk lists its entries does not matter.
/// </summary>
internal sealed class TreeDigest
{
    /// <summary>Stands for a folder, which has no size of its own.</summary>
    private const long SizeOfFolder = -1;

    private const long SizeOfLink = -2;

    private readonly List<BookFile>? _files;
    private readonly List<string> _fresh = [];

    private TreeDigest(bool keepsFiles) => _files = keepsFiles ? [] : null;

    /// <summary>The number.</summary>
    public QuickHash Value { get; private set; }

    /// <summary>Files whose time is so close to the scan that a change just after it may not show in it; full paths in ordinal order.</summary>
    public IReadOnlyList<string> Fresh => _fresh;

    /// <summary>The files, in any order; empty unless they were asked for.</summary>
    public IReadOnlyList<BookFile> Files => _files ?? [];

    /// <summary>Whether there is anything that is not a plain file or folder.</summary>
    public bool HasLinks { get; private set; }

    /// <summary>How many folders the deepest folder is in.</summary>
    public int Depth { get; private set; }

    /// <summary>Scans a folder; one that does not exist is empty.</summary>
    /// <param name="root">The folder.</param>
    /// <param name="without">A folder below it to leave out, or null.</param>
    /// <param name="hidden">Whether names that begin with a dot count.</param>
    /// <param name="freshFrom">From this time on (UTC ticks) a file is fresh.</param>
    /// <param name="keepsFiles">Whether to keep the files that are seen.</param>
    public static TreeDigest Of(string root, string? without, bool hidden, long freshFrom, bool keepsFiles = false)
    {
        var digest = new TreeDigest(keepsFiles);
        foreach (var part in FolderWalk.Run(
            root,
            () => new TreeDigest(keepsFiles),
            (TreeDigest seen, ref FileSystemEntry entry, scoped ReadOnlySpan<char> path) => seen.See(ref entry, path, freshFrom),
            (ref FileSystemEntry entry) => (hidden || !entry.FileName.StartsWith("."))
                && (without is null || !entry.IsDirectory || !entry.FileName.SequenceEqual(Path.GetFileName(without.AsSpan())) || entry.ToFullPath() != without)))
        {
            digest.Value += part.Value;
            digest._fresh.AddRange(part._fresh);
            digest._files?.AddRange(part.Files);
            digest.HasLinks |= part.HasLinks;
            digest.Depth = Math.Max(digest.Depth, part.Depth);
        }

        digest._fresh.Sort(StringComparer.Ordinal);
        return digest;
    }

    /// <summary>The number of a file.</summary>
    internal static QuickHash NumberOf(ReadOnlySpan<char> path, long size, long modified) => QuickHash.Of(path, size, modified);

    /// <summary>The number of a folder.</summary>
    internal static QuickHash NumberOfFolder(ReadOnlySpan<char> path) => QuickHash.Of(path, SizeOfFolder);

    // What a link points to is no part of it: its own size and time show when it is set again. Asking each file whether it is a
    // link would cost one more call to the system.
    private void See(ref FileSystemEntry entry, scoped ReadOnlySpan<char> path, long freshFrom)
    {
        if (entry.IsDirectory)
        {
            var isLink = FolderWalk.IsLink(ref entry);
            Value += isLink ? QuickHash.Of(path, SizeOfLink) : NumberOfFolder(path);
            HasLinks |= isLink;
            Depth = Math.Max(Depth, isLink ? 0 : path.Count('/'));
            return;
        }

        var (size, modified) = (entry.Length, entry.LastWriteTimeUtc.UtcTicks);
        Value += NumberOf(path, size, modified);
        if (modified >= freshFrom)
        {
            _fresh.Add(entry.ToFullPath());
        }

        if (_files is null)
        {
            return;
        }

        if (FolderWalk.IsLink(ref entry))
        {
            HasLinks = true;
        }
        else
        {
            _files.Add(new BookFile(new string(path), size, modified));
        }
    }
}

/// <summary>
/// A number of 128 bits that stands for what a look at files saw: equal by chance only once in 2^128, though not safe from forgery.
/// In two halves, since code compiled ahead cannot hold wider numbers, and no cryptographic library has to be loaded for it.
/// </summary>
/// <param name="High">One half.</param>
/// <param name="Low">The other half.</param>
internal readonly record struct QuickHash(ulong High, ulong Low)
{
    // Odd numbers without a pattern: the fractions of the square roots of 2 and 3.
    private const ulong First = 0x6A09E667F3BCC909;
    private const ulong Second = 0xBB67AE8584CAA73B;

    /// <summary>Both halves, each wrapping around.</summary>
    public static QuickHash operator +(QuickHash one, QuickHash other) => unchecked(new(one.High + other.High, one.Low + other.Low));

    /// <summary>The number of a text and two numbers that go with it.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">A number, such as a file's size.</param>
    /// <param name="time">A number, such as a file's time.</param>
    public static QuickHash Of(ReadOnlySpan<char> text, long size = 0, long time = 0)
    {
        var bytes = MemoryMarshal.AsBytes(text);
        var (high, low) = (Fold(unchecked((ulong)size) ^ Second, First), Fold(unchecked((ulong)time) ^ First, Second));
        Span<byte> last = stackalloc byte[sizeof(ulong)];
        while (bytes.Length > 0)
        {
            ulong word;
            if (bytes.Length >= sizeof(ulong))
            {
                word = BinaryPrimitives.ReadUInt64LittleEndian(bytes);
                bytes = bytes[sizeof(ulong)..];
            }
            else
            {
                last.Clear();
                bytes.CopyTo(last);
                word = BinaryPrimitives.ReadUInt64LittleEndian(last);
                bytes = default;
            }

            (high, low) = (Fold(high ^ word, First) ^ low, Fold(BitOperations.RotateLeft(low, 23) ^ word, Second));
        }

        var length = (ulong)text.Length;
        return new(Fold(high ^ length, Second), Fold(low ^ high ^ length, First));
    }

    private static ulong Fold(ulong number, ulong factor)
    {
        var high = Math.BigMul(number, factor, out var low);
        return high ^ low;
    }
}
