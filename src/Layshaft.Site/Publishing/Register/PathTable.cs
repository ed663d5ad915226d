using System.Text;

namespace Layshaft.Site.Publishing.Register;

/// <summary>Very many paths in order, as bytes one behind the other: as texts they would be three times as large. Immutable.</summary>
internal sealed class PathTable
{
    private const int MostOnStack = 1024;

    private readonly byte[] _text;
    private readonly int[] _ends;
    private readonly Lazy<int[]> _slots;

    private PathTable(byte[] text, int[] ends) => (_text, _ends, _slots) = (text, ends, new(Slots));

    /// <summary>The table of no paths.</summary>
    internal static PathTable None { get; } = new([], []);

    /// <summary>How many there are.</summary>
    internal int Count => _ends.Length;

    /// <summary>The bytes of one, in UTF-8.</summary>
    /// <param name="index">Its place in the order.</param>
    internal ReadOnlySpan<byte> this[int index] => Of(_text, _ends, index);

    /// <summary>A table.</summary>
    /// <param name="paths">The paths in any order.</param>
    /// <param name="order">Which of them each of the table is.</param>
    internal static PathTable Of(IEnumerable<string> paths, out int[] order) => Of([.. paths.Select(p => new PlacedPath(p))], out order);

    /// <summary>A table.</summary>
    /// <param name="paths">The paths in any order.</param>
    /// <param name="order">Which of them each of the table is.</param>
    internal static PathTable Of(IReadOnlyList<PlacedPath> paths, out int[] order)
    {
        // Of their whole size at once: what grows leaves behind more than it holds.
        var (text, ends) = (new byte[paths.Sum(p => p.Bytes)], new int[paths.Count]);
        order = new int[ends.Length];
        var isOrdered = true;
        for (var (i, end) = (0, 0); i < ends.Length; i++)
        {
            ends[i] = end += paths[i].CopyTo(text.AsSpan(end));
            order[i] = i;
            isOrdered &= i == 0 || Of(text, ends, i - 1).SequenceCompareTo(Of(text, ends, i)) <= 0;
        }

        return isOrdered ? new(text, ends) : Ordered(text, ends, order);
    }

    /// <summary>The table of paths that are in order already.</summary>
    /// <param name="text">Their bytes, one behind the other.</param>
    /// <param name="ends">Where each ends.</param>
    /// <exception cref="FormatException">They are not in order, or an end lies outside.</exception>
    internal static PathTable OfOrdered(byte[] text, int[] ends)
    {
        for (var i = 0; i < ends.Length; i++)
        {
            if (ends[i] > text.Length || ends[i] <= (i == 0 ? 0 : ends[i - 1]) || (i > 0 && Of(text, ends, i - 1).SequenceCompareTo(Of(text, ends, i)) >= 0))
            {
                throw new FormatException();
            }
        }

        return new(text, ends);
    }

    /// <summary>A table of some of its paths and others.</summary>
    /// <param name="kept">Which of its own, in order.</param>
    /// <param name="others">The others, in any order.</param>
    /// <param name="order">Which each of the new table is: first the kept ones are counted, then the others.</param>
    internal PathTable With(int[] kept, IReadOnlyList<PlacedPath> others, out int[] order)
    {
        var more = Of(others, out var orderOfMore);
        var (ends, all) = (new int[kept.Length + more.Count], new int[kept.Length + more.Count]);
        var text = new byte[more._text.Length + kept.Sum(k => this[k].Length)];
        for (var (i, own, other, end) = (0, 0, 0, 0); i < ends.Length; i++)
        {
            var isOwn = other == more.Count || (own < kept.Length && this[kept[own]].SequenceCompareTo(more[other]) <= 0);
            var path = isOwn ? this[kept[own]] : more[other];
            path.CopyTo(text.AsSpan(end));
            (ends[i], all[i]) = (end += path.Length, isOwn ? own++ : kept.Length + orderOfMore[other++]);
        }

        order = all;
        return new(text, ends);
    }

    /// <summary>Reads a table back.</summary>
    /// <param name="reader">Where from.</param>
    /// <exception cref="FormatException">It is something else.</exception>
    /// <exception cref="IOException">There is less than it says.</exception>
    internal static PathTable Read(BinaryReader reader)
    {
        var ends = new int[reader.ReadInt32()];
        for (var (i, end) = (0, 0); i < ends.Length; i++)
        {
            ends[i] = end += reader.Read7BitEncodedInt();
        }

        return OfOrdered(reader.ReadBytes(ends is [.., var last] ? last : 0), ends);
    }

