using Layshaft.Site.Pages.Report;
using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Estimates;

/// <summary>An estimate that waits for the customer's go-ahead: what <c>estimate.html</c> places.</summary>
/// <param name="Head">Head of the page.</param>
/// <param name="Heading">Main heading.</param>
/// <param name="Block">Title block.</param>
/// <param name="Question">What the shop wants to know, in one sentence.</param>
/// <param name="Offers">Each offer that waits for an answer.</param>
/// <param name="OnPaper">How to answer from paper, where no link can be pressed.</param>
/// <param name="Sections">What was found, and the cautions.</param>
/// <param name="Foot">Foot of the page.</param>
public sealed record EstimatePage(
    PageHead Head,
    string Heading,
    TitleBlock Block,
    string Question,
    IReadOnlyList<OfferView> Offers,
    string OnPaper,
    IReadOnlyList<SectionView> Sections,
    PageFoot Foot);

/// <summary>An offer that waits for an answer.</summary>
/// <param name="Id">Anchor.</param>
/// <param name="Name">Its name with its day.</param>
/// <param name="ValidUntil">Its total, and until when it is valid.</param>
/// <param name="Note">The shop's words to go with it; null for none.</param>
/// <param name="Money">Its lines by urgency, with totals.</param>
/// <param name="AnswerHeading">Heading of the ways to answer.</param>
/// <param name="Answers">The ways to answer.</param>
/// <param name="OnPaper">How to answer line by line from paper; null where it has one line only.</param>
public sealed record OfferView(
    string Id,
    string Name,
    string ValidUntil,
    string? Note,
    MoneySection Money,
    string AnswerHeading,
    IReadOnlyList<AnswerView> Answers,
    string? OnPaper);

/// <summary>A way to answer.</summary>
/// <param name="Address">A mailto: or tel: address.</param>
/// <param name="Words">What it says.</param>
/// <param name="Amount">What it comes to; null where it costs nothing or is not known yet.</param>
/// <param name="Caution">What the customer must know before choosing it; null for nothing.</param>
public sealed record AnswerView(string Address, string Words, string? Amount, string? Caution = null);
