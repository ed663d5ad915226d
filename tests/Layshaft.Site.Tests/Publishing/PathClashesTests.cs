using CsCheck;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>Paths that some systems would put into one file, or that need a file to be a folder, are told before a publish.</summary>
public class PathClashesTests
{
    private static readonly Gen<string> Path = Gen.Char["aA-"].Array[1, 2].Select(c => $"x{new string(c)}x").Array[1, 3].Select(parts => string.Join('/', parts));

    [Theory]
    [InlineData("a.html|a.html", "a.html", "Another output file already has this path, as 'a.html'.")]
    [InlineData("a.html|A.HTML", "a.html", "Another output file already has this path, as 'A.HTML'.")]
    [InlineData("a/b.html|a", "a", "The folder 'a' and this file have the same path.")]
    [InlineData("a/b.html|A", "A", "The folder 'a' and this file have the same path.")]
    [InlineData("a/b.html|A/c.html", "a", "Another folder differs from this one only in case: 'A'.")]
    [InlineData("../a.html", "../a.html", "No part of a path begins or ends with a dot.")]
    public void A_clash_is_told_with_both_sides(string paths, string place, string message) =>
        Assert.Contains(new PublishProblem(place, message), PathClashes.In(Files(paths.Split('|'))));

    [Fact]
    public void Paths_clash_when_their_texts_do_without_case()
    {
        Path.Array[1, 6].Sample(paths =>
        {
            var all = paths.Distinct().ToArray();
            Assert.Equal(Clash(all), PathClashes.In(Files(all)).Any());
        });
    }

    [Fact]
    public void One_more_path_clashes_as_it_would_among_the_others()
    {
        Gen.Select(Path.Array[1, 6], Path).Sample((paths, more) =>
        {
            var all = paths.Distinct().ToArray();
            if (Clash(all))
            {
                return;
            }

            Assert.Equal(PathClashes.In(Files([.. all, more])).Any(), PathClashes.Between(Files(all), more).Any());
        });
    }

    [Fact]
    public void Of_some_places_those_are_named_that_a_path_or_its_folders_want()
    {
        Assert.Equal(
            [("b/C.html", "b/c.html", false), ("A", "a", true)],
            PathClashes.Met(Files("a/one.html", "a/two.html", "b/c.html"), ["own", "A", "b/C.html", "b/c", "a/x"]));
        Assert.Empty(PathClashes.Met(Files("a"), []));
    }

    private static PathIndex<Trace> Files(params string[] paths) => new(paths.Select(p => new Trace(p, 0, default)));

    // In words: two files, a file and a folder, or two folders of other spelling that are the same without case.
    private static bool Clash(string[] paths)
    {
        var folders = paths.SelectMany(OutputPath.FoldersAbove).Distinct().ToArray();
        return Twins([.. paths, .. folders]);
    }

    private static bool Twins(string[] places) => places.Distinct(StringComparer.OrdinalIgnoreCase).Count() < places.Length;
}
