namespace Layshaft.Benchmarks.Photos;

/// <summary>Makes the two renditions of each photo; the large one's bytes come first.</summary>
internal interface IPhotoMaker
{
    string Name { get; }

    /// <summary>Makes all, and hands each photo's renditions to the receiver, from any thread.</summary>
    void Make(IReadOnlyList<string> paths, bool progressive, Action<string, byte[][]> receive);
}
