using System.Globalization;
using System.Text.RegularExpressions;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests.Publishing;

/// <summary>What counts as no change at all, and what does not.</summary>
public sealed class UnchangedTests : IDisposable
{
    private readonly SiteFolders _folders = new();
    private readonly string _book;

    public UnchangedTests()
    {
        _book = _folders.SmallBook("book", "Quiet Shop");
        Publish();
    }

    public void Dispose() => _folders.Dispose();

    [Fact]
    public void A_book_that_did_not_change_is_said_to_be_unchanged_and_the_same_is_said_of_it_again()
    {
        var first = Publish();
        Assert.Contains("Nothing has changed.", first, StringComparison.Ordinal);
        Assert.Equal(first, Publish());
    }

    [Fact]
    public void A_change_that_size_and_time_do_not_show_is_found_while_the_file_is_young()
    {
        var path = Path.Combine(_book, "shop.yaml");
        var (text, time) = (File.ReadAllText(path), File.GetLastWriteTimeUtc(path));
        File.WriteAllText(path, Swapped(text));
        File.SetLastWriteTimeUtc(path, time);
        Assert.DoesNotContain("Nothing has changed.", Publish(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_old_file_of_the_book_is_not_read_when_its_size_and_time_are_the_same()
    {
        var (files, time) = (Directory.GetFiles(_book, "*", SearchOption.AllDirectories), new DateTime(2026, 1, 2, 3, 4, 5, DateTimeKind.Utc));
        Array.ForEach(files, f => File.SetLastWriteTimeUtc(f, time));
        Publish();

        // What nobody reads, nobody can find fault with.
        foreach (var file in files)
        {
            File.WriteAllBytes(file, new byte[new FileInfo(file).Length]);
            File.SetLastWriteTimeUtc(file, time);
        }

        Assert.Contains("Nothing has changed.", Publish(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_secret_that_was_exchanged_for_one_of_its_length_and_time_is_found_while_it_is_young()
    {
        var path = Path.Combine(_book, ".layshaft-secret");
        File.SetLastWriteTimeUtc(path, DateTime.UtcNow.AddHours(1)); // young, however long the publish takes
        Publish();
        var (text, time) = (File.ReadAllText(path), File.GetLastWriteTimeUtc(path));
        File.WriteAllText(path, (text[0] == 'a' ? 'b' : 'a') + text[1..]);
        File.SetLastWriteTimeUtc(path, time);
        Assert.DoesNotContain("Nothing has changed.", Publish(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_the_site_that_was_changed_by_hand_is_put_right()
    {
        var page = Path.Combine(_folders.At("site"), "shop", "index.html");
        var before = File.ReadAllText(page);
        File.AppendAllText(page, "by hand");
        Publish();
        Assert.Equal(before, File.ReadAllText(page));
    }

    [Fact]
    public void A_strangers_file_is_named_each_time()
    {
        File.WriteAllText(Path.Combine(_folders.At("site"), "mine.txt"), "mine");
        Assert.Contains("Kept, not created by Layshaft: mine.txt", Publish(), StringComparison.Ordinal);
        Assert.Contains("Kept, not created by Layshaft: mine.txt", Publish(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_site_that_was_deleted_is_made_again()
    {
        Directory.Delete(_folders.At("site"), recursive: true);
        Assert.Contains("files added", Publish(), StringComparison.Ordinal);
    }

    [Fact]
    public void Changed_and_unchanged_files_make_up_the_site()
    {
        File.WriteAllText(Path.Combine(_book, "shop.yaml"), Swapped(File.ReadAllText(Path.Combine(_book, "shop.yaml"))));
        var counts = Regex.Match(Publish(), "0 files added, ([0-9]+) changed, 0 removed, ([0-9]+) unchanged");
        Assert.True(counts.Success);
        var numbers = counts.Groups.Values.Skip(1).Select(g => int.Parse(g.Value, CultureInfo.InvariantCulture)).ToArray();
        Assert.All(numbers, n => Assert.True(n > 0));

        // The manifest is no file of its own list.
        Assert.Equal(Directory.GetFiles(_folders.At("site"), "*", SearchOption.AllDirectories).Length - 1, numbers.Sum());
    }

    // A letter of the shop's name for another: the same length.
    private static string Swapped(string text)
    {
        var at = text.IndexOf("name: ", StringComparison.Ordinal) + 6;
        return text[..at] + (text[at] == 'Q' ? 'R' : 'Q') + text[(at + 1)..];
    }

    private string Publish()
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        Assert.True(Entry.Run(["publish", _book, "--out", _folders.At("site")], output, errors) == 0, errors.ToString());
        return output.ToString();
    }
}
