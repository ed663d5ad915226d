using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Parts;

/// <summary>Which files each part has in the site that stands, by the part's mark.</summary>
internal sealed class KeptOutputs
{
    private readonly Dictionary<ContentHash, List<(string Path, ContentHash Key)>> _outputs = [];

    private KeptOutputs(IEnumerable<ReuseEntry> entries)
    {
        foreach (var entry in entries)
        {
            if (entry.Group is not { } mark)
            {
                continue;
            }

            if (!_outputs.TryGetValue(mark, out var outputs))
            {
                _outputs[mark] = outputs = [];
            }

            outputs.Add((entry.Path, entry.Key));
        }
    }

    /// <summary>The files of a site.</summary>
    /// <param name="output">The site's folder.</param>
    public static KeptOutputs Beside(string output) => new(ReuseRecord.Read(new StateFolder(OutputFolder.RealPath(output)).Reuse).Values);

    /// <summary>The files of a part, in order of path; null when none are known.</summary>
    /// <param name="mark">The mark of the part.</param>
    public IReadOnlyList<(string Path, ContentHash Key)>? Of(ContentHash mark) => _outputs.GetValueOrDefault(mark);
}
