using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>How outputs are shared out among threads.</summary>
public sealed class BatchTests : IDisposable
{
    private readonly TempFolder _temp = new();
    private readonly List<string> _told = [];

    public void Dispose() => _temp.Dispose();

    private OutputGroup Group(string name, string? queue = null) => new(name, () => Tell($"{name} finished")) { Queue = queue };

    private void Tell(string what)
    {
        lock (_told)
        {
            _told.Add(what);
        }
    }

    private PlannedOutput Output(string path, OutputGroup? group, int turn = 0) => Sites.Output(path, [new("content", path)], _ => Tell(path), group, turn);

    private static string Shown(SitePlan plan, int threads) => string.Join(" | ", Batch.ShareOut(plan, [.. Enumerable.Range(0, plan.Outputs.Count)], threads)
        .Select(b => string.Join(' ', b.Outputs.Select(i => plan.Outputs[i].Path))));

    [Theory]
    [InlineData(1, "j/1/a j/1/b j/2/a j/2/b u")]
    [InlineData(2, "j/1/a j/1/b | j/2/a j/2/b | u")]
    public void One_group_alone_is_shared_out_by_folder_where_there_are_more_threads(int threads, string expected)
    {
        var group = Group("unit");
        Assert.Equal(expected, Shown(SitePlan.Of([.. new[] { "j/1/a", "j/1/b", "j/2/a", "j/2/b", "u" }.Select((p, i) => Output(p, group, i))]), threads));
    }

    [Fact]
    public void As_many_groups_as_threads_stay_whole_and_in_turn()
    {
        var (one, two) = (Group("one"), Group("two"));
        Assert.Equal("x/b x/c/a | x/d/a y", Shown(SitePlan.Of([Output("x/c/a", one, 2), Output("x/b", one, 1), Output("y", two, 2), Output("x/d/a", two, 1)]), 2));
    }

    [Fact]
    public void What_waits_in_a_queue_is_made_one_after_the_other()
    {
        var (one, two) = (Group("one", "shop"), Group("two", "shop"));
        Assert.Equal("a/1 b/1", Shown(SitePlan.Of([Output("a/1", one, 1), Output("b/1", two, 2)]), 8));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void What_a_group_shares_is_let_go_once_and_after_its_last_output(int threads)
    {
        for (var round = 0; round < 40; round++)
        {
            _told.Clear();
            var unit = Group("unit");
            string[] paths = ["a.html", "j/1/a", "j/1/b", "j/2/a", "j/2/b", "j/3/a"];
            var plan = SitePlan.Of([.. paths.Select((p, i) => Output(p, unit, i))]);
            Assert.Equal(PublishOutcome.Published, new Publisher(Sites.Options with { Parallelism = threads }).Publish(plan, _temp.At($"site {round}")).Outcome);
            Assert.Equal("unit finished", _told[^1]);
            Assert.Equal(paths, _told.SkipLast(1).Order(StringComparer.Ordinal));
        }
    }
}
