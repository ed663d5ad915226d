using Layshaft.Site.Publishing;
using Layshaft.Site.Templates;

namespace Layshaft.Site.Building;

/// <summary>A file of the site before it is made.</summary>
/// <param name="Path">From the output folder, with forward slashes.</param>
/// <param name="Make">Makes its bytes; the same bytes for the same inputs.</param>
public sealed record SiteFile(string Path, Func<MadeFile> Make)
{
    /// <summary>What its bytes depend on besides the program; null for everything that pages are composed from.</summary>
    public IReadOnlyList<PlanInput>? Inputs { get; init; }

    /// <summary>As the publisher plans it.</summary>
    /// <param name="everything">What stands for the inputs of a file that names none.</param>
    public PlannedOutput ToPlan(IReadOnlyList<PlanInput> everything) => new(Path, Inputs ?? everything, stream =>
    {
        var made = Make();
        stream.Write(made.Bytes is { } bytes ? bytes.Span : throw new PageException(Path, made.Problems));
    });
}

/// <summary>A made file, or why it could not be made.</summary>
/// <param name="Bytes">Its bytes; null when there are problems.</param>
/// <param name="Problems">Mistakes in the templates.</param>
public sealed record MadeFile(ReadOnlyMemory<byte>? Bytes, IReadOnlyList<TemplateProblem> Problems)
{
    /// <summary>A file that was made.</summary>
    public static MadeFile Of(ReadOnlyMemory<byte> bytes) => new(bytes, []);
}
