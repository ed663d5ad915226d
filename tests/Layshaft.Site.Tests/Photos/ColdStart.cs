using Layshaft.Site.Photos;
using SkiaSharp;

namespace Layshaft.Site.Tests.Photos;

/// <summary>A process that has never used a picture library, as a publish is: the test program, started by hand with photos to work on.</summary>
internal static class ColdStart
{
    private const int Looks = 500;

    private static int Main(string[] photos) => photos.Length == 1 ? Hold(photos[0]) : Make(photos);

    /// <summary>Holds the colour space of a photo, as another thread might, while the photo is inspected.</summary>
    /// <returns>0 if it can still be used.</returns>
    private static int Hold(string photo)
    {
        using var codec = SKCodec.Create(photo);
        var space = codec.Info.ColorSpace;
        PhotoFile.Inspect(photo);
        return space.Handle == IntPtr.Zero ? 1 : 0;
    }

    /// <summary>One thread for each photo: all begin at the same moment, inspect theirs many times and then make it ready.</summary>
    /// <returns>0 if each photo could be used.</returns>
    private static int Make(string[] photos)
    {
        using var start = new Barrier(photos.Length);
        var used = 0;
        Thread[] threads = [.. photos.Select(photo => new Thread(() =>
        {
            var bytes = File.ReadAllBytes(photo);
            start.SignalAndWait();
            for (var i = 0; i < Looks; i++)
            {
                using var content = new MemoryStream(bytes);
                PhotoFile.Inspect(content, Path.GetFileName(photo));
            }

            if (PhotoRenditions.Make(photo).Renditions is not null)
            {
                Interlocked.Increment(ref used);
            }
        }))];
        Array.ForEach(threads, t => t.Start());
        Array.ForEach(threads, t => t.Join());
        return photos.Length - used;
    }
}
