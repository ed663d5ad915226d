using Layshaft.Book.Problems;
using Layshaft.Book.Reading;
using Layshaft.Book.Records;
using Layshaft.Book.Values;
using Layshaft.Book.Yaml;
using Layshaft.Site.Assessment;

namespace Layshaft.Cli.Starting;

/// <summary>What is known when a unit comes in.</summary>
/// <param name="Unit">Its id or serial.</param>
/// <param name="Received">The day.</param>
/// <param name="Use">Its total usage.</param>
/// <param name="Complaint">What the customer says.</param>
/// <param name="Technician">Who has it.</param>
/// <param name="Number">The job's number; null for the next.</param>
internal sealed record IntakeQuestion(string Unit, DateOnly Received, Use? Use, string? Complaint, string? Technician, string? Number);

/// <summary>The next job of a unit, ready to be written; or why not.</summary>
/// <param name="Path">The file, from the book's folder.</param>
/// <param name="Draft">What goes into it.</param>
/// <param name="Problems">Problems in the book that prevent it.</param>
/// <param name="Wrong">What is wrong with the question; null when nothing is.</param>
internal sealed record Intake(string? Path, JobDraft? Draft, IReadOnlyList<Problem> Problems, string? Wrong)
{
    public static Intake Of(string folder, IntakeQuestion asked)
    {
        var problems = new ProblemList();
        var files = FolderBookFiles.Look(folder, problems);
        var review = BookReview.Of(files, BookReader.Read(files, problems));
        if (review.Assessment is null)
        {
            // Unfinished job files, such as those of other intakes, do not prevent this one.
            var unfinished = review.Problems.Where(p => p.Severity == Severity.Stops && p.Place.File.StartsWith("jobs/", StringComparison.Ordinal)).Select(p => FolderOf(p.Place.File)).ToHashSet(StringComparer.Ordinal);
            if (unfinished.FirstOrDefault(f => UnitOf(files, f) == asked.Unit) is { } own)
            {
                return new Intake(null, null, [.. review.Problems.Where(p => FolderOf(p.Place.File) == own)], $"{asked.Unit} has a job with problems: {own}. Fix it first.");
            }

            var rest = new BookWithout(files, unfinished);
            review = BookReview.Of(rest, BookReader.Read(rest));
        }

        return review.Assessment is { } assessment
            ? Of(assessment, files, asked)
            : new Intake(null, null, [.. review.Problems.Where(p => p.Severity == Severity.Stops)], null);
    }

    private static Intake Of(BookAssessment assessment, FolderBookFiles files, IntakeQuestion asked)
    {
        var book = assessment.Book;
        if (book.Units.Values.FirstOrDefault(u => u.Id == asked.Unit || u.Serial == asked.Unit) is not { } unit)
        {
            return Refused($"There is no unit '{asked.Unit}'. {NearestWord.Advice(asked.Unit, [.. book.Units.Keys])}");
        }

        var last = book.JobsOf(unit.Id).LastOrDefault();
        if (last is { Stage: not (JobStage.Finished or JobStage.Declined) })
        {
            return Refused($"{unit.Serial} already has an open job: {last.Number}, received {YamlWord.Of(last.Received)}. Continue in {last.Folder}/job.yaml.");
        }

        if (last is not null && last.Received > asked.Received)
        {
            return Refused($"{YamlWord.Of(asked.Received)} is before the last job of {unit.Serial}: {last.Number}, received {YamlWord.Of(last.Received)}. Write a later day with --received.");
        }

        if (asked.Technician is { } technician && book.Shop.Technicians.All(t => t.Id != technician))
        {
            return Refused($"The shop has no technician '{technician}'. {NearestWord.Advice(technician, [.. book.Shop.Technicians.Select(t => t.Id)])}");
        }

        if (asked.Use is { } use && (use.Unit != (unit.UseCountedIn ?? book.Shop.UseCountedIn) || use.Amount < (last?.Use ?? unit.UseAtStart).Amount))
        {
            return Refused($"'{use}' cannot be the total usage of {unit.Serial}, which was {last?.Use ?? unit.UseAtStart} before.");
        }

        (int Year, string Number)[] numbers = [.. files.All.Select(f => f.Path.Split('/')).Where(p => p is ["jobs", { Length: 4 }, _, _, ..] && p[1].All(char.IsAsciiDigit)).Select(p => (int.Parse(p[1], System.Globalization.CultureInfo.InvariantCulture), p[2])).Distinct()];
        var number = asked.Number ?? JobNumber.After(numbers, asked.Received.Year);
        return numbers.Any(n => n.Number == number)
            ? Refused($"Job {number} already exists. Write another number with --number.")
            : new Intake($"jobs/{asked.Received.Year:0000}/{number}/job.yaml", new JobDraft(UnitStory.Of(assessment, unit, asked.Received), asked.Received, asked.Use, asked.Complaint, asked.Technician), [], null);
    }

    private static Intake Refused(string wrong) => new(null, null, [], wrong.TrimEnd());

    private static string FolderOf(string path) => string.Join('/', path.Split('/').Take(3));

    private static string? UnitOf(FolderBookFiles files, string folder)
    {
        var path = $"{folder}/job.yaml";
        var unheard = new ProblemList();
        return files.Has(path) && YamlText.Decode(files.Read(path), path, unheard) is { } text && NodeReader.Read(path, text, unheard) is MapNode root
            && root.Entries.FirstOrDefault(e => e.Key == "unit")?.Value is ScalarNode unit ? unit.Text : null;
    }
}
