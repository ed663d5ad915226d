using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>A file of the site before it is made.</summary>
/// <param name="Path">From the output folder, with forward slashes.</param>
/// <param name="Make">Makes its bytes; the same bytes whenever it is called.</param>
public sealed record SiteFile(string Path, Func<MadeFile> Make);

/// <summary>A made file, or why it could not be made.</summary>
/// <param name="Bytes">Its bytes; null when there are problems.</param>
/// <param name="Problems">Mistakes in the templates.</param>
public sealed record MadeFile(ReadOnlyMemory<byte>? Bytes, IReadOnlyList<TemplateProblem> Problems)
{
    /// <summary>A file that was made.</summary>
    public static MadeFile Of(ReadOnlyMemory<byte> bytes) => new(bytes, []);
}
