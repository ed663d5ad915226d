using System.Text;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Yaml;

namespace Layshaft.Book.Tests.Hostile;

/// <summary>Files of a book that were made to do harm: each is a problem with its place, within bounds, and nothing else.</summary>
public class HostileTextTests
{
    private const string Job = "jobs/2026/0001/job.yaml";

    /// <summary>Texts of almost the largest size that is read, each of a kind that parsers have stumbled over.</summary>
    public static TheoryData<string, string> Floods
    {
        get
        {
            var floods = new TheoryData<string, string>();
            foreach (var piece in new[] { "[", "{", "]", "}", "- ", "? ", ": ", ",", "[a,", "{a: ", "&a ", "*a ", "!t ", "| ", "> ", "\"", "'", "\\", "#", "%", "---\n", "...\n", "\n", " ", "a: b\n", "a ", "- - ", "? - ", "{? [", "<<: ", "\"\\x41", "é", "\r", "\r\n", "'': ", "- ? :\n", "\t", "@", "`" })
            {
                floods.Add(piece.Replace("\n", "\\n", StringComparison.Ordinal), piece);
            }

            return floods;
        }
    }

    [Theory]
    [MemberData(nameof(Floods))]
    public void A_file_filled_with_one_piece_of_syntax_ends_in_a_problem(string name, string piece)
    {
        var text = string.Concat(Enumerable.Repeat(piece, (YamlText.LargestFile - 8) / Encoding.UTF8.GetByteCount(piece)));
        Assert.NotEmpty(name);
        Refused(text);
        Refused("complaint: " + text[..^16]);
    }

    [Theory]
    [InlineData("a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]\nd: [*c,*c,*c,*c,*c,*c,*c,*c,*c]\n", "anchor")]
    [InlineData("a: &a\n  b: *a\n", "anchor")]
    [InlineData("x: {<<: {a: 1}, <<: {b: 2}}\n", "merge-key")]
    [InlineData("unit: !!python/object/apply:os.system [\"id\"]\n", "tag")]
    [InlineData("unit: !<tag:yaml.org,2002:binary> aGk=\n", "tag")]
    [InlineData("%TAG ! tag:example.com,2000:\n---\nunit: !x y\n", "tag")]
    public void What_could_multiply_or_run_is_refused_before_it_does(string text, string code) =>
        Assert.Equal(code, Refused(text)[0].Code);

    [Fact]
    public void An_indent_that_grows_with_every_line_is_refused()
    {
        var deep = string.Concat(Enumerable.Range(0, 1000).Select(i => new string(' ', i) + "a:\n"));
        Assert.Contains(Refused(deep), p => p.Code is "too-deep" or "not-yaml");
    }

