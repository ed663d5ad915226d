using System.Globalization;
using Layshaft.Site.Html;
using Markdig;
using Markdig.Extensions.EmphasisExtras;

namespace Layshaft.Site.Notes;

/// <summary>
/// Turns a technician's note (CommonMark with pipe tables and strike-through) into markup. Raw HTML is shown as text,
/// pictures become their caption, links lead only to the web, mail, a telephone or within the site, headings fit below
/// the page's own.
/// </summary>
public static class NoteRenderer
{
    /// <summary>The longest note, in UTF-16 characters; a long job's notes are a few thousand.</summary>
    public const int LongestNote = 32 * 1024;

    // As many as a line may open.
    private const int PlainSigns = 30;

    // Extensions one by one: the library's bundle would let a note set attributes, scripts among them.
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .DisableHtml()
        .UsePipeTables()
        .UseEmphasisExtras(EmphasisExtraOptions.Strikethrough)
        .UsePreciseSourceLocation()
        .Build();

    /// <summary>Renders a note.</summary>
    /// <param name="markdown">The note; null or blank gives empty markup.</param>
    /// <param name="headingLevel">The level of the heading that the note stands under, 1 to 5; a note's first level comes one below.</param>
    public static NoteResult Render(string? markdown, int headingLevel)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(headingLevel, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(headingLevel, 5);
        if (string.IsNullOrWhiteSpace(markdown))
        {
            return new(new(string.Empty), []);
        }

        if (markdown.Length > LongestNote)
        {
            return Unusable(string.Create(CultureInfo.InvariantCulture, $"This note has more than {LongestNote:#,0} characters. Shorten it, or put part of it into another note."));
        }

        if (NestsTooDeeply(markdown))
        {
            return TooDeep();
        }

        try
        {
            var document = Markdown.Parse(HtmlText.Clean(markdown).ReplaceLineEndings("\n"), Pipeline);
            var problems = new List<NoteProblem>();
            NoteRules.Apply(document, headingLevel, problems);
            return new(new(SafeLinks.Write(document, Pipeline).ReplaceLineEndings("\n")), [.. problems.OrderBy(p => p.Line)]);
        }
        catch (ArgumentException)
        {
            // The library's guard against nesting that would exhaust the stack; it has no type of its own.
            return TooDeep();
        }
    }

    /// <summary>
    /// Whether nothing can be wrong in a note: no link, picture or bracket, and too few signs to nest anything deeply. Most are so,
    /// and a look costs next to nothing beside rendering.
    /// </summary>
    /// <param name="markdown">The note.</param>
    public static bool IsPlain(string markdown)
    {
        ArgumentNullException.ThrowIfNull(markdown);
        return markdown.Length <= LongestNote && !markdown.AsSpan().ContainsAny('[', '<')
            && markdown.Count(c => c is '*' or '_' or '~' or '>' or '-' or '+' or '.' or ')' or '|') <= PlainSigns;
    }

    /// <summary>
    /// Whether a line opens more than 30 lists or quotes one within another. The library guards its stack, but such a line
    /// costs it time that grows much faster than the line.
    /// </summary>
    private static bool NestsTooDeeply(string markdown)
    {
        foreach (var line in markdown.AsSpan().EnumerateLines())
        {
            var opened = 0;
            for (var i = 0; i < line.Length && opened <= 30; i++)
            {
                var c = line[i];
                var ends = i + 1 == line.Length || line[i + 1] is ' ' or '\t';
                if (c == '>' || (c is '-' or '+' or '*' or '.' or ')' && ends))
                {
                    opened++;
                }
                else if (c is not (' ' or '\t') && !char.IsAsciiDigit(c))
                {
                    break;
                }
            }

            if (opened > 30)
            {
                return true;
            }
        }

        return false;
    }

    private static NoteResult TooDeep() =>
        Unusable("This note nests lists, quotes or brackets too deeply. Use fewer levels.");

    private static NoteResult Unusable(string message) => new(new(string.Empty), [new(1, message)]);
}
