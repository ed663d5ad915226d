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
    public static Composition Composition(BookReview? review = null, Texts? words = null)
    {
        var assessment = (review ?? Review).Assessment!;
        var texts = words ?? TextsLoader.Load(TemplateFolders.BesideProgram(null)).Texts!;
        return new Composition(
            assessment,
            texts,
            new FigureWriter(SiteMeans.UnitsOf(assessment.Book.Shop, texts), texts),
            new Addresses(view => $"{view.Unit.Id}-{view.Index}"),
            new PictureIndex(new Dictionary<string, UsablePicture>()),
            new Dictionary<string, string>());
    }

    /// <summary>Every page of the site and the figures beside it, made in memory; pictures are left out.</summary>
    public static IReadOnlyDictionary<string, string> Publish() =>
        Make(Composition(), path => Path.GetExtension(path) is ".html" or ".json" or ".csv").ToDictionary(f => f.Path, f => f.Text, StringComparer.Ordinal);

    /// <summary>The pages of a site by their paths: all, or those that are wanted.</summary>
    public static IEnumerable<(string Path, string Html)> Pages(Composition composition, Func<string, bool>? wanted = null) =>
        Make(composition, path => path.EndsWith(".html", StringComparison.Ordinal) && wanted?.Invoke(path) != false);

    private static IEnumerable<(string Path, string Text)> Make(Composition composition, Func<string, bool> wanted)
    {
        var folders = TemplateFolders.BesideProgram(null);
        var engine = new TemplateEngine(TemplateSet.Load(folders), composition.Texts);
        foreach (var file in new SiteBuilder(composition, engine, new MemoryBookFiles(s_files.Value), folders, "test").Files().Where(f => wanted(f.Path)))
        {
            var made = file.Make();
            Assert.Empty(made.Problems);
            yield return (file.Path, Encoding.UTF8.GetString(made.Bytes!.Value.Span));
        }
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
