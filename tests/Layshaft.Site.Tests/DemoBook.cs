using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests;

/// <summary>The demo book, as it is or with a file changed.</summary>
internal static class DemoBook
{
    private static readonly Lazy<Dictionary<string, byte[]>> s_files = new(Load);
    private static readonly Lazy<BookReview> s_review = new(() => ReviewOf(s_files.Value));

    public static BookReview Review => s_review.Value;

    public static BookReview With(string path, Func<string, string> change, params (string Path, string Text)[] added)
    {
        var files = new Dictionary<string, byte[]>(s_files.Value, StringComparer.Ordinal);
        var before = Encoding.UTF8.GetString(files[path]);
        var after = change(before);
        Assert.NotEqual(before, after);
        files[path] = Encoding.UTF8.GetBytes(after);
        foreach (var (name, text) in added)
        {
            files[name] = Encoding.UTF8.GetBytes(text);
        }

        return ReviewOf(files);
    }

    /// <summary>What pages are composed from, with keys that are no secret.</summary>
    public static Composition Composition(BookReview? review = null)
    {
        var assessment = (review ?? Review).Assessment!;
        var texts = TextsLoader.Load(TemplateFolders.BesideProgram(null)).Texts!;
        return new Composition(
            assessment,
            texts,
            new FigureWriter(UnitChoices.Of(assessment.Book.Shop), texts),
            new Addresses(view => $"{view.Unit.Id}-{view.Index}"),
            new PictureIndex(new Dictionary<string, UsablePicture>()),
            new Dictionary<string, string>());
    }

    /// <summary>Every page of the site and the figures beside it, made in memory; pictures are left out.</summary>
    public static IReadOnlyDictionary<string, string> Publish()
    {
        var composition = Composition();
        var folders = TemplateFolders.BesideProgram(null);
        var builder = new SiteBuilder(composition, new TemplateEngine(TemplateSet.Load(folders), composition.Texts), Review.Files, folders, "test");
        return builder.Files().Where(f => Path.GetExtension(f.Path) is ".html" or ".json" or ".csv").ToDictionary(
            f => f.Path,
            f =>
            {
                var made = f.Make();
                Assert.Empty(made.Problems);
                return Encoding.UTF8.GetString(made.Bytes!.Value.Span);
            },
            StringComparer.Ordinal);
    }

    /// <summary>Renders a page.</summary>
    public static string Render(Composition composition, string template, object page)
    {
        var rendered = new TemplateEngine(TemplateSet.Load(TemplateFolders.BesideProgram(null)), composition.Texts).Render(template, page);
        Assert.Empty(rendered.Problems);
        return rendered.Html!;
    }

    private static BookReview ReviewOf(Dictionary<string, byte[]> contents)
    {
        var files = new MemoryBookFiles(contents);
        return BookReview.Of(files, BookReader.Read(files));
    }

    private static Dictionary<string, byte[]> Load()
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "demo-data");
        return Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .ToDictionary(p => Path.GetRelativePath(folder, p).Replace('\\', '/'), File.ReadAllBytes, StringComparer.Ordinal);
    }
}
