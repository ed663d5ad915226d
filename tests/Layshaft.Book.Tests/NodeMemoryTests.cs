using System.Text;
using CsCheck;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Tests;

/// <summary>What files were parsed to comes back as it was, and nothing else comes back.</summary>
public class NodeMemoryTests
{
    private const string Mark = "this program";

    private static readonly Gen<string> s_text = Gen.OneOf(
        Gen.String[Gen.Char["abcß→7 :-#'\"\n"], 0, 12],
        Gen.OneOf(Gen.Const("measure"), Gen.Const("0.78 mm"), Gen.Const(string.Empty), Gen.Const("null"), Gen.Const("\U0001F527")));

    private static readonly Gen<Node> s_node = Gen.Recursive<Node>((depth, self) =>
    {
        var scalar = Gen.Select(s_text, Gen.Bool, Gen.Int[1, 50_000], Gen.Int[1, 3000], (t, p, l, c) => (Node)new ScalarNode(t, p, l, c));
        return depth >= 5 ? scalar : Gen.Frequency(
            (3, scalar),
            (1, Gen.Select(self.Array[0, 4], Gen.Int[1, 50_000], Gen.Int[1, 300], (i, l, c) => (Node)new ListNode(i, l, c))),
            (1, Gen.Select(Gen.Select(s_text, Gen.Int[1, 50_000], Gen.Int[1, 300], self, (k, l, c, v) => new MapEntry(k, l, c, v)).Array[0, 4], Gen.Int[1, 50_000], Gen.Int[1, 300], (e, l, c) => (Node)new MapNode(e, l, c))));
    });

    [Fact]
    public void Nodes_come_back_as_they_were() =>
        s_node.Sample(node => Assert.Equal(Told(node), Told(NodeBytes.Read(NodeBytes.Of(node)))), iter: 3000);

    [Fact]
    public void Every_file_of_a_book_comes_back_from_bytes_with_all_its_places()
    {
        var files = new MemoryBookFiles(Books.SmallFiles());
        var memory = new NodeMemory();
        var fresh = BookReader.Read(files, new ProblemList(), memory);
        var again = NodeMemory.Of(memory.ToBytes(Mark), Mark);
        foreach (var path in files.All.Select(f => f.Path).Where(p => p.EndsWith(".yaml", StringComparison.Ordinal)))
        {
            var known = again.Recall(files.Read(path));
            Assert.True(known is not null, path);
            Assert.Equal(Told(NodeReader.Read(path, Encoding.UTF8.GetString(files.Read(path)), new ProblemList())!), Told(known));
        }

        Assert.False(again.HasNews);
        Assert.Equal(fresh.Problems, BookReader.Read(files, new ProblemList(), again).Problems);
    }

    [Fact]
    public void A_file_with_a_mistake_is_told_of_each_time()
    {
        var files = Books.SmallFiles();
        files["shop.yaml"] = [.. files["shop.yaml"], .. "\nname: Twice\n"u8];
        var memory = new NodeMemory();
        var first = BookReader.Read(new MemoryBookFiles(files), new ProblemList(), memory);
        memory.Settle();
        Assert.Null(memory.Recall(files["shop.yaml"]));
        Assert.Contains(first.Problems, p => p.Code == "duplicate-key");
        Assert.Equal(first.Problems, BookReader.Read(new MemoryBookFiles(files), new ProblemList(), memory).Problems);
    }

    [Fact]
    public void A_changed_file_is_not_known_and_one_not_seen_again_is_forgotten()
    {
        var memory = new NodeMemory();
        memory.Note("a: 1"u8, new ScalarNode("one", true, 1, 1));
        memory.Note("a: 2"u8, new ScalarNode("two", true, 1, 1));
        Assert.Null(memory.Recall("a: 3"u8));
        memory.Settle();
        Assert.NotNull(memory.Recall("a: 1"u8));
        Assert.True(memory.HasNews);
        memory.Settle();
        Assert.Null(memory.Recall("a: 2"u8));
        Assert.Equal("one", Assert.IsType<ScalarNode>(memory.Recall("a: 1"u8)).Text);
        Assert.False(memory.HasNews);
    }

    [Fact]
    public void What_another_program_wrote_or_what_is_not_whole_counts_as_nothing()
    {
        var memory = new NodeMemory();
        memory.Note("a: 1"u8, new ScalarNode("one", true, 1, 1));
        var bytes = memory.ToBytes(Mark);
        Assert.NotNull(NodeMemory.Of(bytes, Mark).Recall("a: 1"u8));
        Assert.Null(NodeMemory.Of(bytes, "another").Recall("a: 1"u8));
        for (var i = 0; i < bytes.Length; i++)
        {
            Assert.Null(NodeMemory.Of(bytes[..i], Mark).Recall("a: 1"u8));
            var flipped = bytes.ToArray();
            flipped[i] ^= 0x10;
            Assert.Null(NodeMemory.Of(flipped, Mark).Recall("a: 1"u8));
        }
    }

    [Fact]
    public void Bytes_that_stand_for_no_node_are_refused() => Gen.OneOf(
        Gen.Byte.Array[0, 60],
        Gen.Select(s_node, Gen.Int[0, 10_000], Gen.Byte, (node, at, value) =>
        {
            var bytes = NodeBytes.Of(node);
            bytes[at % bytes.Length] = value;
            return bytes;
        })).Sample(
        bytes =>
        {
            try
            {
                Assert.NotEmpty(Told(NodeBytes.Read(bytes)));
            }
            catch (FormatException)
            {
                // Refused, as it should be.
            }
        },
        iter: 3000);

    private static string Told(Node node) => node switch
    {
        MapNode map => $"{{{map.Line},{map.Column} {string.Concat(map.Entries.Select(e => $"{e.Key.Length}:{e.Key}@{e.KeyLine},{e.KeyColumn}={Told(e.Value)};"))}}}",
        ListNode list => $"[{list.Line},{list.Column} {string.Concat(list.Items.Select(i => Told(i) + ";"))}]",
        ScalarNode scalar => $"{scalar.Line},{scalar.Column} {scalar.Plain} {scalar.Text.Length}:{scalar.Text}",
        _ => throw new InvalidOperationException(),
    };
}
