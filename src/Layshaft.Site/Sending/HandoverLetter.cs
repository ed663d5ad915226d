using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Sending;

/// <summary>What goes to the customer with a finished job or an estimate: what <c>mail.html</c> places.</summary>
/// <param name="Language">BCP 47 tag.</param>
/// <param name="Accent">The shop's colour, dark enough for text on white.</param>
/// <param name="Subject">The subject.</param>
/// <param name="Greeting">The greeting.</param>
/// <param name="Lead">What this is about.</param>
/// <param name="Verdict">The verdict, or the question of an estimate.</param>
/// <param name="Lines">What was renewed, what is next and when; or what the answers come to.</param>
/// <param name="Link">The way to the page; null where the shop names no address.</param>
/// <param name="LinkRemark">Whom the link is for; null without one.</param>
/// <param name="Enclosed">Says that the report is enclosed; null when it is not.</param>
/// <param name="Closing">The closing lines, the shop's name, address and telephone.</param>
/// <param name="Picture">Address of the preview picture within the mail.</param>
/// <param name="PictureWords">What it shows.</param>
public sealed record HandoverLetter(
    string Language,
    string Accent,
    string Subject,
    string Greeting,
    string Lead,
    string Verdict,
    IReadOnlyList<string> Lines,
    LinkView? Link,
    string? LinkRemark,
    string? Enclosed,
    IReadOnlyList<string> Closing,
    string Picture,
    string PictureWords)
{
    /// <summary>The template of the letter as a page.</summary>
    public const string Template = "mail.html";

    /// <summary>The letter as plain text, with line ends as a mail has them.</summary>
    public string PlainText()
    {
        string?[] blocks =
        [
            Greeting,
            $"{Lead}\n{Verdict}",
            Lines.Count > 0 ? string.Join('\n', Lines.Select(l => $"- {l}")) : null,
            Link is null ? null : $"{Link.Words}:\n{Link.Address}\n{LinkRemark}",
            Enclosed,
            string.Join('\n', Closing),
        ];
        return string.Join("\n\n", blocks.OfType<string>()).ReplaceLineEndings("\r\n") + "\r\n";
    }
}
