namespace Layshaft.Site.Publishing;

/// <summary>
/// How values are written into a cache: as plain bytes, since a JSON reader is compiled again at each start, which takes longer than
/// reading.
/// </summary>
internal static class Packing
{
    internal static void Write(this BinaryWriter to, ContentHash hash)
    {
        Span<byte> bytes = stackalloc byte[ContentHash.Bytes];
        hash.CopyTo(bytes);
        to.Write(bytes);
    }

    internal static ContentHash ReadHash(this BinaryReader from)
    {
        Span<byte> bytes = stackalloc byte[ContentHash.Bytes];
        from.BaseStream.ReadExactly(bytes);
        return ContentHash.Of(bytes);
    }

    /// <summary>Writes a text or null.</summary>
    internal static void WriteOptional(this BinaryWriter to, string? text)
    {
        to.Write(text is not null);
        if (text is not null)
        {
            to.Write(text);
        }
    }

    internal static string? ReadOptional(this BinaryReader from) => from.ReadBoolean() ? from.ReadString() : null;

    /// <summary>Writes things, and how many they are.</summary>
    internal static void WriteAll<T>(this BinaryWriter to, IReadOnlyCollection<T> items, Action<T> write)
    {
        to.Write(items.Count);
        foreach (var item in items)
        {
            write(item);
        }
    }

    internal static T[] ReadAll<T>(this BinaryReader from, Func<T> read)
    {
        // Each takes a byte at least; so a damaged number cannot ask for more than there is.
        var count = from.ReadInt32();
        var items = count == 0 ? [] : count > 0 && count <= from.BaseStream.Length - from.BaseStream.Position ? new T[count] : throw new FormatException();
        for (var i = 0; i < items.Length; i++)
        {
            items[i] = read();
        }

        return items;
    }

    internal static void WriteTexts(this BinaryWriter to, IReadOnlyCollection<string> texts) => to.WriteAll(texts, to.Write);

    internal static string[] ReadTexts(this BinaryReader from) => from.ReadAll(from.ReadString);
}
