using System.Runtime.Versioning;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests.Publishing;

/// <summary>Who may look into what a publish and a handover write.</summary>
[UnsupportedOSPlatform("windows")]
public sealed class RightsTests : IDisposable
{
    private const UnixFileMode OwnFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const UnixFileMode OwnFolder = OwnFile | UnixFileMode.UserExecute;

    private readonly SiteFolders _folders = new();
    private readonly string _book;

    public RightsTests() => _book = _folders.SmallBook("book", "First Shop");

    public void Dispose() => _folders.Dispose();

    [Fact]
    public void Only_the_owner_may_look_into_the_shops_own_pages_after_every_publish()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        foreach (var name in (string[])["First Shop", "Second Shop", "Third Shop"])
        {
            Rename(name);
            Publish();
            Assert.Equal(OwnFolder, Mode("site/shop"));
            Assert.All(Directory.EnumerateFiles(_folders.At("site/shop")), f => Assert.Equal(OwnFile, ModeOf(f)));
            Assert.Equal(Mode("site"), Mode("site/customers"));
            Assert.All(Directory.EnumerateFiles(_folders.At("site/customers"), "*", SearchOption.AllDirectories), f => Assert.NotEqual(OwnFile, ModeOf(f)));
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_folder_of_the_shop_that_everybody_could_look_into_is_closed(bool changed)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        Publish();
        File.SetUnixFileMode(_folders.At("site/shop"), OwnFolder | UnixFileMode.GroupRead | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);
        Rename(changed ? "Second Shop" : "First Shop");
        Publish();
        Assert.Equal(OwnFolder, Mode("site/shop"));
    }

    [Fact]
    public void Rights_that_the_owner_gave_a_group_stay()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        Publish();
        var shared = OwnFolder | UnixFileMode.GroupRead | UnixFileMode.GroupExecute;
        File.SetUnixFileMode(_folders.At("site/shop"), shared);
        Rename("Second Shop");
        Publish();
        Assert.Equal(shared, Mode("site/shop"));
    }

    [Fact]
    public void Only_the_owner_may_read_a_draft()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        Assert.Equal(ExitCode.Fine, Entry.Run(["handover", "0001", _book, "--out", _folders.At("handover")], TextWriter.Null, TextWriter.Null));
        Assert.Equal((OwnFolder, OwnFile), (Mode("handover"), Mode("handover/report-0001.eml")));
    }

    private UnixFileMode Mode(string name) => ModeOf(_folders.At(name));

    private static UnixFileMode ModeOf(string path) => OperatingSystem.IsWindows() ? UnixFileMode.None : File.GetUnixFileMode(path);

    private void Rename(string name)
    {
        var path = Path.Combine(_book, "shop.yaml");
        File.WriteAllLines(path, File.ReadAllLines(path).Select(l => l.StartsWith("name:", StringComparison.Ordinal) ? $"name: {name}" : l));
    }

    private void Publish() => Assert.Equal(ExitCode.Fine, Entry.Run(["publish", _book, "--out", _folders.At("site")], TextWriter.Null, TextWriter.Null));
}
