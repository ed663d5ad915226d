using System.Diagnostics;
using System.Net.Sockets;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Tests.Hostile;

public sealed class RegularFileTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("layshaft-file-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void A_file_is_read_whole()
    {
        byte[] bytes = [.. Enumerable.Range(0, 20_000).Select(i => (byte)(i % 256))];
        File.WriteAllBytes(At("file"), bytes);
        File.WriteAllBytes(At("empty"), []);

        Assert.Equal(bytes, RegularFile.ReadAll(At("file")));
        Assert.Empty(RegularFile.ReadAll(At("empty")));
        using var stream = RegularFile.Open(At("file"));
        stream.Position = 300;
        Assert.Equal((bytes.Length, bytes[300]), (stream.Length, stream.ReadByte()));
    }

    [Theory]
    [InlineData("pipe")]
    [InlineData("socket")]
    [InlineData("device")]
    [InlineData("folder")]
    [InlineData("link")]
    [InlineData("link to a pipe")]
    [InlineData("link to nothing")]
    public void What_is_not_a_file_is_refused_at_once(string what)
    {
        if (OperatingSystem.IsWindows() && what is not "folder")
        {
            return;
        }

        var path = Make(what);
        Assert.True(Guard.Run(() => Record.Exception(() => RegularFile.Open(path))) is IOException or UnauthorizedAccessException);
    }

    [Fact]
    public void What_is_missing_is_said_to_be_missing()
    {
        Assert.Throws<FileNotFoundException>(() => RegularFile.Open(At("nothing")));
        File.WriteAllText(At("file"), "x");
        Assert.ThrowsAny<IOException>(() => RegularFile.Open(At("file/inside")));
    }

    private string At(string name) => Path.Combine(_folder.FullName, name);

    private string Make(string what)
    {
        var path = At("it");
        switch (what)
        {
            case "pipe":
                Pipe(path);
                break;
            case "socket":
                using (var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified))
                {
                    socket.Bind(new UnixDomainSocketEndPoint(path));
                    File.Move(path, At("kept"));
                }

                return At("kept");
            case "device":
                return "/dev/zero";
            case "folder":
                Directory.CreateDirectory(path);
                break;
            case "link":
                File.WriteAllText(At("file"), "x");
                File.CreateSymbolicLink(path, At("file"));
                break;
            case "link to a pipe":
                Pipe(At("pipe"));
                File.CreateSymbolicLink(path, At("pipe"));
                break;
            default:
                File.CreateSymbolicLink(path, At("nothing"));
                break;
        }

        return path;
    }

    private static void Pipe(string path)
    {
        using var made = Process.Start(new ProcessStartInfo("mkfifo") { ArgumentList = { path } })!;
        made.WaitForExit();
        Assert.Equal(0, made.ExitCode);
    }
}
