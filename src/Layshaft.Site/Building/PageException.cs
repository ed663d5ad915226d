using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>A page could not be rendered because its template has mistakes. Nothing is published then.</summary>
public sealed class PageException : Exception
{
    /// <summary>With the template's mistakes.</summary>
    /// <param name="page">The page's path.</param>
    /// <param name="problems">The mistakes, each with its place.</param>
    public PageException(string page, IReadOnlyList<TemplateProblem> problems)
        : base(string.Join(Environment.NewLine, problems)) => (Page, Problems) = (page, problems);

    /// <summary>The page's path.</summary>
    public string Page { get; }

    /// <summary>The template's mistakes, each with its place.</summary>
    public IReadOnlyList<TemplateProblem> Problems { get; }
}
