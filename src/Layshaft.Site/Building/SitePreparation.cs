using Layshaft.Book.Problems;
using Layshaft.Site.Assessment;

namespace Layshaft.Site.Building;

/// <summary>Everything that stands between a reviewed book and its site: words, templates, pictures, keys.</summary>
/// <param name="Builder">Lists the site's files; null when a problem stops the publish.</param>
/// <param name="Problems">Everything that is wrong or worth knowing before a file of the site is made.</param>
public sealed record SitePreparation(SiteBuilder? Builder, IReadOnlyList<Problem> Problems)
{
    /// <summary>The shop's own hand, which knows where a template's mistake stands; null when the book stops the publish.</summary>
    public SiteOverrides? Own { get; init; }

    /// <summary>The problems with those that only the making of files shows, in order of place; whole once the site's plan was carried out.</summary>
    public IReadOnlyList<Problem> AllProblems() => Builder is null ? Problems : [.. Problems.Concat(Builder.Damaged).OrderBy(p => p.Place)];

    /// <summary>Prepares the site of a book.</summary>
    /// <param name="review">The book, read and worked out.</param>
    /// <param name="bookFolder">Its folder: for the shop's secret and its own templates.</param>
    /// <param name="memory">What is known of its pictures; null to open each.</param>
    public static SitePreparation Of(BookReview review, string bookFolder, FileCache? memory = null)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(bookFolder);
        if (review.IsStopped || review.Assessment is not { } assessment)
        {
            return new SitePreparation(null, review.Problems);
        }

        var problems = new ProblemList();
        var shop = assessment.Book.Shop;
        var own = SiteOverrides.Of(shop, bookFolder);
        var means = SiteMeans.Of(shop, own, bookFolder, problems);
        var pictures = PictureInspection.Of(assessment.Book, review.Files, memory, problems);
        var notes = WrittenTexts.Of(assessment.Book, review.Files, problems);
        IReadOnlyList<Problem> all = [.. review.Problems.Concat(own.Problems).Concat(problems.InOrder()).OrderBy(p => p.Place)];
        if (means is null || all.Any(p => p.Severity == Severity.Stops))
        {
            return new SitePreparation(null, all) { Own = own };
        }

        var composition = means.Compose(assessment, pictures, notes);
        return new SitePreparation(new SiteBuilder(composition, means.Engine, review.Files, own.Folders, means.Fingerprint), all) { Own = own };
    }
}
