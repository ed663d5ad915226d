namespace Layshaft.Cli.Tests.Publishing;

/// <summary>The same book gives the same bytes, whatever the machine is set to. The real program, each time in a process of its own.</summary>
public sealed class SameBytesTests
{
    [Fact]
    public void The_same_book_gives_the_same_bytes_in_another_folder_culture_time_zone_and_on_one_core()
    {
        using var folders = new SiteFolders();
        var book = folders.StarterBook("book");
        Child.PublishWhole(book, folders.At("first"), ("DOTNET_PROCESSOR_COUNT", "2"));
        var first = folders.Tree("first");
        (string Name, string Value)[][] machines =
        [
            [("LC_ALL", "de_DE.UTF-8"), ("TZ", "Pacific/Auckland"), ("DOTNET_PROCESSOR_COUNT", "1")],
            [("LC_ALL", "tr_TR.UTF-8"), ("TZ", "America/St_Johns"), ("DOTNET_SYSTEM_GLOBALIZATION_INVARIANT", "0"), ("DOTNET_PROCESSOR_COUNT", "2")],
        ];
        foreach (var (machine, i) in machines.Select((m, i) => (m, i)))
        {
            var elsewhere = folders.StarterBook($"moved-{i}/deeper/book");
            Child.PublishWhole(elsewhere, folders.At($"moved-{i}/site"), machine);
            Assert.Equal(first, folders.Tree($"moved-{i}/site"));
        }

        // Once more over the first, as it stands.
        Child.PublishWhole(book, folders.At("first"));
        Assert.Equal(first, folders.Tree("first"));
    }
}
