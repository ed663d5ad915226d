using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

public class CommandTests : IDisposable
{
    private readonly DirectoryInfo home = Directory.CreateTempSubdirectory("layshaft-cli-");

    private string Book => Path.Combine(home.FullName, "book");

    public CommandTests()
    {
        foreach (var file in Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "Small"), "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(Book, Path.GetRelativePath(Path.Combine(AppContext.BaseDirectory, "Small"), file));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    public void Dispose()
    {
        home.Delete(recursive: true);
        GC.SuppressFinalize(this);
    }

    [Fact]
    public void A_good_book_checks_with_exit_code_0()
    {
        var (code, output, errors) = Run("check", Book);

        Assert.Equal((ExitCode.Fine, "No problems."), (code, output.Trim()));
        Assert.Equal(string.Empty, errors);
    }

    [Theory]
    [InlineData("Did you mean 'publish'?", "publsh")]
    [InlineData("Did you mean '--out'?", "publish", "--output", "x")]
    [InlineData("Did you mean '--every-place'?", "check", ".", "--every")]
    [InlineData("See 'layshaft check --help'.", "check", ".", "--colour")]
    [InlineData("See 'layshaft --help'.", "what-not")]
    [InlineData("There is no option '--every'.", "check", "--every")]
    public void A_mistyped_command_or_option_is_told_the_nearest(string told, params string[] arguments)
    {
        var (code, _, errors) = Run(arguments);

        Assert.Equal(ExitCode.WrongUse, code);
        Assert.Contains(told, errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_problem_gives_exit_code_1_and_a_line_with_its_place()
    {
        File.AppendAllText(Path.Combine(Book, "customers", "first-customer.yaml"), "telefone: 1\n");

        var (code, output, errors) = Run("check", Book);

        Assert.Equal(ExitCode.Problems, code);
        Assert.Equal("1 problem.", output.Trim());
        Assert.Contains("customers/first-customer.yaml(4,1): 'telefone' is not a field of a customer. Did you mean 'telephone'? [unknown-key]", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_would_stop_a_publish_is_a_problem_to_a_check_too()
    {
        File.AppendAllText(Path.Combine(Book, "shop.yaml"), "\nclosing_words: \"See [this](javascript:alert(1)).\"\n");
        var check = Run("check", Book);
        var publish = Run("publish", Book, "--out", Path.Combine(home.FullName, "site"));
        Assert.Equal((ExitCode.Problems, ExitCode.Problems), (check.Code, publish.Code));
        Assert.Contains("[note]", check.Errors, StringComparison.Ordinal);
        Assert.Contains(check.Errors.Trim(), publish.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_photo_cut_short_is_a_problem_to_a_check_and_to_a_publish_in_the_same_words()
    {
        var book = Path.Combine(home.FullName, "begun");
        Assert.Equal(ExitCode.Fine, Run("new-book", book).Code);
        var photo = Directory.EnumerateFiles(book, "*.jpg", SearchOption.AllDirectories).First();
        File.WriteAllBytes(photo, File.ReadAllBytes(photo)[..^2000]);

        var check = Run("check", book);
        var publish = Run("publish", book, "--out", Path.Combine(home.FullName, "site"));

        Assert.Equal(ExitCode.Problems, check.Code);
        Assert.Contains("ring.jpg is incomplete", check.Errors, StringComparison.Ordinal);
        Assert.Contains(check.Errors.Split('\n').Single(l => l.Contains("[picture]", StringComparison.Ordinal)).Trim(), publish.Errors, StringComparison.Ordinal);
    }

    private static byte[] Damaged(byte[] png)
    {
        var at = png.AsSpan().IndexOf("IDAT"u8) + 8;
        png.AsSpan(at, Math.Min(40, png.Length - at - 16)).Fill(0xA5);
        return png;
    }

    [Theory]
    [InlineData("jobs/2026/0001/photos/ring.png", "this is a letter, not a photo")]
    [InlineData("jobs/2026/0001/photos/ring.png", "")]
    [InlineData("jobs/2026/0001/photos/ring.png", null)]
    [InlineData("jobs/2026/0001/photos/ring.png", "IDAT")]
    [InlineData("logo.png", "IDAT")]
    [InlineData("logo.png", "this is a letter, not a photo")]
    public void A_picture_that_cannot_be_shown_is_a_problem_to_a_check_and_to_a_publish_in_the_same_words(string path, string? text)
    {
        var file = Path.Combine(Book, path);
        if (path == "logo.png")
        {
            File.AppendAllText(Path.Combine(Book, "shop.yaml"), "\nlogo: logo.png\n");
        }

        // Without other words: the beginning of a photo. With a chunk's name: a photo that is damaged within it.
        var good = File.ReadAllBytes(Path.Combine(Book, "jobs/2026/0001/photos/ring.png"));
        File.WriteAllBytes(file, text is null ? good[..40] : text == "IDAT" ? Damaged(good) : System.Text.Encoding.UTF8.GetBytes(text));
        var check = Run("check", Book);
        var publish = Run("publish", Book, "--out", Path.Combine(home.FullName, "site"));
        Assert.Equal((ExitCode.Problems, 1), (check.Code, check.Errors.Trim().Split('\n').Length));
        Assert.Contains("[picture]", check.Errors, StringComparison.Ordinal);
        Assert.Contains(check.Errors.Trim(), publish.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check", "no-such-folder")]
    [InlineData("publish")]
    [InlineData("polish")]
    [InlineData("check", "--nonsense")]
    public void A_wrong_command_line_gives_exit_code_2_and_says_what_is_wrong(params string[] words)
    {
        var (code, _, errors) = Run(words);

        Assert.Equal(ExitCode.WrongUse, code);
        Assert.NotEqual(string.Empty, errors);
    }

    [Fact]
    public void A_publish_writes_the_report_and_names_the_page_to_open()
    {
        var site = Path.Combine(home.FullName, "site");

        var (code, output, errors) = Run("publish", Book, "--out", site);

        Assert.True(code == ExitCode.Fine, errors);
        Assert.Contains($"Open {Path.Combine(site, "shop/index.html")}", output, StringComparison.Ordinal);
        var report = Assert.Single(Directory.GetFiles(Path.Combine(site, "customers"), "index.html", SearchOption.AllDirectories), p => p.Contains("0001", StringComparison.Ordinal));
        var html = File.ReadAllText(report);
        Assert.Contains("0.95", html, StringComparison.Ordinal);
        Assert.Contains("First Customer", html, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(site, "shop", "index.html")));
    }

    [Fact]
    public void A_second_publish_of_the_same_book_changes_nothing()
    {
        var site = Path.Combine(home.FullName, "site");
        Run("publish", Book, "--out", site);

        var (code, output, _) = Run("publish", Book, "--out", site);

        Assert.Equal(ExitCode.Fine, code);
        Assert.Contains("Nothing has changed.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_with_problems_is_not_published_and_the_old_site_stays()
    {
        var site = Path.Combine(home.FullName, "site");
        Run("publish", Book, "--out", site);
        var before = Directory.GetFiles(site, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllBytes).ToArray();
        File.AppendAllText(Path.Combine(Book, "jobs", "2026", "0001", "job.yaml"), "colour: red\n");

        var (code, output, _) = Run("publish", Book, "--out", site);

        Assert.Equal(ExitCode.Problems, code);
        Assert.Contains("Nothing was written.", output, StringComparison.Ordinal);
        Assert.Equal(before, Directory.GetFiles(site, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllBytes).ToArray());
    }

    [Fact]
    public void A_picture_that_cannot_be_read_is_named_and_the_rest_goes_on()
    {
        File.WriteAllText(Path.Combine(Book, "jobs", "2026", "0001", "photos", "ring.png"), "<svg xmlns='http://www.w3.org/2000/svg'/>");

        var (code, _, errors) = Run("publish", Book, "--out", Path.Combine(home.FullName, "site"));

        Assert.Equal(ExitCode.Problems, code);
        Assert.Contains("ring.png", errors, StringComparison.Ordinal);
        Assert.NotEmpty(Directory.GetFiles(Path.Combine(home.FullName, "site", "customers"), "index.html", SearchOption.AllDirectories));
    }

    private static (int Code, string Output, string Errors) Run(params string[] words)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        return (Entry.Run(words, output, errors), output.ToString(), errors.ToString());
    }
}
