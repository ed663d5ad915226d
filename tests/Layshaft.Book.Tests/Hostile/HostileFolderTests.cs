using System.Diagnostics;
using System.Net.Sockets;
using System.Text;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;

namespace Layshaft.Book.Tests.Hostile;

/// <summary>A book's folder that holds what no book should: links, pipes, sockets, folders in place of files, names that clash.</summary>
public class HostileFolderTests
{
    private const string Job = "jobs/2026/0001/job.yaml";
    private const string Photo = "jobs/2026/0001/photos/ring.png";

    [Theory]
    [InlineData("shop.yaml")]
    [InlineData("customers/first-customer.yaml")]
    [InlineData(Job)]
    [InlineData(Photo)]
    public void A_link_to_a_file_outside_is_refused_and_not_read(string path)
    {
        using var book = new BookFolder();
        var secret = Path.Combine(book.Outside, "secret.yaml");
        File.WriteAllText(secret, "name: SECRET\n");
        File.Delete(book.At(path));
        File.CreateSymbolicLink(book.At(path), secret);
        var problems = Problems(book);
        Assert.Contains(problems, p => p.Code == "link" && p.Place.File == path);
        Assert.DoesNotContain(problems, p => p.ToString().Contains("SECRET", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("customers")]
    [InlineData("jobs/2026")]
    [InlineData("templates")]
    [InlineData("jobs/2026/0001/photos")]
    public void A_link_to_a_folder_is_refused_and_not_entered(string path)
    {
        using var book = new BookFolder();
        File.WriteAllText(Path.Combine(book.Outside, "secret.yaml"), "name: SECRET\n");
        if (Directory.Exists(book.At(path)))
        {
            Directory.Delete(book.At(path), recursive: true);
        }

        Directory.CreateSymbolicLink(book.At(path), book.Outside);
        var problems = Problems(book);
        Assert.Contains(problems, p => p.Code == "link" && p.Place.File == path);
        Assert.DoesNotContain(problems, p => p.Place.File.Contains("secret", StringComparison.Ordinal));
    }

    [Fact]
    public void A_link_in_a_circle_and_one_to_nothing_are_refused()
    {
        using var book = new BookFolder();
        Directory.CreateSymbolicLink(book.At("units/round"), book.Path);
        File.CreateSymbolicLink(book.At("units/gone.yaml"), book.At("nowhere.yaml"));
        Assert.Equal(["units/gone.yaml", "units/round"], Problems(book).Where(p => p.Code == "link").Select(p => p.Place.File));
    }

    [Theory]
    [InlineData("shop.yaml")]
    [InlineData("units/0001.yaml")]
    [InlineData(Job)]
    public void A_pipe_in_place_of_a_file_does_not_hang_the_reader(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            return; // there are no named pipes among files there
        }

        using var book = new BookFolder();
        MakePipe(book.At(path));
        Assert.Contains(Problems(book), p => p.Place.File == path && p.Severity == Severity.Stops);
    }

    [Fact]
    public void A_pipe_in_place_of_a_picture_gives_no_bytes_and_does_not_hang()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var book = new BookFolder();
        MakePipe(book.At(Photo));
        var files = FolderBookFiles.Look(book.Path, new ProblemList());
        Assert.Equal(0, Guard.Run(() =>
        {
            using var stream = files.Open(Photo);
            return stream.Length + files.Read(Photo).Length;
        }));
    }

    [Fact]
    public void A_socket_in_place_of_a_file_is_a_problem()
    {
        using var book = new BookFolder();
        File.Delete(book.At("shop.yaml"));
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        socket.Bind(new UnixDomainSocketEndPoint(book.At("shop.yaml")));
        Assert.Contains(Problems(book), p => p.Place.File == "shop.yaml");
    }

    [Theory]
    [InlineData("shop.yaml", "no-shop-file")]
    [InlineData(Job, "no-job-file")]
    [InlineData("units/0001.yaml", "missing-reference")]
    public void A_folder_in_place_of_a_file_is_a_problem(string path, string code)
    {
        using var book = new BookFolder();
        File.Delete(book.At(path));
        Directory.CreateDirectory(book.At(path));
        Assert.Contains(Problems(book), p => p.Code == code);
    }

