using System.Globalization;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Templates;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>
/// What report pages cost beside their floor: the same templates rendered by the plain template library from ready values, in
/// one loop on one thread. Ready means that every text is written and every drawing drawn. All take turns in one run, so that
/// whatever else the machine does strikes all. The gearing of each event is worked out before.
/// </summary>
internal static class PageFloor
{
    private const int Rounds = 15;

    public static void Run(string book, int count)
    {
        if (SitePreparation.Of(BookReview.OfFolder(book), book) is not { Builder: { } builder, Own: { } own })
        {
            Console.Error.WriteLine("The book cannot be published; 'layshaft check' says why.");
            return;
        }

        var composition = builder.Composition;
        var engine = new TemplateEngine(own.Templates, composition.Texts);
        var some = composition.Book.Units.Values
            .SelectMany(u => OwnerView.Of(composition.Book, u).Where(v => v.IsCurrent).SelectMany(v => v.Jobs.Where(j => j.Finished is not null && v.IsOwn(j)).Select(j => (View: v, Job: j))))
            .Take(count).ToArray();

        var plain = new PlainScriban(own.Folders, composition.Texts);

        // The first time round everything is compiled and the gearing of each event is ranked.
        object[] ready = [.. some.Select(s => (object)ReportComposer.Compose(composition, s.View, s.Job))];
        if (ready.Zip(some).Any(p => !plain.Render(ReportComposer.Template, p.First).AsSpan().SequenceEqual(Made(p.Second).Span)))
        {
            throw new InvalidOperationException("The floor renders other pages.");
        }

        var (floor, template, whole) = (double.MaxValue, double.MaxValue, double.MaxValue);
        for (var round = 0; round <= Rounds; round++)
        {
            var bare = Milliseconds(() => Array.ForEach(ready, page => plain.Render(ReportComposer.Template, page)));
            var ours = Milliseconds(() => Array.ForEach(ready, page => engine.Render(ReportComposer.Template, page)));
            var made = Milliseconds(() => Array.ForEach(some, s => Made(s)));
            if (round > 0)
            {
                (floor, template, whole) = (Math.Min(floor, bare), Math.Min(template, ours), Math.Min(whole, made));
            }
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{some.Length} report pages, least processor time of {Rounds} rounds, rankings known: plain library {floor / some.Length:F2} ms, our engine {template / some.Length:F2} ms ({template / floor:F2} x), composed and drawn too {whole / some.Length:F2} ms a page ({whole / floor:F2} x)"));

        ReadOnlyMemory<byte> Made((OwnerView View, Book.Records.Job Job) page) =>
            engine.Render(ReportComposer.Template, ReportComposer.Compose(composition, page.View, page.Job)).Utf8!.Value;
    }

    private static double Milliseconds(Action work)
    {
        var before = Environment.CpuUsage.TotalTime;
        work();
        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
    }
}
