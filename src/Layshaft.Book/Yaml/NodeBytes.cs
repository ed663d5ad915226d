using System.Text;

namespace Layshaft.Book.Yaml;

/// <summary>
/// Nodes as bytes and back: each text of a file once, lines as the step from the line before. Reading them is
/// far cheaper than parsing the text that they came from.
/// </summary>
public static class NodeBytes
{
    private const byte Map = 0;
    private const byte List = 1;
    private const byte Plain = 2;
    private const byte Quoted = 3;
    private const byte Cut = 4;

    /// <summary>The bytes of a node.</summary>
    /// <param name="node">The node.</param>
    public static byte[] Of(Node node)
    {
        ArgumentNullException.ThrowIfNull(node);
        using var stream = new MemoryStream();
        using (var writer = new Writer(stream))
        {
            writer.Write(node);
        }

        return stream.ToArray();
    }

    /// <summary>The node that bytes stand for.</summary>
    /// <param name="bytes">What <see cref="Of"/> wrote.</param>
    /// <exception cref="FormatException">They stand for none.</exception>
    public static Node Read(ReadOnlySpan<byte> bytes)
    {
        var reader = new Reader(bytes);
        var node = reader.Node(0);
        return reader.IsAtEnd ? node : throw new FormatException("Bytes are left over.");
    }

    private sealed class Writer(Stream stream) : IDisposable
    {
        private readonly BinaryWriter writer = new(stream, Encoding.UTF8, leaveOpen: true);
        private readonly Dictionary<string, int> texts = new(StringComparer.Ordinal);
        private int line;

        public void Write(Node node)
        {
            writer.Write(node switch { MapNode => Map, ListNode => List, ScalarNode { Cut: true } => Cut, ScalarNode { Plain: true } => Plain, _ => Quoted });
            Place(node.Line, node.Column);
            switch (node)
            {
                case MapNode map:
                    writer.Write7BitEncodedInt(map.Entries.Count);
                    foreach (var entry in map.Entries)
                    {
                        Text(entry.Key);
                        Place(entry.KeyLine, entry.KeyColumn);
                        Write(entry.Value);
                    }

                    break;
                case ListNode list:
                    writer.Write7BitEncodedInt(list.Items.Count);
                    foreach (var item in list.Items)
                    {
                        Write(item);
                    }

                    break;
                case ScalarNode scalar:
                    Text(scalar.Text);
                    break;
            }
        }

        public void Dispose() => writer.Dispose();

        private void Place(int atLine, int column)
        {
            // A step back is as short as a step on: the lowest bit says which.
            var step = atLine - line;
            writer.Write7BitEncodedInt((step << 1) ^ (step >> 31));
            writer.Write7BitEncodedInt(column);
            line = atLine;
        }

        private void Text(string text)
        {
            if (texts.TryGetValue(text, out var number))
            {
                writer.Write7BitEncodedInt(number);
                return;
            }

            writer.Write7BitEncodedInt(texts.Count);
            texts[text] = texts.Count;
            writer.Write(text);
        }
    }

    private ref struct Reader(ReadOnlySpan<byte> bytes)
    {
        private readonly ReadOnlySpan<byte> bytes = bytes;
        private readonly List<string> texts = [];
        private int at;
        private int line;

        public readonly bool IsAtEnd => at == bytes.Length;

        public Node Node(int depth)
        {
            if (depth > NodeReader.DeepestNesting)
            {
                throw new FormatException("Nested too deep.");
            }

            var kind = Byte();
            var (atLine, column) = Place();
            switch (kind)
            {
                case Map:
                    var entries = new MapEntry[Count()];
                    for (var i = 0; i < entries.Length; i++)
                    {
                        var key = Text();
                        var (keyLine, keyColumn) = Place();
                        entries[i] = new MapEntry(key, keyLine, keyColumn, Node(depth + 1));
                    }

                    return new MapNode(entries, atLine, column);
                case List:
                    var items = new Node[Count()];
                    for (var i = 0; i < items.Length; i++)
                    {
                        items[i] = Node(depth + 1);
                    }

                    return new ListNode(items, atLine, column);
                case Plain or Quoted or Cut:
                    return new ScalarNode(Text(), kind != Quoted, atLine, column, kind == Cut);
                default:
                    throw new FormatException("No such kind of node.");
            }
        }

        private (int Line, int Column) Place()
        {
            var step = Number();
            line += (step >> 1) ^ -(step & 1);
            return (line, Number());
        }

        private string Text()
        {
            var number = Number();
            if (number < texts.Count)
            {
                return texts[number];
            }

            var length = Number();
            if (number > texts.Count || length > bytes.Length - at)
            {
                throw new FormatException("No such text.");
            }

            var text = SharedTexts.Of(Encoding.UTF8.GetString(bytes.Slice(at, length)));
            at += length;
            texts.Add(text);
            return text;
        }

        // Each item takes a byte at least, so no count can ask for more memory than there are bytes.
        private int Count() => Number() is var count && count <= bytes.Length - at ? count : throw new FormatException("Too many items.");

        private int Number()
        {
            var number = 0u;
            for (var shift = 0; shift < 32; shift += 7)
            {
                var next = Byte();
                number |= (next & 0x7Fu) << shift;
                if (next < 0x80)
                {
                    return number <= int.MaxValue ? (int)number : throw new FormatException("Too large a number.");
                }
            }

            throw new FormatException("Too long a number.");
        }

        private byte Byte() => at < bytes.Length ? bytes[at++] : throw new FormatException("The bytes end too early.");
    }
}
