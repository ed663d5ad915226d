using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>
/// Publishes one after the other, with files that change, come, go and are restored, and with files and links of others: whichever step of
/// whichever publish is the last, the next command finds or finishes the old or the new site.
/// </summary>
public sealed class InterruptedSeriesTests : IDisposable
{
    private readonly TempFolder _temp = new();
    private int _number;

    public void Dispose() => _temp.Dispose();

    private static readonly SitePlan[] Plans =
    [
        Sites.Plan(("a.html", "a"), ("b.html", "b"), ("d/c.html", "c"), ("d/e.html", "e"), ("gone/f.html", "f"), ("p.html", "p")),
        Sites.Plan(("a.html", "a"), ("b.html", "B"), ("d/c.html", "c"), ("d/e.html", "e"), ("new/g.html", "g"), ("p.html", "p")),
        Sites.Plan(("a.html", "a"), ("b.html", "b"), ("d/c.html", "C"), ("d/e.html", "e"), ("gone/f.html", "f"), ("p/q.html", "q")),
        Sites.Plan(("a.html", "a"), ("b.html", "b"), ("d/c.html", "C"), ("d/e.html", "E"), ("new/g.html", "g"), ("p.html", "p")),
        Sites.Plan(("a.html", "A"), ("b.html", "b"), ("d/c.html", "c"), ("d/e.html", "E"), ("gone/f.html", "f")),
    ];

    // What others do before each publish.
    private void ByHand(string site, int turn)
    {
        void Rename(string path, string words)
        {
            _temp.Write($"{site}/draft", words);
            File.Move(_temp.At($"{site}/draft"), _temp.At($"{site}/{path}"), overwrite: true);
        }

        switch (turn)
        {
            case 0:
                _temp.Write($"{site}/README.md", "r");
                break;
            case 1:
                _temp.Write($"{site}/d/notes.txt", "n");
                _temp.Write($"{site}/.git/head", "h");
                File.CreateSymbolicLink(_temp.At($"{site}/link"), "README.md");
                Directory.CreateSymbolicLink(_temp.At($"{site}/nowhere"), "../no/such");
                break;
            case 2:
                _temp.Write($"{site}/a.html", "in place 2");
                Rename("README.md", "R");
                File.Delete(_temp.At($"{site}/link"));
                break;
            case 3:
                Rename("d/e.html", "renamed 3");
                File.Delete(_temp.At($"{site}/a.html"));
                _temp.Write($"{site}/d/notes.txt", "N, in place");
                _temp.Write($"{site}/gone/mine.txt", "mine");
                Directory.CreateSymbolicLink(_temp.At($"{site}/link"), "d");
                break;
            default:
                _temp.Write($"{site}/d/c.html", "in place 4");
                Rename("b.html", "renamed 4");
                File.Delete(_temp.At($"{site}/d/notes.txt"));
                Directory.Delete(_temp.At($"{site}/.git"), recursive: true);
                break;
        }
    }

    private static readonly string[] KeptAfter = ["", "", "a.html=in place 2", "a.html=in place 2 d/e.html=renamed 3", "a.html=in place 2 b.html=renamed 4 d/c.html=in place 4 d/e.html=renamed 3"];

    private (string Site, string[] Before, string[] After, int[] Steps) Whole()
    {
        var site = $"{_number++}/reports";
        var (before, after, steps) = (new string[Plans.Length], new string[Plans.Length], new int[Plans.Length]);
        for (var turn = 0; turn < Plans.Length; turn++)
        {
            ByHand(site, turn);
            before[turn] = Sites.Show(_temp.At(site));
            var files = new FaultyFileWork();
            Assert.Equal(PublishOutcome.Published, new Publisher(Sites.Options, files).Publish(Plans[turn], _temp.At(site)).Outcome);
            after[turn] = Sites.Show(_temp.At(site));
            steps[turn] = files.Steps;
        }

        return (site, before, after, steps);
    }

    [Fact]
    public void All_goes_well_when_no_step_fails()
    {
        var (site, _, after, _) = Whole();
        Assert.Equal("README.md = R\na.html = a\nb.html = b\nd/\nd/c.html = C\nd/e.html = E\nd/notes.txt = N, in place\ngone/\ngone/mine.txt = mine\nlink -> d\nnew/\nnew/g.html = g\nnowhere -> ../no/such\np.html = p\n", after[3].Replace(".git/\n.git/head = h\n", string.Empty, StringComparison.Ordinal));
        Assert.Equal("README.md = R\na.html = A\nb.html = b\nd/\nd/c.html = c\nd/e.html = E\ngone/\ngone/f.html = f\ngone/mine.txt = mine\nlink -> d\nnowhere -> ../no/such\n", after[4]);
        Assert.Equal(KeptAfter[4], Kept(site));
    }

    [Theory]
    [InlineData(1, true, true)]
    [InlineData(2, true, true)]
    [InlineData(3, true, true)]
    [InlineData(4, true, true)]
    [InlineData(2, false, true)]
    [InlineData(3, false, true)]
    [InlineData(2, true, false)]
    [InlineData(3, false, false)]
    public void Whatever_step_of_a_publish_is_the_last_the_next_command_makes_the_site_whole_and_the_next_publishes_are_right(int faulty, bool dead, bool exchange)
    {
        var (_, before, after, steps) = Whole();
        var (sawOld, sawNew) = (0, 0);
        for (var failAt = 1; failAt <= steps[faulty] + 2; failAt++)
        {
            var site = $"{_number++}/reports";
            for (var turn = 0; turn < Plans.Length; turn++)
            {
                ByHand(site, turn);
                if (turn == faulty)
                {
                    var result = new Publisher(Sites.Options, new FaultyFileWork(failAt, dead, exchange)).Publish(Plans[turn], _temp.At(site));
                    Sites.OpenAgain(_temp.At(site));
                    var shown = Sites.Show(_temp.At(site));
                    Assert.Equal(result.IsCutOff || result.Outcome == PublishOutcome.Published ? after[turn] : before[turn], shown);
                    sawOld += shown == before[turn] ? 1 : 0;
                    sawNew += shown == after[turn] ? 1 : 0;
                }

                var next = new Publisher(Sites.Options, new FaultyFileWork(exchange: exchange)).Publish(Plans[turn], _temp.At(site));
                Assert.True(next.Outcome is PublishOutcome.Published or PublishOutcome.Unchanged, $"{failAt}: {string.Join(' ', next.Problems)}");
                Assert.Equal(after[turn], Sites.Show(_temp.At(site)));
                Sites.AssertNothingLeft(_temp.At(site));
                Assert.Equal(KeptAfter[turn], Kept(site));
            }

            Directory.Delete(_temp.At($"{_number - 1}"), recursive: true);
        }

        Assert.True(sawOld > 5 && sawNew > 5, $"old {sawOld}, new {sawNew}");
    }

    private string Kept(string site)
    {
        var kept = new StateFolder(_temp.At(site)).Kept;
        return string.Join(' ', SiteTree.Walk(kept).Where(e => e.Kind != TreeKind.Folder).Select(e => $"{e.Path}={File.ReadAllText(StateFolder.Place(kept, e.Path))}"));
    }
}
