using Layshaft.Book.Reading;
using Layshaft.Book.Schemas;

namespace Layshaft.Book.Tests.Schemas;

/// <summary>The reader and the schemas are held against each other by a validator that shares no code with either.</summary>
public sealed class SchemaTests(Validator validator) : IClassFixture<Validator>
{
    /// <summary>What a schema cannot know: it sees one file, one value at a time, after the editor's YAML reading.</summary>
    private static readonly string[] ReaderOnly =
    [
        "anchor", "duplicate-key", "tab", "merge-conflict", "tight-colon", "equals-sign", "look-alike", "hash-in-text", // seen before there are values
        "missing-reference", "missing-file", "photo-not-listed", "no-such-pair", "duplicate-id", // other files, other places
        "curve-turns-back", "gears-out-of-order", "does-not-mesh", "grading-out-of-order", "limit-on-wrong-side",
        "wrong-quantity", "part-or-work", "dates-out-of-order", "exit-below-corner", // values that contradict each other
    ];

    /// <summary>Planted mistakes of a kind that a schema sees, but not here.</summary>
    private static readonly string[] ReaderOnlyHere =
    [
        "gearboxes/four-speed.yaml(32,60) bad-band", // each end is good; the larger stands first
        "gearboxes/four-speed.yaml(9,31) bad-teeth", // each count is good; the crown wheel is the smaller
    ];

    [Fact]
    public void Every_file_of_the_demo_and_the_small_book_fits_its_schema()
    {
        var files = validator.Files.Where(f => !f.Key.StartsWith("ThirtyMistakes/", StringComparison.Ordinal)).ToArray();

        Assert.True(files.Length > 40);
        Assert.All(files, f => Assert.True(f.Value.Count == 0, $"{f.Key}: {string.Join("; ", f.Value)}"));
    }

    [Fact]
    public void Every_planted_mistake_that_a_schema_can_see_is_refused_at_the_same_place()
    {
        var readable = BookReader.ReadFolder(Books.Folder("ThirtyMistakes")).Problems.Where(p => !ReaderOnly.Contains(p.Code)).ToArray();
        var expected = readable.Select(p => $"{p.Place} {p.Code}").Except(ReaderOnlyHere).Select(Place).ToHashSet(StringComparer.Ordinal);

        var found = validator.Files.Where(f => f.Key.StartsWith("ThirtyMistakes/", StringComparison.Ordinal))
            .SelectMany(f => f.Value.Where(e => !e.Keyword.StartsWith("yaml ", StringComparison.Ordinal)).Select(e => $"{f.Key["ThirtyMistakes/".Length..]}({e.Line},{e.Column})"))
            .ToHashSet(StringComparer.Ordinal);

        Assert.True(expected.Count >= 14);
        Assert.Equal(expected.Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Reader_and_schema_take_the_same_texts_for_every_kind_of_value()
    {
        var differences = new List<string>();
        for (var kind = 0; kind < ValueCase.All.Count; kind++)
        {
            var value = ValueCase.All[kind];
            for (var text = 0; text < ValueCase.Texts.Count; text++)
            {
                var (reads, fits) = (value.Reads(ValueCase.Texts[text]), validator.Values[kind][text]);
                if (reads != fits && !(value.Name == "date" && ValueCase.Texts[text] == "2026-02-29"))
                {
                    differences.Add($"{value.Name} '{ValueCase.Texts[text]}': the reader says {reads}, the schema {fits}");
                }
            }
        }

        Assert.Empty(differences);
    }

    [Fact]
    public void Every_kind_of_value_has_texts_that_it_takes_and_texts_that_it_refuses() => Assert.All(ValueCase.All, value =>
    {
        Assert.Contains(ValueCase.Texts, t => value.Reads(t));
        Assert.Contains(ValueCase.Texts, t => !value.Reads(t));
    });

    [Fact]
    public void Reader_and_schema_judge_every_changed_file_alike()
    {
        var judged = ChangedTree.All.Zip(validator.Trees, (tree, fits) => (tree.What, Reads: tree.Reads(), Fits: fits)).ToArray();

        Assert.True(judged.Length > 1000 && judged.Count(j => j.Reads) > 50);
        Assert.Empty(judged.Where(j => j.Reads != j.Fits).Select(j => $"{j.What}: the reader says {j.Reads}, the schema {j.Fits}"));
    }

    [Fact]
    public void Every_kind_of_file_has_a_schema_that_names_its_units_and_its_header()
    {
        Assert.Equal(7, BookSchema.All.Count);
        Assert.Equal("# yaml-language-server: $schema=../../../schema/job.json", BookSchema.For("jobs/2026/0001/job.yaml")!.HeaderLine);
        Assert.Equal("# yaml-language-server: $schema=schema/shop.json", BookSchema.For("shop.yaml")!.HeaderLine);
        Assert.Null(BookSchema.For("jobs/2026/0001/notes.yaml"));
        Assert.Contains("Mass with driver and half the fuel. Write a mass with its unit, such as 1150 kg. Units: kg, lb, g.", BookSchema.All.Single(s => s.Kind == "car").Text(), StringComparison.Ordinal);
    }

    private static string Place(string line) => line[..line.IndexOf(' ', StringComparison.Ordinal)];
}
