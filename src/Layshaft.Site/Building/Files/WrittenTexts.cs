using Layshaft.Book.Places;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Book.Yaml;
using Layshaft.Site.Notes;

namespace Layshaft.Site.Building;

/// <summary>
/// All that a book says in Markdown, rendered once for its problems: notes in files of their own, a job's words on driving,
/// the shop's advice and closing words. The pages render it again and say nothing of what they leave out.
/// </summary>
public static class WrittenTexts
{
    /// <summary>What is wrong in the texts of a book.</summary>
    /// <param name="book">The book.</param>
    /// <param name="files">Its files.</param>
    public static IReadOnlyList<Problem> ProblemsOf(ShopBook book, IBookFiles files)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(files);
        var problems = new ProblemList();
        Of(book, files, problems);
        return problems.InOrder();
    }

    /// <summary>Reads the note files and judges all texts.</summary>
    /// <param name="book">The book.</param>
    /// <param name="files">Its files.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <returns>The note files that could be read, by path.</returns>
    internal static Dictionary<string, string> Of(ShopBook book, IBookFiles files, ProblemList problems)
    {
        OfShop(book.Shop, problems);
        return OfJobs(book.Jobs, files, problems);
    }

    /// <summary>Judges what the shop says on all pages.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="problems">Takes what is wrong.</param>
    internal static void OfShop(Shop shop, ProblemList problems)
    {
        if (shop.ClosingWords is { } closing)
        {
            Judge(shop.Origin.At("closing_words"), closing, problems);
        }

        foreach (var advice in shop.Advice)
        {
            Judge(advice.Origin.At("words"), advice.Words, problems);
        }
    }

    /// <summary>Reads the note files of some jobs and judges all their texts.</summary>
    /// <param name="jobs">The jobs.</param>
    /// <param name="files">The book's files.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <returns>The note files that could be read, by path.</returns>
    internal static Dictionary<string, string> OfJobs(IReadOnlyList<Job> jobs, IBookFiles files, ProblemList problems)
    {
        foreach (var job in jobs)
        {
            if (job.Driving is { } driving)
            {
                Judge(job.Origin.At("driving"), driving, problems);
            }
        }

        var notes = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var path in jobs.SelectMany(j => new[] { j.Notes, j.InternalNotes }.OfType<string>().Select(f => $"{j.Folder}/{f}")))
        {
            if (YamlText.Decode(files.ReadLimited(path), path, problems) is { } text)
            {
                notes[path] = text;
                Judge(text, line => new Place(path, line, 1), problems);
            }
        }

        return notes;
    }

    // A line within the text is no line of the file where it is folded, so the value's own place stands.
    private static void Judge(Place place, string text, ProblemList problems) => Judge(text, _ => place, problems);

    // What is left out does not depend on the heading that a text stands under.
    private static void Judge(string text, Func<int, Place> placeOf, ProblemList problems)
    {
        if (NoteRenderer.IsPlain(text))
        {
            return;
        }

        foreach (var problem in NoteRenderer.Render(text, 2).Problems)
        {
            problems.Add("note", placeOf(problem.Line), problem.Message);
        }
    }
}
