using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Records;
using Layshaft.Site.Look;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Building;

/// <summary>What a shop lays over ours: its language, words, templates and colour, and what is wrong with them.</summary>
/// <param name="Folders">Our templates and the book's folder <c>templates/</c> over them.</param>
/// <param name="Templates">All templates, parsed.</param>
/// <param name="Texts">The words; null when they cannot be used.</param>
/// <param name="Problems">What is wrong or worth knowing.</param>
public sealed record SiteOverrides(TemplateFolders Folders, TemplateSet Templates, Texts? Texts, IReadOnlyList<Problem> Problems)
{
    /// <summary>Reads a shop's own hand.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="bookFolder">The folder of its book.</param>
    public static SiteOverrides Of(Shop shop, string bookFolder)
    {
        ArgumentNullException.ThrowIfNull(shop);
        ArgumentNullException.ThrowIfNull(bookFolder);
        var problems = new ProblemList();
        var own = Path.Combine(bookFolder, TemplateFolders.BookFolder);
        var folders = TemplateFolders.BesideProgram(Directory.Exists(own) ? own : null);
        var templates = TemplateSet.Load(folders);
        var (texts, wrong, notices) = TextsLoader.Load(folders, Language(shop, folders, problems));
        foreach (var problem in templates.Problems.Concat(wrong).Distinct())
        {
            problems.Add("template", PlaceOf(problem, folders), problem.Message);
        }

        foreach (var notice in notices)
        {
            problems.Note("texts", PlaceOf(notice, folders), notice.Message);
        }

        NoteColour(shop, problems);
        return new SiteOverrides(folders, templates, texts, problems.InOrder());
    }

    /// <summary>Where a problem stands: a file of the shop's is named by its path from the book's folder.</summary>
    public Place PlaceOf(TemplateProblem problem) => PlaceOf(problem, Folders);

    private static Place PlaceOf(TemplateProblem problem, TemplateFolders folders)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var isOwn = folders.Shop is { } shop && File.Exists(Path.Combine(shop, problem.File));
        return new Place(isOwn ? $"{TemplateFolders.BookFolder}/{problem.File}" : $"{TemplateFolders.FolderName}/{problem.File}", problem.Line, problem.Column);
    }

    private static string Language(Shop shop, TemplateFolders folders, ProblemList problems)
    {
        var known = TextsLoader.Languages(folders);
        if (known.Contains(shop.Language))
        {
            return shop.Language;
        }

        problems.Add(
            "unknown-language",
            shop.Origin.At("language"),
            $"There are no translations for the language '{shop.Language}'.",
            $"Write one of: {string.Join(", ", known)}, or add your own texts in {TemplateFolders.BookFolder}/texts/{shop.Language}.yaml.");
        return "en";
    }

    private static void NoteColour(Shop shop, ProblemList problems)
    {
        if (ShopColours.TooPale(shop) is { } pale)
        {
            problems.Note(
                "contrast",
                shop.Origin.At("colour"),
                FormattableString.Invariant($"The contrast of {pale.Asked} on the page background is {pale.Ratio:0.0}:1, but text needs {Contrast.Text:0.0}:1 (WCAG 2.2, success criterion 1.4.3). The pages use {pale.Used} instead."),
                "Write that colour or a darker one.");
        }
    }
}
