using Layshaft.Site.Publishing;
using Layshaft.Site.Publishing.Register;

namespace Layshaft.Site.Building.Parts;

/// <summary>Which files each part has in the site that stands, by the part's mark.</summary>
internal sealed class KeptOutputs
{
    private readonly SiteRegister _register;
    private readonly Dictionary<ContentHash, List<int>> _outputs = [];

    /// <summary>The files of a site.</summary>
    /// <param name="register">What the last publish recorded.</param>
    public KeptOutputs(SiteRegister register)
    {
        _register = register;
        for (var i = 0; i < register.Count; i++)
        {
            if (register.MarkOf(i) is not { } mark || register[i].Key is null)
            {
                continue;
            }

            if (!_outputs.TryGetValue(mark, out var outputs))
            {
                _outputs[mark] = outputs = [];
            }

            outputs.Add(i);
        }
    }

    /// <summary>How many files a part has; 0 when none are known.</summary>
    /// <param name="mark">The mark of the part.</param>
    public int CountOf(ContentHash mark) => _outputs.GetValueOrDefault(mark)?.Count ?? 0;

    /// <summary>The files of a part with their keys, in order of path; each is made when it is asked for.</summary>
    /// <param name="mark">The mark of the part.</param>
    public IEnumerable<(PlacedPath Path, ContentHash Key)> Of(ContentHash mark) => _outputs[mark].Select(i => (new PlacedPath(_register.Paths, i), _register[i].Key!.Value));
}