    /// <summary>Writes it.</summary>
    /// <param name="writer">Where to.</param>
    internal void Write(BinaryWriter writer)
    {
        writer.Write(Count);
        for (var i = 0; i < Count; i++)
        {
            writer.Write7BitEncodedInt(this[i].Length);
        }

        writer.Write(_text);
    }

    /// <summary>The text of one.</summary>
    /// <param name="index">Its place in the order.</param>
    internal string TextOf(int index) => Encoding.UTF8.GetString(this[index]);

    /// <summary>Some of them as texts, each made when it is asked for.</summary>
    /// <param name="indices">Which.</param>
    internal IReadOnlyList<string> Texts(IEnumerable<int> indices) => new PathTexts(this, [.. indices]);

    /// <summary>The place of a path; negative when it is not in the table.</summary>
    /// <param name="path">The path.</param>
    internal int IndexOf(ReadOnlySpan<char> path)
    {
        var most = Encoding.UTF8.GetMaxByteCount(path.Length);
        Span<byte> bytes = most <= MostOnStack ? stackalloc byte[most] : new byte[most];
        return IndexOf(bytes[..Encoding.UTF8.GetBytes(path, bytes)]);
    }

    /// <summary>The place of a path; negative when it is not in the table.</summary>
    /// <param name="path">The path.</param>
    internal int IndexOf(ReadOnlySpan<byte> path)
    {
        var slots = _slots.Value;
        for (var slot = SlotOf(path, slots); slots[slot] > 0; slot = (slot + 1) & (slots.Length - 1))
        {
            if (this[slots[slot] - 1].SequenceEqual(path))
            {
                return slots[slot] - 1;
            }
        }

        return -1;
    }

    /// <summary>The place of a path in another table; negative when it is not there.</summary>
    /// <param name="index">Its place in this one.</param>
    /// <param name="other">The other table.</param>
    internal int PlaceIn(PathTable other, int index) => ReferenceEquals(other, this) ? index : other.IndexOf(this[index]);

    /// <summary>Those that lie below a folder, which stand together.</summary>
    /// <param name="folder">The folder.</param>
    internal IEnumerable<int> Below(string folder)
    {
        var start = Encoding.UTF8.GetBytes($"{folder}/");
        for (var i = FirstFrom(start); i < Count && this[i].StartsWith(start); i++)
        {
            yield return i;
        }
    }

    /// <summary>Every folder that a path lies in, those above before those below; each once.</summary>
    internal IEnumerable<string> Folders()
    {
        for (var i = 0; i < Count; i++)
        {
            foreach (var length in NewFolders(i))
            {
                yield return Encoding.UTF8.GetString(this[i][..length]);
            }
        }
    }

    /// <summary>How long the folders of a path are that the path before it does not lie in.</summary>
    /// <param name="index">Which path.</param>
    internal IEnumerable<int> NewFolders(int index)
    {
        // All paths of a folder stand together, so that before is to look no further.
        var shared = index == 0 ? 0 : this[index].CommonPrefixLength(this[index - 1]);
        for (var length = shared; length < this[index].Length; length++)
        {
            if (this[index][length] == '/')
            {
                yield return length;
            }
        }
    }

    private int FirstFrom(ReadOnlySpan<byte> start)
    {
        var (low, high) = (0, Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = this[middle].SequenceCompareTo(start) < 0 ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    // By open addressing; a place holds the path's index and one.
    private int[] Slots()
    {
        var size = 16;
        while (size < 2 * Count)
        {
            size *= 2;
        }

        var slots = new int[size];
        for (var i = 0; i < Count; i++)
        {
            var slot = SlotOf(this[i], slots);
            while (slots[slot] > 0)
            {
                slot = (slot + 1) & (size - 1);
            }

            slots[slot] = i + 1;
        }

        return slots;
    }

    private static int SlotOf(ReadOnlySpan<byte> path, int[] slots)
    {
        var hash = default(HashCode);
        hash.AddBytes(path);
        return hash.ToHashCode() & (slots.Length - 1);
    }

    private static PathTable Ordered(byte[] text, int[] ends, int[] order)
    {
        Array.Sort(order, (one, other) => Of(text, ends, one).SequenceCompareTo(Of(text, ends, other)) is var way and not 0 ? way : one.CompareTo(other));
        var (orderedText, orderedEnds, at) = (new byte[text.Length], new int[ends.Length], 0);
        for (var i = 0; i < order.Length; i++)
        {
            var path = Of(text, ends, order[i]);
            path.CopyTo(orderedText.AsSpan(at));
            orderedEnds[i] = at += path.Length;
        }

        return new(orderedText, orderedEnds);
    }

    private static ReadOnlySpan<byte> Of(byte[] text, int[] ends, int index)
    {
        var start = index == 0 ? 0 : ends[index - 1];
        return text.AsSpan(start, ends[index] - start);
    }
}
