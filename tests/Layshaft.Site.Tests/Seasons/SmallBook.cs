using System.Text;
using Layshaft.Book.Reading;
using Layshaft.Site.Assessment;
using Layshaft.Site.Building;
using Layshaft.Site.Figures;
using Layshaft.Site.Pages;
using Layshaft.Site.Templates;
using Layshaft.Site.Wording;

namespace Layshaft.Site.Tests.Seasons;

/// <summary>A book in memory: two units of one type, the first of them sold once. Words are planted that must stay where they belong.</summary>
internal static class SmallBook
{
    public const string Shop = """
        name: Test Bench
        email: bench@test.example
        telephone: "+44 1632 960000"
        currency: EUR
        labour_rate: 60
        technicians:
          - { id: amy, name: Amy }
        instruments:
          - { id: scope, name: Microscope, resolution: 0.01 mm, error_limit: 0.01 mm, repeatability: 0.01 mm, calibrated: 2022-12-01, calibrate_every: 10 years }
        advice:
          - { when: several gears, words: "ADVICE-SEVERAL move it quickly." }
          - { when: nothing worn, words: "ADVICE-NONE carry on." }
        """;

    public const string Gearbox = """
        name: Tester Four
        ratio_sets:
          - { id: std, name: Standard, gears: [34/15, 30/18, 27/21, 25/24] }
        final_drives: [34/9]
        parts:
          - id: ring-12
            name: Dog ring 1 and 2
            kind: dog ring
            gear: 1
            measures:
              - { id: radius-1, name: Radius on first, new: 0.30 mm, limit: 1.20 mm, gear: 1 }
              - { id: radius-2, name: Radius on second, new: 0.30 mm, limit: 1.20 mm, gear: 2 }
            price: 100
            cost: 77.31
            stock: 0
          - id: ring-34
            name: Dog ring 3 and 4
            kind: dog ring
            gear: 3
            measures:
              - { id: radius-3, name: Radius on third, new: 0.30 mm, limit: 1.20 mm, gear: 3 }
              - { id: radius-4, name: Radius on fourth, new: 0.30 mm, limit: 1.20 mm, gear: 4 }
            service_life: 58 h
          - { id: front, name: Front bearing, kind: bearing }
          - { id: seal, name: Seal, kind: seal }
        shims:
          - id: lay
            name: Lay shims
            stock:
              - { thickness: 0.10 mm, count: 0 }
              - { thickness: 0.20 mm, count: 4 }
        settings:
          - { id: float, name: Lay float, kind: end float, target: 0.05 mm to 0.10 mm, shims: lay, required: no }
        """;

    public const string UnitA = """
        gearbox: four
        serial: A-1
        ratio_set: std
        owners:
          - { customer: first, from: 2023-01-01 }
          - { customer: second, from: 2025-01-01 }
        in_service: 2023-01-10
        use_at_start: 0 h
        fitted:
          - { part: ring-34, serial: R-34 }
        final_drive: 34/9
        internal_notes: PLANTED-UNIT-NOTE
        """;

    public const string UnitB = """
        gearbox: four
        serial: B-2
        ratio_set: std
        owners:
          - { customer: second, from: 2023-01-01 }
        in_service: 2023-03-01
        use_at_start: 10 h
        final_drive: 34/9
        """;

    public static string Job(string unit, string received, string use, string rest) =>
        $"unit: {unit}\nreceived: {received}\nuse: {use}\n{rest}";

    public static string Rings(double first, double second, double third, double fourth) => FormattableString.Invariant($$"""
        findings:
          - part: ring-12
            measurements:
              - { measure: radius-1, instrument: scope, readings: [{{first:0.00}} mm] }
              - { measure: radius-2, instrument: scope, readings: [{{second:0.00}} mm] }
          - part: ring-34
            measurements:
              - { measure: radius-3, instrument: scope, readings: [{{third:0.00}} mm] }
              - { measure: radius-4, instrument: scope, readings: [{{fourth:0.00}} mm] }

        """);

