using Layshaft.Site.Publishing;

namespace Layshaft.Site.Building.Parts;

/// <summary>Which files each part has in the site that stands, by the part's mark.</summary>
internal sealed class KeptOutputs
{
    private readonly Dictionary<ContentHash, List<ReuseEntry>> _outputs = [];

    /// <summary>The files of a site.</summary>
    /// <param name="record">What the last publish recorded.</param>
    public KeptOutputs(ReuseRecord record)
    {
        foreach (var entry in record.Entries)
        {
            if (entry.Group is not { } mark)
            {
                continue;
            }

            if (!_outputs.TryGetValue(mark, out var outputs))
            {
                _outputs[mark] = outputs = [];
            }

            outputs.Add(entry);
        }
    }

    /// <summary>The files of a part, in order of path; null when none are known.</summary>
    /// <param name="mark">The mark of the part.</param>
    public IReadOnlyList<ReuseEntry>? Of(ContentHash mark) => _outputs.GetValueOrDefault(mark);
}
