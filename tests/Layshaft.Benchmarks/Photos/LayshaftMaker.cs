using Layshaft.Site.Photos;

namespace Layshaft.Benchmarks.Photos;

/// <summary>Layshaft's own pipeline, as a publish uses it, but to the two sizes that are compared; a publish makes a third between them.</summary>
internal sealed class LayshaftMaker(int degree) : IPhotoMaker
{
    public string Name => $"Layshaft, {degree} at a time";

    public void Make(IReadOnlyList<string> paths, bool progressive, Action<string, byte[][]> receive)
    {
        var batch = new PhotoBatch { Degree = degree, Settings = new() { LongEdges = [1600, 480], Progressive = progressive } };
        batch.Run(paths, (path, result) => receive(path, [.. result.Renditions!.Sizes.Select(s => s.Jpeg.ToArray())]));
    }
}