    /// <summary>The files of the usual book, some replaced or added.</summary>
    public static Dictionary<string, string> Files(params (string Path, string Text)[] changes)
    {
        var files = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["shop.yaml"] = Shop,
            ["gearboxes/four.yaml"] = Gearbox,
            ["customers/first.yaml"] = "name: PLANTED-FIRST-NAME\ntelephone: PLANTED-FIRST-PHONE\ninternal_notes: PLANTED-CUSTOMER-NOTE\n",
            ["customers/second.yaml"] = "name: Second Owner\n",
            ["venues/hill.yaml"] = "name: PLANTED-VENUE\nkind: hill climb\nlength: 1000 m\nstraights:\n  - { name: Up, length: 500 m, corner: finish }\n",
            ["units/a.yaml"] = UnitA,
            ["units/b.yaml"] = UnitB,
            ["jobs/2023/0001/job.yaml"] = Job("a", "2023-11-01", "20 h", "complaint: PLANTED-COMPLAINT\ndriver: first season\nverdict: As good as new.\nfinished: 2023-11-10\ninternal_notes: internal.md\nlast_event: { venue: hill, on: 2023-10-01, name: PLANTED-EVENT, final_drive: 34/9 }\nestimate: { sent: 2023-11-02, lines: [{ work: PLANTED-WORK, price: 4321.99 }] }\ngo_ahead: { answer: yes, on: 2023-11-03, note: PLANTED-ANSWER }\nsettings:\n  - { setting: float, pack: [1.00 mm, 0.20 mm], built: [0.07 mm], instrument: scope }\n" + Rings(0.50, 0.55, 0.42, 0.40)),
            ["jobs/2023/0001/internal.md"] = "PLANTED-JOB-NOTE\n",
            ["jobs/2025/0004/internal.md"] = "PLANTED-BENCH-NOTE\n",
            ["jobs/2024/0002/job.yaml"] = Job("a", "2024-11-01", "40 h", "complaint: PLANTED-AGAIN\nverdict: Ring one renewed.\nfinished: 2024-11-10\nrenewed:\n  - { part: ring-12, serial: R-12-new }\n  - { part: seal }\nsettings:\n  - { setting: float, pack: [1.00 mm, 0.30 mm], built: [0.07 mm], instrument: scope }\n" + Rings(0.80, 1.21, 0.55, 0.50)),
            ["jobs/2025/0003/job.yaml"] = Job("a", "2025-11-01", "60 h", "complaint: Second says hello.\nverdict: All well.\nfinished: 2025-11-10\ncome_back: { after: 20 h, by: 2026-11-01 }\n" + Rings(0.35, 0.36, 0.66, 0.60)),
            ["jobs/2025/0004/job.yaml"] = Job("b", "2025-12-01", "30 h", "complaint: Looks worn.\ninternal_notes: internal.md\nstripped: 2025-12-02\nestimate: { sent: 2025-12-03, lines: [{ part: ring-12, quantity: 2 }] }\n" + Rings(1.00, 1.10, 0.50, 0.40)),
        };
        foreach (var (path, text) in changes)
        {
            files[path] = text;
        }

        return files;
    }

    public static BookReview Review(params (string Path, string Text)[] changes)
    {
        var files = MemoryBookFiles.OfTexts(Files(changes));
        return BookReview.Of(files, BookReader.Read(files));
    }

    /// <summary>The book, worked out; fails with its problems when it cannot be read.</summary>
    public static BookAssessment Assess(params (string Path, string Text)[] changes)
    {
        var review = Review(changes);
        return review.Assessment ?? throw new InvalidOperationException(string.Join("\n", review.Problems));
    }

    public static Composition Compose(BookReview review)
    {
        var texts = TextsLoader.Load(TemplateFolders.BesideProgram(), "en").Texts!;
        var notes = review.Files.All.Where(f => f.Path.EndsWith(".md", StringComparison.Ordinal))
            .ToDictionary(f => f.Path, f => Encoding.UTF8.GetString(review.Files.Read(f.Path)), StringComparer.Ordinal);
        return new Composition(
            review.Assessment!,
            texts,
            new FigureWriter(new UnitChoice(), texts),
            new Addresses(view => FormattableString.Invariant($"key-{view.Unit.Id}-{view.Index}")),
            new PictureIndex(new Dictionary<string, UsablePicture>()),
            notes);
    }

    /// <summary>Every file of the site, made; fails with a template's mistakes.</summary>
    public static IReadOnlyDictionary<string, string> Publish(params (string Path, string Text)[] changes)
    {
        var review = Review(changes);
        Assert.True(review.Assessment is not null, string.Join("\n", review.Problems));
        var composition = Compose(review);
        var folders = TemplateFolders.BesideProgram();
        var builder = new SiteBuilder(composition, new TemplateEngine(TemplateSet.Load(folders), composition.Texts), review.Files, folders, "test");
        var made = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var file in builder.Files())
        {
            var result = file.Make();
            Assert.Empty(result.Problems);
            made.Add(file.Path, Encoding.UTF8.GetString(result.Bytes!.Value.Span));
        }

        return made;
    }
}
