using System.Collections.Concurrent;
using Layshaft.Site.Photos;

namespace Layshaft.Benchmarks.Photos;

/// <summary>Layshaft's own pipeline, as a publish uses it, but to the two sizes that are compared; a publish makes a third between them.</summary>
internal sealed class LayshaftMaker(int degree) : IPhotoMaker
{
    public string Name => $"Layshaft, {degree} at a time";

    public void Make(IReadOnlyList<string> paths, bool progressive, Action<string, byte[][]> receive)
    {
        var settings = new RenditionSettings { LongEdges = [1600, 480], Progressive = progressive };
        Parallel.ForEach(
            Partitioner.Create(paths, EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { MaxDegreeOfParallelism = degree },
            path => receive(path, [.. PhotoRenditions.Make(path, settings).Renditions!.Sizes.Select(s => s.Jpeg.ToArray())]));
    }
}
