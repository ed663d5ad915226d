using Layshaft.Book.Reading;
using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Slices;

/// <summary>
/// Makes the files of a slice: what they are is listed when the first of them is to be made and let go with the scope, so that
/// a plan of very many files holds no more than their paths.
/// </summary>
/// <param name="scope">What the files may quote.</param>
/// <param name="list">Lists them.</param>
internal sealed class SliceOutputs(PageScope scope, Func<IEnumerable<SiteFile>> list) : IOutputMaker
{
    /// <inheritdoc/>
    /// <exception cref="BookChangedException">It was changed since the file was planned.</exception>
    public bool Make(string path, Stream stream) =>
        scope.Once("files", () => list().ToDictionary(f => f.Path, StringComparer.Ordinal)).TryGetValue(path, out var file)
            ? file.WriteTo(stream)
            : throw new BookChangedException();
}
