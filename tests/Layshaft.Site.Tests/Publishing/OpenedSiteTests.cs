using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>A site that is opened before the plan for it is drawn up.</summary>
public sealed class OpenedSiteTests : IDisposable
{
    private static readonly SitePlan First = Sites.Plan(("a.html", "a"), ("d/b.html", "b"));
    private static readonly SitePlan Second = Sites.Plan(("a.html", "a"), ("d/b.html", "B"));

    private readonly TempFolder _temp = new();

    public void Dispose() => _temp.Dispose();

    private string Out => _temp.At("reports");

    private static Publisher Publisher(FaultyFileWork? files = null) => new(Sites.Options, files ?? new());

    [Fact]
    public void Where_there_is_no_site_yet_there_is_nothing_to_open()
    {
        Assert.Null(Publisher().Open(Out));
        Assert.False(Directory.Exists(_temp.At(".layshaft-reports")));
    }

    [Fact]
    public void It_keeps_others_out_until_it_is_let_go()
    {
        Publisher().Publish(First, Out);
        using (var opened = Publisher().Open(Out))
        {
            Assert.NotNull(opened);
            Assert.Null(Publisher().Open(Out));
            Assert.Equal(PublishOutcome.Refused, Publisher().Publish(Second, Out).Outcome);
            Assert.Equal(PublishOutcome.Published, Publisher().Publish(Second, opened).Outcome);
        }

        Assert.Equal("a.html = a\nd/\nd/b.html = B\n", Sites.Show(Out));
        Assert.Equal(PublishOutcome.Published, Publisher().Publish(First, Out).Outcome);
    }

    [Fact]
    public void One_that_is_let_go_without_a_plan_is_as_it_was()
    {
        Publisher().Publish(First, Out);
        Publisher().Open(Out)!.Dispose();
        Assert.Equal(PublishOutcome.Unchanged, Publisher().Publish(First, Out).Outcome);
    }

    [Fact]
    public void What_a_killed_publish_left_is_finished_first()
    {
        Publisher().Publish(First, Out);

        // Dead while the site is brought up to date.
        var files = new FaultyFileWork();
        Publisher(files).Publish(Second, Out);
        Publisher().Publish(First, Out);
        var dead = 0;
        for (var at = files.Steps; at > 0 && dead == 0; at--)
        {
            Publisher(new FaultyFileWork(at, dead: true)).Publish(Second, Out);
            dead = Publisher().IsCutOff(Out) ? at : 0;
            if (dead == 0)
            {
                Publisher().Publish(First, Out);
            }
        }

        Assert.True(dead > 0);
        using var opened = Publisher().Open(Out)!;
        Assert.False(Publisher().IsCutOff(Out));
        Assert.Equal(PublishOutcome.Unchanged, Publisher().Publish(Second, opened).Outcome);
    }

    [Fact]
    public void What_somebody_does_after_the_look_is_not_lost()
    {
        Publisher().Publish(First, Out);
        using (var opened = Publisher().Open(Out)!)
        {
            opened.Look();
            File.WriteAllText(Path.Combine(Out, "d", "theirs.txt"), "mine");
            File.WriteAllText(Path.Combine(Out, "d", "b.html"), "edited");
            Publisher().Publish(Second, opened);
        }

        Assert.Equal("a.html = a\nd/\nd/b.html = B\nd/theirs.txt = mine\n", Sites.Show(Out));
        Assert.Equal("edited", File.ReadAllText(_temp.At(".layshaft-reports/kept/d/b.html")));
    }
}
