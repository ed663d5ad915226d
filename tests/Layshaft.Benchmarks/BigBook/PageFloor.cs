using System.Globalization;
using System.Text;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Pages;
using Layshaft.Site.Pages.Report;
using Layshaft.Site.Templates;

namespace Layshaft.Benchmarks.BigBook;

/// <summary>
/// What report pages cost beside their floor: the same template rendered from ready values, in one loop on one thread. Both
/// take turns in one run, so that whatever else the machine does strikes both.
/// </summary>
internal static class PageFloor
{
    private const int Rounds = 5;

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

        // The first time round everything is compiled and the gearing of each event is ranked.
        object[] ready = [.. some.Select(s => (object)ReportComposer.Compose(composition, s.View, s.Job))];
        var (floor, whole) = (double.MaxValue, double.MaxValue);
        for (var round = 0; round <= Rounds; round++)
        {
            var bare = Milliseconds(() => Array.ForEach(ready, page => Bytes(engine, page)));
            var made = Milliseconds(() => Array.ForEach(some, s => Bytes(engine, ReportComposer.Compose(composition, s.View, s.Job))));
            if (round > 0)
            {
                (floor, whole) = (Math.Min(floor, bare), Math.Min(whole, made));
            }
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{some.Length} report pages, least processor time of {Rounds} rounds: template alone {floor / some.Length:F2} ms, composed too {whole / some.Length:F2} ms a page ({whole / floor:F2} x), rankings known"));
    }

    private static void Bytes(TemplateEngine engine, object page) => Encoding.UTF8.GetBytes(engine.Render(ReportComposer.Template, page).Html!);

    private static double Milliseconds(Action work)
    {
        var before = Environment.CpuUsage.TotalTime;
        work();
        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
    }
}
