using System.Diagnostics;
using System.Globalization;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>Where the time of a publish goes: reading, working out, preparing, and then each kind of file, some of each.</summary>
internal static class StageTimes
{
    public static void Run(string book, int filesOfEachKind)
    {
        var problems = new ProblemList();
        var files = Timed("look at the files", () => FolderBookFiles.Look(book, problems));
        var read = Timed("read and check", () => BookReader.Read(files, problems));
        var review = Timed("work out", () => BookReview.Of(files, read));
        var site = Timed("prepare (words, templates, headers of pictures)", () => SitePreparation.Of(review, book));
        if (site.Builder is not { } builder)
        {
            Console.Error.WriteLine("The book cannot be published; 'layshaft check' says why.");
            return;
        }

        GearingEach(review.Assessment!, filesOfEachKind);
        var all = Timed("list the files of the site", () => builder.Files().ToList());
        foreach (var kind in all.GroupBy(f => KindOf(f.Path)).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            SiteFile[] of = [.. kind];
            SiteFile[] some = [.. of.Where((_, i) => i % Math.Max(1, of.Length / filesOfEachKind) == 0).Take(filesOfEachKind)];
            if (some.Length > 1)
            {
                some[0].Make();
                some = some[1..];
            }

            var (cpu, bytes) = (Cpu(), 0L);
            foreach (var file in some)
            {
                bytes += file.Make().Bytes?.Length ?? 0;
            }

            var each = (Cpu() - cpu) / some.Length;
            Print($"{kind.Key,-46} {of.Length,7} files {each,9:F2} ms each {bytes / some.Length / 1024,5} KB {each * of.Length / 1000,9:F1} s in all");
        }

        Print($"peak of memory {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MB, heap now {GC.GetTotalMemory(forceFullCollection: true) >> 20} MB");
    }

    // The ranking of an event is worked out with the first page that quotes it; here by itself.
    private static void GearingEach(BookAssessment book, int count)
    {
        var some = book.Book.Jobs.Where(j => j.NextEvent is not null).Reverse().Take(count + 1).ToArray();
        book.Gearing.For(some[0]);
        var cpu = Cpu();
        foreach (var job in some.Skip(1))
        {
            book.Gearing.For(job);
        }

        Print($"{"gearing of one event",-46} {(Cpu() - cpu) / Math.Max(1, some.Length - 1),9:F2} ms each");
    }

    private static T Timed<T>(string name, Func<T> stage)
    {
        var cpu = Cpu();
        var result = stage();
        Print($"{name,-46} {(Cpu() - cpu) / 1000,9:F2} s of processor, {GC.GetTotalMemory(forceFullCollection: true) >> 20} MB");
        return result;
    }

    private static double Cpu() => Environment.CpuUsage.TotalTime.TotalMilliseconds;

    // A path with its changing parts taken out.
    private static string KindOf(string path)
    {
        var parts = path.Split('/');
        return parts switch
        {
            ["customers", "look", ..] or ["shop", ..] or ["reference", "look", ..] => string.Join('/', parts),
            ["customers", _, var name] => $"history/{name}",
            ["customers", _, _, var name] when name.EndsWith(".jpg", StringComparison.Ordinal) => "job/pictures",
            ["customers", _, _, var name] => $"job/{name}",
            ["reference", var name] when name.StartsWith("wall-", StringComparison.Ordinal) => "reference/wall",
            ["reference", var name] => $"reference/{Path.GetExtension(name)}",
            _ => path,
        };
    }

    private static void Print(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
