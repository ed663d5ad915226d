using Layshaft.Site.Pages.Shared;

namespace Layshaft.Site.Pages.Tables;

/// <summary>A page of sections with tables: what <c>sheet.html</c> places.</summary>
/// <param name="Head">Head of the page.</param>
/// <param name="Heading">Main heading.</param>
/// <param name="Block">Title block; null for none.</param>
/// <param name="Note">A remark under the heading; null for none.</param>
/// <param name="Sections">The sections.</param>
/// <param name="Tables">Its tables, those without a row included: each is a CSV file, all together a JSON file.</param>
/// <param name="Foot">Foot of the page.</param>
public sealed record SheetPage(
    PageHead Head, string Heading, TitleBlock? Block, string? Note, IReadOnlyList<SectionView> Sections, IReadOnlyList<TableView> Tables, PageFoot Foot)
{
    /// <summary>The template.</summary>
    public const string Template = "sheet.html";
}
