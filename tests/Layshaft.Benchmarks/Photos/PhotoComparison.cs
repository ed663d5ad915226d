using System.Diagnostics;
using System.Globalization;
using ImageMagick;
using Layshaft.Site.Tests.Photos;
using SkiaSharp;

namespace Layshaft.Benchmarks.Photos;

/// <summary>
/// Photos a second and likeness, Layshaft beside libvips, in one run over the same made-up photos of 12 megapixels.
/// The two take turns, so that whatever else the machine does strikes both. On a busy machine go by the processor time:
/// libvips hands work between more threads, which the scheduler then favours.
/// </summary>
internal static class PhotoComparison
{
    private const int Rounds = 5;
    private const int PhotosCompared = 3;

    public static void Run(int count)
    {
        var folder = Directory.CreateTempSubdirectory("layshaft-photos-");
        try
        {
            var paths = Photos(folder.FullName, count);
            Print($"{count} photos of 4032 × 3024 to 1600 and 480 px, quality 80, {Environment.ProcessorCount} processors, best and median of {Rounds} rounds");
            IPhotoMaker[] makers = [new LayshaftMaker(2), new LibvipsMaker(2, 1), new LibvipsMaker(1, 2)];
            foreach (var progressive in new[] { false, true })
            {
                Print(progressive ? "\nprogressive" : "\nsequential");
                Race(makers, paths, progressive);
            }

            Print("\nlikeness (SSIM) to a full decode shrunk by a third library with a Lanczos filter");
            foreach (var maker in makers.Take(2))
            {
                Likeness(maker, paths.Take(PhotosCompared).ToList());
            }
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Race(IPhotoMaker[] makers, List<string> paths, bool progressive)
    {
        var runs = makers.ToDictionary(m => m, _ => new List<(double PerSecond, double Cpu)>());
        foreach (var maker in makers)
        {
            maker.Make(paths.Take(4).ToList(), progressive, (_, _) => { });
        }

        for (var round = 0; round < Rounds; round++)
        {
            foreach (var maker in makers)
            {
                using var process = Process.GetCurrentProcess();
                var (cpu, start) = (process.TotalProcessorTime, Stopwatch.GetTimestamp());
                maker.Make(paths, progressive, (_, _) => { });
                var elapsed = Stopwatch.GetElapsedTime(start).TotalSeconds;
                process.Refresh();
                runs[maker].Add((paths.Count / elapsed, (process.TotalProcessorTime - cpu).TotalMilliseconds / paths.Count));
            }
        }

        foreach (var (maker, results) in runs)
        {
            var perSecond = results.Select(r => r.PerSecond).Order().ToList();
            var cpu = results.Select(r => r.Cpu).Order().ToList();
            Print($"{maker.Name,-28} {perSecond[^1],6:F1} best {perSecond[Rounds / 2],6:F1} median photos/s   {cpu[0],5:F0} least {cpu[Rounds / 2],5:F0} median ms of processor a photo");
        }
    }

    private static void Likeness(IPhotoMaker maker, List<string> paths)
    {
        var sums = new double[2];
        var bytes = new long[2];
        maker.Make(paths, progressive: false, (path, sizes) =>
        {
            lock (sums)
            {
                for (var i = 0; i < 2; i++)
                {
                    sums[i] += Likeness(path, sizes[i]);
                    bytes[i] += sizes[i].Length;
                }
            }
        });
        Print($"{maker.Name,-28} large {sums[0] / paths.Count:F4} ({bytes[0] / paths.Count / 1024} KB)   small {sums[1] / paths.Count:F4} ({bytes[1] / paths.Count / 1024} KB)");
    }

    private static double Likeness(string path, byte[] jpeg)
    {
        using var decoded = SKBitmap.Decode(jpeg);
        using var made = decoded.Copy(SKColorType.Rgba8888);
        using var reference = new MagickImage(path);
        reference.AutoOrient();
        reference.FilterType = FilterType.Lanczos;
        reference.Resize(new MagickGeometry((uint)made.Width, (uint)made.Height) { IgnoreAspectRatio = true });
        var wanted = reference.GetPixels().ToByteArray(PixelMapping.RGBA)!;
        return StructuralSimilarity.Of(wanted, made.GetPixelSpan(), made.Width, made.Height);
    }

    // Every other photo lies on its side, as a phone held upright stores it
    private static List<string> Photos(string folder, int count)
    {
        var paths = new List<string>();
        for (var i = 0; i < count; i++)
        {
            var jpeg = SyntheticPhoto.Jpeg(4032, 3024, i);
            paths.Add(Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{i:D3}.jpg")));
            File.WriteAllBytes(paths[i], PlantedMetadata.InJpeg(jpeg, orientation: i % 2 == 0 ? 1 : 6));
        }

        return paths;
    }

    private static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    private static void Print(string line) => Console.WriteLine(line);
}
