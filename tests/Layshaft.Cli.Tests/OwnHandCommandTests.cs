using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

/// <summary>A shop's own words and templates as check and publish speak of them.</summary>
public sealed class OwnHandCommandTests : IDisposable
{
    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("layshaft-own-");

    private string Book => Path.Combine(_home.FullName, "book");

    private string Site => Path.Combine(_home.FullName, "site");

    public OwnHandCommandTests()
    {
        var small = Path.Combine(AppContext.BaseDirectory, "Small");
        foreach (var file in Directory.EnumerateFiles(small, "*", SearchOption.AllDirectories))
        {
            Write(Path.GetRelativePath(small, file), File.ReadAllBytes(file));
        }
    }

    public void Dispose() => _home.Delete(recursive: true);

    [Fact]
    public void Check_names_a_mistyped_key_of_the_shops_words()
    {
        Write("templates/texts/en.yaml", "report.complain: What brought you here\n"u8.ToArray());

        var (code, output, errors) = Run("check", Book);

        Assert.Equal((ExitCode.Problems, "1 problem."), (code, output.Trim()));
        Assert.EndsWith("templates/texts/en.yaml(1,1): No page uses 'report.complain'. Did you mean 'report.complaint'? [template]", errors.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public void Check_tells_of_a_pale_colour_and_lets_it_pass()
    {
        var shop = File.ReadAllText(Path.Combine(Book, "shop.yaml"));
        File.WriteAllText(Path.Combine(Book, "shop.yaml"), shop.Replace("#1f5d50", "#f2b705", StringComparison.Ordinal));

        var (code, output, errors) = Run("check", Book);

        Assert.Equal((ExitCode.Fine, "No problems, 1 note."), (code, output.Trim()));
        Assert.Contains("note: The contrast of #f2b705 on the page background is 1.6:1", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Publish_names_a_templates_mistake_at_its_line_in_the_book_and_leaves_no_site()
    {
        Write("templates/sections/complaint.html", "<p>\n{{ $0.complant }}</p>\n"u8.ToArray());

        var (code, output, errors) = Run("publish", Book, "--out", Site);

        Assert.Equal(ExitCode.Problems, code);
        Assert.Contains("templates/sections/complaint.html(2,7): There is no 'complant' in this value. Did you mean 'complaint'? [template]", errors, StringComparison.Ordinal);
        Assert.Contains("The site is unchanged.", output, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(Site, "customers")));
    }

    private void Write(string path, byte[] bytes)
    {
        var target = Path.Combine(Book, path);
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        File.WriteAllBytes(target, bytes);
    }

    private static (int Code, string Output, string Errors) Run(params string[] words)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        return (Entry.Run(words, output, errors), output.ToString(), errors.ToString());
    }
}
