using System.Diagnostics;
using System.Globalization;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests.Publishing;

/// <summary>
/// The real program, killed at random moments of its work on the site: after the next command the site is the old or the new one. Kills
/// twenty times; <c>LAYSHAFT_KILLS</c> asks for more.
/// </summary>
public sealed class KilledPublishTests
{
    private static readonly int Kills =
        int.TryParse(Environment.GetEnvironmentVariable("LAYSHAFT_KILLS"), NumberStyles.None, CultureInfo.InvariantCulture, out var asked) ? asked : 20;

    [Fact]
    public void A_publish_that_is_killed_leaves_the_old_or_the_new_site_once_the_next_command_has_run()
    {
        using var folders = new SiteFolders();
        string[] books = [folders.SmallBook("one", "First Shop"), folders.SmallBook("other", "Second Shop")];
        string[] wanted = [WholeTree(folders, books[0], "whole-one"), WholeTree(folders, books[1], "whole-other")];
        Assert.NotEqual(wanted[0], wanted[1]);
        var site = folders.At("site");
        Child.PublishWhole(books[0], site);
        File.WriteAllText(Path.Combine(site, "mine.txt"), "mine");

        // How long it works on the site, from the first file that it makes to its end.
        var span = TimeSpan.FromMilliseconds(200);
        var random = new Random(17);
        var (killed, old, next) = (0, 0, 1);
        for (var round = 0; killed < Kills && round < 4 * Kills; round++)
        {
            using var child = Child.Publish(books[next], site);
            WaitForWork(folders, child);
            var since = Stopwatch.StartNew();
            if (child.WaitForExit(span * (1.1 * random.NextDouble())))
            {
                span = Shorter(span, since.Elapsed);
            }
            else
            {
                child.Kill();
                child.WaitForExit();
                killed++;
            }

            Assert.Equal("mine", File.ReadAllText(Path.Combine(site, "mine.txt")));
            var isCutOff = File.Exists(Path.Combine(site, "shop", "layshaft-manifest.json.next"));
            Assert.Equal(isCutOff ? ExitCode.Problems : ExitCode.Fine, Entry.Run(["uploaded", "--out", site], TextWriter.Null, TextWriter.Null));
            var found = folders.Tree("site");
            Assert.Contains(found, wanted);
            old += found == wanted[next] ? 0 : 1;
            if (round % 6 == 5)
            {
                Child.PublishWhole(books[next], site);
                Assert.Equal(wanted[next], folders.Tree("site"));
                Assert.False(Directory.Exists(folders.At(".layshaft-site/made")));
                Assert.False(File.Exists(Path.Combine(site, "shop", "layshaft-manifest.json.next")));
            }

            // Whichever of the two stands there now, the next publish is of the other.
            next = folders.Tree("site") == wanted[0] ? 1 : 0;
        }

        Assert.Equal(Kills, killed);
        Assert.True(old > 0, "no kill came before the new site was in place");
    }

    private static string WholeTree(SiteFolders folders, string book, string name)
    {
        Child.PublishWhole(book, folders.At(name));
        File.WriteAllText(folders.At($"{name}/mine.txt"), "mine");
        return folders.Tree(name);
    }

    private static void WaitForWork(SiteFolders folders, Process child)
    {
        while (!child.HasExited && !Directory.Exists(folders.At(".layshaft-site/made")))
        {
            Thread.Sleep(1);
        }
    }

    private static TimeSpan Shorter(TimeSpan span, TimeSpan seen) => seen > TimeSpan.FromMilliseconds(5) && seen < span ? seen : span;
}
