using Layshaft.Site.Html;

namespace Layshaft.Site.Pages.Shared;

/// <summary>The foot of a page.</summary>
/// <param name="Shop">The shop's name.</param>
/// <param name="Address">Its address, a line each.</param>
/// <param name="Email">Its e-mail address.</param>
/// <param name="Telephone">Its telephone number as written.</param>
/// <param name="TelephoneLink">The number as a link has it: digits and a leading plus.</param>
/// <param name="Closing">The shop's closing words; null for none.</param>
public sealed record PageFoot(string Shop, IReadOnlyList<string> Address, string Email, string Telephone, string TelephoneLink, RawHtml? Closing);
