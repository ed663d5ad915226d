using System.Text;
using CsCheck;
using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Upload;

namespace Layshaft.Site.Tests.Publishing;

/// <summary>The list of what the host does not have yet gathers until an upload is confirmed.</summary>
public sealed class UploadListTests : IDisposable
{
    private static readonly string[] Paths = ["customers/a/index.html", "customers/b/index.html", "reference/c.html", "a.html", "b/c/d.html"];
    private readonly TempFolder _temp = new();

    public void Dispose() => _temp.Dispose();

    private string Out => _temp.At("reports");

    private string List => _temp.At(".layshaft-reports/changes.txt");

    private PublishResult Publish(params (string Path, string Content)[] files) => new Publisher(Sites.Options).Publish(Sites.Plan([.. files, ("shop/index.html", "own")]), Out);

    // Every moment since the last confirmed upload: somebody may have uploaded then, and not confirmed it.
    [Fact]
    public void Applied_to_a_host_as_it_was_at_any_moment_since_the_last_confirmed_upload_the_list_gives_the_site() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 3].Array[Paths.Length]).Array[1, 12].Sample(
            rounds =>
            {
                using var temp = new TempFolder();
                var (site, list) = (temp.At("reports"), temp.At(".layshaft-reports/changes.txt"));
                var hosts = new List<Dictionary<string, string>> { new() };
                foreach (var (hand, contents) in rounds)
                {
                    // Somebody edits a file of ours, which may go up to the host as it is.
                    var edited = Path.Combine(site, Paths[hand % Paths.Length]);
                    if (hand < 5 && contents[hand % Paths.Length] > 0 && File.Exists(edited))
                    {
                        File.WriteAllText(edited, "by hand");
                        hosts.Add(ForUpload(site));
                    }

                    var files = Paths.Zip(contents).Where(f => f.Second > 0).Select(f => (f.First, $"{f.First} {f.Second}"));
                    var result = new Publisher(Sites.Options, new DiskWork(waitForDisk: false)).Publish(Sites.Plan([.. files, ("shop/index.html", "own")]), site);
                    Assert.True(result.Outcome is PublishOutcome.Published or PublishOutcome.Unchanged, string.Join(' ', result.Problems));
                    var ours = files.ToDictionary(f => f.First, f => f.Item2, StringComparer.Ordinal);
                    Assert.All(hosts, host => Assert.Equal(Sorted(ours), Sorted(Applied(host, list, site))));
                    hosts.Add(ours);
                    if (hand == 9)
                    {
                        new Publisher(Sites.Options).ConfirmUpload(site);
                        hosts = [ours];
                    }
                }
            },
            iter: 60,
            threads: 1);

    [Fact]
    public void What_was_removed_stays_listed_through_later_publishes_and_comes_first_until_it_is_confirmed()
    {
        Publish(("customers/a/index.html", "a"), ("customers/b/index.html", "b"));
        Assert.Equal((2, 0), new Publisher().ConfirmUpload(Out).Done is { } first ? (first.Uploads, first.Deletions) : default);
        Publish(("customers/a/index.html", "a"));
        Publish(("customers/a/index.html", "A"), ("a.html", "x"));
        Publish(("customers/a/index.html", "A"), ("a.html", "x"));
        Assert.Equal("- customers/b/index.html\n+ a.html\n* customers/a/index.html\n", File.ReadAllText(List));
        Assert.Equal(new UploadList(List, 2, 1, 1), UploadList.Beside(Out));
        Assert.True(UploadList.Beside(Out)!.Names("customers/b"));
        Assert.False(UploadList.Beside(Out)!.Names("customers/c"));
        Assert.Equal(3, new Publisher().ConfirmUpload(Out).Done!.Count);
        Assert.Equal(string.Empty, File.ReadAllText(List));
        Assert.Equal(0, new Publisher().ConfirmUpload(Out).Done!.Count);
    }

    [Fact]
    public void A_file_that_comes_back_before_its_removal_is_confirmed_is_to_be_uploaded()
    {
        Publish(("a.html", "a"), ("b.html", "b"));
        new Publisher().ConfirmUpload(Out);
        Publish(("b.html", "b"));
        Publish(("a.html", "a"), ("b.html", "b"));
        Assert.Equal("* a.html\n", File.ReadAllText(List));
    }

    [Fact]
    public void A_withdrawn_page_that_was_changed_by_hand_stays_here_and_is_to_be_deleted_at_the_host()
    {
        Publish(("customers/a/index.html", "a"), ("b.html", "b"));
        new Publisher().ConfirmUpload(Out);
        _temp.Write("reports/customers/a/index.html", "mine");
        Publish(("b.html", "b"));
        Assert.Equal("- customers/a/index.html\n", File.ReadAllText(List));
        Assert.True(File.Exists(_temp.At("reports/customers/a/index.html")));
    }

    [Fact]
    public void Nothing_of_the_shops_own_folder_is_ever_for_upload()
    {
        Publish(("a.html", "a"));
        Assert.DoesNotContain("shop", File.ReadAllText(List), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_list_every_file_waits()
    {
        Publish(("a.html", "a"), ("b.html", "b"), ("c.html", "c"));
        new Publisher().ConfirmUpload(Out);
        Directory.Delete(_temp.At(".layshaft-reports"), recursive: true);
        Assert.NotNull(new Publisher().ConfirmUpload(Out).Problem);
        Publish(("a.html", "a"), ("b.html", "B"));
        Assert.Equal("- c.html\n* a.html\n* b.html\n", File.ReadAllText(List));
        File.Delete(List);
        Assert.Equal(PublishOutcome.Unchanged, Publish(("a.html", "a"), ("b.html", "B")).Outcome);
        Assert.Equal("* a.html\n* b.html\n", File.ReadAllText(List));
    }

    [Fact]
    public void A_list_in_any_order_with_lines_of_somebody_else_is_taken_as_it_is_meant()
    {
        Publish(("a.html", "a"));
        File.WriteAllText(List, "+ z.html\n# done until here\n* b.html\n- shop/../x\n- c.html\n= b.html\n- d.html\n");
        Publish(("a.html", "A"), ("c.html", "c"));
        Assert.Equal("- d.html\n* a.html\n* b.html\n* c.html\n+ z.html\n", File.ReadAllText(List));
    }

    [Fact]
    public void There_is_nothing_to_confirm_where_nothing_was_published()
    {
        Assert.NotNull(new Publisher().ConfirmUpload(Out).Problem);
        Assert.False(Directory.Exists(_temp.At(".layshaft-reports")));
        Assert.Null(UploadList.Beside(Out));
    }

    // Whichever step is the last: what waited before still waits, and what the site in place has, too.
    [Theory]
    [InlineData(false, true)]
    [InlineData(true, true)]
    [InlineData(false, false)]
    [InlineData(true, false)]
    public void Whatever_step_of_a_publish_is_the_last_no_change_is_lost(bool dead, bool exchange)
    {
        for (var failAt = 1; failAt < 60; failAt++)
        {
            using var temp = new TempFolder();
            var (site, list) = (temp.At("reports"), temp.At(".layshaft-reports/changes.txt"));
            PublishResult Run(FaultyFileWork files, params (string, string)[] plan) => new Publisher(Sites.Options, files).Publish(Sites.Plan([.. plan, ("shop/index.html", "own")]), site);
            Run(new(), ("a.html", "a"), ("b.html", "b"), ("c.html", "c"));
            new Publisher().ConfirmUpload(site);
            Dictionary<string, string>[] hosts = [ForUpload(site), new(ForUpload(site)) { ["d.html"] = "d" }];
            Run(new(), ("b.html", "b"), ("c.html", "c"), ("d.html", "d"));
            Run(new(failAt, dead, exchange), ("c.html", "C"), ("d.html", "D"), ("e.html", "e"));
            Run(new(), ("c.html", "C"), ("f.html", "f"));
            Assert.All(hosts, host => Assert.Equal(Sorted(ForUpload(site)), Sorted(Applied(host, list, site))));
            Assert.Equal("c.html = C\nf.html = f\n", Sites.Show(site));
            Assert.False(File.Exists(temp.At(".layshaft-reports/changes-next")));
        }
    }

    private static string Sorted(Dictionary<string, string> files) =>
        files.OrderBy(f => f.Key, StringComparer.Ordinal).Aggregate(new StringBuilder(), (all, f) => all.Append(f.Key).Append(" = ").Append(f.Value).Append('\n')).ToString();

    private static Dictionary<string, string> ForUpload(string site) => Directory.EnumerateFiles(site, "*", SearchOption.AllDirectories)
        .Select(p => (Path: Path.GetRelativePath(site, p).Replace('\\', '/'), Text: File.ReadAllText(p)))
        .Where(f => !f.Path.StartsWith("shop/", StringComparison.Ordinal)).ToDictionary(f => f.Path, f => f.Text, StringComparer.Ordinal);

    // As a technician does it: deletes what the list says, copies the rest.
    private static Dictionary<string, string> Applied(Dictionary<string, string> host, string list, string site)
    {
        var now = new Dictionary<string, string>(host, StringComparer.Ordinal);
        foreach (var line in File.ReadAllLines(list))
        {
            if (line[0] == '-')
            {
                now.Remove(line[2..]);
            }
            else
            {
                now[line[2..]] = File.ReadAllText(Path.Combine(site, line[2..]));
            }
        }

        return now;
    }
}
