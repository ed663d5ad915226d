using CsCheck;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Tests.Publishing.Register;

/// <summary>Paths in columns are found, ordered and gone through by folder as they would be as texts.</summary>
public class PathTableTests
{
    // Few letters, so that paths share folders and beginnings; `-` and `.` stand before the slash in the order of bytes.
    private static readonly Gen<string> Path = Gen.Char["ab-.A"].Array[1, 3].Select(c => $"x{new string(c)}x").Array[1, 3].Select(parts => string.Join('/', parts));

    private static readonly Gen<string[]> Paths = Path.Array[0, 30].Select(paths => paths.Distinct().ToArray());

    [Fact]
    public void Paths_stand_in_the_order_of_their_letters()
    {
        Paths.Sample(paths =>
        {
            var table = PathTable.Of(paths, out var order);
            Assert.Equal(paths.Order(StringComparer.Ordinal), Enumerable.Range(0, table.Count).Select(table.TextOf));
            Assert.Equal(order.Select(i => paths[i]), Enumerable.Range(0, table.Count).Select(table.TextOf));
        });
    }

    [Fact]
    public void A_path_is_found_if_it_is_there_and_only_then()
    {
        Gen.Select(Paths, Path).Sample((paths, other) =>
        {
            var table = PathTable.Of(paths, out _);
            Assert.All(paths, p => Assert.Equal(p, table.TextOf(table.IndexOf(p))));
            Assert.Equal(paths.Contains(other), table.IndexOf(other) >= 0);
        });
    }

    [Theory]
    [InlineData("")]
    [InlineData("ä.html")]
    [InlineData("a.html\0")]
    public void No_site_has_such_a_path(string path) => Assert.True(PathTable.Of(["a.html"], out _).IndexOf(path) < 0);

    [Fact]
    public void Photos_may_have_longer_names_and_other_letters_than_a_site()
    {
        string[] paths = ["jobs/2026/1/photos/Ölspur.jpg", $"jobs/2026/1/photos/{new string('a', 2000)}.jpg"];
        var table = PathTable.Of(paths, out _);
        Assert.All(paths, p => Assert.Equal(p, table.TextOf(table.IndexOf(p))));
    }

    [Fact]
    public void Every_folder_is_named_once_and_after_those_above_it()
    {
        Paths.Sample(paths =>
        {
            string[] folders = [.. PathTable.Of(paths, out _).Folders()];
            Assert.Equal(paths.SelectMany(OutputPath.FoldersAbove).Distinct().Order(StringComparer.Ordinal), folders.Order(StringComparer.Ordinal));
            Assert.Equal(folders.Length, folders.Distinct().Count());
            Assert.All(folders, f => Assert.All(OutputPath.FoldersAbove(f), above => Assert.True(Array.IndexOf(folders, above) < Array.IndexOf(folders, f))));
        });
    }

    [Fact]
    public void What_lies_below_a_folder_is_found_and_nothing_beside_it()
    {
        Gen.Select(Paths, Path).Sample((paths, folder) =>
        {
            var table = PathTable.Of(paths, out _);
            Assert.Equal(
                paths.Where(p => p.StartsWith(folder + "/", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
                table.Below(folder).Select(table.TextOf));
        });
    }

    [Fact]
    public void Some_paths_of_a_table_and_others_make_the_table_of_both()
    {
        Gen.Select(Paths, Paths, Gen.Bool.Array[30]).Sample((paths, others, stay) =>
        {
            var (before, elsewhere) = (PathTable.Of(paths, out _), PathTable.Of(others, out _));
            int[] kept = [.. Enumerable.Range(0, before.Count).Where(i => stay[i])];

            // Each as a text and as a place in another table, in turn.
            PlacedPath[] more = [.. others.Where(o => !kept.Any(k => before.TextOf(k) == o)).Select((o, i) => i % 2 == 0 ? new PlacedPath(o) : new(elsewhere, elsewhere.IndexOf(o)))];
            string[] all = [.. kept.Select(before.TextOf), .. more.Select(m => m.Text)];
            var table = before.With(kept, more, out var order);
            Assert.Equal(all.Order(StringComparer.Ordinal), Enumerable.Range(0, table.Count).Select(table.TextOf));
            Assert.Equal(order.Select(i => all[i]), Enumerable.Range(0, table.Count).Select(table.TextOf));
            Assert.All(all, p => Assert.Equal(p, table.TextOf(table.IndexOf(p))));
        });
    }

    [Fact]
    public void Some_paths_as_texts_are_those_that_were_named()
    {
        var texts = PathTable.Of(["c", "a", "b"], out _).Texts([0, 2]);
        Assert.Equal((2, "c"), (texts.Count, texts[1]));
        Assert.Equal(["a", "c"], texts);
    }

    [Theory]
    [InlineData("ab", new[] { 1, 3 })]
    [InlineData("ab", new[] { 0, 2 })]
    [InlineData("ba", new[] { 1, 2 })]
    [InlineData("aa", new[] { 1, 2 })]
    [InlineData("ab", new[] { 2, 1 })]
    public void Columns_that_are_no_table_are_not_taken_for_one(string text, int[] ends) =>
        Assert.Throws<FormatException>(() => PathTable.OfOrdered(System.Text.Encoding.ASCII.GetBytes(text), ends));
}
