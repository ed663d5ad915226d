using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests.Publishing;

/// <summary>Where <c>--out</c> may lead, and what is said of the rest.</summary>
public sealed class OutputPlaceTests : IDisposable
{
    private readonly SiteFolders _folders = new();
    private readonly string _book;

    public OutputPlaceTests() => _book = _folders.SmallBook("book", "First Shop");

    public void Dispose() => _folders.Dispose();

    [Theory]
    [InlineData("publish", "/")]
    [InlineData("publish", "book")]
    [InlineData("publish", ".")]
    [InlineData("publish", "book/jobs")]
    [InlineData("publish", "book/jobs/2026/0001/site")]
    [InlineData("publish", "book/customers")]
    [InlineData("publish", "book/templates/site")]
    [InlineData("publish", "book/shop.yaml")]
    [InlineData("publish", "book/shop.yaml/site")]
    [InlineData("publish", "a\nb/../book/units")]
    [InlineData("preview", "/")]
    [InlineData("preview", ".")]
    public void A_folder_for_something_else_is_refused_with_what_to_write(string command, string folder)
    {
        var (code, said) = Run(command, folder);

        Assert.NotEqual(ExitCode.Fine, code);
        Assert.Matches("[Nn]ame|outside", said);
        Assert.DoesNotContain("fault of Layshaft", said, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_folders.At("book/jobs/shop")));
        Assert.Empty(Directory.EnumerateFileSystemEntries(_book, ".layshaft-*", SearchOption.AllDirectories));
    }

    [Theory]
    [InlineData("a site")]
    [InlineData("-site")]
    [InlineData("sïte 'x' \"y\" $HOME [z] *")]
    [InlineData("line\nbreak")]
    [InlineData("site.")]
    [InlineData("book/reports")]
    public void A_folder_with_any_name_of_its_own_is_fine(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        Assert.Equal(ExitCode.Fine, Run("publish", folder).Code);
        Assert.True(File.Exists(Path.Combine(_folders.At(folder), "shop", "index.html")));
        Assert.Contains("Nothing has changed.", Run("publish", folder).Said, StringComparison.Ordinal);
    }

    private (int Code, string Said) Run(string command, string folder)
    {
        using var said = new StringWriter();
        var code = Entry.Run([command, _book, $"--out={Path.Combine(_folders.At("x"), "..", folder)}"], said, said);
        return (code, said.ToString());
    }
}
