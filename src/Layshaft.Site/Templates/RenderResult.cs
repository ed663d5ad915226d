namespace Layshaft.Site.Templates;

/// <summary>A rendered page, or why there is none.</summary>
/// <param name="Html">The page; null exactly when there are problems.</param>
/// <param name="Problems">What went wrong, with template, line and column.</param>
public sealed record RenderResult(string? Html, IReadOnlyList<TemplateProblem> Problems);
