using Layshaft.Site.Html;

namespace Layshaft.Site.Notes;

/// <summary>A note as markup, with what was left out of it.</summary>
/// <param name="Html">The markup; empty when the note could not be used at all.</param>
/// <param name="Problems">What was left out or is wrong, in order of line.</param>
public sealed record NoteResult(RawHtml Html, IReadOnlyList<NoteProblem> Problems);

/// <summary>What is wrong in a note.</summary>
/// <param name="Line">Line within the note, from 1.</param>
/// <param name="Message">What is wrong and what to write instead.</param>
public sealed record NoteProblem(int Line, string Message);
