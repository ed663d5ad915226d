using System.Runtime.CompilerServices;
using System.Text;
using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Book.Shapes;

namespace Layshaft.Book.Tests;

/// <summary>The guide lists every field as the reader knows it.</summary>
public class GuideTests
{
    private const string Mark = "<!-- fields: kept true by a test; run the Book tests with LAYSHAFT_APPROVE=1 after a change -->";

    [Fact]
    public void The_guide_to_the_book_lists_every_field()
    {
        var path = Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "docs", "book.md");
        var guide = File.ReadAllText(path).ReplaceLineEndings("\n");
        var intro = guide[..(guide.IndexOf(Mark, StringComparison.Ordinal) + Mark.Length)];
        var expected = $"{intro}\n{Fields()}";
        if (Environment.GetEnvironmentVariable("LAYSHAFT_APPROVE") == "1")
        {
            File.WriteAllText(path, expected);
        }

        Assert.Equal(expected, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void The_example_in_the_readme_reads_as_a_job_of_the_demo()
    {
        var root = Path.Combine(Path.GetDirectoryName(Here())!, "..", "..");
        var readme = File.ReadAllText(Path.Combine(root, "README.md")).ReplaceLineEndings("\n");
        var from = readme.IndexOf("```yaml\n", StringComparison.Ordinal) + "```yaml\n".Length;
        var example = readme[from..readme.IndexOf("```", from, StringComparison.Ordinal)];
        var demo = Path.Combine(root, "demo-data");
        var files = Directory.EnumerateFiles(demo, "*", SearchOption.AllDirectories)
            .ToDictionary(p => Path.GetRelativePath(demo, p).Replace('\\', '/'), File.ReadAllBytes, StringComparer.Ordinal);
        files["jobs/2026/0615/job.yaml"] = Encoding.UTF8.GetBytes(example);

        var read = BookReader.Read(new MemoryBookFiles(files));

        Assert.DoesNotContain(read.Problems, p => p.Severity == Severity.Stops);
        Assert.Equal(new DateOnly(2026, 6, 17), read.Book!.Jobs.Single(j => j.Number.EndsWith("0615", StringComparison.Ordinal)).Finished);
    }

    private static string Fields()
    {
        var text = new StringBuilder();
        Table(text, Shop.Shape);
        Table(text, ShownUnits.Shape);
        Table(text, ShownNumbers.Shape);
        Table(text, Tax.Shape);
        Table(text, Technician.Shape);
        Table(text, Instrument.Shape);
        Table(text, Advice.Shape);
        Table(text, Customer.Shape);
        Table(text, Gearbox.Shape);
        Table(text, RatioSet.Shape);
        Table(text, GearChoices.Shape);
        Table(text, ChangeTimes.Shape);
        Table(text, GearPair.Shape);
        Table(text, DropGears.Shape);
        Table(text, Part.Shape);
        Table(text, Measure.Shape);
        Table(text, Grading.Shape);
        Table(text, ShimStock.Shape);
        Table(text, ShimThickness.Shape);
        Table(text, Setting.Shape);
        Table(text, UsualWork.Shape);
        Table(text, Step.Shape);
        Table(text, PlateDifferential.Shape);
        Table(text, Car.Shape);
        Table(text, Tyre.Shape);
        Table(text, Engine.Shape);
        Table(text, CurvePoint.Shape);
        Table(text, TraceColumns.Shape);
        Table(text, Venue.Shape);
        Table(text, Straight.Shape);
        Table(text, Unit.Shape);
        Table(text, Ownership.Shape);
        Table(text, Kit.Shape);
        Table(text, FittedPart.Shape);
        Table(text, Job.Shape);
        Table(text, Finding.Shape);
        Table(text, Measurement.Shape);
        Table(text, Photo.Shape);
        Table(text, Callout.Shape);
        Table(text, Offer.EstimateShape);
        Table(text, Offer.SupplementShape);
        Table(text, EstimateLine.Shape);
        Table(text, GoAhead.Shape);
        Table(text, Renewal.Shape);
        Table(text, JobSetting.Shape);
        Table(text, JobDifferential.Shape);
        Table(text, DifferentialBuild.Shape);
        Table(text, ListTicks.Shape);
        Table(text, LeftOutStep.Shape);
        Table(text, EventPlan.Shape);
        Table(text, JobTrace.Shape);
        Table(text, ComeBack.Shape);
        text.Append("\n### Words for damage\n\n");
        foreach (var family in DamageTerms.All.GroupBy(t => t.Family))
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"- {NameOf(family.Key)}: {string.Join(", ", family.Select(t => t.Word))}\n");
        }

        text.Append("\n### Kinds of part\n\nThe damage terms and measures of each kind.\n\n");
        foreach (var kind in Enum.GetValues<PartKind>())
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"- {Part.WordOf(kind)}: {string.Join(", ", PartKinds.TermsOf(kind).Select(NameOf))}; {PartKinds.QuantitiesOf(kind)}\n");
        }

        return text.ToString();
    }

    private static string NameOf(TermFamily family) => family switch
    {
        TermFamily.GearTooth => "gear teeth",
        TermFamily.Bearing => "bearings",
        TermFamily.Engagement => "dogs and forks",
        TermFamily.Friction => "plates and ramps",
        TermFamily.Mechanism => "mechanisms",
        _ => throw new ArgumentOutOfRangeException(nameof(family)),
    };

    private static void Table<T>(StringBuilder text, RecordShape<T> shape)
    {
        text.Append(System.Globalization.CultureInfo.InvariantCulture, $"\n### {char.ToUpperInvariant(shape.Words[0])}{shape.Words[1..]}\n\n{shape.Meaning}\n\n| field | meaning | write |\n|---|---|---|\n");
        foreach (var field in shape.Describe())
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"| `{field.Key}`{(field.Required ? " (needed)" : "")} | {field.Meaning.Replace("|", "\\|", StringComparison.Ordinal)} | {field.Words.Replace("|", "\\|", StringComparison.Ordinal)} |\n");
        }
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
