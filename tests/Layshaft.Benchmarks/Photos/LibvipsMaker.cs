using NetVips;
using VipsImage = NetVips.Image;

namespace Layshaft.Benchmarks.Photos;

/// <summary>libvips with the same settings: one decode, small from large, quality 80, 4:2:0, fitted Huffman tables.</summary>
internal sealed class LibvipsMaker(int degree, int threadsEach) : IPhotoMaker
{
    public string Name => $"libvips, {degree} at a time × {threadsEach}";

    public void Make(IReadOnlyList<string> paths, bool progressive, Action<string, byte[][]> receive)
    {
        NetVips.NetVips.Concurrency = threadsEach;
        Parallel.ForEach(paths, new ParallelOptions { MaxDegreeOfParallelism = degree }, path =>
        {
            using var lazy = VipsImage.Thumbnail(path, 1600, height: 1600, size: Enums.Size.Down);
            using var large = lazy.CopyMemory();
            using var small = large.ThumbnailImage(480, height: 480, size: Enums.Size.Down);
            receive(path, [Save(large, progressive), Save(small, progressive)]);
        });
    }

    private static byte[] Save(VipsImage image, bool progressive) => image.JpegsaveBuffer(
        q: 80, optimizeCoding: true, interlace: progressive, subsampleMode: Enums.ForeignSubsample.On, keep: Enums.ForeignKeep.None);
}
