using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

/// <summary>What the program says of links and uploads: a withdrawn page stays at the host until somebody deletes it there.</summary>
public sealed class UploadTests : IDisposable
{
    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("layshaft-cli-");

    public UploadTests()
    {
        var small = Path.Combine(AppContext.BaseDirectory, "Small");
        foreach (var file in Directory.EnumerateFiles(small, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(Book, Path.GetRelativePath(small, file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }

        File.AppendAllText(Path.Combine(Book, "shop.yaml"), "site_address: https://r.example/boxes\n");
    }

    private string Book => Path.Combine(_home.FullName, "book");

    private string Site => Path.Combine(_home.FullName, "site");

    private string Beside(string name) => Path.Combine(_home.FullName, ".layshaft-site", name);

    public void Dispose() => _home.Delete(recursive: true);

    [Fact]
    public void A_withdrawn_link_is_reported_until_its_deletion_at_the_host_is_confirmed()
    {
        Assert.Contains("changes wait for upload, listed in ", Publish(), StringComparison.Ordinal);
        Assert.Matches("^Confirmed: [0-9]+ uploaded, 0 deleted", Uploaded());
        Assert.DoesNotContain("upload", Publish(), StringComparison.Ordinal);

        File.AppendAllText(Path.Combine(Book, "units", "0001.yaml"), "link_renewed: 1\n");
        var told = Publish();
        Assert.Contains("1 customer link withdrawn by a change in the book.", told, StringComparison.Ordinal);
        Assert.Contains(Path.GetRelativePath(Directory.GetCurrentDirectory(), Beside("links.txt")), told, StringComparison.Ordinal);
        var files = File.ReadAllLines(Beside("changes.txt")).Count(l => l.StartsWith("- customers/", StringComparison.Ordinal));
        Assert.InRange(files, 5, 100);

        // Again although nothing changed, and again after another change.
        foreach (var again in new[] { told, Publish(), Changed() })
        {
            Assert.Matches($"(?m)^DELETE AT THE HOST: {files} files of customer pages", again);
        }

        Assert.Matches($"^Confirmed: [0-9]+ uploaded, {files} deleted at the host", Uploaded());
        Assert.Equal("No changes were waiting for upload.", Uploaded().Trim());
        Assert.DoesNotContain("HOST", Publish(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_handover_says_whether_the_page_behind_its_link_is_uploaded()
    {
        Assert.Contains("The link works after", Handover(), StringComparison.Ordinal);
        Publish();
        Assert.Contains("is not confirmed", Handover(), StringComparison.Ordinal);
        Uploaded();
        Assert.Contains("is confirmed as uploaded", Handover(), StringComparison.Ordinal);
        File.AppendAllText(Path.Combine(Book, "units", "0001.yaml"), "link_renewed: 1\n");
        Assert.Contains("does not work yet", Handover(), StringComparison.Ordinal);
        Publish();
        Assert.Contains("is not confirmed", Handover(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_that_would_open_for_somebody_else_stops_the_publish_with_its_place_and_both_names()
    {
        Publish();
        var customer = Path.Combine(Book, "customers", "first-customer.yaml");
        var was = File.ReadLines(customer).First(l => l.StartsWith("name: ", StringComparison.Ordinal))["name: ".Length..];
        File.WriteAllLines(customer, File.ReadAllLines(customer).Select(l => l.StartsWith("name: ", StringComparison.Ordinal) ? "name: Quite Other" : l));
        var (code, output, errors) = Run("publish", Book, "--out", Site);
        Assert.Equal(ExitCode.Problems, code);
        Assert.Contains("Nothing was published. The site is unchanged.", output, StringComparison.Ordinal);
        Assert.Matches($"customers/first-customer[.]yaml\\([0-9]+,7\\): 'Quite Other' would open links of '{was}': customers/[a-z2-7]+/ \\(unit 0001\\)[.] .*'formerly: {was}'.*\\[link-reader\\]", errors);
    }

    [Fact]
    public void There_is_nothing_to_confirm_for_a_folder_without_a_site()
    {
        var (code, _, errors) = Run("uploaded", "--out", Site);
        Assert.Equal(ExitCode.Problems, code);
        Assert.Contains("There is no published site in this folder.", errors, StringComparison.Ordinal);
        Assert.Equal(ExitCode.WrongUse, Run("uploaded").Code);
    }

    private string Publish() => Run("publish", Book, "--out", Site) is { Code: ExitCode.Fine } published ? published.Output : throw new InvalidOperationException();

    private string Changed()
    {
        File.AppendAllText(Path.Combine(Book, "shop.yaml"), "motto: Something new\n");
        return Publish();
    }

    private string Uploaded() => Run("uploaded", "--out", Site).Output;

    private string Handover() => Run("handover", "0001", Book, "--out", Path.Combine(_home.FullName, "mail"), "--site", Site).Errors;

    private static (int Code, string Output, string Errors) Run(params string[] words)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        return (Entry.Run(words, output, errors), output.ToString(), errors.ToString());
    }
}