    [Fact]
    public void A_file_in_place_of_a_folder_is_a_problem()
    {
        using var book = new BookFolder();
        Directory.Delete(book.At("units"), recursive: true);
        File.WriteAllText(book.At("units"), "x");
        Assert.Contains(Problems(book), p => p.Code == "missing-reference" && p.Message.Contains("units/", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("units/caf\u00E9.yaml", "units/cafe\u0301.yaml")]
    [InlineData("units/Twin.yaml", "units/twin.yaml")]
    [InlineData("units/\u0130stanbul.yaml", "units/istanbul.yaml")]
    [InlineData("units/\uFF41.yaml", "units/a.yaml")]
    public void Names_that_another_system_takes_for_one_are_refused(string first, string second)
    {
        var files = Books.SmallFiles();
        files[first] = files["units/0001.yaml"];
        files[second] = files["units/0001.yaml"];
        var problems = BookReader.Read(new MemoryBookFiles(files)).Problems;
        Assert.Contains(problems, p => p.Code == "bad-name" && (p.Place.File == first || p.Place.File == second));
    }

    [Theory]
    [InlineData("units/con.yaml")]
    [InlineData("customers/nul.yaml")]
    [InlineData("gearboxes/com1.yaml")]
    [InlineData("jobs/2026/lpt9/job.yaml")]
    [InlineData("jobs/2026/aux/job.yaml")]
    public void The_name_of_a_device_is_refused_for_it_can_be_no_folder_on_windows(string path)
    {
        var files = Books.SmallFiles();
        files[path] = files["units/0001.yaml"];
        Assert.Contains(BookReader.Read(new MemoryBookFiles(files)).Problems, p => p.Code == "bad-name" && p.Place.File == path && p.Message.Contains("device", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("jobs/2026/0001/../../../shop.yaml")]
    [InlineData("jobs/2026/0001/..")]
    [InlineData("../secret.yaml")]
    [InlineData("/etc/passwd")]
    [InlineData("\\\\server\\share\\a.yaml")]
    [InlineData("C:\\secret.yaml")]
    [InlineData("shop.yaml\0.png")]
    [InlineData("SHOP.YAML")]
    [InlineData("shop.yaml/")]
    [InlineData("./shop.yaml")]
    public void A_path_that_the_walk_did_not_find_is_not_opened(string path)
    {
        using var book = new BookFolder();
        var files = FolderBookFiles.Look(book.Path, new ProblemList());
        Assert.False(files.Has(path));
        Assert.Throws<FileNotFoundException>(() => files.Read(path));
        Assert.Throws<FileNotFoundException>(() => files.Open(path));
        Assert.Throws<FileNotFoundException>(() => files.LengthOf(path));
    }

    [Theory]
    [InlineData("../secret.md")]
    [InlineData("../../../../etc/passwd")]
    [InlineData("/etc/passwd.md")]
    [InlineData("C:\\\\secret.md")]
    [InlineData("C:secret.md")]
    [InlineData("\\\\\\\\server\\\\share\\\\a.md")]
    [InlineData("//server/share/a.md")]
    [InlineData("photos/../../x.md")]
    [InlineData("a/./b.md")]
    [InlineData("file:///etc/passwd.md")]
    [InlineData("http://a.example/a.md")]
    [InlineData("~/a.md")]
    [InlineData("$HOME/a.md")]
    [InlineData("a.md\\n")]
    [InlineData("caf\\u00e9.md")]
    [InlineData("a.md:stream.md")]
    [InlineData("con.md")]
    [InlineData("photos/nul.png")]
    public void A_file_name_that_leads_elsewhere_is_refused_in_every_field_that_takes_one(string name)
    {
        foreach (var (field, line) in new[] { ("notes: ", string.Empty), ("internal_notes: ", string.Empty), ("photos: [{ caption: x, file: ", " }]") })
        {
            var files = Books.SmallFiles();
            files[Job] = Encoding.UTF8.GetBytes($"unit: \"0001\"\nreceived: 2026-03-02\nuse: 18.5 h\ncomplaint: x\n{field}\"{name}\"{line}\n");
            Assert.Contains(BookReader.Read(new MemoryBookFiles(files)).Problems, p => p.Code == "bad-file-name" && p.Place is { File: Job, Line: 5 });
        }
    }

    [Theory]
    [InlineData("0001\\n")]
    [InlineData("../0001")]
    [InlineData("0001/../0001")]
    [InlineData("0001\\u0000")]
    [InlineData("\\uFF10001")]
    public void A_short_name_holds_nothing_but_letters_digits_and_hyphens(string name)
    {
        var files = Books.SmallFiles();
        files[Job] = Encoding.UTF8.GetBytes($"unit: \"{name}\"\nreceived: 2026-03-02\nuse: 18.5 h\ncomplaint: x\n");
        Assert.Contains(BookReader.Read(new MemoryBookFiles(files)).Problems, p => p.Code is "bad-name" or "hidden-character" or "look-alike" && p.Place is { File: Job, Line: 1 });
    }

    [Fact]
    public void Folders_within_folders_are_followed_to_a_bound()
    {
        using var book = new BookFolder();
        Directory.CreateDirectory(book.At(string.Join('/', Enumerable.Repeat("deep", 400))));
        Assert.Contains(Problems(book), p => p.Code == "too-deep-folder");
    }

    private static IReadOnlyList<Problem> Problems(BookFolder book) => Guard.Run(() => BookReader.ReadFolder(book.Path).Problems);

    private static void MakePipe(string path)
    {
        File.Delete(path);
        using var made = Process.Start(new ProcessStartInfo("mkfifo") { ArgumentList = { path } })!;
        made.WaitForExit();
        Assert.Equal(0, made.ExitCode);
    }
}
