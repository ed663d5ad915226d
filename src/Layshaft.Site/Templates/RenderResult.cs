using System.Text;

namespace Layshaft.Site.Templates;

/// <summary>A rendered page, or why there is none.</summary>
/// <param name="Utf8">The page in UTF-8 without a mark; null exactly when there are problems.</param>
/// <param name="Problems">What went wrong, with template, line and column.</param>
public sealed record RenderResult(ReadOnlyMemory<byte>? Utf8, IReadOnlyList<TemplateProblem> Problems)
{
    /// <summary>The page as text; null exactly when there are problems.</summary>
    public string? Html => Utf8 is { } bytes ? Encoding.UTF8.GetString(bytes.Span) : null;
}
