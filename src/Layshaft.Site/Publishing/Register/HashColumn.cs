namespace Layshaft.Site.Publishing.Register;

/// <summary>A hash, or none, for each of very many. Neighbours mostly have the same one, which is held once. Immutable.</summary>
internal sealed class HashColumn
{
    private readonly ContentHash[] _hashes;
    private readonly int[] _numbers;

    private HashColumn(ContentHash[] hashes, int[] numbers) => (_hashes, _numbers) = (hashes, numbers);

    /// <summary>The column of nothing.</summary>
    internal static HashColumn None { get; } = new([], []);

    /// <summary>How many there are, those without a hash included.</summary>
    internal int Count => _numbers.Length;

    /// <summary>The hash of one; null where it has none.</summary>
    /// <param name="index">Which.</param>
    internal ContentHash? this[int index] => _numbers[index] is > 0 and var number ? _hashes[number - 1] : null;

    /// <summary>The hashes, by their number less one.</summary>
    internal IReadOnlyList<ContentHash> Hashes => _hashes;

    /// <summary>The number of one's hash; 0 where it has none.</summary>
    /// <param name="index">Which.</param>
    internal int NumberOf(int index) => _numbers[index];

    /// <summary>A column.</summary>
    /// <param name="count">How many there are.</param>
    /// <param name="hashOf">The hash of each; asked for twice.</param>
    internal static HashColumn Of(int count, Func<int, ContentHash?> hashOf)
    {
        // Counted first: what grows leaves behind more than it holds.
        var numbers = new int[count];
        var (last, many) = (default(ContentHash?), 0);
        for (var i = 0; i < count; i++)
        {
            if (hashOf(i) is { } hash)
            {
                numbers[i] = hash == last ? many : ++many;
                last = hash;
            }
        }

        var hashes = new ContentHash[many];
        for (var (i, done) = (0, 0); done < many; i++)
        {
            if (numbers[i] > done)
            {
                hashes[done++] = hashOf(i)!.Value;
            }
        }

        return new(hashes, numbers);
    }

    /// <summary>Reads a column back.</summary>
    /// <param name="reader">Where from.</param>
    /// <param name="count">How many there are.</param>
    /// <exception cref="FormatException">It is something else.</exception>
    /// <exception cref="IOException">There is less than it says.</exception>
    internal static HashColumn Read(BinaryReader reader, int count)
    {
        var hashes = ContentHash.ReadAll(reader);
        var numbers = new int[count];
        for (var i = 0; i < numbers.Length; i++)
        {
            numbers[i] = reader.Read7BitEncodedInt() is >= 0 and var number && number <= hashes.Length ? number : throw new FormatException();
        }

        return new(hashes, numbers);
    }

    /// <summary>Writes it.</summary>
    /// <param name="writer">Where to.</param>
    internal void Write(BinaryWriter writer)
    {
        ContentHash.WriteAll(_hashes, writer);
        foreach (var number in _numbers)
        {
            writer.Write7BitEncodedInt(number);
        }
    }
}
