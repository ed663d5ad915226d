using System.Collections.Concurrent;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>A few threads work through many things, and stop when one goes wrong.</summary>
public class WorkersTests
{
    [Theory]
    [InlineData(0, 3)]
    [InlineData(1, 3)]
    [InlineData(100, 1)]
    [InlineData(100, 3)]
    [InlineData(100, 0)]
    public void Each_thing_is_done_once_on_no_more_threads_than_asked_for(int count, int threads)
    {
        var (done, used) = (new ConcurrentBag<int>(), new ConcurrentDictionary<int, bool>());
        Workers.ForEach([.. Enumerable.Range(0, count)], threads, i =>
        {
            used[Environment.CurrentManagedThreadId] = true;
            done.Add(i);
        }, CancellationToken.None);
        Assert.Equal(Enumerable.Range(0, count), done.Order());
        Assert.InRange(used.Count, Math.Min(count, 1), Math.Max(threads, 1));
    }

    [Fact]
    public void Once_one_fails_no_further_ones_are_begun()
    {
        var begun = 0;
        var failed = Assert.Throws<AggregateException>(() => Workers.ForEach([.. Enumerable.Range(0, 100)], 1, i =>
        {
            begun++;
            if (i == 3)
            {
                throw new IOException("full");
            }
        }, CancellationToken.None));
        Assert.Equal((4, "full"), (begun, Assert.Single(failed.InnerExceptions).Message));
    }

    [Fact]
    public void Several_that_fail_at_once_are_all_told()
    {
        using var both = new Barrier(2);
        var failed = Assert.Throws<AggregateException>(() => Workers.ForEach([1, 2], 2, i =>
        {
            both.SignalAndWait(TimeSpan.FromSeconds(30));
            throw new IOException($"{i}");
        }, CancellationToken.None));
        Assert.Equal(["1", "2"], failed.InnerExceptions.Select(e => e.Message).Order());
    }

    [Fact]
    public void It_can_be_given_up()
    {
        using var cancel = new CancellationTokenSource();
        var begun = 0;
        Assert.Throws<OperationCanceledException>(() => Workers.ForEach([.. Enumerable.Range(0, 100)], 1, _ =>
        {
            begun++;
            cancel.Cancel();
        }, cancel.Token));
        Assert.Equal(1, begun);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(Workers.Share)]
    [InlineData((3 * Workers.Share) + 1)]
    public void In_shares_every_item_is_done_once(int count)
    {
        var done = new ConcurrentBag<int>();
        Workers.ForEachInShares(Enumerable.Range(0, count), 4, done.Add);
        Assert.Equal(Enumerable.Range(0, count), done.Order());
    }

    [Fact]
    public void Of_several_failures_the_first_items_comes_through_and_the_other_shares_go_on()
    {
        for (var round = 0; round < 50; round++)
        {
            var done = new ConcurrentBag<int>();
            var failure = Assert.Throws<IOException>(() => Workers.ForEachInShares(Enumerable.Range(0, 4 * Workers.Share), 4, item =>
            {
                if (item is 10 or Workers.Share or (3 * Workers.Share) + 7)
                {
                    throw new IOException($"{item}");
                }

                done.Add(item);
            }));
            Assert.Equal("10", failure.Message);
            Assert.Equal(10 + Workers.Share + 7, done.Count);
        }
    }
}
