using Layshaft.Book.Schemas;
using Layshaft.Cli.Commands;

namespace Layshaft.Cli.Tests;

public sealed class NewBookTests : IDisposable
{
    private readonly DirectoryInfo home = Directory.CreateTempSubdirectory("layshaft-new-");

    private string Book => Path.Combine(home.FullName, "my book");

    public void Dispose() => home.Delete(recursive: true);

    [Fact]
    public void A_new_book_has_no_problems_and_publishes_at_once()
    {
        Assert.Equal(ExitCode.Fine, Run("new-book", Book).Code);

        Assert.Equal((ExitCode.Fine, "No problems.", string.Empty), Trimmed(Run("check", Book)));
        var (code, _, errors) = Run("publish", Book, "--out", Path.Combine(home.FullName, "site"));
        Assert.True(code == ExitCode.Fine, errors);
        var report = Assert.Single(Directory.GetFiles(Path.Combine(home.FullName, "site", "customers"), "index.html", SearchOption.AllDirectories), p => p.Contains("0001", StringComparison.Ordinal));
        Assert.Contains("rounded", File.ReadAllText(report), StringComparison.Ordinal);
        Assert.NotEmpty(Directory.GetFiles(Path.GetDirectoryName(report)!, "ring-*.jpg"));
    }

    [Fact]
    public void Each_file_of_a_new_book_names_its_schema_and_explains_itself()
    {
        Run("new-book", Book);

        var files = Directory.GetFiles(Book, "*.yaml", SearchOption.AllDirectories).Select(f => (Path: Path.GetRelativePath(Book, f).Replace('\\', '/'), Lines: File.ReadAllLines(f))).ToArray();
        Assert.Equal(BookSchema.All.Select(s => s.Kind).Order(StringComparer.Ordinal), files.Select(f => BookSchema.For(f.Path)!.Kind).Distinct().Order(StringComparer.Ordinal));
        Assert.All(files, f =>
        {
            var header = BookSchema.For(f.Path)!.HeaderLine;
            Assert.Equal(header, f.Lines[0]);
            Assert.StartsWith("# ", f.Lines[1], StringComparison.Ordinal);
            var schema = Path.Combine(Path.GetDirectoryName(Path.Combine(Book, f.Path))!, header[(header.IndexOf('=', StringComparison.Ordinal) + 1)..]);
            Assert.True(File.Exists(schema), schema);
        });
    }

    [Fact]
    public void A_new_book_keeps_its_secret_out_of_version_control()
    {
        Run("new-book", Book);

        Assert.Contains(".layshaft-secret", File.ReadAllLines(Path.Combine(Book, ".gitignore")));
    }

    [Fact]
    public void A_folder_that_holds_something_is_left_alone()
    {
        Directory.CreateDirectory(Book);
        File.WriteAllText(Path.Combine(Book, "letter.txt"), "Dear");

        var (code, _, errors) = Run("new-book", Book);

        Assert.Equal(ExitCode.WrongUse, code);
        Assert.Contains("not an empty folder", errors, StringComparison.Ordinal);
        Assert.Equal(["letter.txt"], Directory.GetFileSystemEntries(Book).Select(Path.GetFileName));
    }

    [Fact]
    public void A_file_of_the_same_name_is_left_alone()
    {
        File.WriteAllText(Book, "Dear");

        Assert.Equal(ExitCode.WrongUse, Run("new-book", Book).Code);
        Assert.Equal("Dear", File.ReadAllText(Book));
    }

    private static (int Code, string Output, string Errors) Trimmed((int Code, string Output, string Errors) run) => (run.Code, run.Output.Trim(), run.Errors);

    private static (int Code, string Output, string Errors) Run(params string[] words)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        return (Entry.Run(words, output, errors), output.ToString(), errors.ToString());
    }
}
