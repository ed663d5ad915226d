using Layshaft.Cli.Commands;
using MimeKit;

namespace Layshaft.Cli.Tests;

/// <summary>What <c>layshaft handover</c> writes, and when it writes nothing.</summary>
public class HandoverTests : IDisposable
{
    private readonly DirectoryInfo home = Directory.CreateTempSubdirectory("layshaft-cli-");

    public HandoverTests()
    {
        var small = Path.Combine(AppContext.BaseDirectory, "Small");
        foreach (var file in Directory.EnumerateFiles(small, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(Book, Path.GetRelativePath(small, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    private string Book => Path.Combine(home.FullName, "book");

    private string Out => Path.Combine(home.FullName, "out");

    public void Dispose()
    {
        home.Delete(recursive: true);
        GC.SuppressFinalize(this);
    }

    [Fact]
    public void A_draft_names_the_page_that_a_publish_writes()
    {
        File.AppendAllText(Path.Combine(Book, "shop.yaml"), "site_address: https://r.example/boxes\n");
        var site = Path.Combine(home.FullName, "site");
        Run("publish", Book, "--out", site);

        var (code, output, errors) = Run("handover", "0001", Book, "--out", Out);

        Assert.True(code == ExitCode.Fine, errors);
        Assert.Contains(Path.Combine(Out, "report-0001.eml"), output, StringComparison.Ordinal);
        var mail = MimeMessage.Load(Path.Combine(Out, "report-0001.eml"));
        var link = System.Text.RegularExpressions.Regex.Match(mail.TextBody!, "https://r[.]example/boxes/(\\S+)");
        Assert.True(File.Exists(Path.Combine(site, link.Groups[1].Value)), mail.TextBody);
        Assert.Contains($"href=\"{link.Value}\"", mail.HtmlBody, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(site, Path.GetDirectoryName(link.Groups[1].Value)!, "card.png")));
        Assert.Equal(["report-0001.eml"], Directory.GetFiles(Out).Select(Path.GetFileName));
    }

    [Fact]
    public void Without_an_address_of_the_site_the_draft_has_no_link_and_the_technician_is_told()
    {
        var (code, _, errors) = Run("handover", "0001", Book, "--out", Out, "--enclose");

        Assert.Equal(ExitCode.Fine, code);
        Assert.Contains("site_address", errors, StringComparison.Ordinal);
        var mail = MimeMessage.Load(Path.Combine(Out, "report-0001.eml"));
        Assert.DoesNotContain("http", mail.TextBody, StringComparison.Ordinal);
        Assert.Equal("report-0001.html", Assert.Single(mail.Attachments).ContentDisposition!.FileName);
    }

    [Fact]
    public void The_same_book_gives_the_same_draft()
    {
        Run("handover", "0001", Book, "--out", Out, "--enclose");
        var first = File.ReadAllBytes(Path.Combine(Out, "report-0001.eml"));
        Run("handover", "0001", Book, "--out", Out, "--enclose");

        Assert.Equal(first, File.ReadAllBytes(Path.Combine(Out, "report-0001.eml")));
    }

    [Fact]
    public void The_one_file_report_can_be_written_alone_and_keeps_to_the_shops_size()
    {
        var (code, output, _) = Run("handover", "0001", Book, "--out", Out, "--file-only");

        Assert.Equal(ExitCode.Fine, code);
        Assert.Contains("report-0001.html", output, StringComparison.Ordinal);
        Assert.Equal(["report-0001.html"], Directory.GetFiles(Out).Select(Path.GetFileName));

        File.AppendAllText(Path.Combine(Book, "shop.yaml"), "one_file_limit: 20 kB\n");
        var (refused, _, errors) = Run("handover", "0001", Book, "--out", Path.Combine(home.FullName, "other"), "--enclose");
        Assert.Equal(ExitCode.Problems, refused);
        Assert.Matches("cannot be made smaller than [0-9.]+ kB, but shop.yaml allows 20 kB", errors);
        Assert.False(Directory.Exists(Path.Combine(home.FullName, "other")));
    }

    [Theory]
    [InlineData("customers")]
    [InlineData("customers/any/deeper")]
    [InlineData("reference")]
    public void Nothing_is_written_where_others_could_read_it(string folder)
    {
        var site = Path.Combine(home.FullName, "site");
        Run("publish", Book, "--out", site);
        var before = Directory.GetFiles(site, "*", SearchOption.AllDirectories);

        var (code, _, errors) = Run("handover", "0001", Book, "--out", Path.Combine(site, folder));

        Assert.Equal(ExitCode.WrongUse, code);
        Assert.Contains("uploaded", errors, StringComparison.Ordinal);
        Assert.Equal(before, Directory.GetFiles(site, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void A_job_that_is_not_there_or_not_ready_is_told()
    {
        var (missing, _, errors) = Run("handover", "0010", Book, "--out", Out);
        Assert.Equal(ExitCode.WrongUse, missing);
        Assert.Contains("The book has no job '0010'", errors, StringComparison.Ordinal);

        var job = Path.Combine(Book, "jobs", "2026", "0001", "job.yaml");
        File.WriteAllLines(job, File.ReadAllLines(job).Where(l => !l.StartsWith("finished:", StringComparison.Ordinal)));
        var (unready, _, why) = Run("handover", "0001", Book, "--out", Out);
        Assert.Equal(ExitCode.WrongUse, unready);
        Assert.Contains("neither finished nor waiting", why, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Out));
    }

    private static (int Code, string Output, string Errors) Run(params string[] words)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        return (Entry.Run(words, output, errors), output.ToString(), errors.ToString());
    }
}