    [Theory]
    [InlineData(new byte[] { 0xC0, 0xAF }, "overlong")]
    [InlineData(new byte[] { 0xED, 0xA0, 0x80 }, "a lone surrogate")]
    [InlineData(new byte[] { 0xF5, 0x80, 0x80, 0x80 }, "beyond Unicode")]
    [InlineData(new byte[] { 0x80 }, "a stray continuation")]
    [InlineData(new byte[] { 0xE2, 0x82 }, "a character cut short")]
    [InlineData(new byte[] { 0xFE, 0xFF, 0, 0x61 }, "UTF-16 with the high byte first")]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x61, 0 }, "UTF-16 with the low byte first")]
    public void Bytes_that_are_not_utf8_are_refused_at_their_place(byte[] bytes, string what)
    {
        Assert.NotEmpty(what);
        var problem = Assert.Single(Read([.. "unit: a\ncomplaint: "u8, .. bytes]), p => p.Place.File == Job);
        Assert.Equal(("not-utf8", 2), (problem.Code, problem.Place.Line));
    }

    [Theory]
    [InlineData("\u0000", "NUL")]
    [InlineData("\u001B", "escape")]
    [InlineData("\u0085", "next line")]
    [InlineData("\u202E", "right-to-left override")]
    [InlineData("\u2066", "left-to-right isolate")]
    [InlineData("\u200F", "right-to-left mark")]
    [InlineData("\u061C", "Arabic letter mark")]
    [InlineData("\uFEFF", "a mark in the middle")]
    [InlineData("\u2028", "line separator")]
    [InlineData("\u007F", "delete")]
    public void A_character_that_hides_or_turns_what_is_read_is_refused_at_its_place(string hidden, string what)
    {
        Assert.NotEmpty(what);
        var problem = Assert.Single(Read([.. Encoding.UTF8.GetBytes($"unit: a\ncomplaint: x{hidden}y\n")]), p => p.Place.File == Job);
        Assert.Equal(("hidden-character", 2, 13), (problem.Code, problem.Place.Line, problem.Place.Column));
    }

    // An escape in double quotes puts a character into a value without its standing in the file.
    [Theory]
    [InlineData("\\0")]
    [InlineData("\\x1b[2J")]
    [InlineData("\\u202E")]
    [InlineData("\\u2066")]
    [InlineData("\\e")]
    [InlineData("\\uFEFF")]
    [InlineData("\\uD800")]
    public void An_escape_cannot_bring_in_what_may_not_stand_in_a_file(string escape)
    {
        var problems = Read(Encoding.UTF8.GetBytes($"unit: \"0001\"\nreceived: 2026-03-02\nuse: 18.5 h\ncomplaint: \"x{escape}y\"\n"));
        Assert.Contains(problems, p => p.Place.File == Job && p.Place.Line == 4);
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\n")]
    [InlineData("\r")]
    public void Line_ends_of_every_system_read_the_same(string end)
    {
        var files = Books.SmallFiles();
        files[Job] = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(files[Job]).ReplaceLineEndings(end))];
        Assert.Empty(BookReader.Read(new MemoryBookFiles(files)).Problems);
    }

    [Theory]
    [InlineData("1e999")]
    [InlineData("-1e999")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("0x7FFFFFFFFFFFFFFF")]
    [InlineData("9223372036854775808")]
    [InlineData("LONG")]
    [InlineData("0.LONG")]
    [InlineData("LONG.LONG")]
    [InlineData("-LONG")]
    [InlineData("LONG/LONG")]
    public void A_number_beyond_all_bounds_is_refused_wherever_a_number_belongs(string written)
    {
        var number = written.Replace("LONG", new string('9', 9_000), StringComparison.Ordinal);
        foreach (var (field, unit) in new[] { ("use", " h"), ("drop_pair", string.Empty), ("final_drive", string.Empty), ("received", string.Empty) })
        {
            var problems = Guard.Run(() => Read(Encoding.UTF8.GetBytes($"unit: \"0001\"\nreceived: 2026-03-02\nuse: 18.5 h\ncomplaint: x\n{field}: {number}{unit}\n")));
            Assert.Contains(problems, p => p.Place is { File: Job, Line: 5 });
            Assert.All(problems, p => Assert.True(p.Message.Length < 400, "A message repeats the whole flood."));
        }
    }

    [Fact]
    public void A_hundred_megabytes_in_one_value_are_refused_without_being_read()
    {
        using var folder = new BookFolder();
        using (var file = File.Create(folder.At(Job)))
        {
            file.Write("complaint: "u8);
            var block = new byte[1 << 20];
            Array.Fill(block, (byte)'a');
            for (var i = 0; i < 100; i++)
            {
                file.Write(block);
            }
        }

        var problems = Guard.Run(() => BookReader.ReadFolder(folder.Path).Problems, mostBytes: 24 << 20);
        Assert.Contains(problems, p => p.Code == "file-too-large" && p.Place.File == Job);
    }

    private static IReadOnlyList<Problem> Refused(string text)
    {
        var problems = Guard.Run(
            () =>
            {
                var list = new ProblemList();
                if (YamlText.Decode(Encoding.UTF8.GetBytes(text), Job, list) is { } decoded && NodeReader.Read(Job, decoded, list) is { } root)
                {
                    Records.Job.Shape.TryRead(root, new Shapes.Reading(Job, list), out _);
                }

                return list.InOrder();
            },
            mostBytes: 2L << 30);
        Assert.NotEmpty(problems);
        Assert.All(problems, p => Assert.True(p.Message.Length + p.Remedy.Length < 600, "A message repeats the whole flood."));
        return problems;
    }

    private static IReadOnlyList<Problem> Read(byte[] job)
    {
        var files = Books.SmallFiles();
        files[Job] = job;
        return BookReader.Read(new MemoryBookFiles(files)).Problems;
    }
}
