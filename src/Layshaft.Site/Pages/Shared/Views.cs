using Layshaft.Site.Html;

namespace Layshaft.Site.Pages.Shared;

/// <summary>A named value.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Value">Its value.</param>
public sealed record NamedValue(string Name, string Value);

/// <summary>A grade as pages show it: shape, letter and word.</summary>
/// <param name="Shape">circle, triangle or square.</param>
/// <param name="Letter">One letter.</param>
/// <param name="Name">The word.</param>
public sealed record GradeView(string Shape, string Letter, string Name);

/// <summary>A grade with how many parts got it.</summary>
/// <param name="Grade">The grade.</param>
/// <param name="Words">How many, in words.</param>
public sealed record TallyView(GradeView Grade, string Words);

/// <summary>The title block of a sheet.</summary>
/// <param name="UnitName">The word for unit.</param>
/// <param name="Unit">Serial and type.</param>
/// <param name="Cells">The other cells.</param>
public sealed record TitleBlock(string UnitName, string Unit, IReadOnlyList<NamedValue> Cells);

/// <summary>A section of a page, rendered by its own template.</summary>
/// <param name="Id">Anchor, unique on the page.</param>
/// <param name="Heading">Its heading.</param>
/// <param name="Template">Its template, such as sections/findings.html.</param>
/// <param name="Model">The record that the template places.</param>
public sealed record SectionView(string Id, string Heading, string Template, object Model);

/// <summary>A section of rendered words.</summary>
/// <param name="Words">Markup.</param>
public sealed record WordsView(RawHtml Words);

/// <summary>A picture.</summary>
/// <param name="Small">Address of the small rendition.</param>
/// <param name="Choices">The addresses of all renditions, each with its width, for the browser to choose from.</param>
/// <param name="Full">Address of the large rendition.</param>
/// <param name="FullWidth">Its width in pixels.</param>
/// <param name="FullHeight">Its height in pixels.</param>
/// <param name="Sizes">How wide it is shown.</param>
/// <param name="Caption">What it shows.</param>
/// <param name="Moment">Before or after; null where it does not matter.</param>
/// <param name="Callouts">Marks over the picture; null for none.</param>
public sealed record PictureView(
    string Small, string Choices, string Full, int FullWidth, int FullHeight, string Sizes, string Caption, string? Moment, RawHtml? Callouts);
