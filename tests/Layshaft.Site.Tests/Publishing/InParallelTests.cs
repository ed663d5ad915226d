using System.Collections.Concurrent;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Tests.Publishing;

public class InParallelTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(InParallel.Share)]
    [InlineData((3 * InParallel.Share) + 1)]
    public void Every_item_is_done_once(int count)
    {
        var done = new ConcurrentBag<int>();
        InParallel.ForEach(Enumerable.Range(0, count), 4, done.Add);
        Assert.Equal(Enumerable.Range(0, count), done.Order());
    }

    [Fact]
    public void Of_several_failures_the_first_items_comes_through_and_the_other_shares_go_on()
    {
        for (var round = 0; round < 50; round++)
        {
            var done = new ConcurrentBag<int>();
            var failure = Assert.Throws<IOException>(() => InParallel.ForEach(Enumerable.Range(0, 4 * InParallel.Share), 4, item =>
            {
                if (item is 10 or InParallel.Share or (3 * InParallel.Share) + 7)
                {
                    throw new IOException($"{item}");
                }

                done.Add(item);
            }));
            Assert.Equal("10", failure.Message);
            Assert.Equal(10 + InParallel.Share + 7, done.Count);
        }
    }
}
